import { parseQuickEntry, sayValue, toBase } from '@/lib/readings';
import type { NewReading } from '@/shared/readings';

/** What every reading of the check is of. */
export const jackSubject = 'output jack';

export interface MeterValue {
  reading: NewReading;
  /** Null for an over-range display: open. */
  ohms: number | null;
  said: string;
}

export type MeterText =
  | { state: 'empty' }
  | { state: 'read'; value: MeterValue }
  | { state: 'asks'; question: string; choices: MeterValue[] }
  | { state: 'unclear'; missing: string };

const example = 'Type what the meter shows, such as 8.05k, 0.4 ohm or OL.';

/** A typed resistance: "8.05k", "0.4 ohm", "OL". A number without a unit is asked about. */
export function readMeter(text: string): MeterText {
  if (text.trim() === '') return { state: 'empty' };
  const entry = parseQuickEntry(`${jackSubject} ${text}`, { instrumentType: 'other', conductors: [] });
  if (entry.state === 'understood') {
    const value = meterValue(entry.reading);
    return value ? { state: 'read', value } : { state: 'unclear', missing: example };
  }
  if (entry.state !== 'question') return { state: 'unclear', missing: example };
  const choices = entry.choices.flatMap(({ reading }) => meterValue(reading) ?? []);
  if (choices.length === 0) return { state: 'unclear', missing: example };
  return { state: 'asks', question: 'Which was it?', choices };
}

/** Null for another quantity, and where words stand beside the value. */
function meterValue(reading: NewReading): MeterValue | null {
  const { kind, subject, open = false, value, unit } = reading;
  if (kind !== 'resistance' || subject !== jackSubject || unit === undefined) return null;
  if (!open && value === undefined) return null;
  const ohms = open || value === undefined ? null : toBase(String(value), unit);
  if (ohms !== null && ohms < 0) return null;
  return { reading, ohms, said: sayValue(reading) };
}
