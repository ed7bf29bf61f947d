import type { RecordingId, TaskId } from '@/shared/ids';
import type { Task, TaskKind } from '@/shared/tasks';
import type { TaskPayload } from './queue-store';
import { Supervisor, type TaskOptions } from './supervisor-store';

export { activeTasksOf, getTask } from './queue-store';
export type { TaskHandlers } from './supervisor-store';

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

export function enqueueTask(kind: TaskKind, recordingId: RecordingId, payload: TaskPayload = {}): Task {
  return supervisor().enqueue(kind, recordingId, payload);
}

export function cancelTask(id: TaskId): Task {
  return supervisor().cancel(id);
}
