import { type Film, filmTimeOf, type Moment, type PlacedTake } from '@/lib/film';
import type { TakeId } from '@/shared/ids';

/** A part of a take that is left out of what is published. Take time in milliseconds. */
export interface CutAway {
  takeId: TakeId;
  fromMs: number;
  /** The first moment that is kept again. */
  toMs: number;
}

/** A part that is kept: take time from `fromMs`, film time from `filmStartMs`, published time from `startMs`. */
export interface KeptPiece {
  takeId: TakeId;
  fromMs: number;
  toMs: number;
  filmStartMs: number;
  startMs: number;
}

/** The film without what is cut away, on a clock of its own that starts at 0. */
export interface PublishedFilm {
  durationMs: number;
  /** In film order, none empty, no two of a take touching. */
  pieces: readonly KeptPiece[];
  /** The whole film that it is cut from. */
  film: Film;
}

/** Cuts may overlap, touch, be empty, reach beyond their take or name a take that is not in the film. */
export function publishedFilm(film: Film, cutAway: readonly CutAway[]): PublishedFilm {
  let startMs = 0;
  const pieces: KeptPiece[] = [];
  for (const take of film.takes) {
    const cuts = cutAway.filter((cut) => cut.takeId === take.takeId);
    for (const { fromMs, toMs } of keptSpans(take, cuts)) {
      const filmStartMs = take.filmStartMs + fromMs - take.startMs;
      pieces.push({ takeId: take.takeId, fromMs, toMs, filmStartMs, startMs });
      startMs += toMs - fromMs;
    }
  }
  return { durationMs: startMs, pieces, film };
}

/**
 * A moment on the published clock.
 * - `kept`: it is shown, at `ms`.
 * - `moved`: it is cut away; the film goes on at `ms`.
 * - `dropped`: it has no place. `why` says what became of it.
 */
export type PublishedTime =
  | { what: 'kept'; ms: number }
  | { what: 'moved'; ms: number }
  | { what: 'dropped'; why: 'not in the film' | 'trimmed' | 'cut up to the next' | 'nothing after it' };

/**
 * Where a moment lies once the film is published. A moment in a cut part moves to the next kept one, into the
 * next take if need be, because a subject goes on when the camera is moved. It drops out where a trim has cut
 * it away, and where `next`, the moment that begins the next subject, comes first: then all of it is cut.
 */
export function publishedTimeOf(
  published: PublishedFilm,
  moment: Moment,
  next: Moment | null = null,
): PublishedTime {
  const at = filmTimeOf(published.film, moment);
  if (!at) return { what: 'dropped', why: 'not in the film' };
  if (!at.shown) return { what: 'dropped', why: 'trimmed' };
  const piece = published.pieces.find((candidate) => filmEndMsOf(candidate) > at.filmMs);
  if (!piece) return { what: 'dropped', why: 'nothing after it' };
  if (piece.filmStartMs <= at.filmMs)
    return { what: 'kept', ms: piece.startMs + at.filmMs - piece.filmStartMs };
  const nextMs = next && filmTimeOf(published.film, next)?.filmMs;
  if (nextMs != null && nextMs <= piece.filmStartMs) return { what: 'dropped', why: 'cut up to the next' };
  return { what: 'moved', ms: piece.startMs };
}

function filmEndMsOf(piece: KeptPiece): number {
  return piece.filmStartMs + piece.toMs - piece.fromMs;
}

function keptSpans(take: PlacedTake, cuts: readonly CutAway[]): { fromMs: number; toMs: number }[] {
  const within = cuts
    .map((cut) => ({ fromMs: Math.max(cut.fromMs, take.startMs), toMs: Math.min(cut.toMs, take.endMs) }))
    .filter((cut) => cut.toMs > cut.fromMs)
    .sort((a, b) => a.fromMs - b.fromMs);
  const kept: { fromMs: number; toMs: number }[] = [];
  let fromMs = take.startMs;
  for (const cut of within) {
    if (cut.fromMs > fromMs) kept.push({ fromMs, toMs: cut.fromMs });
    fromMs = Math.max(fromMs, cut.toMs);
  }
  if (take.endMs > fromMs) kept.push({ fromMs, toMs: take.endMs });
  return kept;
}
