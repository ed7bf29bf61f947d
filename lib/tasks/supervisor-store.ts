import { EventEmitter } from 'node:events';
import type { Database } from '@/db/open';
import type { RecordingId, TaskId } from '@/shared/ids';
import { DomainError } from '@/shared/problem';
import type { Task, TaskKind } from '@/shared/tasks';
import { CancelledError, Lane, type LaneOptions, WorkerDownError } from './lane';
import type { RunKind } from './protocol';
import {
  changeTask,
  claimTask,
  countCrash,
  crashesOf,
  forgetEnded,
  getTask,
  insertTask,
  mostCrashes,
  payloadOf,
  requeueRunning,
  type TaskPayload,
} from './queue-store';

/** What becomes of one kind of work; given by the subject that it belongs to. */
export interface TaskHandler {
  /** What the worker needs, read at the last moment. Throws a DomainError where it cannot be done now. */
  prepare(recordingId: RecordingId, payload: TaskPayload): unknown;
  /** Keeps what is found so far. */
  onProgress?(recordingId: RecordingId, partial: unknown): void;
  /** Words for the person who waits; none where empty. */
  sayProgress?(partial: unknown): string;
  onResult(recordingId: RecordingId, result: unknown, payload: TaskPayload): void;
  /** Words for the person who waited. */
  sayResult?(result: unknown): string;
  onFailure?(recordingId: RecordingId, title: string, detail: string): void;
  /** However the work ended, once the worker has let go of it. */
  onEnd?(recordingId: RecordingId): void;
  /** Where the recording is not to blame when the worker goes down: what is said. The work is not tried again. */
  whenDown?(): DomainError;
}
export type TaskHandlers = Record<TaskKind, TaskHandler>;

export interface TaskOptions {
  db: Database;
  /** The bundled worker. */
  worker: string;
  handlers: TaskHandlers;
  limits?: Partial<Omit<LaneOptions, 'worker'>>;
}

/**
 * Probes have a worker of their own, so that adding a recording never waits behind long work; so does listening, which
 * takes as long as the film and holds a whole speech model.
 */
const lanes = {
  quick: ['probe'],
  long: ['sound', 'pictures', 'viewing-copy'],
  listening: ['listen'],
} as const satisfies Record<string, readonly TaskKind[]>;
type LaneName = keyof typeof lanes;
const laneNames = ['quick', 'long', 'listening'] as const;

const usualLimits = { mostResidentBytes: 1_500_000_000, mostSilentMs: 60_000 };
/** Somebody waits for probes and stills: they are given up sooner. */
const mostQuickSilentMs = 20_000;
/** A large speech model thinks about half a minute of sound without a word, on a slow machine for minutes. */
const listeningLimits = { mostResidentBytes: 8_000_000_000, mostSilentMs: 900_000 };
const keptMs = 7 * 24 * 3_600_000;
/** Progress is written down this often, not more. */
const writeEveryMs = 250;

/** Does the work in the queue, and tells of it: event `task` with the task as it is. */
export class Supervisor extends EventEmitter<{ task: [Task] }> {
  readonly #db: Database;
  readonly #handlers: TaskHandlers;
  readonly #lanes: Record<LaneName | 'still', Lane>;
  readonly #doing = new Map<LaneName, Task>();
  readonly #ends = new Set<Promise<void>>();
  #lastAsked: Promise<unknown> = Promise.resolve();
  #stopped = false;

