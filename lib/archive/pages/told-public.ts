import { oneLine } from '@/lib/film';
import { type PublishedFilm, publishedTimeOf } from '@/lib/handover';
import { asSayable, kindOf, sayPlace, sayUncertainty, sayValue } from '@/lib/readings';
import type { PublicJob } from '@/shared/archive-exports';
import type { TakeId } from '@/shared/ids';
import type { Marker } from '@/shared/markers';
import type { Meter, Reading } from '@/shared/readings';
import type { TraceView } from '@/shared/traces';
import type { ToldJob } from '../things';

/** All that the pages tell a job from. */
export interface GivenJob {
  told: ToldJob;
  published: PublishedFilm;
  traces: readonly TraceView[];
  meters: readonly Meter[];
}

type Pinned = { takeId: TakeId | null; ms: number | null } | null;
type TimeOf = (moment: Pinned) => number | null;

/**
 * A job in the shape in which it goes out, its words as they stand on the record.
 * @param markers those that are told
 */
export function tellJob(
  { told, published, traces, meters }: GivenJob,
  markers: readonly Marker[],
): PublicJob {
  const { job, instrument, readings, work } = told;
  const timeOf: TimeOf = (moment) => {
    if (moment === null || moment.takeId === null || moment.ms === null) return null;
    const shown = publishedTimeOf(published, { takeId: moment.takeId, ms: moment.ms });
    return shown.what === 'kept' ? shown.ms : null;
  };
  const { type, maker, model } = instrument;
  return {
    number: job.number,
    title: job.title,
    day: dayOf(told),
    instrument: { type, maker, model },
    chapters: inTime(markers.map((marker) => chapter(marker, chapterTime(published, marker)))),
    readings: inTime(readings.map((reading) => tellReading(reading, timeOf, meters))),
    traces: traces.map((view) => tellTrace(view, timeOf)),
    done: work
      .filter(({ outcome }) => outcome === 'done')
      .map(({ what, ended }) => ({ atMs: timeOf(ended), what })),
  };
}

/** The day it was filmed first; the day it came in where there is no film. */
export function dayOf({ job, takes }: ToldJob): string {
  return takes.map(({ day }) => day).sort()[0] ?? job.receivedOn;
}

/** "electric guitar, Wrenholt Two" */
export function sayInstrument({ type, maker, model }: PublicJob['instrument']): string {
  return [type, [maker, model].filter(Boolean).join(' ')].filter(Boolean).join(', ');
}

/** A chapter whose beginning is cut begins where the film goes on. */
export function chapterTime(published: PublishedFilm, marker: Marker): number | null {
  const shown = publishedTimeOf(published, marker);
  return shown.what === 'dropped' ? null : shown.ms;
}

function chapter({ kind, title, note }: Marker, atMs: number | null): PublicJob['chapters'][number] {
  return { atMs, kind, title, note: lineOrNone(note) };
}

function tellReading(
  reading: Reading,
  timeOf: TimeOf,
  meters: readonly Meter[],
): PublicJob['readings'][number] {
  const { kind, subject, between, valueText, unit, open, baseValue, basis, note, meterId } = reading;
  const ranges = meters.find(({ id }) => id === meterId)?.ranges ?? [];
  return {
    atMs: timeOf(reading),
    kind,
    subject: subject || kindOf(kind).label,
    place: sayPlace(asSayable(reading)),
    between,
    value: sayUncertainty(reading, ranges) ?? sayValue(asSayable(reading)),
    digits: valueText,
    ...{ unit, open, baseValue, basis },
    note: lineOrNone(note),
  };
}

function tellTrace(
  { worksheet, analysis, outcomes }: TraceView,
  timeOf: TimeOf,
): PublicJob['traces'][number] {
  const { subject, conductors, shield } = worksheet;
  return {
    subject,
    conductors,
    shield,
    follows: analysis.conclusions.map(({ text, basis }) => ({ text, basis })),
    joined: outcomes.map(({ takeId, ms, outcome: { title, basis, lines } }) => ({
      atMs: timeOf({ takeId, ms }),
      ...{ title, basis, lines },
    })),
  };
}

function lineOrNone(text: string | null): string | null {
  const line = text === null ? '' : oneLine(text);
  return line === '' ? null : line;
}

/** What has no time stands last. */
function inTime<T extends { atMs: number | null }>(all: readonly T[]): T[] {
  return all.toSorted((a, b) => (a.atMs ?? Infinity) - (b.atMs ?? Infinity) || 0);
}
