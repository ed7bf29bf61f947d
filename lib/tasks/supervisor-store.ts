import { EventEmitter } from 'node:events';
import type { Database } from '@/db/open';
import type { TaskId } from '@/shared/ids';
import { DomainError } from '@/shared/problem';
import { type Task, type TaskKind, type WorkshopTaskKind, workshopTaskKinds } from '@/shared/tasks';
import { bound, type TaskHandlers, type TaskPayload } from './handlers';
import { CancelledError, Lane, type LaneOptions, type OnProgress, WorkerDownError } from './lane';
import { OwnLane, type OwnRunners } from './own-lane';
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
  type TaskSubject,
} from './queue-store';

export interface TaskOptions {
  db: Database;
  /** The bundled worker. */
  worker: string;
  handlers: TaskHandlers;
  /** What the server does itself. */
  own?: OwnRunners;
  limits?: Partial<Omit<LaneOptions, 'worker'>>;
}

/**
 * Probes have a worker of their own, so that adding a recording never waits behind long work; so does listening, which
 * takes as long as the film and holds a whole speech model, and cutting, which somebody waits for at the end of a job.
 */
const lanes = {
  quick: ['probe'],
  long: ['sound', 'pictures', 'viewing-copy'],
  listening: ['listen'],
  cutting: ['cut'],
  own: workshopTaskKinds,
} as const satisfies Record<string, readonly TaskKind[]>;
type LaneName = keyof typeof lanes;
const laneNames = ['quick', 'long', 'listening', 'cutting', 'own'] as const;

/** What does one piece of work at a time: a worker process, or the server itself. */
interface WorkLane extends Pick<Lane, 'pid' | 'cancel' | 'stop'> {
  run(kind: RunKind | WorkshopTaskKind, payload: unknown, onProgress?: OnProgress): Promise<unknown>;
}

const usualLimits = { mostResidentBytes: 1_500_000_000, mostSilentMs: 60_000 };
/** Somebody waits for probes and stills: they are given up sooner. */
const mostQuickSilentMs = 20_000;
/** A large speech model thinks about half a minute of sound without a word, on a slow machine for minutes. */
const listeningLimits = { mostResidentBytes: 8_000_000_000, mostSilentMs: 900_000 };
/** Encoding holds more pictures at once than decoding does. */
const cuttingLimits = { mostResidentBytes: 3_000_000_000 };
const keptMs = 7 * 24 * 3_600_000;
/** Progress is written down this often, not more. */
const writeEveryMs = 250;

/** Does the work in the queue, and tells of it: event `task` with the task as it is. */
export class Supervisor extends EventEmitter<{ task: [Task] }> {
  readonly #db: Database;
  readonly #handlers: TaskHandlers;
  readonly #lanes: Record<LaneName | 'still', WorkLane>;
  readonly #doing = new Map<LaneName, Task>();
  readonly #ends = new Set<Promise<void>>();
  #lastAsked: Promise<unknown> = Promise.resolve();
  #stopped = false;

  constructor({ db, worker, handlers, own, limits }: TaskOptions) {
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
      cutting: new Lane({ ...usual, ...cuttingLimits, ...limits }),
      still: new Lane(quick),
      own: new OwnLane(own),
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
  enqueue(subject: TaskSubject, payload: TaskPayload = {}): Task {
    const task = this.#tell(insertTask(this.#db, subject, payload));
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
      .finally(() => bound(this.#handlers, task).onEnd())
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
    const { id, kind, recordingId } = task;
    if (recordingId && crashesOf(this.#db, recordingId) >= mostCrashes) throw new LeftAloneError();
    const handler = bound(this.#handlers, task);
    const payload = payloadOf(this.#db, id);
    let writtenAt = 0;
    const result = await this.#lanes[name].run(kind, handler.prepare(payload), (progress, partial) => {
      if (performance.now() - writtenAt < writeEveryMs) return;
      writtenAt = performance.now();
      if (partial !== undefined) handler.onProgress(partial);
      const message = partial === undefined ? '' : handler.sayProgress(partial);
      this.#tell(changeTask(this.#db, id, { progress, ...(message ? { message } : {}) }));
    });
    if (getTask(this.#db, id).state !== 'running') return;
    const said = handler.sayResult(result);
    this.#db.transaction(() => {
      handler.onResult(result, payload);
      const done = { state: 'done', progress: 1, endedAt: Date.now() } as const;
      changeTask(this.#db, id, { ...done, ...(said ? { message: said } : {}) });
    });
    this.#tell(getTask(this.#db, id));
  }

  #failed(task: Task, cause: unknown): void {
    const handler = bound(this.#handlers, task);
    const error = cause instanceof WorkerDownError ? (handler.whenDown() ?? cause) : cause;
    // Either the program is going down, and the task is taken up at the next start; or a person called it off.
    if (this.#stopped || error instanceof CancelledError || getTask(this.#db, task.id).state !== 'running')
      return;
    if (error instanceof WorkerDownError && this.#mayTryAgain(task)) {
      const message = `${error.message} Trying once more.`;
      this.#tell(changeTask(this.#db, task.id, { state: 'queued', progress: 0, message }));
      return;
    }
    const { message, detail } = inWords(error);
    const failed = { state: 'failed', message: `${message} ${detail}`, endedAt: Date.now() } as const;
    this.#tell(changeTask(this.#db, task.id, failed));
    handler.onFailure(message, detail);
  }

  #mayTryAgain({ recordingId }: Task): boolean {
    return recordingId !== null && countCrash(this.#db, recordingId) < mostCrashes;
  }

  #tell(task: Task): Task {
    this.emit('task', task);
    return task;
  }
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
