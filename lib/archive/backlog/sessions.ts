import type { Dated } from './dated';

/** A recording of a folder, with its date. */
interface Begun {
  path: string;
  durationMs: number;
  dated: Dated;
}

/** Work that goes on past midnight with no longer break than this stays with the day it began. */
const longestBreakMs = 3_600_000;

/**
 * Recordings of one folder in order of time: by day, then by the clock, then by name as people count. One that begins
 * past midnight, within an hour of the end of the one before, belongs to the day before: work that went on into the
 * night, or a camera that split one long take in several files.
 */
export function inSessions<T extends Begun>(files: readonly T[]): T[] {
  const sorted = [...files].sort(inTime);
  let last: T | null = null;
  return sorted.map((file) => {
    const day: string | null = last && goesOn(last, file) ? last.dated.day : file.dated.day;
    last = { ...file, dated: { ...file.dated, day } };
    return last;
  });
}

function inTime(a: Begun, b: Begun): number {
  const [one, other] = [a.dated.day ?? '', b.dated.day ?? ''];
  if (one !== other) return one < other ? -1 : 1;
  return beginOf(a) - beginOf(b) || a.path.localeCompare(b.path, 'en', { numeric: true });
}

/** Those of which only the day is known come last in their day. */
function beginOf({ dated }: Begun): number {
  return dated.wallMs ?? Number.MAX_SAFE_INTEGER;
}

function goesOn(before: Begun, after: Begun): boolean {
  const [from, to] = [before.dated.wallMs, after.dated.wallMs];
  return from !== null && to !== null && to - (from + before.durationMs) <= longestBreakMs;
}
