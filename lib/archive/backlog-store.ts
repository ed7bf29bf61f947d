import { realpathSync, statSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { and, count, desc, eq, isNull } from 'drizzle-orm';
import { ChangedSinceError, undoChange } from '@/db/changes';
import { newId } from '@/db/ids';
import type { Database } from '@/db/open';
import { backlogResults, backlogs, changes, folders, jobs } from '@/db/schema';
import { liesIn } from '@/lib/media/store';
import { enqueueWorkshopTask, getTask, type OwnRunners } from '@/lib/tasks/store';
import { deleteJob } from '@/lib/work/store';
import {
  type Backlog,
  type BacklogId,
  type BacklogUndone,
  type BacklogView,
  backlogIdSchema,
  type ImportedJob,
  type ImportOrder,
  type JobNamed,
  type JobRule,
  type NewBacklog,
} from '@/shared/backlog';
import type { FolderId, TaskId } from '@/shared/ids';
import { DomainError } from '@/shared/problem';
import type { Task } from '@/shared/tasks';
import { type BacklogRow, backlogRow, planOf } from './backlog-facts-store';
import { importBacklog } from './backlog-import-store';
import { lookThrough } from './backlog-look-store';

/** Folders looked through that are still listed. */
const mostListed = 20;

/** What the server does of it itself, in its own time. */
export function backlogWork(db: Database): OwnRunners {
  return { 'backlog-look': lookThrough(db), 'backlog-import': importBacklog(db) };
}

/** Starts looking through a folder of older recordings; one that was looked through before is looked through again. */
export function lookThroughFolder(
  db: Database,
  { folderId, under }: NewBacklog,
): { id: BacklogId; task: Task } {
  const place = folderInside(db, folderId, under);
  const known = db
    .select({ id: backlogs.id })
    .from(backlogs)
    .where(and(eq(backlogs.folderId, folderId), eq(backlogs.under, place)))
    .get();
  const id = known?.id ?? newId(backlogIdSchema);
  if (known) refuseWhileImporting(db, backlogRow(db, id));
  else db.insert(backlogs).values({ id, folderId, under: place, createdAt: Date.now() }).run();
  const task = enqueueWorkshopTask('backlog-look', { backlog: id });
  db.update(backlogs).set({ lookTaskId: task.id, lookedAt: null }).where(eq(backlogs.id, id)).run();
  return { id, task };
}

/** Starts the import, or goes on with one that was called off. What is a take already is left as it is. */
export function orderImport(db: Database, id: BacklogId, wanted: ImportOrder): Task {
  const row = backlogRow(db, id);
  if (row.lookedAt === null)
    throw new DomainError(
      'conflict',
      'The folder has not been looked through yet.',
      'Wait until it is, then import.',
    );
  refuseWhileImporting(db, row);
  db.update(backlogs).set({ wanted, undoneAt: null }).where(eq(backlogs.id, id)).run();
  const task = enqueueWorkshopTask('backlog-import', { backlog: id });
  db.update(backlogs).set({ importTaskId: task.id }).where(eq(backlogs.id, id)).run();
  return task;
}

/** What was found, what it would become by a rule, and what was made of it. */
export function viewBacklog(db: Database, id: BacklogId, rule: JobRule): BacklogView {
  const row = backlogRow(db, id);
  const results = db
    .select({ result: backlogResults, job: jobs })
    .from(backlogResults)
    .leftJoin(jobs, eq(jobs.id, backlogResults.jobId))
    .where(eq(backlogResults.backlogId, id))
    .orderBy(backlogResults.id)
    .all();
  return {
    ...described(db, row),
    jobs: results.flatMap(({ result, job }): ImportedJob[] => {
      if (!job || job.deletedAt !== null) return [];
      const { id: resultId, joined, takes, lines } = result;
      const { id: jobId, number, title } = job;
      return [
        { id: resultId, job: { id: jobId, number, title }, day: job.receivedOn ?? '', joined, takes, lines },
      ];
    }),
    problems: results.flatMap(({ result }) => result.problem ?? []),
    plan: row.lookedAt === null ? null : planOf(db, row, rule),
  };
}

/** Folders that were looked through, the newest first. */
export function listBacklogs(db: Database): Omit<Backlog, 'jobs' | 'problems'>[] {
  const rows = db.select().from(backlogs).orderBy(desc(backlogs.createdAt)).limit(mostListed).all();
  return rows.map((row) => described(db, row));
}

/**
 * Takes an import back: its jobs go into the bin, each as one change, and the takes that came to other jobs go. Jobs
 * that were worked on since stay.
 */
export function undoBacklog(db: Database, id: BacklogId): BacklogUndone {
  const row = backlogRow(db, id);
  refuseWhileImporting(db, row);
  return db.transaction(() => {
    const results = db
      .select({ result: backlogResults, job: { id: jobs.id, number: jobs.number, title: jobs.title } })
      .from(backlogResults)
      .innerJoin(jobs, eq(jobs.id, backlogResults.jobId))
      .where(and(eq(backlogResults.backlogId, id), isNull(jobs.deletedAt)))
      .orderBy(desc(backlogResults.id))
      .all();
    const kept: JobNamed[] = [];
    let binned = 0;
    for (const { result, job } of results) {
      if (result.joined ? takenBack(db, result.changes) : isUntouched(db, job)) {
        if (!result.joined) deleteJob(db, job.id);
        binned += result.joined ? 0 : 1;
        db.delete(backlogResults)
          .where(and(eq(backlogResults.id, result.id), eq(backlogResults.joined, true)))
          .run();
      } else kept.push(job);
    }
    db.update(backlogs).set({ undoneAt: Date.now() }).where(eq(backlogs.id, id)).run();
    return { binned, kept };
  });
}

/** The newest first; all of them or none. */
function takenBack(db: Database, ids: (typeof backlogResults.$inferSelect)['changes']): boolean {
  try {
    db.transaction(() => {
      for (const change of [...ids].reverse()) undoChange(db, change);
    });
    return true;
  } catch (error) {
    if (error instanceof ChangedSinceError) return false;
    throw error;
  }
}

/** An import leaves no history, so whatever stands there was done by hand. */
function isUntouched(db: Database, { id }: JobNamed): boolean {
  const done = db
    .select({ changes: count() })
    .from(changes)
    .where(and(eq(changes.jobId, id), isNull(changes.undoneAt)))
    .get();
  return done?.changes === 0;
}

function refuseWhileImporting(db: Database, { importTaskId }: BacklogRow): void {
  const task = taskOf(db, importTaskId);
  if (task?.state === 'queued' || task?.state === 'running')
    throw new DomainError(
      'conflict',
      'It is being imported.',
      'Wait until it is done, or call it off first.',
    );
}

function described(db: Database, row: BacklogRow): Omit<Backlog, 'jobs' | 'problems'> {
  const folder = db
    .select({ id: folders.id, path: folders.path })
    .from(folders)
    .where(eq(folders.id, row.folderId))
    .get();
  if (!folder) throw new Error(`Backlog ${row.id} has no folder`);
  const { id, under, createdAt, lookedAt, undoneAt, lookTaskId, importTaskId } = row;
  const tasks = { look: taskOf(db, lookTaskId), import: taskOf(db, importTaskId) };
  return { id, folder, under, createdAt, lookedAt, undoneAt, ...tasks };
}

/** Tasks that ended long ago are forgotten. */
function taskOf(db: Database, id: TaskId | null): Task | null {
  if (id === null) return null;
  try {
    return getTask(db, id);
  } catch (error) {
    if (error instanceof DomainError && error.kind === 'not-found') return null;
    throw error;
  }
}

/** The folder below a recordings folder, with forward slashes. Nothing outside that is looked at. */
function folderInside(db: Database, folderId: FolderId, under: string): string {
  const folder = db.select({ path: folders.path }).from(folders).where(eq(folders.id, folderId)).get();
  if (!folder) throw new DomainError('not-found', 'There is no such recordings folder.', 'Name it first.');
  const real = realFolder(join(folder.path, under));
  if (real === folder.path) return '';
  if (real === null || !liesIn(folder.path, real))
    throw new DomainError(
      'not-found',
      'There is no such folder inside the recordings folder.',
      'Give its way from the recordings folder on, such as 2019/March, or leave it empty for all.',
      { under },
    );
  return relative(folder.path, real).replaceAll(sep, '/');
}

function realFolder(path: string): string | null {
  return statSync(path, { throwIfNoEntry: false })?.isDirectory() ? realpathSync(path) : null;
}
