import { filmTimeOf } from '@/lib/film';
import type { HandoverFacts } from '@/lib/handover/facts';
import { sayPlace } from '@/lib/readings';
import type { Reading } from '@/shared/readings';

/** All readings of one thing, taken in one place and one way. */
export interface ReadingGroup {
  /** Earliest first. */
  readings: [Reading, ...Reading[]];
  /** False where some are pinned to the film and others are not: which came first is not known. */
  ordered: boolean;
}

/**
 * Readings by what was measured, where, and how the instrument stood. "neck pickup, old joint" is the neck pickup:
 * what follows a comma says more about the moment than about the thing.
 */
export function groupReadings({ record, published }: HandoverFacts): ReadingGroup[] {
  const groups = new Map<string, [Reading, ...Reading[]]>();
  for (const reading of record.readings) {
    const key = JSON.stringify([reading.kind, plainSubject(reading), placeOf(reading)]);
    const group = groups.get(key);
    if (group) group.push(reading);
    else groups.set(key, [reading]);
  }
  const filmMs = ({ takeId, ms }: Reading) =>
    takeId === null || ms === null ? null : (filmTimeOf(published.film, { takeId, ms })?.filmMs ?? null);
  return [...groups.values()].map((readings) => inOrder(readings, filmMs));
}

export function subjectOf({ subject }: Pick<Reading, 'subject'>): string {
  return subject.split(',')[0]?.trim() ?? '';
}

/** "Neck" is the neck pickup. */
function plainSubject(reading: Reading): string {
  return subjectOf(reading)
    .toLocaleLowerCase('en')
    .replace(/\s*\bpickup\b/, '')
    .trim();
}

/** Temperature is no place: a coil is the same coil on a warm day. */
function placeOf({ kind, between, details }: Reading): string {
  const { celsius: _, ...standing } = details;
  const ends = between ? [between[0], between[1]].sort() : null;
  return sayPlace({ kind, between: ends && [ends[0] ?? '', ends[1] ?? ''], details: standing });
}

/** By the film where all are on it; as they were written down where none is. */
function inOrder(
  readings: [Reading, ...Reading[]],
  filmMs: (reading: Reading) => number | null,
): ReadingGroup {
  const pinned = readings.filter((reading) => filmMs(reading) !== null).length;
  if (pinned === readings.length) readings.sort((a, b) => (filmMs(a) ?? 0) - (filmMs(b) ?? 0));
  return { readings, ordered: pinned === 0 || pinned === readings.length };
}
