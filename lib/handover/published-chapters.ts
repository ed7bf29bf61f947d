import { type Chapter, type ChapterStart, chaptersFrom, filmTimeOf, shortTime } from '@/lib/film';
import type { MarkerId } from '@/shared/ids';
import type { Marker } from '@/shared/markers';
import { type PublishedFilm, type PublishedTime, publishedTimeOf } from './published';
import { quoted } from './title';

type ChapterMarker = Pick<Marker, 'id' | 'takeId' | 'ms' | 'title' | 'public'>;

/** A public marker that does not stand where it was set. */
export interface ChapterNote {
  markerId: MarkerId;
  what: 'moved' | 'dropped';
  /** For the page: what became of it and why. */
  sentence: string;
}

/**
 * Chapters on the published clock, and what became of markers whose moment is not shown. Where nothing is cut
 * the chapters are those of the whole film.
 * @param openingTitle used when nothing is marked at the start
 */
export function chaptersOfPublished(
  published: PublishedFilm,
  markers: readonly ChapterMarker[],
  openingTitle: string,
): { chapters: Chapter[]; notes: ChapterNote[] } {
  const starts: ChapterStart[] = [];
  const notes: ChapterNote[] = [];
  for (const { marker, next } of withNext(published, markers)) {
    const time = publishedTimeOf(published, marker, next);
    if (time.what !== 'dropped') starts.push({ startMs: time.ms, title: marker.title });
    if (time.what !== 'kept')
      notes.push({ markerId: marker.id, what: time.what, sentence: tell(marker.title, time) });
  }
  return { chapters: chaptersFrom(starts, published.durationMs, openingTitle), notes };
}

/** Public markers in film order, each with the first one that the film shows later than it. */
function withNext(
  { film }: PublishedFilm,
  markers: readonly ChapterMarker[],
): { marker: ChapterMarker; next: ChapterMarker | null }[] {
  const placed = markers
    .filter((marker) => marker.public)
    .map((marker) => ({ marker, at: filmTimeOf(film, marker) }))
    .map(({ marker, at }) => ({ marker, shown: at?.shown, filmMs: at?.filmMs ?? film.durationMs }))
    .sort((a, b) => a.filmMs - b.filmMs);
  return placed.map(({ marker, filmMs }) => ({
    marker,
    next: placed.find((later) => later.shown && later.filmMs > filmMs)?.marker ?? null,
  }));
}

function tell(title: string, time: Exclude<PublishedTime, { what: 'kept' }>): string {
  const name = quoted(title);
  if (time.what === 'moved')
    return `${name} lies in a cut part. It moves to where the film goes on, at ${shortTime(time.ms)}.`;
  return `${name} makes no chapter: ${reasons[time.why]}.`;
}

const reasons = {
  'not in the film': 'its take is not in the film',
  trimmed: 'its moment is trimmed off the take',
  'cut up to the next': 'all of it is cut, up to the next public marker',
  'nothing after it': 'nothing is kept from there on',
} as const;
