import { newId } from '@/db/ids';
import type { Database } from '@/db/open';
import { folders, narrationLines, outcomes, recordings, takes, traces } from '@/db/schema';
import { addMarker } from '@/lib/film/store';
import { addReading } from '@/lib/readings/store';
import { addClaim, addClient, addJob, addPart, addWorkItem, jobRow } from '@/lib/work/store';
import {
  type ClientId,
  type FolderId,
  folderIdSchema,
  type JobId,
  narrationLineIdSchema,
  outcomeIdSchema,
  recordingIdSchema,
  type TakeId,
  takeIdSchema,
  traceIdSchema,
} from '@/shared/ids';
import type { WiringOutcome } from '@/shared/wiring';
import type { ScoredJob } from './scored-set/form';

/** What became of a set in the database. */
export interface Loaded {
  /** The written key of each job, by its id. */
  keyOf: Map<string, string>;
  /** Ids of work items, parts and claims, by `key#work: words`. */
  recordIds: Map<string, string>;
}

/** Puts written jobs into a database, each with one take of film. */
export function loadSet(db: Database, jobs: readonly ScoredJob[]): Loaded {
  const loaded: Loaded = { keyOf: new Map(), recordIds: new Map() };
  db.transaction(() => {
    const folderId = newId(folderIdSchema);
    db.insert(folders).values({ id: folderId, path: '/invented', createdAt: 0 }).run();
    const clientIds = clientsOf(db, jobs);
    for (const job of jobs) loadJob(db, job, { folderId, clientIds, loaded });
  });
  return loaded;
}

interface Around {
  folderId: FolderId;
  clientIds: Map<string, ClientId>;
  loaded: Loaded;
}

function clientsOf(db: Database, jobs: readonly ScoredJob[]): Map<string, ClientId> {
  const names = new Set(jobs.flatMap(({ client }) => client ?? []));
  return new Map([...names].map((name) => [name, addClient(db, { name }).id]));
}

function loadJob(db: Database, job: ScoredJob, { folderId, clientIds, loaded }: Around): void {
  const clientId = clientIds.get(job.client ?? '');
  const { type, maker = null, model = null, features = null } = job;
  const booked = addJob(db, {
    title: job.title,
    instrument: { type, maker, model, features, serial: null, clientId: clientId ?? null },
    ...(clientId ? { client: { id: clientId } } : {}),
    receivedOn: job.on,
  });
  loaded.keyOf.set(booked.id, job.key);
  const takeId = filmOf(db, booked.id, job, folderId);
  for (const marker of job.markers) addMarker(db, booked.id, { ...marker, takeId, public: true });
  for (const reading of job.readings) addReading(db, booked.id, { ...whole(reading), takeId });
  for (const line of job.lines) {
    const place = { id: newId(narrationLineIdSchema), jobId: booked.id, takeId };
    db.insert(narrationLines)
      .values({ ...place, startMs: line.ms, endMs: line.ms + 4000, text: line.text })
      .run();
  }
  for (const trace of job.traces) loadTrace(db, booked.id, takeId, trace);
  loadRecords(db, job, booked.id, loaded);
}

/** A kick is written by its sign and the conductor on the red lead: the rest is no matter here. */
function whole(reading: ScoredJob['readings'][number]) {
  if (reading.kind !== 'polarity-kick') return reading;
  const [, red = 'red'] = /(\S+) on red/.exec(reading.subject) ?? [];
  const sign: 1 | -1 = 'value' in reading && Number(reading.value) < 0 ? -1 : 1;
  const leads = { red, black: 'the other' };
  const { ms, kind, unit, subject, basis } = reading;
  return { ms, kind, unit, subject, basis, details: { leads, steel: 'laid on' as const, row: 'slug', sign } };
}

/** One recording, seen on the day of filming, as the job's only take. */
function filmOf(db: Database, jobId: JobId, { key, on, filmed }: ScoredJob, folderId: FolderId): TakeId {
  const modifiedAt = Date.parse(`${filmed ?? on}T10:00:00Z`);
  const recordingId = newId(recordingIdSchema);
  const id = newId(takeIdSchema);
  db.insert(recordings)
    .values({
      ...{ id: recordingId, folderId, path: `${key}.mp4`, sizeBytes: 1, modifiedAt, state: 'ready' },
      createdAt: modifiedAt,
    })
    .run();
  db.insert(takes).values({ id, jobId, recordingId, createdAt: modifiedAt }).run();
  return id;
}

/** The worksheet and what was joined, as rows: what follows from the readings is no matter here. */
function loadTrace(db: Database, jobId: JobId, takeId: TakeId, trace: ScoredJob['traces'][number]): void {
  const { subject, conductors, joint, rows = ['slug', 'screw'] } = trace;
  const traceId = newId(traceIdSchema);
  db.insert(traces)
    .values({
      ...{ id: traceId, jobId, subject, conductors, rows, shield: true, frame: false, assumed: [] },
      ...{ planId: joint ? 'as written' : null, createdAt: Date.now() },
    })
    .run();
  if (!joint) return;
  const place = { takeId, ms: joint.ms };
  db.insert(outcomes)
    .values({
      ...{ id: newId(outcomeIdSchema), jobId, traceId, ...place, createdAt: Date.now() },
      outcome: outcomeOf(subject, joint, place),
    })
    .run();
}

function outcomeOf(
  subject: string,
  { title, lines }: NonNullable<ScoredJob['traces'][number]['joint']>,
  moment: { takeId: TakeId; ms: number },
): WiringOutcome {
  const endsOf = (role: string) => lines.flatMap((line) => (line.role === role ? line.ends : []));
  return {
    ...{ subject, plan: 'as written', title, lines, moment },
    ...{ hot: endsOf('hot'), ground: endsOf('ground'), insulated: endsOf('insulated') },
    shield: endsOf('ground').includes('shield') ? 'ground' : 'none',
    basis: lines.some(({ basis }) => basis === 'assumed') ? 'assumed' : 'measured',
  };
}

function loadRecords(db: Database, job: ScoredJob, jobId: JobId, { recordIds }: Loaded): void {
  for (const item of job.work) {
    recordIds.set(`${job.key}#work: ${item.what}`, addWorkItem(db, jobId, item).item.id);
  }
  for (const part of job.parts) {
    recordIds.set(`${job.key}#part: ${part.what}`, addPart(db, jobId, part).part.id);
  }
  const { instrumentId } = jobRow(db, jobId);
  for (const claim of job.claims) {
    const added = addClaim(db, instrumentId, { ...claim, jobId });
    recordIds.set(`${job.key}#claim: ${claim.value}`, added.claim.id);
  }
}
