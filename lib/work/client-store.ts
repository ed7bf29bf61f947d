import { and, count, desc, eq, inArray, isNull, max, or } from 'drizzle-orm';
import { type Edit, edit, GoneError } from '@/db/changes';
import { newId } from '@/db/ids';
import type { Database } from '@/db/open';
import { clients, instruments, jobs } from '@/db/schema';
import { narrationOf } from '@/lib/narration/store';
import type { Client, ClientLine, ClientPatch, NewClient } from '@/shared/clients';
import { type ChangeId, type ClientId, clientIdSchema } from '@/shared/ids';
import type { ClientView, Instrument } from '@/shared/jobs';
import { DomainError } from '@/shared/problem';
import { type ClientExport, exportWords } from './client-export';
import { folded, wordsOf } from './findable';
import { claimsOf } from './instrument-store';
import { usualAlias } from './job-store';
import { joinedLines } from './joined-lines';
import { refuseIfChanged } from './meanwhile';
import { getJobRecord } from './record-store';
import { asClient, asInstrument, asJob } from './row-store';

/** Longest that the contract allows a person to write (`shared/clients.ts`). */
const most = { reach: 2000, notes: 20_000 } as const;

/**
 * Clients in the order of the alphabet, with how much there is of each; jobs in the bin are not counted.
 * @param find words that must all stand in the entry: name, public words, ways to be reached, notes
 */
export function listClients(db: Database, find: string): ClientLine[] {
  const jobsOf = countsBy(
    db
      .select({ clientId: jobs.clientId, rows: count(), lastJobAt: max(jobs.updatedAt) })
      .from(jobs)
      .where(isNull(jobs.deletedAt))
      .groupBy(jobs.clientId)
      .all(),
  );
  const instrumentsOf = countsBy(
    db
      .select({ clientId: instruments.clientId, rows: count() })
      .from(instruments)
      .groupBy(instruments.clientId)
      .all(),
  );
  const wanted = wordsOf(find);
  return db
    .select()
    .from(clients)
    .all()
    .filter((row) => wanted.every((word) => findable(row).includes(word)))
    .map((row) => ({
      ...asClient(row),
      jobs: jobsOf.get(row.id)?.rows ?? 0,
      instruments: instrumentsOf.get(row.id)?.rows ?? 0,
      lastJobAt: jobsOf.get(row.id)?.lastJobAt ?? null,
    }))
    .sort((a, b) => alphabet.compare(a.name, b.name));
}

/** The client with all instruments, and the jobs that hang in the rack or have gone, newest first. */
export function getClientView(db: Database, id: ClientId): ClientView {
  const client = asClient(clientRow(db, id));
  const rows = db
    .select()
    .from(jobs)
    .where(and(eq(jobs.clientId, id), isNull(jobs.deletedAt)))
    .orderBy(desc(jobs.number))
    .all();
  return { client, instruments: instrumentsOfClient(db, id), jobs: rows.map(asJob) };
}

/** Writes a client down. Making the entry is no step that undo takes back: it is taken off instead. */
export function addClient(db: Database, wanted: NewClient): Client {
  const row = {
    alias: usualAlias,
    reach: null,
    notes: null,
    ...wanted,
    id: newId(clientIdSchema),
    createdAt: Date.now(),
  };
  db.insert(clients).values(row).run();
  return asClient(row);
}

export function patchClient(
  db: Database,
  id: ClientId,
  { was, ...patch }: ClientPatch,
): { change: ChangeId; client: Client } {
  refuseIfChanged(clientRow(db, id), patch, was);
  const { change } = edit(db, null, 'client changed', (e) => e.update('clients', id, patch));
  return { change, client: asClient(clientRow(db, id)) };
}

/** Takes the entry off: jobs and instruments stay, and no longer say whose they are. */
export function removeClient(db: Database, id: ClientId): ChangeId {
  clientRow(db, id);
  return edit(db, null, 'client taken off', (e) => {
    handOver(db, e, id, null);
    e.remove('clients', id);
  }).change;
}

