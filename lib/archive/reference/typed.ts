import { parseQuickEntry, sayNewReading, toBase } from '@/lib/readings';
import type { NewReading, ReadingKindId } from '@/shared/readings';
import { placeOf } from './place';

/** A typed reading, as far as it is understood; `unclear` says what is missing. */
export interface Typed {
  said: string;
  kind?: ReadingKindId;
  place?: string;
  /** In the kind's base unit. */
  value?: number;
  unclear?: string;
}

/**
 * Reads a line as it would be noted at the bench: "neck 7.2k", "low E 12th 1.8 mm".
 * @param instrument a type, or empty for any
 */
export function readTyped(line: string, instrument: string): Typed {
  const entry = parseQuickEntry(line, { instrumentType: instrument || 'other', conductors: [] });
  switch (entry.state) {
    case 'understood':
      return asTyped(entry.reading);
    case 'question': {
      const [only, ...others] = entry.choices;
      // A question about one reading only asks whether it is likely; the table answers just that.
      return only && others.length === 0
        ? asTyped(only.reading)
        : { said: line, unclear: `${entry.question} Write it out.` };
    }
    case 'unfinished':
      return { said: line, unclear: entry.missing };
    case 'empty':
      return { said: line, unclear: 'Type a reading, such as “neck 7.2k”.' };
  }
}

function asTyped(reading: NewReading): Typed {
  const { kind, value, unit, open, subject = '', between = null, details = {} } = reading;
  const place = placeOf({ kind, subject, between, details });
  const said = sayNewReading({ ...reading });
  if (open || value === undefined || unit === undefined || kind === 'polarity-kick')
    return { said, kind, place, unclear: 'Only a value can be held against others: this one shows none.' };
  return { said, kind, place, value: toBase(String(value), unit) };
}