  constructor({ db, worker, handlers, limits }: TaskOptions) {
    super();
    // One listener for every page that follows along.
    this.setMaxListeners(0);
    this.#db = db;
    this.#handlers = handlers;
    const usual = { worker, ...usualLimits, ...limits };
    const quick = { ...usual, mostSilentMs: Math.min(usual.mostSilentMs, mostQuickSilentMs) };
    this.#lanes = {
      quick: new Lane(quick),
      long: new Lane(usual),
      listening: new Lane({ worker, ...listeningLimits, ...limits }),
      still: new Lane(quick),
    };
    requeueRunning(db);
    forgetEnded(db, Date.now() - keptMs);
    this.wake();
  }

  /** Process ids of the workers, for whoever watches them. */
  get workers(): number[] {
    return Object.values(this.#lanes).flatMap((lane) => lane.pid ?? []);
  }

  /** The same work that already waits or runs is not queued twice. */
  enqueue(kind: TaskKind, recordingId: RecordingId, payload: TaskPayload = {}): Task {
    const task = this.#tell(insertTask(this.#db, kind, recordingId, payload));
    this.wake();
    return task;
  }

  /** A task that is over stays as it ended. */
  cancel(id: TaskId): Task {
    const task = getTask(this.#db, id);
    if (task.state !== 'queued' && task.state !== 'running') return task;
    for (const name of laneNames) if (this.#doing.get(name)?.id === id) this.#lanes[name].cancel();
    return this.#tell(changeTask(this.#db, id, { state: 'cancelled', endedAt: Date.now() }));
  }

  /** One answer for somebody who waits; those who ask take turns. Rejects with a DomainError. */
  ask(kind: RunKind, payload: unknown): Promise<unknown> {
    const turn = this.#lastAsked.then(() => {
      if (this.#stopped) throw new CancelledError('The program is ending.');
      return this.#lanes.still.run(kind, payload);
    });
    this.#lastAsked = turn.catch(() => undefined);
    return turn;
  }

  /** Starts what waits and has a free worker. */
  wake(): void {
    if (this.#stopped) return;
    for (const name of laneNames) {
      if (this.#doing.has(name)) continue;
      const task = claimTask(this.#db, lanes[name]);
      if (task) this.#begin(name, task);
    }
  }

  /** Ends the workers. What they were doing is taken up at the next start. */
  async stop(): Promise<void> {
    this.#stopped = true;
    for (const lane of Object.values(this.#lanes)) lane.stop();
    await Promise.all([...this.#ends, this.#lastAsked]);
  }

  #begin(name: LaneName, task: Task): void {
    this.#doing.set(name, task);
    this.#tell(task);
    const end = this.#do(name, task)
      .catch((error: unknown) => this.#failed(task, error))
      .finally(() => this.#handlers[task.kind].onEnd?.(recordingOf(task)))
      // A handler that fails in telling of a failure must not take the server down.
      .catch((error: unknown) => console.error(error))
      .finally(() => {
        this.#ends.delete(end);
        this.#doing.delete(name);
        this.wake();
      });
    this.#ends.add(end);
  }

  async #do(name: LaneName, task: Task): Promise<void> {
    const { id, kind } = task;
    const recordingId = recordingOf(task);
    if (crashesOf(this.#db, recordingId) >= mostCrashes) throw new LeftAloneError();
    const handler = this.#handlers[kind];
    const payload = payloadOf(this.#db, id);
    let writtenAt = 0;
    const result = await this.#lanes[name].run(
      kind,
      handler.prepare(recordingId, payload),
      (progress, partial) => {
        if (performance.now() - writtenAt < writeEveryMs) return;
        writtenAt = performance.now();
        if (partial !== undefined) handler.onProgress?.(recordingId, partial);
        const message = partial === undefined ? '' : handler.sayProgress?.(partial);
        this.#tell(changeTask(this.#db, id, { progress, ...(message ? { message } : {}) }));
      },
    );
    if (getTask(this.#db, id).state !== 'running') return;
    const said = handler.sayResult?.(result);
    this.#db.transaction(() => {
      handler.onResult(recordingId, result, payload);
      const done = { state: 'done', progress: 1, endedAt: Date.now() } as const;
      changeTask(this.#db, id, { ...done, ...(said ? { message: said } : {}) });
    });
    this.#tell(getTask(this.#db, id));
  }

  #failed(task: Task, cause: unknown): void {
    const error =
      cause instanceof WorkerDownError ? (this.#handlers[task.kind].whenDown?.() ?? cause) : cause;
    // Either the program is going down, and the task is taken up at the next start; or a person called it off.
    if (this.#stopped || error instanceof CancelledError || getTask(this.#db, task.id).state !== 'running')
      return;
    if (error instanceof WorkerDownError && countCrash(this.#db, recordingOf(task)) < mostCrashes) {
      this.#tell(
        changeTask(this.#db, task.id, {
          state: 'queued',
          progress: 0,
          message: `${error.message} Trying once more.`,
        }),
      );
      return;
    }
    const { message, detail } = inWords(error);
    const failed = { state: 'failed', message: `${message} ${detail}`, endedAt: Date.now() } as const;
    this.#tell(changeTask(this.#db, task.id, failed));
    this.#handlers[task.kind].onFailure?.(recordingOf(task), message, detail);
  }

  #tell(task: Task): Task {
    this.emit('task', task);
    return task;
  }
}

/** All kinds of work so far are about one recording. */
function recordingOf({ id, recordingId }: Task): RecordingId {
  if (recordingId === null) throw new Error(`Task ${id} names no recording`);
  return recordingId;
}

class LeftAloneError extends DomainError {
  constructor() {
    super(
      'unavailable',
      'This recording took the decoder down twice and is left alone now.',
      'The file may be damaged: copy it from the camera again, then let it be looked at again.',
    );
  }
}

function inWords(error: unknown): { message: string; detail: string } {
  if (error instanceof WorkerDownError)
    return { message: error.message, detail: `It was tried twice and is left alone now. ${error.detail}` };
  if (error instanceof DomainError) return error;
  console.error(error);
  return {
    message: 'The work could not be finished.',
    detail: error instanceof Error ? error.message : String(error),
  };
}