/**
 * Makes one entry of two that are the same person: jobs and instruments of `other` go to `into`, ways to be reached
 * and notes are joined, no line twice; `other` goes.
 */
export function mergeClients(
  db: Database,
  into: ClientId,
  other: ClientId,
): { change: ChangeId; client: Client } {
  if (into === other) {
    throw new DomainError(
      'invalid',
      'An entry cannot go into itself.',
      'Choose the other entry of the same person.',
      { other },
    );
  }
  const kept = clientRow(db, into);
  const gone = clientRow(db, other);
  const joined = {
    reach: joinedLines(kept.reach, gone.reach),
    notes: joinedLines(kept.notes, gone.notes),
  };
  checkLength('reach', joined.reach);
  checkLength('notes', joined.notes);
  const { change } = edit(db, null, 'two clients made one', (e) => {
    handOver(db, e, other, into);
    e.update('clients', into, joined);
    e.remove('clients', other);
  });
  return { change, client: asClient(clientRow(db, into)) };
}

/** All that is known about a client; what its parts mean is told in `client-export.ts`. */
export function exportClient(db: Database, id: ClientId): ClientExport {
  const { createdAt, ...client } = clientRow(db, id);
  const rows = db
    .select({ id: jobs.id })
    .from(jobs)
    .where(eq(jobs.clientId, id))
    .orderBy(desc(jobs.number))
    .all();
  return {
    about: exportWords,
    format: 'benchtake client 1',
    madeAt: new Date().toISOString(),
    client: { ...client, createdAt },
    instruments: instrumentsOfClient(db, id).map((instrument) => ({
      ...instrument,
      claims: claimsOf(db, instrument.id),
    })),
    jobs: rows.map((job) => ({ record: getJobRecord(db, job.id), narration: narrationOf(db, job.id) })),
  };
}

export function clientRow(db: Database, id: ClientId): typeof clients.$inferSelect {
  const row = db.select().from(clients).where(eq(clients.id, id)).get();
  if (!row) throw new GoneError('client');
  return row;
}

/** Instruments that are the client's, and those of their jobs of which nobody has said whose they are. */
function instrumentsOfClient(db: Database, id: ClientId): Instrument[] {
  const brought = db.select({ id: jobs.instrumentId }).from(jobs).where(eq(jobs.clientId, id));
  return db
    .select()
    .from(instruments)
    .where(
      or(eq(instruments.clientId, id), and(isNull(instruments.clientId), inArray(instruments.id, brought))),
    )
    .orderBy(desc(instruments.createdAt))
    .all()
    .map(asInstrument);
}

/** Jobs, those in the bin too, and instruments get another owner. */
function handOver(db: Database, e: Edit, from: ClientId, to: ClientId | null): void {
  for (const { id } of db.select({ id: jobs.id }).from(jobs).where(eq(jobs.clientId, from)).all())
    e.update('jobs', id, { clientId: to });
  const theirs = db.select({ id: instruments.id }).from(instruments).where(eq(instruments.clientId, from));
  for (const { id } of theirs.all()) e.update('instruments', id, { clientId: to });
}

const alphabet = new Intl.Collator('en', { sensitivity: 'base', numeric: true });

function findable({ name, alias, reach, notes }: typeof clients.$inferSelect): string {
  return folded([name, alias, reach, notes].filter(Boolean).join(' '));
}

function countsBy<T extends { clientId: ClientId | null }>(rows: readonly T[]): Map<ClientId | null, T> {
  return new Map(rows.map((row) => [row.clientId, row]));
}

function checkLength(field: keyof typeof most, text: string | null): void {
  if ((text ?? '').length <= most[field]) return;
  throw new DomainError(
    'invalid',
    `Joined, the ${field === 'reach' ? 'ways to be reached' : 'notes'} of the two are too long.`,
    `Shorten them in one of the two entries: together they may have ${most[field]} letters.`,
    { field, length: text?.length },
  );
}
