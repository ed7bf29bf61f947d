import { type FileHandle, open } from 'node:fs/promises';

/** Has a file brought to disk while it is still being written, so that the end need not wait for all of it. */
export class EarlySync {
  readonly #file: FileHandle;
  #under: Promise<void> | null = null;
  #problem: unknown = null;

  static async of(path: string): Promise<EarlySync> {
    return new EarlySync(await open(path, 'r+'));
  }

  private constructor(file: FileHandle) {
    this.#file = file;
  }

  /** Begins another round unless one is under way; throws what the last one ran into. */
  nudge(): void {
    if (this.#problem) throw this.#problem;
    this.#under ??= this.#file
      .datasync()
      .catch((error: unknown) => {
        this.#problem = error;
      })
      .finally(() => {
        this.#under = null;
      });
  }

  async close(): Promise<void> {
    await this.#under;
    await this.#file.close();
  }
}
