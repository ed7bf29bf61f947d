import { and, eq, inArray, isNull, lt, or, sql } from 'drizzle-orm';
import { newId } from '@/db/ids';
import type { Database } from '@/db/open';
import { recordings, takes, tasks } from '@/db/schema';
import { type JobId, type RecordingId, type TaskId, taskIdSchema } from '@/shared/ids';
import { DomainError } from '@/shared/problem';
import type {
  JobTaskKind,
  RecordingTaskKind,
  Task,
  TaskKind,
  TaskState,
  WorkshopTaskKind,
} from '@/shared/tasks';
import type { TaskPayload } from './handlers';

type TaskRow = typeof tasks.$inferSelect;

/** A file over which the worker went down this often is left alone until a person asks again. */
export const mostCrashes = 2;

const active: TaskState[] = ['queued', 'running'];

/** What is done first, of what waits: what can be done at leisure comes behind all else. */
const urgency = sql`${tasks.atLeisure}, case ${tasks.kind} when 'probe' then 0 when 'sound' then 1 when 'pictures' then 2 else 3 end`;

/** What a piece of work is about: one recording, a whole job, or the workshop. */
export type TaskSubject =
  | { kind: RecordingTaskKind; recordingId: RecordingId }
  | { kind: JobTaskKind; jobId: JobId }
  | { kind: WorkshopTaskKind };

/**
 * Puts work into the queue; the same work that already waits or runs is not queued twice.
 * @param atLeisure nobody waits for it; asked for again without that, it comes to its usual place
 */
export function insertTask(
  db: Database,
  subject: TaskSubject,
  payload: TaskPayload = {},
  atLeisure = false,
): Task {
  const about = { recordingId: null, jobId: null, ...subject };
  const same = db
    .select()
    .from(tasks)
    .where(
      and(
        eq(tasks.kind, about.kind),
        about.recordingId ? eq(tasks.recordingId, about.recordingId) : isNull(tasks.recordingId),
        about.jobId ? eq(tasks.jobId, about.jobId) : isNull(tasks.jobId),
        eq(tasks.payload, payload),
        inArray(tasks.state, active),
      ),
    )
    .get();
  if (same) return same.atLeisure && !atLeisure ? changeTask(db, same.id, { atLeisure }) : asTask(same);
  const row = {
    id: newId(taskIdSchema),
    ...about,
    payload,
    atLeisure,
    state: 'queued' as const,
    createdAt: Date.now(),
  };
  return asTask(db.insert(tasks).values(row).returning().get());
}

/** Somebody looks at a job now: what could wait of its recordings comes to its usual place in the queue. */
export function endLeisure(db: Database, jobId: JobId): void {
  const ofJob = db.select({ id: takes.recordingId }).from(takes).where(eq(takes.jobId, jobId));
  db.update(tasks)
    .set({ atLeisure: false })
    .where(and(eq(tasks.state, 'queued'), tasks.atLeisure, inArray(tasks.recordingId, ofJob)))
    .run();
}

export function getTask(db: Database, id: TaskId): Task {
  const row = db.select().from(tasks).where(eq(tasks.id, id)).get();
  if (!row)
    throw new DomainError(
      'not-found',
      'There is no such task.',
      'It was over long ago. Load the page again.',
    );
  return asTask(row);
}

/** What waits or runs for a job and for the recordings of its takes. */
export function activeTasksOf(db: Database, jobId: JobId): Task[] {
  const ofJob = db.select({ id: takes.recordingId }).from(takes).where(eq(takes.jobId, jobId));
  return db
    .select()
    .from(tasks)
    .where(and(inArray(tasks.state, active), or(eq(tasks.jobId, jobId), inArray(tasks.recordingId, ofJob))))
    .orderBy(urgency, tasks.createdAt)
    .all()
    .map(asTask);
}

/** The next waiting task of these kinds, marked as running; null when nothing waits. */
export function claimTask(db: Database, kinds: readonly TaskKind[]): Task | null {
  const next = db
    .select({ id: tasks.id })
    .from(tasks)
    .where(and(eq(tasks.state, 'queued'), inArray(tasks.kind, [...kinds])))
    .orderBy(urgency, tasks.createdAt, sql`rowid`)
    .limit(1)
    .get();
  if (!next) return null;
  return changeTask(db, next.id, { state: 'running', startedAt: Date.now(), progress: 0, message: null });
}

export function changeTask(db: Database, id: TaskId, patch: Partial<Omit<TaskRow, 'id'>>): Task {
  return asTask(db.update(tasks).set(patch).where(eq(tasks.id, id)).returning().get());
}

/** What ran when the program ended waits again. */
export function requeueRunning(db: Database): void {
  db.update(tasks)
    .set({ state: 'queued', progress: 0, startedAt: null })
    .where(eq(tasks.state, 'running'))
    .run();
}

/** @returns how often the worker has gone down over this recording by now */
export function countCrash(db: Database, id: RecordingId): number {
  const row = db
    .update(recordings)
    .set({ crashes: sql`${recordings.crashes} + 1` })
    .where(eq(recordings.id, id))
    .returning({ crashes: recordings.crashes })
    .get();
  return row?.crashes ?? 0;
}

export function crashesOf(db: Database, id: RecordingId): number {
  return (
    db.select({ crashes: recordings.crashes }).from(recordings).where(eq(recordings.id, id)).get()?.crashes ??
    0
  );
}

/** Forgets tasks that ended before a moment. */
export function forgetEnded(db: Database, before: number): void {
  db.delete(tasks).where(lt(tasks.endedAt, before)).run();
}

function asTask({ id, kind, recordingId, jobId, state, progress, message }: TaskRow): Task {
  return { id, kind, recordingId, jobId, state, progress, message };
}

export function payloadOf(db: Database, id: TaskId): TaskPayload {
  return db.select({ payload: tasks.payload }).from(tasks).where(eq(tasks.id, id)).get()?.payload ?? {};
}
