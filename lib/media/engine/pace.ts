import { setImmediate } from 'node:timers/promises';

/** Who asked for the work: is told how far it is, and may call it off. */
export interface Watch<Partial = never> {
  readonly signal: AbortSignal;
  /** @param progress part done, 0 to 1 */
  report(progress: number, partial?: Partial): void;
}

/** How long native calls may keep the event loop waiting. */
const breathMs = 150;

/** Lets long synchronous work stop for breath, so that a cancel gets through and progress gets out. */
export class Pace<Partial = never> {
  readonly #watch: Watch<Partial>;
  #restAt = performance.now() + breathMs;

  constructor(watch: Watch<Partial>) {
    this.#watch = watch;
  }

  get due(): boolean {
    return performance.now() >= this.#restAt;
  }

  /** Throws the signal's reason when the work was called off. */
  async rest(progress: number, partial?: Partial): Promise<void> {
    this.#watch.report(Math.min(1, Math.max(0, progress)), partial);
    await setImmediate();
    this.#watch.signal.throwIfAborted();
    this.#restAt = performance.now() + breathMs;
  }
}
