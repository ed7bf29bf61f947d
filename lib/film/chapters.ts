import type { Marker } from '@/shared/markers';
import { type Film, filmTimeOf } from './clock';

/** A chapter on the film's clock. */
export interface Chapter {
  startMs: number;
  endMs: number;
  title: string;
}

/** Markers this close to the start open the film themselves; otherwise an opening chapter is put before them. */
const openingSlackMs = 3_000;

/**
 * Chapters from the public markers: the first at 0, each rising by at least a second (the plain list tells
 * whole seconds only), so markers within one second share a chapter. Markers that a trim has cut away make none.
 * @param openingTitle used when nothing is marked at the start
 */
export function chaptersOf(film: Film, markers: readonly Marker[], openingTitle: string): Chapter[] {
  if (film.durationMs === 0) return [];
  const starts = markers
    .filter((marker) => marker.public)
    .flatMap((marker) => {
      const at = filmTimeOf(film, marker);
      return at?.shown && at.filmMs < film.durationMs
        ? [{ startMs: at.filmMs, title: oneLine(marker.title) }]
        : [];
    })
    .sort((a, b) => a.startMs - b.startMs);
  if (starts.length === 0) return [];
  const first = starts[0];
  if (first && first.startMs <= openingSlackMs) first.startMs = 0;
  else starts.unshift({ startMs: 0, title: oneLine(openingTitle) });
  return withEnds(joinWithinASecond(starts), film.durationMs);
}

function joinWithinASecond(starts: readonly { startMs: number; title: string }[]) {
  const joined: { startMs: number; title: string }[] = [];
  for (const start of starts) {
    const last = joined.at(-1);
    if (last && wholeSeconds(start.startMs) === wholeSeconds(last.startMs)) last.title += ` · ${start.title}`;
    else joined.push({ ...start });
  }
  return joined;
}

function withEnds(starts: readonly { startMs: number; title: string }[], filmEndMs: number): Chapter[] {
  return starts.map((start, index) => ({ ...start, endMs: starts[index + 1]?.startMs ?? filmEndMs }));
}

function wholeSeconds(ms: number): number {
  return Math.floor(ms / 1000);
}

function oneLine(title: string): string {
  return title.replace(/\s+/g, ' ').trim();
}
