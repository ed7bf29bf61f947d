import { setImmediate } from 'node:timers/promises';

/** Who asked for the work: is told how far it is, and may call it off. */
export interface Watch<Found = never> {
  readonly signal: AbortSignal;
  /** @param progress part done, 0 to 1 */
  report(progress: number, partial?: Found): void;
}

/** How long native calls may keep the event loop waiting. */
const breathMs = 150;

/** Lets long synchronous work stop for breath, so that a cancel gets through and progress gets out. */
export class Pace<Found = never> {
  readonly #watch: Watch<Found>;
  #restAt = performance.now() + breathMs;

  constructor(watch: Watch<Found>) {
    this.#watch = watch;
  }

  get due(): boolean {
    return performance.now() >= this.#restAt;
  }

  /** Throws the signal's reason when the work was called off. */
  async rest(progress: number, partial?: Found): Promise<void> {
    // Without a known length, how far it is cannot be told.
    this.#watch.report(Number.isFinite(progress) ? Math.min(1, Math.max(0, progress)) : 0, partial);
    await setImmediate();
    this.#watch.signal.throwIfAborted();
    this.#restAt = performance.now() + breathMs;
  }
}
