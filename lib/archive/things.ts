import type { Film } from '@/lib/film';
import { kindOf, sayReading } from '@/lib/readings';
import { sameSubject } from '@/lib/wiring';
import type { FindableKind } from '@/shared/archive';
import type { Claim } from '@/shared/claims';
import type { Client } from '@/shared/clients';
import type { TakeId } from '@/shared/ids';
import type { Instrument, Job } from '@/shared/jobs';
import type { Marker, MarkerKind } from '@/shared/markers';
import { type FilmMoment, momentOf } from '@/shared/moments';
import type { Basis, Reading, ReadingKindId } from '@/shared/readings';
import type { OutcomeRecord, WorksheetRecord } from '@/shared/traces';
import type { Part, WorkItem } from '@/shared/work';
import { thingNumber } from './numbers';

/** The record of a job, spoken lines apart, as the archive reads it. */
export interface ToldJob {
  job: Pick<Job, 'id' | 'number' | 'title' | 'receivedOn' | 'place' | 'cameWith'>;
  instrument: Pick<Instrument, 'id' | 'type' | 'maker' | 'model' | 'serial' | 'features'>;
  client: Pick<Client, 'id' | 'name' | 'alias'> | null;
  /** Takes with the day they were filmed, and whether there is a picture. */
  takes: readonly { id: TakeId; day: string; hasPicture: boolean }[];
  film: Film;
  markers: readonly Marker[];
  readings: readonly Reading[];
  traces: readonly WorksheetRecord[];
  outcomes: readonly OutcomeRecord[];
  work: readonly WorkItem[];
  parts: readonly Part[];
  claims: readonly Claim[];
}

/** Something that can be found, with the texts it is found by: the title first. */
export interface Thing {
  kind: FindableKind;
  recordId: string;
  moment: FilmMoment | null;
  title: string;
  texts: string[];
  markerKind: MarkerKind | null;
  basis: Basis | null;
  readingKind: ReadingKindId | null;
  /** In the base unit of the reading's kind. */
  baseValue: number | null;
}

const plain = { moment: null, markerKind: null, basis: null, readingKind: null, baseValue: null };

/** All that can be found of a job's record, in a lasting order. */
export function thingsOf(told: ToldJob): Thing[] {
  return [
    ticketThing(told),
    instrumentThing(told),
    ...told.markers.map(markerThing),
    ...told.readings.map(readingThing),
    ...told.traces.map((trace) => traceThing(trace, told.readings)),
    ...told.outcomes.map(jointThing),
    ...told.work.map(workThing),
    ...told.parts.map(partThing),
    ...told.claims.map(claimThing),
  ];
}

/** The same by their numbers in the index. */
export function numberedThings(told: ToldJob): Map<number, Thing> {
  const counts = new Map<FindableKind, number>();
  return new Map(
    thingsOf(told).map((thing) => {
      const nth = counts.get(thing.kind) ?? 0;
      counts.set(thing.kind, nth + 1);
      return [thingNumber(told.job.number, thing.kind, nth), thing];
    }),
  );
}

function ticketThing({ job, client }: ToldJob): Thing {
  const number = String(job.number).padStart(4, '0');
  const whose = client ? [client.name, client.alias] : [];
  const texts = words([job.title, ...whose, job.place, ...job.cameWith, number]);
  return { ...plain, kind: 'ticket', recordId: job.id, title: job.title, texts };
}

function instrumentThing({ instrument }: ToldJob): Thing {
  const { type, maker, model, serial, features } = instrument;
  const title = words([type, maker, model]).join(', ');
  return {
    ...plain,
    kind: 'instrument',
    recordId: instrument.id,
    title,
    texts: words([title, features, serial]),
  };
}

function markerThing({ id, kind, title, note, takeId, ms }: Marker): Thing {
  return {
    ...plain,
    kind: 'marker',
    recordId: id,
    moment: { takeId, ms },
    title,
    texts: words([title, note]),
    markerKind: kind,
    // A marker says what was done and seen; how a result is known stands with its readings.
  };
}

function readingThing(reading: Reading): Thing {
  const { id, kind, basis, baseValue, note } = reading;
  const title = sayReading(reading);
  return {
    ...plain,
    kind: 'reading',
    recordId: id,
    moment: momentOf(reading),
    title,
    texts: words([title, kindOf(kind).label, note]),
    basis,
    readingKind: kind,
    baseValue,
  };
}

function traceThing(trace: WorksheetRecord, readings: readonly Reading[]): Thing {
  const { id, subject, conductors, shield, rows, assumed } = trace;
  const title = `Trace of the ${subject}`;
  const cable = `${conductors.length}-conductor: ${conductors.join(', ')}${shield ? ', shield' : ''}`;
  return {
    ...plain,
    kind: 'trace',
    recordId: id,
    moment: firstMomentOf(subject, readings),
    title,
    texts: words([title, cable, rows.join(', '), ...assumed.map(({ ends }) => ends.join(' – '))]),
    basis: assumed.length > 0 ? 'assumed' : null,
  };
}

/** A worksheet has no moment of its own: it begins with its first reading on film. */
export function firstMomentOf(subject: string, readings: readonly Reading[]): FilmMoment | null {
  const own = readings.find((each) => each.takeId !== null && sameSubject(each.subject, subject));
  return own ? momentOf(own) : null;
}

function jointThing(joint: OutcomeRecord): Thing {
  const { id, outcome } = joint;
  const title = `${outcome.subject}: ${outcome.title}`;
  const lines = outcome.lines.map(({ role, ends, goesTo }) => `${role}: ${ends.join(' + ')} ${goesTo}`);
  return {
    ...plain,
    kind: 'joint',
    recordId: id,
    moment: momentOf(joint),
    title,
    texts: words([title, ...lines]),
    basis: outcome.basis,
  };
}

function workThing({ id, what, origin, outcome, charge, why, begun, ended }: WorkItem): Thing {
  const told = words([origin, outcome, charge]).join(', ');
  return {
    ...plain,
    kind: 'work',
    recordId: id,
    moment: ended ?? begun,
    title: what,
    texts: words([what, why, told]),
  };
}

function partThing({ id, what, deed, source, fate, doubt, doubtBasis, evidence, moment }: Part): Thing {
  const told = words([deed, source && `from ${source}`, fate]).join(', ');
  const texts = words([what, told, doubt, evidence]);
  return {
    ...plain,
    kind: 'part',
    recordId: id,
    moment,
    title: what,
    texts,
    basis: doubt ? doubtBasis : null,
  };
}

function claimThing({ id, kind, subject, value, basis, evidence, moment, sure }: Claim): Thing {
  const about = subject ?? (kind === 'other' ? '' : kind);
  const title = about ? `${about}: ${value}` : value;
  return {
    ...plain,
    kind: 'claim',
    recordId: id,
    moment,
    title,
    texts: words([title, kind, evidence, sure]),
    basis,
  };
}

function words(texts: readonly (string | null | undefined | false)[]): string[] {
  return texts.flatMap((text) => (text ? [text] : []));
}
