import { type Film, filmTimeOf } from '@/lib/film';
import type { TakeSpan } from '@/shared/cut';

/** A span as it lies on the film. */
export interface FilmSpan {
  fromMs: number;
  toMs: number;
}

/** The part of each take between two film times, whichever is the earlier. Nothing where they are the same. */
export function spansBetween(film: Film, oneMs: number, otherMs: number): TakeSpan[] {
  const [fromMs, toMs] = oneMs < otherMs ? [oneMs, otherMs] : [otherMs, oneMs];
  return film.takes.flatMap((take) => {
    const from = Math.max(fromMs, take.filmStartMs);
    const to = Math.min(toMs, take.filmEndMs);
    if (to <= from) return [];
    const takeMs = (filmMs: number) => Math.round(take.startMs + filmMs - take.filmStartMs);
    return takeMs(to) > takeMs(from) ? [{ takeId: take.takeId, fromMs: takeMs(from), toMs: takeMs(to) }] : [];
  });
}

/** Where a span lies on the film; null where its take is gone or nothing of it is kept by the trims. */
export function onFilm(film: Film, { takeId, fromMs, toMs }: TakeSpan): FilmSpan | null {
  const from = filmTimeOf(film, { takeId, ms: fromMs });
  const to = filmTimeOf(film, { takeId, ms: toMs });
  return from && to && to.filmMs > from.filmMs ? { fromMs: from.filmMs, toMs: to.filmMs } : null;
}

/** In film order; those that the film does not show stand last. */
export function inFilmOrder<T extends TakeSpan>(film: Film, spans: readonly T[]): T[] {
  const startOf = (span: T) => onFilm(film, span)?.fromMs ?? film.durationMs;
  return spans.toSorted((a, b) => startOf(a) - startOf(b));
}

/** Spans of a take that overlap or touch become one. */
export function joined(spans: readonly TakeSpan[]): TakeSpan[] {
  const rising = spans.toSorted((a, b) => a.takeId.localeCompare(b.takeId) || a.fromMs - b.fromMs);
  const done: TakeSpan[] = [];
  for (const span of rising) {
    const last = done.at(-1);
    if (!last || last.takeId !== span.takeId || span.fromMs > last.toMs) done.push(span);
    else done[done.length - 1] = { ...last, toMs: Math.max(last.toMs, span.toMs) };
  }
  return done;
}

export function isSame(one: TakeSpan, other: TakeSpan): boolean {
  return one.takeId === other.takeId && one.fromMs === other.fromMs && one.toMs === other.toMs;
}

/** Whether a span lies within one of others. */
export function isWithin(span: TakeSpan, others: readonly TakeSpan[]): boolean {
  return others.some(
    ({ takeId, fromMs, toMs }) => takeId === span.takeId && fromMs <= span.fromMs && toMs >= span.toMs,
  );
}

/** Names a span in a list that is drawn. */
export function keyOf({ takeId, fromMs, toMs }: TakeSpan): string {
  return `${takeId}-${fromMs}-${toMs}`;
}

export function lengthOf(spans: readonly TakeSpan[]): number {
  return spans.reduce((sum, { fromMs, toMs }) => sum + toMs - fromMs, 0);
}
