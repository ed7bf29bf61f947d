import { and, desc, eq, isNull, or, sql } from 'drizzle-orm';
import type { SQLiteColumn, SQLiteTable } from 'drizzle-orm/sqlite-core';
import { type ChangeId, changeIdSchema, type JobId } from '@/shared/ids';
import { DomainError } from '@/shared/problem';
import { newId } from './ids';
import type { Database } from './open';
import {
  type ChangeEntry,
  changes,
  claims,
  clients,
  folders,
  handOvers,
  harnesses,
  instruments,
  jobs,
  madeCuts,
  markers,
  meters,
  narrationLines,
  outcomes,
  parts,
  proposals,
  readings,
  takes,
  traces,
  workItems,
} from './schema';

/** Tables whose rows people change: every change to them can be taken back. */
const undoable = {
  jobs,
  clients,
  instruments,
  folders,
  takes,
  markers,
  meters,
  readings,
  traces,
  outcomes,
  harnesses,
  narrationLines,
  proposals,
  workItems,
  parts,
  claims,
  handOvers,
  madeCuts,
} as const;
type Undoable = typeof undoable;
type TableName = keyof Undoable;
type Row<N extends TableName> = Undoable[N]['$inferSelect'];

type PlainTable = SQLiteTable & { id: SQLiteColumn };

/** Writes rows and remembers each as it was before and after. */
export interface Edit {
  insert<N extends TableName>(table: N, row: Row<N>): void;
  /** Changes the named columns only. Throws where the row is gone. */
  update<N extends TableName>(table: N, id: string, patch: Partial<Row<N>>): void;
  remove(table: TableName, id: string): void;
}

export class GoneError extends DomainError {
  constructor(what: string) {
    super(
      'not-found',
      `That ${what} is not there.`,
      'It may have been deleted in another window. Load the page again, or undo the deletion.',
    );
  }
}

export class ChangedSinceError extends DomainError {
  constructor() {
    super(
      'conflict',
      'It has been changed since, so this can no longer be taken back.',
      'Undo the newer changes first, or correct it by hand.',
    );
  }
}

/**
 * Runs `work` in one transaction and records it as one change that can be undone.
 * @param jobId the job that the change belongs to; null for the workshop's own things
 * @param label what was done, for a person ("marker moved")
 * @returns the change's id with what `work` returned
 */
export function edit<T>(
  db: Database,
  jobId: JobId | null,
  label: string,
  work: (edit: Edit) => T,
): { change: ChangeId; value: T } {
  return db.transaction((tx) => {
    const entries: ChangeEntry[] = [];
    const value = work(recorder(db, entries));
    const change = newId(changeIdSchema);
    tx.update(changes)
      .set({ left: true })
      .where(and(scope(jobId), sql`${changes.undoneAt} is not null`))
      .run();
    tx.insert(changes)
      .values({
        id: change,
        sequence: nextSequence(db),
        jobId,
        label,
        touched: [...new Set(entries.map((entry) => entry.table))],
        entries,
        at: Date.now(),
      })
      .run();
    if (jobId !== null) tx.update(jobs).set({ updatedAt: Date.now() }).where(eq(jobs.id, jobId)).run();
    return { change, value };
  });
}

/**
 * A short word that is another one whenever rows of these tables were changed in a job, undone or done again: what
 * was loaded under the same word need not be loaded again.
 */
export function changeStamp(db: Database, jobId: JobId, tables: readonly TableName[]): string {
  const touches = tables.map((table) => sql`${changes.touched} like ${`%"${table}"%`}`);
  const row = db
    .select({
      newest: sql<number | null>`max(${changes.sequence})`,
      undone: sql<number>`count(${changes.undoneAt})`,
      undoneAt: sql<number | null>`max(${changes.undoneAt})`,
    })
    .from(changes)
    .where(and(eq(changes.jobId, jobId), or(...touches)))
    .get();
  return `${row?.newest ?? 0}-${row?.undone ?? 0}-${row?.undoneAt ?? 0}`;
}

export interface ChangeSummary {
  id: ChangeId;
  label: string;
  at: number;
  undone: boolean;
}

/** The changes of a job, newest first. */
export function listChanges(db: Database, jobId: JobId | null, limit = 200): ChangeSummary[] {
  return db
    .select({ id: changes.id, label: changes.label, at: changes.at, undoneAt: changes.undoneAt })
    .from(changes)
    .where(and(scope(jobId), eq(changes.left, false)))
    .orderBy(desc(changes.sequence))
    .limit(limit)
    .all()
    .map(({ undoneAt, ...rest }) => ({ ...rest, undone: undoneAt !== null }));
}

/** Takes back the newest change of a job that still stands. Null where there is none. */
export function undoNewest(db: Database, jobId: JobId | null): ChangeSummary | null {
  const newest = db
    .select({ id: changes.id })
    .from(changes)
    .where(and(scope(jobId), isNull(changes.undoneAt)))
    .orderBy(desc(changes.sequence))
    .limit(1)
    .get();
  return newest ? undoChange(db, newest.id) : null;
}

