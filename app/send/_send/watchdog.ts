import { CallError } from '@/app/_parts/call';

/** Gives up on work that is not wanted any more, or of which nothing has been heard for long. */
export class Watchdog {
  private bark: () => void = () => {};
  private timer: ReturnType<typeof setTimeout> | undefined;
  private patienceMs = 0;

  constructor(private readonly signal: AbortSignal) {}

  /** Something was heard. */
  alive(): void {
    clearTimeout(this.timer);
    this.timer = setTimeout(() => this.bark(), this.patienceMs);
  }

  /** @throws CallError after so much silence; the signal's reason where that was aborted */
  async over<T>(work: Promise<T>, patienceMs: number): Promise<T> {
    this.signal.throwIfAborted();
    this.patienceMs = patienceMs;
    const ended = new AbortController();
    const given = new Promise<never>((_, reject) => {
      this.signal.addEventListener('abort', () => reject(this.signal.reason), { signal: ended.signal });
      this.bark = () => reject(hanging(patienceMs));
    });
    this.alive();
    try {
      return await Promise.race([work, given]);
    } catch (error) {
      // What ffmpeg.wasm throws are plain texts.
      throw error instanceof Error ? error : new Error(String(error));
    } finally {
      clearTimeout(this.timer);
      this.bark = () => {};
      ended.abort();
    }
  }
}

function hanging(silenceMs: number): CallError {
  return new CallError(
    `Nothing was heard of the preparation for ${silenceMs / 1000} s, so it was ended.`,
    'Close other pages and try once more, choose a shorter part, or send the recording as it is.',
    0,
  );
}
