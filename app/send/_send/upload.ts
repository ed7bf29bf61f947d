import { DetailedError, defaultOptions, Upload } from 'tus-js-client';
import { CallError, call } from '@/app/_parts/call';
import type { JobId } from '@/shared/ids';
import { problemSchema } from '@/shared/problem';
import {
  type FinishedUpload,
  finishedUploadSchema,
  type UploadMetadata,
  uploadsPath,
} from '@/shared/uploads';
import { sha256OfBlob } from './hash';

/** What is sent, and by what it is known again when it is picked once more after the page was left. */
export interface Parcel {
  jobId: JobId;
  file: File;
  /** The same for the same recording and part, another for any other. */
  key: string;
}

export interface Sent {
  onBytes: (bytes: number) => void;
  /** The network is gone; it is tried again by itself. */
  onWaiting: () => void;
  /** All has arrived; so many bytes have been hashed on this side. */
  onChecking: (bytes: number) => void;
  onDone: (finished: FinishedUpload) => void;
  onRefused: (error: unknown) => void;
}

/** Between two tries while the bench machine does not answer. */
const againMs = 4_000;

/**
 * One recording on its way to the bench machine by tus 1.0: goes on where it stopped, also after the page was
 * loaded again, and ends with both sides having hashed the same bytes.
 */
export class Sending {
  private readonly upload: Upload;
  private readonly leaving = new AbortController();
  private readonly hash: Promise<string>;
  private hashedBytes = 0;
  private again: ReturnType<typeof setTimeout> | undefined;
  private readonly whenOnline = () => this.goOn();
  private paused = false;
  /** Every byte has arrived: what is left is to have them checked. */
  private whole = false;

  constructor(
    { jobId, file, key }: Parcel,
    private readonly tell: Sent,
  ) {
    const metadata: Record<keyof UploadMetadata, string> = {
      job: jobId,
      filename: file.name,
      lastModified: String(file.lastModified),
    };
    this.upload = new Upload(file, {
      endpoint: new URL(uploadsPath, location.href).href,
      metadata,
      fingerprint: async () => `benchtake ${jobId} ${key}`,
      // It is forgotten once it has been checked, not already when its last byte has gone.
      removeFingerprintOnSuccess: false,
      retryDelays: null,
      onProgress: (bytes) => tell.onBytes(bytes),
      onError: (error) => this.stopped(error),
      onSuccess: () => void this.finish(),
    });
    this.hash = sha256OfBlob(file, this.leaving.signal, (bytes) => {
      this.hashedBytes = bytes;
      if (this.whole) tell.onChecking(bytes);
    });
    // Waited for in finish(); until then a failure must not count as unseen.
    this.hash.catch(() => {});
    window.addEventListener('online', this.whenOnline);
  }

  async start(): Promise<void> {
    const [before] = await this.upload.findPreviousUploads();
    if (before) this.upload.resumeFromPreviousUpload(before);
    if (!this.paused && !this.leaving.signal.aborted) this.upload.start();
  }

  async pause(): Promise<void> {
    this.paused = true;
    clearTimeout(this.again);
    await this.upload.abort();
  }

  resume(): void {
    this.paused = false;
    this.upload.start();
  }

  /** Ends it; what has arrived is thrown away, now or, where the bench machine cannot be told, within a week. */
  async cancel(): Promise<void> {
    this.leave();
    await this.upload.abort(true).catch(() => {});
    await this.forget();
  }

  /** The page is left: what has arrived stays, to go on with another time. */
  leave(): void {
    this.paused = true;
    clearTimeout(this.again);
    window.removeEventListener('online', this.whenOnline);
    this.leaving.abort();
    void this.upload.abort();
  }

  private stopped(error: unknown): void {
    if (this.paused) return;
    const refused = refusalIn(error);
    if (refused) {
      this.tell.onRefused(refused);
      return;
    }
    this.tell.onWaiting();
    clearTimeout(this.again);
    this.again = setTimeout(() => this.goOn(), againMs);
  }

  private goOn(): void {
    if (this.paused || this.again === undefined) return;
    clearTimeout(this.again);
    this.again = undefined;
    if (this.whole) void this.finish();
    else this.upload.start();
  }

  private async finish(): Promise<void> {
    this.whole = true;
    this.tell.onChecking(this.hashedBytes);
    try {
      const sha256 = await this.hash;
      const address = new URL(this.upload.url ?? '', location.href).pathname;
      const finished = await call('POST', `${address}/finish`, finishedUploadSchema, { sha256 });
      await this.forget();
      window.removeEventListener('online', this.whenOnline);
      this.tell.onDone(finished);
    } catch (error) {
      if (this.leaving.signal.aborted) return;
      if (error instanceof CallError && error.status === 0) this.stopped(error);
      else this.tell.onRefused(error);
    }
  }

  private async forget(): Promise<void> {
    for (const { urlStorageKey } of await this.upload.findPreviousUploads())
      await defaultOptions.urlStorage.removeUpload(urlStorageKey);
  }
}

/** What the server refused for good; null where trying again may help: no answer, or a fault of the moment. */
function refusalIn(error: unknown): Error | null {
  if (error instanceof CallError) return null;
  const answer = error instanceof DetailedError ? error.originalResponse : null;
  const status = answer?.getStatus() ?? 0;
  if (!(error instanceof DetailedError)) return error instanceof Error ? error : new Error(String(error));
  // 409: the two stand elsewhere, which asking again puts right; 423: the broken line still holds the file.
  if (!answer || status === 0 || status === 409 || status === 423 || (status >= 500 && status !== 507))
    return null;
  return asCallError(answer.getBody(), status);
}

function asCallError(body: string, status: number): CallError {
  const problem = body.startsWith('{') ? problemSchema.safeParse(JSON.parse(body)) : null;
  if (problem?.success) return new CallError(problem.data.title, problem.data.detail, status, problem.data);
  return new CallError('The bench machine refused the recording.', 'Send it once more.', status);
}
