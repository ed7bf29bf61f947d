import { and, count, desc, eq, inArray, isNull, lt, max } from 'drizzle-orm';
import { edit, GoneError, listChanges } from '@/db/changes';
import { newId } from '@/db/ids';
import type { Database } from '@/db/open';
import {
  changes,
  clients,
  harnesses,
  instruments,
  jobs,
  markers,
  narrationLines,
  outcomes,
  proposals,
  readings,
  takes,
  traces,
} from '@/db/schema';
import { layOut } from '@/lib/film';
import { markersOf, onClock, takesOf, takesOfJobs } from '@/lib/film/store';
import { noticeMissingOf } from '@/lib/media/store';
import { narrationStamp } from '@/lib/narration/store';
import { listMeters, readingsOf } from '@/lib/readings/store';
import { activeTasksOf } from '@/lib/tasks/store';
import { outcomesOfJob, worksheetsOf } from '@/lib/wiring/store';
import { type ChangeId, clientIdSchema, instrumentIdSchema, type JobId, jobIdSchema } from '@/shared/ids';
import type { Client, Instrument, Job, JobPatch, JobRecord, NewJob, Ticket } from '@/shared/jobs';
import type { Take } from '@/shared/takes';

type JobRow = typeof jobs.$inferSelect;

/** How long a deleted job lies in the bin. */
const binMs = 30 * 24 * 3_600_000;
const stillsOnTicket = 6;
/** How a client is called in public texts until the repairer chooses other words. */
const usualAlias = 'a client';

/** All jobs outside the bin, the one touched last first. */
export function listTickets(db: Database): Ticket[] {
  const rows = db
    .select({ job: jobs, instrument: instruments, client: clients })
    .from(jobs)
    .innerJoin(instruments, eq(instruments.id, jobs.instrumentId))
    .leftJoin(clients, eq(clients.id, jobs.clientId))
    .where(isNull(jobs.deletedAt))
    .orderBy(desc(jobs.updatedAt), desc(jobs.number))
    .all();
  const films = takesOfJobs(
    db,
    rows.map((row) => row.job.id),
  );
  const markerCounts = countByJob(db, markers);
  const readingCounts = countByJob(db, readings);
  return rows.map(({ job, instrument, client }) => {
    const film = films.get(job.id) ?? [];
    return {
      ...asJob(job),
      instrument: asInstrument(instrument),
      client: client && asClient(client),
      takes: film.length,
      filmMs: layOut(film.map(onClock)).durationMs,
      markers: markerCounts.get(job.id) ?? 0,
      readings: readingCounts.get(job.id) ?? 0,
      stills: stillsAlong(film),
    };
  });
}

/** The whole record of a job. */
export function getJobRecord(db: Database, id: JobId): JobRecord {
  const job = jobRow(db, id);
  noticeMissingOf(db, id);
  const instrument = db.select().from(instruments).where(eq(instruments.id, job.instrumentId)).get();
  if (!instrument) throw new GoneError('instrument');
  const client = job.clientId
    ? db.select().from(clients).where(eq(clients.id, job.clientId)).get()
    : undefined;
  const steps = listChanges(db, id);
  return {
    job: asJob(job),
    instrument: asInstrument(instrument),
    client: client ? asClient(client) : null,
    takes: takesOf(db, id),
    markers: markersOf(db, id),
    readings: readingsOf(db, id),
    meters: listMeters(db),
    traces: worksheetsOf(db, id),
    outcomes: outcomesOfJob(db, id),
    narration: narrationStamp(db, id),
    tasks: activeTasksOf(db, id),
    undo: steps.find((step) => !step.undone) ?? null,
    redo: steps.filter((step) => step.undone).at(-1) ?? null,
  };
}

/** Books a job in. Making it is no step that undo takes back: a job is deleted to the bin instead. */
export function addJob(db: Database, wanted: NewJob, demo = false): Job {
  const now = Date.now();
  const instrument = {
    id: newId(instrumentIdSchema),
    maker: null,
    model: null,
    serial: null,
    ...wanted.instrument,
    createdAt: now,
  };
  const client = wanted.client && newClient(wanted.client);
  const job: JobRow = {
    id: newId(jobIdSchema),
    number: nextNumber(db),
    title: wanted.title,
    clientId: client?.id ?? null,
    instrumentId: instrument.id,
    demo,
    createdAt: now,
    updatedAt: now,
    deletedAt: null,
  };
  db.transaction((tx) => {
    tx.insert(instruments).values(instrument).run();
    if (client) tx.insert(clients).values(client).run();
    tx.insert(jobs).values(job).run();
  });
  return asJob(job);
}

