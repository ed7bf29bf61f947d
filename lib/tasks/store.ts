import type { Database } from '@/db/open';
import type { JobId, RecordingId, TaskId } from '@/shared/ids';
import type { JobTaskKind, RecordingTaskKind, Task, WorkshopTaskKind } from '@/shared/tasks';
import type { TaskPayload } from './handlers';
import { insertTask } from './queue-store';
import { Supervisor, type TaskOptions } from './supervisor-store';

export type { TaskHandlers } from './handlers';
export type { OwnRunner, OwnRunners } from './own-lane';
export { activeTasksOf, endLeisure, getTask } from './queue-store';

/** One supervisor a process; on globalThis because the server and the pages are bundled apart. */
const holder = globalThis as typeof globalThis & { benchtakeTasks?: Supervisor };

/** Starts the workers' supervisor; the queue goes on where it was. */
export function startTasks(options: TaskOptions): Supervisor {
  holder.benchtakeTasks ??= new Supervisor(options);
  return holder.benchtakeTasks;
}

/** The supervisor of this process. Throws where none was started. */
export function supervisor(): Supervisor {
  if (!holder.benchtakeTasks) throw new Error('No tasks are done here: startTasks() comes first.');
  return holder.benchtakeTasks;
}

/** Work on one recording. */
export function enqueueTask(
  kind: RecordingTaskKind,
  recordingId: RecordingId,
  payload: TaskPayload = {},
): Task {
  return supervisor().enqueue({ kind, recordingId }, payload);
}

/** Work on a whole job. */
export function enqueueJobTask(kind: JobTaskKind, jobId: JobId): Task {
  return supervisor().enqueue({ kind, jobId });
}

/** Work of the workshop, which the server does itself. */
export function enqueueWorkshopTask(kind: WorkshopTaskKind, payload: TaskPayload): Task {
  return supervisor().enqueue({ kind }, payload);
}

/**
 * Puts down work on a recording that nobody waits for, in a transaction of the caller's: it is begun when the
 * supervisor wakes and nothing more urgent waits.
 */
export function noteAtLeisure(db: Database, kind: RecordingTaskKind, recordingId: RecordingId): void {
  insertTask(db, { kind, recordingId }, {}, true);
}

/** Begins what was put down. */
export function wakeTasks(): void {
  supervisor().wake();
}

export function cancelTask(id: TaskId): Task {
  return supervisor().cancel(id);
}
