import { desc, eq, inArray, isNotNull, lt, max } from 'drizzle-orm';
import { edit, GoneError } from '@/db/changes';
import { newId } from '@/db/ids';
import type { Database } from '@/db/open';
import {
  changes,
  claims,
  clients,
  harnesses,
  instruments,
  jobs,
  markers,
  narrationLines,
  outcomes,
  parts,
  proposals,
  readings,
  takes,
  traces,
  workItems,
} from '@/db/schema';
import {
  type ChangeId,
  type ClientId,
  clientIdSchema,
  type InstrumentId,
  instrumentIdSchema,
  type JobId,
  jobIdSchema,
} from '@/shared/ids';
import { type Job, type JobPatch, type NewJob, type NewJobRead, newJobSchema } from '@/shared/jobs';
import { dayOf } from './days';
import { workItemRowFor } from './item-store';
import { refuseIfChanged } from './meanwhile';
import { looseEndsOf } from './record-store';
import { asJob, type JobRow, jobRow } from './row-store';
import { checkDays, moveTo } from './states';

/** How long a deleted job lies in the bin. */
const binMs = 30 * 24 * 3_600_000;
/** How a client is called in public texts until the repairer chooses other words. */
export const usualAlias = 'a client';

/** Books a job in. Making it is no step that undo takes back: a job is deleted to the bin instead. */
export function addJob(db: Database, wanted: NewJob, demo = false): Job {
  const { client, instrument, work, ...told } = newJobSchema.parse(wanted);
  const now = Date.now();
  const job = db.transaction((tx) => {
    const clientId = client ? clientFor(db, client) : null;
    const row: JobRow = {
      id: newId(jobIdSchema),
      number: nextNumber(db),
      clientId,
      instrumentId: instrumentFor(db, instrument, clientId),
      state: 'booked in',
      promisedOn: null,
      collectedOn: null,
      place: null,
      cameWith: [],
      readyLook: null,
      ...told,
      receivedOn: told.receivedOn ?? dayOf(now),
      demo,
      createdAt: now,
      updatedAt: now,
      deletedAt: null,
    };
    checkDays(asJob(row));
    tx.insert(jobs).values(row).run();
    work.forEach((item, index) => {
      tx.insert(workItems)
        .values(workItemRowFor(db, row.id, item, now + index))
        .run();
    });
    return row;
  });
  return asJob(job);
}

/** Changes what the ticket says of the job itself: words, days, state, whose and which instrument it is. */
export function patchJob(db: Database, id: JobId, { was, lookedAt, ...patch }: JobPatch): ChangeId {
  const row = jobRow(db, id);
  const job = asJob(row);
  refuseIfChanged({ ...row, ...job }, patch, was);
  const now = Date.now();
  const moved = moveTo(job, { ...patch, ...(lookedAt ? { lookedAt } : {}) }, () => looseEndsOf(db, id), {
    at: now,
    day: dayOf(now),
  });
  const next = { ...patch, ...moved };
  checkDays({ ...job, ...next });
  checkKnown(db, patch);
  return edit(db, id, labelFor(patch), (e) => e.update('jobs', id, next)).change;
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
    .where(isNotNull(jobs.deletedAt))
    .orderBy(desc(jobs.deletedAt))
    .all()
    .map(asJob);
}

export function restoreJob(db: Database, id: JobId): ChangeId {
  jobRow(db, id);
  return edit(db, id, 'job taken out of the bin', (e) => e.update('jobs', id, { deletedAt: null })).change;
}

/** What hangs on a job and goes with it, children first. */
const ofAJob = [
  proposals,
  narrationLines,
  harnesses,
  outcomes,
  traces,
  workItems,
  parts,
  markers,
  readings,
  takes,
  changes,
] as const;

/** Clears the bin of jobs that have lain in it for 30 days: the record goes, the recordings and claims stay. */
export function clearOldBin(db: Database, now: number): number {
  const old = db
    .select({ id: jobs.id })
    .from(jobs)
    .where(lt(jobs.deletedAt, now - binMs))
    .all()
    .map((job) => job.id);
  if (old.length === 0) return 0;
  db.transaction((tx) => {
    tx.update(claims)
      .set({ jobId: null, moment: null, readingId: null })
      .where(inArray(claims.jobId, old))
      .run();
    for (const table of ofAJob) tx.delete(table).where(inArray(table.jobId, old)).run();
    tx.delete(jobs).where(inArray(jobs.id, old)).run();
  });
  return old.length;
}

function nextNumber(db: Database): number {
  const row = db
    .select({ newest: max(jobs.number) })
    .from(jobs)
    .get();
  return (row?.newest ?? 0) + 1;
}

/** A client who is known, or a new entry. */
function clientFor(db: Database, wanted: NonNullable<NewJobRead['client']>): ClientId {
  if ('id' in wanted) return checkClient(db, wanted.id);
  const id = newId(clientIdSchema);
  db.insert(clients)
    .values({ alias: usualAlias, reach: null, notes: null, ...wanted, id, createdAt: Date.now() })
    .run();
  return id;
}

/** An instrument that was here before, or a new one; it belongs to whoever brings it, unless it is known whose it is. */
function instrumentFor(
  db: Database,
  wanted: NewJobRead['instrument'],
  clientId: ClientId | null,
): InstrumentId {
  if ('id' in wanted) return checkInstrument(db, wanted.id);
  const id = newId(instrumentIdSchema);
  const unknown = { maker: null, model: null, serial: null, features: null, clientId };
  if (wanted.clientId) checkClient(db, wanted.clientId);
  db.insert(instruments)
    .values({ ...unknown, ...wanted, id, createdAt: Date.now() })
    .run();
  return id;
}

function checkKnown(db: Database, { clientId, instrumentId }: JobPatch): void {
  if (clientId) checkClient(db, clientId);
  if (instrumentId) checkInstrument(db, instrumentId);
}

function checkClient(db: Database, id: ClientId): ClientId {
  if (!db.select({ id: clients.id }).from(clients).where(eq(clients.id, id)).get())
    throw new GoneError('client');
  return id;
}

function checkInstrument(db: Database, id: InstrumentId): InstrumentId {
  const row = db.select({ id: instruments.id }).from(instruments).where(eq(instruments.id, id)).get();
  if (!row) throw new GoneError('instrument');
  return id;
}

const labels = [
  ['title', 'job named'],
  ['receivedOn', 'received day changed'],
  ['promisedOn', 'promised day changed'],
  ['collectedOn', 'collected day changed'],
  ['place', 'place changed'],
  ['cameWith', 'what it came in with changed'],
  ['clientId', 'client changed'],
  ['instrumentId', 'instrument changed'],
] as const;

function labelFor(patch: JobPatch): string {
  if (patch.state !== undefined) return `job ${patch.state}`;
  return labels.find(([field]) => patch[field] !== undefined)?.[1] ?? 'ticket changed';
}
