import type { JobId, RecordingId, TaskId } from '@/shared/ids';
import type { JobTaskKind, RecordingTaskKind, Task } from '@/shared/tasks';
import type { TaskPayload } from './handlers';
import { Supervisor, type TaskOptions } from './supervisor-store';

export type { TaskHandlers } from './handlers';
export { activeTasksOf, getTask } from './queue-store';

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

export function cancelTask(id: TaskId): Task {
  return supervisor().cancel(id);
}
