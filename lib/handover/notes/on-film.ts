import { filmTimeOf } from '@/lib/film';
import type { Marker, MarkerKind } from '@/shared/markers';
import type { Inline } from './blocks';
import type { Making } from './making';
import { atTime, sentence } from './say';

/** The public markers of a kind in film order, one an item: when, what, and the note. */
export function onFilm(making: Making, kind: MarkerKind, which: 'all' | 'with a note'): Inline[][] {
  const { say, time } = making;
  return publicMarkers(making)
    .filter((marker) => marker.kind === kind && (which === 'all' || hasNote(marker)))
    .map((marker) => {
      const note = hasNote(marker) ? ` ${sentence(say(marker.note ?? ''))}` : '';
      const title = say(marker.title);
      return atTime(time(marker), note === '' ? title : `${sentence(title)}${note}`);
    });
}

export function publicMarkers({ facts: { record, published } }: Making): Marker[] {
  const filmMs = (marker: Marker) => filmTimeOf(published.film, marker)?.filmMs ?? published.film.durationMs;
  return record.markers.filter((marker) => marker.public).toSorted((a, b) => filmMs(a) - filmMs(b));
}

function hasNote({ note }: Marker): boolean {
  return note !== null && note.trim() !== '';
}
