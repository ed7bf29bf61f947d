import { type ChildProcess, fork } from 'node:child_process';
import { DomainError } from '@/shared/problem';
import { type Order, type Report, type RunKind, reportSchema } from './protocol';

export interface LaneOptions {
  /** The bundled worker script. */
  worker: string;
  /** Resident size at which the worker is ended. */
  mostResidentBytes: number;
  /** Time without a word from the worker after which it is ended. */
  mostSilentMs: number;
}

/** The work was called off. */
export class CancelledError extends Error {}

/** The worker went down over its work, or had to be ended. */
export class WorkerDownError extends DomainError {
  readonly why: 'ended' | 'hung' | 'too large';

  constructor(why: WorkerDownError['why']) {
    const title = {
      ended: 'The decoder went down over this recording.',
      hung: 'The decoder got stuck on this recording.',
      'too large': 'This recording asks for too much memory.',
    }[why];
    super(
      'unavailable',
      title,
      'The file may be damaged: copy it from the camera again. The rest of the program goes on.',
    );
    this.why = why;
  }
}

class NotStartingError extends DomainError {
  constructor() {
    super(
      'unavailable',
      'The part that reads recordings does not start.',
      'Install again with “npm ci”. Its own messages stand in the window in which the program was started.',
    );
  }
}

export type OnProgress = (progress: number, partial: unknown) => void;

interface Running {
  id: number;
  heardAt: number;
  cancelledAt: number | null;
  onProgress: OnProgress;
  resolve: (result: unknown) => void;
  reject: (error: Error) => void;
}

const lookEveryMs = 250;
/** A look that comes so late means that the whole machine slept. */
const sleptMs = 5000;
/** Work that does not stop when it is called off is stopped by ending the worker. */
const cancelGraceMs = 3000;

/** One worker process: started when it is needed, watched, and started again after it went down. */
export class Lane {
  readonly #options: LaneOptions;
  #process: ChildProcess | null = null;
  #ready = false;
  #running: Running | null = null;
  #watch: NodeJS.Timeout | null = null;
  #lookedAt = 0;
  #runs = 0;

  constructor(options: LaneOptions) {
    this.#options = options;
  }

  get pid(): number | undefined {
    return this.#process?.pid;
  }

  /** Rejects with the runner's DomainError, a CancelledError or a WorkerDownError. */
  run(kind: RunKind, payload: unknown, onProgress: OnProgress = () => undefined): Promise<unknown> {
    if (this.#running) throw new Error('A lane does one piece of work at a time');
    return new Promise((resolve, reject) => {
      const now = performance.now();
      const id = ++this.#runs;
      this.#running = { id, heardAt: now, cancelledAt: null, onProgress, resolve, reject };
      this.#process ??= this.#start();
      this.#send({ type: 'run', id, kind, payload });
      this.#lookedAt = now;
      this.#watch = setInterval(() => this.#look(), lookEveryMs);
    });
  }

  /** Calls off the work under way. */
  cancel(): void {
    if (!this.#running) return;
    this.#running.cancelledAt ??= performance.now();
    this.#send({ type: 'cancel', id: this.#running.id });
  }

  /** Ends the process; work under way ends as called off. */
  stop(): void {
    this.#down(new CancelledError());
  }

  #start(): ChildProcess {
    this.#ready = false;
    const child = fork(this.#options.worker, { serialization: 'advanced', execArgv: [] });
    child.on('message', (message) => this.#hear(child, reportSchema.parse(message)));
    const gone = (error: Error) => {
      if (child === this.#process) this.#down(error);
    };
    // A process that was ended from outside before its first word did start.
    child.on('exit', (_code, signal) =>
      gone(this.#ready || signal !== null ? new WorkerDownError('ended') : new NotStartingError()),
    );
    child.on('error', () => gone(new NotStartingError()));
    return child;
  }

  #hear(child: ChildProcess, report: Report): void {
    if (child !== this.#process) return;
    this.#ready = true;
    const running = this.#running;
    if (report.type === 'ready' || running?.id !== report.id) return;
    running.heardAt = performance.now();
    if (report.type === 'progress')
      this.#progress(running, report.progress, report.residentBytes, report.partial);
    else if (report.type === 'done') this.#over().resolve(report.result);
    else if (report.type === 'cancelled') this.#over().reject(new CancelledError());
    else
      this.#over().reject(new DomainError(report.problem.kind, report.problem.title, report.problem.detail));
  }

  #progress(running: Running, progress: number, residentBytes: number, partial: unknown): void {
    if (residentBytes > this.#options.mostResidentBytes) this.#down(new WorkerDownError('too large'));
    else if (running.cancelledAt === null) this.#pass(() => running.onProgress(progress, partial));
  }

  /** What goes wrong in writing progress down ends the work, not the server. */
  #pass(tell: () => void): void {
    try {
      tell();
    } catch (error) {
      this.#down(error instanceof Error ? error : new Error(String(error)));
    }
  }

  #look(): void {
    const running = this.#running;
    const now = performance.now();
    if (running && now - this.#lookedAt > sleptMs) running.heardAt = now;
    this.#lookedAt = now;
    if (!running) return;
    if (running.cancelledAt !== null && now - running.cancelledAt > cancelGraceMs)
      this.#down(new CancelledError());
    else if (now - running.heardAt > this.#options.mostSilentMs) this.#down(new WorkerDownError('hung'));
  }

  /** Ends the process and with it what it was doing; the next work starts a new one. */
  #down(error: Error): void {
    const child = this.#process;
    this.#process = null;
    child?.kill('SIGKILL');
    if (!this.#running) return;
    const calledOff = this.#running.cancelledAt !== null;
    this.#over().reject(calledOff ? new CancelledError() : error);
  }

  #over(): Running {
    const running = this.#running;
    if (!running) throw new Error('Nothing is under way');
    this.#running = null;
    if (this.#watch) clearInterval(this.#watch);
    this.#watch = null;
    return running;
  }

  #send(order: Order): void {
    // A process that has just gone is noticed by its exit, not here.
    this.#process?.send(order, () => undefined);
  }
}
