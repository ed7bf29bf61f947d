import type { Marker } from '@/shared/markers';
import { type Film, filmTimeOf } from './clock';

/** A chapter on the film's clock. */
export interface Chapter {
  startMs: number;
  endMs: number;
  title: string;
}

/** Where a chapter begins; it lasts until the next one or the film's end. */
export interface ChapterStart {
  startMs: number;
  title: string;
}

/** Markers this close to the start open the film themselves; otherwise an opening chapter is put before them. */
const openingSlackMs = 3_000;

/**
 * Chapters from the public markers of the whole film. Markers that a trim has cut away make none.
 * @param openingTitle used when nothing is marked at the start
 */
export function chaptersOf(film: Film, markers: readonly Marker[], openingTitle: string): Chapter[] {
  const starts = markers
    .filter((marker) => marker.public)
    .flatMap((marker) => {
      const at = filmTimeOf(film, marker);
      return at?.shown ? [{ startMs: at.filmMs, title: marker.title }] : [];
    });
  return chaptersFrom(starts, film.durationMs, openingTitle);
}

/**
 * Chapters from where they begin, in any order: the first at 0, each rising by at least a second (the plain
 * list tells whole seconds only), so starts within one second share a chapter. Starts at or after the film's
 * end make none.
 * @param openingTitle used when nothing begins near the start
 */
export function chaptersFrom(
  starts: readonly ChapterStart[],
  durationMs: number,
  openingTitle: string,
): Chapter[] {
  const rising = starts
    .filter((start) => start.startMs < durationMs)
    .map((start) => ({ startMs: start.startMs, title: oneLine(start.title) }))
    .sort((a, b) => a.startMs - b.startMs);
  const first = rising[0];
  if (!first) return [];
  if (first.startMs <= openingSlackMs) first.startMs = 0;
  else rising.unshift({ startMs: 0, title: oneLine(openingTitle) });
  return withEnds(joinWithinASecond(rising), durationMs);
}

/**
 * A title that can stand on one line of any format: line ends and control characters become spaces; halves of
 * broken letters and the two code points that XML 1.0 (section 2.2) shuts out become U+FFFD.
 */
export function oneLine(title: string): string {
  return title
    .replace(/[\p{Surrogate}\uFFFE\uFFFF]/gu, '\uFFFD')
    .replace(/[\s\p{Control}]+/gu, ' ')
    .trim();
}

/** Each chapter lasts until the next, the last until the film's end. */
export function withEnds(starts: readonly ChapterStart[], filmEndMs: number): Chapter[] {
  return starts.map((start, index) => ({ ...start, endMs: starts[index + 1]?.startMs ?? filmEndMs }));
}

function joinWithinASecond(starts: readonly ChapterStart[]): ChapterStart[] {
  const joined: ChapterStart[] = [];
  for (const start of starts) {
    const last = joined.at(-1);
    if (last && wholeSeconds(start.startMs) === wholeSeconds(last.startMs)) last.title += ` · ${start.title}`;
    else joined.push({ ...start });
  }
  return joined;
}

function wholeSeconds(ms: number): number {
  return Math.floor(ms / 1000);
}
