import type { TakeId } from '@/shared/ids';

/** What the clock needs of a take. Times in milliseconds from the take's first shown frame. */
export interface ClockTake {
  id: TakeId;
  durationMs: number;
  trimStartMs: number;
  /** Null: up to the end of the recording. */
  trimEndMs: number | null;
}

/** A take as it lies on the film: film time from `filmStartMs`, take time from `startMs`. */
export interface PlacedTake {
  takeId: TakeId;
  filmStartMs: number;
  filmEndMs: number;
  startMs: number;
  endMs: number;
}

/** All takes of a job in order, on one clock that starts at 0. */
export interface Film {
  durationMs: number;
  takes: readonly PlacedTake[];
}

/** A point on the film that stays on its picture when takes are re-ordered. */
export interface Moment {
  takeId: TakeId;
  ms: number;
}

/** Lays takes end to end in the order given. A trim beyond the recording is cut to it. */
export function layOut(takes: readonly ClockTake[]): Film {
  let filmMs = 0;
  const placed = takes.map((take) => {
    const startMs = clamp(take.trimStartMs, 0, take.durationMs);
    const endMs = clamp(take.trimEndMs ?? take.durationMs, startMs, take.durationMs);
    const filmStartMs = filmMs;
    filmMs += endMs - startMs;
    return { takeId: take.id, filmStartMs, filmEndMs: filmMs, startMs, endMs };
  });
  return { durationMs: filmMs, takes: placed };
}

/**
 * Film time to the moment shown then. A seam belongs to the take that begins there; the film's end to the
 * last take that shows anything. Times outside the film are brought to its nearest end.
 * @returns null on a film that shows nothing
 */
export function momentAt(film: Film, filmMs: number): Moment | null {
  const showing = film.takes.filter((take) => take.filmEndMs > take.filmStartMs);
  const at = clamp(filmMs, 0, film.durationMs);
  const take = showing.find((candidate) => at < candidate.filmEndMs) ?? showing.at(-1);
  return take ? { takeId: take.takeId, ms: take.startMs + at - take.filmStartMs } : null;
}

export interface FilmTime {
  filmMs: number;
  /** False where a trim has cut the moment away: `filmMs` is then the nearest time still shown. */
  shown: boolean;
}

/** A moment to film time. Null where its take is not in the film. */
export function filmTimeOf(film: Film, moment: Moment): FilmTime | null {
  const take = film.takes.find((candidate) => candidate.takeId === moment.takeId);
  if (!take) return null;
  const ms = clamp(moment.ms, take.startMs, take.endMs);
  return { filmMs: take.filmStartMs + ms - take.startMs, shown: ms === moment.ms };
}

/** Steps along the film from a moment, over the ends of takes. Null on a film that shows nothing. */
export function stepFrom(film: Film, moment: Moment, byMs: number): Moment | null {
  const from = filmTimeOf(film, moment);
  return from && momentAt(film, from.filmMs + byMs);
}

function clamp(value: number, low: number, high: number): number {
  return Math.min(Math.max(value, low), high);
}
