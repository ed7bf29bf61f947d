import type { GiveOutQuery } from '@/shared/archive-exports';
import { type Thing, type ToldJob, thingsOf } from '../things';

/** Whether a job belongs to the part of the archive that was chosen; jobs left out by hand are another matter. */
export function isChosen(
  told: ToldJob,
  { instrument, kind, basis, from, to, ...range }: GiveOutQuery,
): boolean {
  if (instrument !== undefined && told.instrument.type !== instrument) return false;
  if (!isWithin(told, from, to)) return false;
  if (kind === undefined && basis === undefined && range.reading === undefined) return true;
  const things = thingsOf(told);
  const holds = (fits: (thing: Thing) => boolean) => things.some(fits);
  return (
    (kind === undefined || holds((thing) => thing.kind === kind || thing.markerKind === kind)) &&
    (basis === undefined || holds((thing) => thing.basis === basis)) &&
    (range.reading === undefined || holds((thing) => isInRange(thing, range)))
  );
}

/** Came in, or was filmed, on a day from `from` to `to`. Days are ISO 8601, which sort as text. */
function isWithin({ job, takes }: ToldJob, from = '', to = '9999'): boolean {
  return [job.receivedOn, ...takes.map(({ day }) => day)].some((day) => from <= day && day <= to);
}

/** A reading without a value, such as an open line, is none of a range. */
function isInRange(
  { readingKind, baseValue }: Thing,
  { reading, low, high }: Pick<GiveOutQuery, 'reading' | 'low' | 'high'>,
): boolean {
  if (readingKind !== reading) return false;
  if (low === undefined && high === undefined) return true;
  return baseValue !== null && baseValue >= (low ?? -Infinity) && baseValue <= (high ?? Infinity);
}
