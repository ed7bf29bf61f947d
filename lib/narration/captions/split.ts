import type { PlacedTake } from '@/lib/film';
import type { TakeId } from '@/shared/ids';
import type { NarrationLine } from '@/shared/narration';

export interface SplitCaptions {
  /** Lines in take time, for every take that has any. */
  readonly takes: ReadonlyMap<TakeId, readonly NarrationLine[]>;
  /** Lines that fall on no take, in film time. */
  readonly outside: readonly NarrationLine[];
}

/** Moves lines by an offset; what would start before 0 starts at 0, what would end there is dropped. */
export function shiftLines(lines: readonly NarrationLine[], offsetMs: number): NarrationLine[] {
  return lines
    .map((line) => ({ ...line, startMs: Math.max(0, line.startMs + offsetMs), endMs: line.endMs + offsetMs }))
    .filter((line) => line.endMs > 0 || line.startMs === line.endMs);
}

/**
 * Deals the lines of a whole-film captions file out to its takes. A line goes to the take in which most of it
 * is heard, clipped to that take.
 */
export function splitOverTakes(
  lines: readonly NarrationLine[],
  takes: readonly PlacedTake[],
  offsetMs = 0,
): SplitCaptions {
  const dealt = new Map<TakeId, NarrationLine[]>();
  const outside: NarrationLine[] = [];
  for (const line of shiftLines(lines, offsetMs)) {
    const take = takeOf(line, takes);
    if (!take) outside.push(line);
    else dealt.set(take.takeId, [...(dealt.get(take.takeId) ?? []), inTakeTime(line, take)]);
  }
  return { takes: dealt, outside };
}

function takeOf(line: NarrationLine, takes: readonly PlacedTake[]): PlacedTake | undefined {
  const middle = (line.startMs + line.endMs) / 2;
  return takes.find((take) => take.filmStartMs <= middle && middle < take.filmEndMs);
}

function inTakeTime(line: NarrationLine, take: PlacedTake): NarrationLine {
  const clip = (ms: number): number => Math.min(Math.max(ms, take.filmStartMs), take.filmEndMs);
  const toTake = (ms: number): number => clip(ms) - take.filmStartMs + take.startMs;
  return { ...line, startMs: toTake(line.startMs), endMs: toTake(line.endMs) };
}
