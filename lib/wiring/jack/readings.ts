import { type JackCheck, type JackReading, type JackReadingInput, jackReadingSchema } from '@/shared/jack';
import { sayOhms, sayValue } from '../trace/say';
import type { Answered } from './another-value';
import { plainRange } from './expected';
import { agrees, measuredOf } from './fit';
import { sayRange } from './next-reading';
import { atJack, keyOf, type Model, predict, type Range, sound } from './predict';
import { prepareSetting } from './prepare';
import { HarnessProblem } from './problems';
import { labelOf } from './settings';

/** No hand-held ohmmeter shows more. */
const mostOhms = 1e9;

/**
 * Checks one reading against the harness.
 * @throws HarnessProblem for a setting that cannot be, or a value no meter shows
 */
export function prepareReading({ harness }: Model, input: JackReadingInput): JackReading {
  const parsed = jackReadingSchema.safeParse(input);
  if (!parsed.success) {
    const [issue] = parsed.error.issues;
    const field = issue?.path.join('.') ?? '';
    throw new HarnessProblem(
      `A reading cannot be read at "${field}".`,
      `${issue?.message ?? ''}. Correct it.`,
      { field },
    );
  }
  const { ohms } = parsed.data;
  if (ohms !== null && ohms < 0) {
    throw new HarnessProblem(
      `A resistance cannot be negative (${ohms} Ω).`,
      'Zero the meter with its leads touching and read again; something may still be live or charged.',
      { field: 'ohms', value: ohms },
    );
  }
  if (ohms !== null && ohms > mostOhms) {
    throw new HarnessProblem(
      `${ohms} Ω is more than a hand-held meter can show.`,
      'Enter the reading as open.',
      {
        field: 'ohms',
        value: ohms,
      },
    );
  }
  return { ...parsed.data, ...prepareSetting(harness, parsed.data) };
}

export function answeredOf(reading: JackReading): Answered {
  const { position, thrown, down } = reading;
  return { ...atJack({ position, thrown, down }), measured: measuredOf(reading) };
}

/** One reading against what a sound harness would show. */
export function checkReading(model: Model, reading: JackReading): JackCheck {
  const { setting, between, measured } = answeredOf(reading);
  const range = predict(model, { setting, between }, sound);
  const isTooCoarse = measured.uncertaintyOhms > coarsestFor(range);
  const verdict = !agrees(range, measured) ? 'fail' : isTooCoarse ? 'cannot say' : 'pass';
  const label = labelOf(model.harness, setting);
  const uncertaintyOhms = reading.ohms === null ? null : measured.uncertaintyOhms;
  return {
    readingId: reading.id ?? null,
    key: keyOf(setting),
    setting,
    label,
    verdict,
    measuredOhms: reading.ohms,
    expected: plainRange(range),
    uncertaintyOhms,
    text: `${label}: ${sayCheck(verdict, reading.ohms, range, uncertaintyOhms)}`,
  };
}

/** A meter that is uncertain by half of what it should show passes nothing; a short wants 50 Ω or better. */
function coarsestFor({ ohms }: Range): number {
  return Number.isFinite(ohms) ? Math.max(ohms / 2, 50) : Number.POSITIVE_INFINITY;
}

function sayCheck(
  verdict: JackCheck['verdict'],
  ohms: number | null,
  range: Range,
  uncertaintyOhms: number | null,
): string {
  const meter =
    uncertaintyOhms === null ? '' : `, the meter ±${sayOhms(Number(uncertaintyOhms.toPrecision(2)))}`;
  const said = `${sayValue(ohms)} read, ${sayRange(range)} expected${meter}`;
  const ends = {
    pass: 'It passes.',
    fail: 'It does not fit.',
    'cannot say': 'That meter is too coarse to tell.',
  };
  return `${said}. ${ends[verdict]}`;
}
