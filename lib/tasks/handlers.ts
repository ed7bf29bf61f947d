import type { JobId, RecordingId } from '@/shared/ids';
import type { DomainError } from '@/shared/problem';
import {
  type JobTaskKind,
  type RecordingTaskKind,
  type Task,
  type TaskKind,
  type WorkshopTaskKind,
  workshopTaskKinds,
} from '@/shared/tasks';

/** What one piece of work needs to know beside what it is about. */
export type TaskPayload = Record<string, string>;

/**
 * What becomes of one kind of work; given by the subject that it belongs to.
 * @typeParam Id of what the work is about
 */
export interface TaskHandler<Id> {
  /** What the worker needs, read at the last moment. Throws a DomainError where it cannot be done now. */
  prepare(about: Id, payload: TaskPayload): unknown;
  /** Keeps what is found so far. */
  onProgress?(about: Id, partial: unknown): void;
  /** Words for the person who waits; none where empty. */
  sayProgress?(partial: unknown): string;
  onResult(about: Id, result: unknown, payload: TaskPayload): void;
  /** Words for the person who waited. */
  sayResult?(result: unknown): string;
  onFailure?(about: Id, title: string, detail: string): void;
  /** However the work ended, once the worker has let go of it. */
  onEnd?(about: Id): void;
  /** Where the recording is not to blame when the worker goes down: what is said. The work is not tried again. */
  whenDown?(): DomainError;
}

export type TaskHandlers = Record<RecordingTaskKind, TaskHandler<RecordingId>> &
  Record<JobTaskKind, TaskHandler<JobId>>;

/** A handler that knows which recording or job it is about. */
interface BoundHandler {
  prepare(payload: TaskPayload): unknown;
  onProgress(partial: unknown): void;
  sayProgress(partial: unknown): string;
  onResult(result: unknown, payload: TaskPayload): void;
  sayResult(result: unknown): string;
  onFailure(title: string, detail: string): void;
  onEnd(): void;
  whenDown(): DomainError | undefined;
}

/** The handler for a task. */
export function bound(handlers: TaskHandlers, task: Task): BoundHandler {
  const { id, kind, recordingId, jobId } = task;
  if (isWorkshopKind(kind)) return own;
  if (isJobKind(kind)) return bind(handlers[kind], jobId ?? nothing(id));
  return bind(handlers[kind], recordingId ?? nothing(id));
}

/** Own work keeps what it finds by itself, and tells its progress and its end in words. */
const own = bind<null>(
  {
    prepare: (_about, payload) => payload,
    sayProgress: String,
    onResult: () => undefined,
    sayResult: String,
  },
  null,
);

function isWorkshopKind(kind: TaskKind): kind is WorkshopTaskKind {
  return workshopTaskKinds.some((own) => own === kind);
}

function isJobKind(kind: TaskKind): kind is JobTaskKind {
  return kind === 'cut';
}

function nothing(id: string): never {
  throw new Error(`Task ${id} is about nothing`);
}

function bind<Id>(handler: TaskHandler<Id>, about: Id): BoundHandler {
  return {
    prepare: (payload) => handler.prepare(about, payload),
    onProgress: (partial) => handler.onProgress?.(about, partial),
    sayProgress: (partial) => handler.sayProgress?.(partial) ?? '',
    onResult: (result, payload) => handler.onResult(about, result, payload),
    sayResult: (result) => handler.sayResult?.(result) ?? '',
    onFailure: (title, detail) => handler.onFailure?.(about, title, detail),
    onEnd: () => handler.onEnd?.(about),
    whenDown: () => handler.whenDown?.(),
  };
}
