import { type Film, filmTimeOf, type Moment } from '@/lib/film';
import { sayReading } from '@/lib/readings';
import type { CutSettings, TakeSpan } from '@/shared/cut';
import type { CutCover, CutPlanSpec } from '@/shared/cut-engine';
import type { TakeId } from '@/shared/ids';
import type { Marker } from '@/shared/markers';
import type { Proposal } from '@/shared/narration-record';
import { DomainError } from '@/shared/problem';
import type { Reading } from '@/shared/readings';
import { cutSpecOf } from './cut-spec';

/** A line of the running sheet that can be saved for a message. */
export type SavedLine = { type: 'marker'; marker: Marker } | { type: 'reading'; reading: Reading };

export const mostClipMs = 60_000;
/** What a clip shows around a point, where no length is asked for: work goes on, a meter is read at once. */
const usual = {
  marker: { beforeMs: 2000, afterMs: 8000 },
  reading: { beforeMs: 3000, afterMs: 3000 },
} as const;

/** The line has no moment on the film that could be shown. */
export class MomentGoneError extends DomainError {
  constructor(title: string, detail: string) {
    super('gone', title, detail);
  }
}

/** "Neck pickup reads open"; "neck pickup, red – white: 4.08 kΩ (measured)". */
export function captionOf(line: SavedLine): string {
  if (line.type === 'marker') return line.marker.title;
  return `${sayReading(line.reading)} (${line.reading.basis})`;
}

/** @throws MomentGoneError where the line has no moment, or the film does not show it */
export function momentOf(film: Film, line: SavedLine): Moment {
  const { takeId, ms } = line.type === 'marker' ? line.marker : line.reading;
  if (takeId === null || ms === null)
    throw new MomentGoneError(
      'This reading has no moment on the film.',
      'Go to the picture that shows it, select the reading and press “Move here”.',
    );
  if (filmTimeOf(film, { takeId, ms })?.shown) return { takeId, ms };
  throw new MomentGoneError(
    'The film does not show this moment.',
    'It is cut off by the take’s trim: move the trim, or move the line to a moment that is shown.',
  );
}

/**
 * The part of the take that a clip shows: a marker's own span, otherwise some seconds around the moment; within
 * the take's trims and never longer than a minute.
 * @param lengthMs length that is asked for; null for the usual one
 */
export function clipSpanOf(film: Film, line: SavedLine, lengthMs: number | null): TakeSpan {
  const { takeId, ms } = momentOf(film, line);
  const take = film.takes.find((candidate) => candidate.takeId === takeId) ?? { startMs: 0, endMs: 0 };
  const { beforeMs, afterMs } = aroundMoment(line, lengthMs);
  const fromMs = Math.max(take.startMs, ms - beforeMs);
  const toMs = Math.min(take.endMs, ms + afterMs, fromMs + mostClipMs);
  if (toMs > fromMs) return { takeId, fromMs, toMs };
  throw new MomentGoneError(
    'The film shows nothing from this moment on.',
    'Its take ends here: move the line to an earlier moment, or move the take’s trim.',
  );
}

function aroundMoment(line: SavedLine, lengthMs: number | null): { beforeMs: number; afterMs: number } {
  const ownMs = line.type === 'marker' && line.marker.endMs !== null ? line.marker.endMs - line.marker.ms : 0;
  const around = ownMs > 0 ? { beforeMs: 0, afterMs: ownMs } : usual[line.type];
  if (lengthMs === null) return around;
  // However short the clip is, its moment lies in it.
  const beforeMs = Math.min(around.beforeMs, Math.floor(lengthMs / 2));
  return { beforeMs, afterMs: lengthMs - beforeMs };
}

interface ClipOf {
  film: Film;
  span: TakeSpan;
  caption: string;
}

/**
 * What the engine is told to write a clip: cut on the very picture, muted and covered as the public cut is, because
 * a message leaves the workshop too.
 */
export function clipSpecOf(
  settings: CutSettings,
  heard: readonly Proposal[],
  pathOf: (takeId: TakeId) => string,
  { film, span, caption }: ClipOf,
): CutPlanSpec {
  const filmStartMs = filmTimeOf(film, { takeId: span.takeId, ms: span.fromMs })?.filmMs ?? 0;
  const piece = { ...span, filmStartMs, startMs: 0 };
  return cutSpecOf(
    { ...settings, cutting: 'exact', lufs: null },
    { durationMs: span.toMs - span.fromMs, pieces: [piece], film },
    heard,
    pathOf,
    { title: caption, chapters: [] },
  );
}

/** What is covered in the picture of a moment. */
export function coversAt({ covers }: CutSettings, { takeId, ms }: Moment): CutCover[] {
  return covers
    .filter((cover) => cover.takeId === takeId && cover.fromMs <= ms && ms < cover.toMs)
    .map(({ takeId: _, ...cover }) => cover);
}
