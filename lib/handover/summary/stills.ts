import { filmTimeOf } from '@/lib/film';
import type { HandoverFacts } from '@/lib/handover/facts';
import { publishedTimeOf } from '@/lib/handover/published';
import { asSayable, sayValue } from '@/lib/readings';
import type { Marker, MarkerKind } from '@/shared/markers';
import type { FilmMoment } from '@/shared/moments';
import type { Reading } from '@/shared/readings';
import { type StillKey, stillKeySchema } from '@/shared/summary';
import { sayList, sentence } from './bases';
import { newestOutcome } from './wiring';

/** A moment that can be shown as a still, and what is written under it. */
export interface StillMoment {
  key: StillKey;
  caption: string;
  moment: FilmMoment;
  filmMs: number;
}

/**
 * All moments that may be chosen, in film order: public markers, readings and joints. What was cut out of the
 * published film is not offered: it was cut for a reason.
 */
export function stillMoments(facts: HandoverFacts): StillMoment[] {
  const { record, traces } = facts;
  const found = [
    ...record.markers.filter((marker) => marker.public).flatMap((marker) => of(facts, markerStill(marker))),
    ...record.readings.flatMap((reading) => of(facts, readingStill(reading))),
    ...traces.flatMap((trace) => {
      const newest = newestOutcome(trace);
      if (!newest || newest.takeId === null || newest.ms === null) return [];
      const caption = `The joint: ${sayList(newest.outcome.lines.find(({ role }) => role === 'joined')?.ends ?? [trace.worksheet.subject])}`;
      return of(facts, {
        key: stillKeySchema.parse(`joint:${newest.id}`),
        caption,
        moment: { takeId: newest.takeId, ms: newest.ms },
      });
    }),
  ];
  return found.sort((a, b) => a.filmMs - b.filmMs);
}

type Unplaced = Omit<StillMoment, 'filmMs'>;

function of({ published }: HandoverFacts, still: Unplaced | null): StillMoment[] {
  if (!still || publishedTimeOf(published, still.moment).what !== 'kept') return [];
  const at = filmTimeOf(published.film, still.moment);
  return at ? [{ ...still, filmMs: at.filmMs }] : [];
}

function markerStill({ id, title, takeId, ms }: Marker): Unplaced {
  return { key: stillKeySchema.parse(`marker:${id}`), caption: title, moment: { takeId, ms } };
}

function readingStill(reading: Reading): Unplaced | null {
  const { id, takeId, ms, subject } = reading;
  if (takeId === null || ms === null) return null;
  const caption = sentence(`${subject ? `${subject}: ` : ''}${sayValue(asSayable(reading))}`);
  return { key: stillKeySchema.parse(`reading:${id}`), caption, moment: { takeId, ms } };
}

/** The result, the measured total, the joint and the first diagnosis, as far as they are on film; in film order. */
export function usualStills(facts: HandoverFacts, moments: readonly StillMoment[]): StillMoment[] {
  const { record } = facts;
  const keysOf = (kind: MarkerKind) =>
    new Set(record.markers.filter((marker) => marker.kind === kind).map(({ id }) => `marker:${id}`));
  const [results, diagnoses] = [keysOf('result'), keysOf('diagnosis')];
  const totals = new Set(record.readings.filter(isTotal).map(({ id }) => `reading:${id}`));
  const chosen = [
    moments.find(({ key }) => diagnoses.has(key)),
    moments.findLast(({ key }) => key.startsWith('joint:')),
    moments.findLast(({ key }) => totals.has(key)),
    moments.findLast(({ key }) => results.has(key)),
  ].filter((moment) => moment !== undefined);
  return chosen.sort((a, b) => a.filmMs - b.filmMs);
}

function isTotal({ kind, between, basis, open }: Reading): boolean {
  const ends = between?.map((end) => end.toLocaleLowerCase('en')) ?? [];
  return (
    kind === 'resistance' && basis === 'measured' && !open && ends.includes('hot') && ends.includes('ground')
  );
}