/** Does the last undone change of a job again. Null where there is none. */
export function redoNewest(db: Database, jobId: JobId | null): ChangeSummary | null {
  const last = db
    .select()
    .from(changes)
    .where(and(scope(jobId), eq(changes.left, false), sql`${changes.undoneAt} is not null`))
    .orderBy(changes.sequence)
    .limit(1)
    .get();
  if (!last) return null;
  return db.transaction((tx) => {
    for (const entry of last.entries) replace(db, entry, entry.before, entry.after);
    tx.update(changes).set({ undoneAt: null }).where(eq(changes.id, last.id)).run();
    return { id: last.id, label: last.label, at: last.at, undone: false };
  });
}

/** Takes back one change. Refused where what it touched has been changed since. */
export function undoChange(db: Database, id: ChangeId): ChangeSummary {
  const change = db.select().from(changes).where(eq(changes.id, id)).get();
  if (!change) throw new GoneError('change');
  if (change.undoneAt !== null) return { id, label: change.label, at: change.at, undone: true };
  return db.transaction((tx) => {
    for (const entry of [...change.entries].reverse()) replace(db, entry, entry.after, entry.before);
    tx.update(changes).set({ undoneAt: Date.now() }).where(eq(changes.id, id)).run();
    return { id, label: change.label, at: change.at, undone: true };
  });
}

function recorder(db: Database, entries: ChangeEntry[]): Edit {
  return {
    insert(table, row) {
      db.insert(undoable[table])
        .values(row as never)
        .run();
      const id = String(row.id);
      entries.push({ table, id, before: null, after: read(db, table, id) });
    },
    update(table, id, patch) {
      const before = read(db, table, id);
      if (!before) throw new GoneError(singular(table));
      if (Object.keys(patch).length === 0) return;
      db.update(plain(table))
        .set(patch as never)
        .where(eq(plain(table).id, id))
        .run();
      entries.push({ table, id, before, after: read(db, table, id) });
    },
    remove(table, id) {
      const before = read(db, table, id);
      if (!before) throw new GoneError(singular(table));
      db.delete(plain(table))
        .where(eq(plain(table).id, id))
        .run();
      entries.push({ table, id, before, after: null });
    },
  };
}

/** Puts `to` where `from` stands; refuses where something else stands there. */
function replace(
  db: Database,
  entry: ChangeEntry,
  from: ChangeEntry['before'],
  to: ChangeEntry['before'],
): void {
  const name = tableName(entry.table);
  const table = plain(name);
  if (!sameRow(read(db, name, entry.id), from)) throw new ChangedSinceError();
  try {
    write(db, table, entry.id, from, to);
  } catch (error) {
    // Something newer stands on it, or in its place: SQLite holds what belongs together.
    const code = error instanceof Error && 'code' in error ? String(error.code) : '';
    throw code.startsWith('SQLITE_CONSTRAINT') ? new ChangedSinceError() : error;
  }
}

function write(
  db: Database,
  table: PlainTable,
  id: string,
  from: ChangeEntry['before'],
  to: ChangeEntry['before'],
): void {
  if (to === null) db.delete(table).where(eq(table.id, id)).run();
  else if (from === null)
    db.insert(table)
      .values(to as never)
      .run();
  else
    db.update(table)
      .set(to as never)
      .where(eq(table.id, id))
      .run();
}

function read(db: Database, table: TableName, id: string): Record<string, unknown> | null {
  return (
    db
      .select()
      .from(plain(table))
      .where(eq(plain(table).id, id))
      .get() ?? null
  );
}

function plain(name: TableName): PlainTable {
  return undoable[name] as unknown as PlainTable;
}

function tableName(name: string): TableName {
  if (name in undoable) return name as TableName;
  throw new Error(`No table of changes is called ${name}.`);
}

/**
 * Rows are stored as JSON in a change, so they are compared as JSON, column by column: those that the row had when
 * the change was made, for newer ones may have come. When a job was last touched is no part of it: later changes
 * may stand.
 */
function sameRow(now: Record<string, unknown> | null, then: ChangeEntry['before']): boolean {
  if (now === null || then === null) return now === then;
  return Object.keys(then)
    .filter((key) => key !== 'updatedAt')
    .every((key) => JSON.stringify(now[key] ?? null) === JSON.stringify(then[key] ?? null));
}

function nextSequence(db: Database): number {
  const row = db
    .select({ newest: sql<number | null>`max(${changes.sequence})` })
    .from(changes)
    .get();
  return (row?.newest ?? 0) + 1;
}

function scope(jobId: JobId | null) {
  return jobId === null ? isNull(changes.jobId) : eq(changes.jobId, jobId);
}

function singular(table: TableName): string {
  return table.replace(/s$/, '');
}
