import { DomainError } from '@/shared/problem';
import type { WorkshopTaskKind } from '@/shared/tasks';
import { CancelledError, type OnProgress } from './lane';

/** Told by own work: the part done, 0 to 1, and words for the person who waits. */
interface OwnWatch {
  /** Aborted when the work is called off or the program ends: it ends at its next step. */
  signal: AbortSignal;
  report(progress: number, message: string): void;
}

/** Long work of the server's own. Gives words for the person who waited. Rejects with a DomainError. */
export type OwnRunner = (payload: unknown, watch: OwnWatch) => Promise<string>;
export type OwnRunners = Record<WorkshopTaskKind, OwnRunner>;

/**
 * Long work that writes to the record and so is done by the server itself, in short steps between which other requests
 * get their turn. What reads recordings is asked of the workers.
 */
export class OwnLane {
  readonly pid = undefined;
  readonly #runners: OwnRunners | undefined;
  #off: AbortController | null = null;

  constructor(runners: OwnRunners | undefined) {
    this.#runners = runners;
  }

  async run(
    kind: WorkshopTaskKind,
    payload: unknown,
    onProgress: OnProgress = () => undefined,
  ): Promise<unknown> {
    if (!this.#runners)
      throw new DomainError('unavailable', 'This work is not done here.', 'Start the program anew.');
    const off = new AbortController();
    this.#off = off;
    try {
      // Work that waited from before begins once the program has started.
      await new Promise((resolve) => setImmediate(resolve));
      off.signal.throwIfAborted();
      return await this.#runners[kind](payload, { signal: off.signal, report: onProgress });
    } catch (error) {
      throw off.signal.aborted ? new CancelledError() : error;
    } finally {
      this.#off = null;
    }
  }

  cancel(): void {
    this.#off?.abort();
  }

  /** Work under way ends at its next step. */
  stop(): void {
    this.cancel();
  }
}
