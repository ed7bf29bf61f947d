import type { Film } from './clock';

/** The highest and lowest sample of each slot of the film, from -1 to 1, for drawing. */
export interface FilmSound {
  highest: Float32Array;
  lowest: Float32Array;
}

/** Most slots that are handed to the page for one film: finer ones would not be seen. */
const mostSlots = 1_200_000;

/** The finest of the levels at hand (pairs in a second) that the whole film can be drawn with. */
export function levelFor(filmMs: number, levels: readonly number[]): number | null {
  const fromFine = [...levels].sort((a, b) => b - a);
  return fromFine.find((level) => (level * filmMs) / 1000 <= mostSlots) ?? fromFine.at(-1) ?? null;
}

/**
 * Lays the peaks of takes on the film's clock.
 * @param peaksOf signed bytes of a take, lowest and highest by turns, from take time 0; null while unknown
 * @param pairsPerSecond the level that all of them are on
 */
export function soundOfFilm(
  film: Film,
  peaksOf: (takeId: string) => Int8Array | null,
  pairsPerSecond: number,
): FilmSound {
  const slots = slotAt(film.durationMs, pairsPerSecond);
  const highest = new Float32Array(slots);
  const lowest = new Float32Array(slots);
  for (const take of film.takes) {
    const peaks = peaksOf(take.takeId);
    if (!peaks) continue;
    const from = slotAt(take.filmStartMs, pairsPerSecond);
    const to = slotAt(take.filmEndMs, pairsPerSecond);
    const first = slotAt(take.startMs, pairsPerSecond);
    const count = Math.min(to - from, Math.floor(peaks.length / 2) - first);
    for (let index = 0; index < count; index++) {
      lowest[from + index] = (peaks[2 * (first + index)] ?? 0) / 128;
      highest[from + index] = (peaks[2 * (first + index) + 1] ?? 0) / 128;
    }
  }
  return { highest, lowest };
}

function slotAt(ms: number, pairsPerSecond: number): number {
  return Math.round((ms * pairsPerSecond) / 1000);
}