export function patchJob(db: Database, id: JobId, patch: JobPatch): ChangeId {
  const job = jobRow(db, id);
  return edit(db, id, patch.title === undefined ? 'ticket changed' : 'job named', (e) => {
    if (patch.title !== undefined) e.update('jobs', id, { title: patch.title });
    if (patch.instrument) e.update('instruments', job.instrumentId, patch.instrument);
    if (patch.client === null && job.clientId) e.update('jobs', id, { clientId: null });
    if (patch.client && job.clientId) e.update('clients', job.clientId, patch.client);
    if (patch.client && !job.clientId) {
      const client = newClient(patch.client);
      e.insert('clients', client);
      e.update('jobs', id, { clientId: client.id });
    }
  }).change;
}

/** Puts a job into the bin. The change can be undone while it lies there; recordings are untouched. */
export function deleteJob(db: Database, id: JobId): ChangeId {
  jobRow(db, id);
  return edit(db, id, 'job deleted', (e) => e.update('jobs', id, { deletedAt: Date.now() })).change;
}

/** Jobs in the bin, the one deleted last first. */
export function listBin(db: Database): Job[] {
  return db
    .select()
    .from(jobs)
    .orderBy(desc(jobs.deletedAt))
    .all()
    .filter((job) => job.deletedAt !== null)
    .map(asJob);
}

export function restoreJob(db: Database, id: JobId): ChangeId {
  jobRow(db, id);
  return edit(db, id, 'job taken out of the bin', (e) => e.update('jobs', id, { deletedAt: null })).change;
}

/** Clears the bin of jobs that have lain in it for 30 days: the record goes, the recordings stay. */
export function clearOldBin(db: Database, now: number): number {
  const old = db
    .select({ id: jobs.id })
    .from(jobs)
    .where(lt(jobs.deletedAt, now - binMs))
    .all()
    .map((job) => job.id);
  if (old.length === 0) return 0;
  db.transaction((tx) => {
    for (const table of [
      proposals,
      narrationLines,
      harnesses,
      outcomes,
      traces,
      markers,
      readings,
      takes,
      changes,
    ])
      tx.delete(table).where(inArray(table.jobId, old)).run();
    tx.delete(jobs).where(inArray(jobs.id, old)).run();
  });
  return old.length;
}

/** Throws where the job is not there. A job in the bin counts: its change can still be undone. */
export function jobRow(db: Database, id: JobId): JobRow {
  const row = db
    .select()
    .from(jobs)
    .where(and(eq(jobs.id, id)))
    .get();
  if (!row) throw new GoneError('job');
  return row;
}

function nextNumber(db: Database): number {
  return (
    (db
      .select({ newest: max(jobs.number) })
      .from(jobs)
      .get()?.newest ?? 0) + 1
  );
}

function newClient(wanted: { name?: string; alias?: string | undefined }) {
  return {
    id: newId(clientIdSchema),
    name: wanted.name ?? '',
    alias: wanted.alias ?? usualAlias,
    createdAt: Date.now(),
  };
}

function countByJob(db: Database, table: typeof markers | typeof readings): Map<JobId, number> {
  return new Map(
    db
      .select({ jobId: table.jobId, rows: count() })
      .from(table)
      .groupBy(table.jobId)
      .all()
      .map((row) => [row.jobId, row.rows]),
  );
}

/** A few stills spread over the film. */
function stillsAlong(film: readonly Take[]): string[] {
  const all = film.flatMap((take) =>
    take.stills.map((ms) => `/api/takes/${take.id}/still?ms=${ms}&size=strip`),
  );
  const every = Math.max(1, all.length / stillsOnTicket);
  return Array.from(
    { length: Math.min(stillsOnTicket, all.length) },
    (_, index) => all[Math.floor(index * every)] ?? [],
  ).flat();
}

export function asJob({ clientId: _, instrumentId: __, ...job }: JobRow): Job {
  return job;
}

function asInstrument({ createdAt: _, ...instrument }: typeof instruments.$inferSelect): Instrument {
  return instrument;
}

function asClient({ createdAt: _, ...client }: typeof clients.$inferSelect): Client {
  return client;
}
