import { and, eq, inArray, isNull, sql } from 'drizzle-orm';
import type { SQLiteTable } from 'drizzle-orm/sqlite-core';
import type { OlderJob, OlderTrace } from '@/db/demo/demo-types';
import { olderClients, olderJobs } from '@/db/demo/older-jobs';
import type { Database } from '@/db/open';
import {
  changes,
  claims,
  clients,
  instruments,
  jobs,
  outcomes,
  parts,
  readings,
  settings,
  traces,
  workItems,
} from '@/db/schema';
import { addReading } from '@/lib/readings/store';
import { addOutcome, addTrace } from '@/lib/wiring/store';
import { type ClientId, type JobId, jobIdSchema, type TraceId } from '@/shared/ids';
import type { NewJob } from '@/shared/jobs';
import type { NewReading } from '@/shared/readings';
import { addClaim } from './instrument-store';
import { addPart, addWorkItem } from './item-store';
import { addJob, patchJob } from './job-store';
import { looseEndsOf } from './record-store';
import { jobRow } from './row-store';

const olderKey = 'olderDemonstration';
const minuteMs = 60_000;

/**
 * Loads the older demonstration jobs, from the years before the camera; where they are loaded already, finds them.
 * @returns how many of them there are, those in the bin apart
 */
export function loadOlderJobs(db: Database): number {
  return db.transaction(() => {
    const ids = olderJobIds(db);
    const here = db
      .select({ id: jobs.id })
      .from(jobs)
      .where(and(inArray(jobs.id, ids), isNull(jobs.deletedAt)))
      .all().length;
    if (here > 0) return here;
    const loaded: Loaded = { clients: new Map(), jobs: new Map(), traces: new Map() };
    for (const job of olderJobs) loadJob(db, job, loaded);
    keepIds(db, [...ids, ...loaded.jobs.values()]);
    return olderJobs.length;
  });
}

/** The older jobs by their ids, to tell them from the demonstration job; some may be in the bin or gone. */
export function olderJobIds(db: Database): JobId[] {
  const row = db.select().from(settings).where(eq(settings.key, olderKey)).get();
  return row ? jobIdSchema.array().parse(row.value) : [];
}

function keepIds(db: Database, value: readonly JobId[]): void {
  db.insert(settings)
    .values({ key: olderKey, value })
    .onConflictDoUpdate({ target: settings.key, set: { value } })
    .run();
}

/** What came before, by its name: jobs by title, worksheets by the name they are taken over by. */
interface Loaded {
  clients: Map<string, ClientId>;
  jobs: Map<string, JobId>;
  traces: Map<string, TraceId>;
}

/** Dates what was written down. */
type Note = (table: SQLiteTable, id: string) => void;

function loadJob(db: Database, older: OlderJob, loaded: Loaded): void {
  const { id } = addJob(db, newJob(db, older, loaded), true);
  const { instrumentId, clientId } = jobRow(db, id);
  const note = noteFrom(db, `${older.receivedOn}T12:00:00Z`);
  if (!('ofJob' in older.instrument)) note(instruments, instrumentId);
  if (clientId && !loaded.clients.has(older.client)) {
    note(clients, clientId);
    loaded.clients.set(older.client, clientId);
  }
  loaded.jobs.set(older.title, id);
  for (const claim of older.claims ?? [])
    note(claims, addClaim(db, instrumentId, { ...claim, jobId: id }).claim.id);
  for (const item of older.work) note(workItems, addWorkItem(db, id, item).item.id);
  for (const part of older.parts ?? []) note(parts, addPart(db, id, part).part.id);
  noteReadings(db, id, older.readings ?? [], note);
  for (const trace of older.traces ?? []) loadTrace(db, id, trace, loaded, note);
  handOver(db, id, older);
}

/** Things of a job are noted a minute apart, so that they keep their order. */
function noteFrom(db: Database, from: string): Note {
  let at = Date.parse(from);
  return (table, id) => {
    db.run(sql`update ${table} set created_at = ${at} where id = ${id}`);
    at += minuteMs;
  };
}

function newJob(db: Database, older: OlderJob, { clients: known, jobs: before }: Loaded): NewJob {
  const { title, receivedOn, cameWith, instrument, client } = older;
  const clientId = known.get(client);
  const { phone, ...told } = named(
    olderClients.find(({ name }) => name === client),
    client,
  );
  return {
    ...{ title, receivedOn, cameWith },
    client: clientId ? { id: clientId } : { ...told, reach: phone },
    instrument:
      'ofJob' in instrument
        ? { id: jobRow(db, named(before.get(instrument.ofJob), instrument.ofJob)).instrumentId }
        : instrument,
  };
}

function noteReadings(db: Database, jobId: JobId, wanted: readonly NewReading[], note: Note): void {
  for (const reading of wanted) note(readings, addReading(db, jobId, reading).reading.id);
}

/** What was joined, and what was read afterwards, in that order: a total before the joint would be no check of it. */
function loadTrace(db: Database, jobId: JobId, older: OlderTrace, loaded: Loaded, note: Note): void {
  const { subject, conductors, rows, name, takenFrom, plan, total } = older;
  const from = takenFrom && { from: named(loaded.traces.get(takenFrom), takenFrom) };
  const { trace } = addTrace(db, jobId, { subject, conductors, rows, shield: true, frame: false, ...from });
  const { id } = trace.worksheet;
  note(traces, id);
  if (name) loaded.traces.set(name, id);
  noteReadings(db, jobId, older.readings, note);
  if (plan) note(outcomes, addOutcome(db, id, { planId: plan, takeId: null, ms: null }).outcome.id);
  if (total) noteReadings(db, jobId, [total], note);
}

/** Gone from the workshop on its day, with what was loose looked at; undo must not take it apart. */
function handOver(db: Database, id: JobId, older: OlderJob): void {
  const { state, receivedOn, promisedOn, collectedOn } = older;
  const createdAt = Date.parse(`${receivedOn}T12:00:00Z`);
  const updatedAt = Date.parse(`${collectedOn}T16:00:00Z`);
  db.update(jobs).set({ createdAt }).where(eq(jobs.id, id)).run();
  const lookedAt = looseEndsOf(db, id).map((loose) => loose.id);
  // The promise comes with the end: until then its day would count as gone by.
  patchJob(db, id, { state, promisedOn, collectedOn, lookedAt });
  const { readyLook } = jobRow(db, id);
  db.update(jobs)
    .set({ updatedAt, readyLook: readyLook && { ...readyLook, at: updatedAt } })
    .where(eq(jobs.id, id))
    .run();
  db.delete(changes).where(eq(changes.jobId, id)).run();
}

/** @throws Error where the data of the older jobs name something that is not among them */
function named<T>(known: T | undefined, name: string): T {
  if (known === undefined) throw new Error(`Nothing among the older jobs is called “${name}”.`);
  return known;
}
