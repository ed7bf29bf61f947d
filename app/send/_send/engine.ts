import type { FFmpeg } from '@ffmpeg/ffmpeg';
import { CallError } from '@/app/_parts/call';
import { enginePath } from '@/shared/uploads';
import { Watchdog } from './watchdog';

/** Silence after which it is taken to hang: while loading over a slow network, and while working. */
const loadPatienceMs = 120_000;
const workPatienceMs = 30_000;

const input = '/in/recording';

/** ffmpeg.wasm for one piece of work, with the recording mounted: never read whole into memory. */
export interface Engine {
  /** Where the recording is found. */
  input: string;
  /** @returns whether it came to a good end */
  ffmpeg(words: string[]): Promise<boolean>;
  /** Whether it came to a good end, only what it wrote tells: its return code is always the same. */
  ffprobe(words: string[]): Promise<void>;
  /** A file that was written, or null. */
  read(path: string): Promise<Uint8Array<ArrayBuffer> | null>;
  /** What it said last. */
  lastWords(): string;
}

interface Watching {
  /** Microseconds of the recording that have gone through. */
  onTime: (us: number) => void;
  signal: AbortSignal;
}

/**
 * Loads ffmpeg.wasm afresh, does one piece of work with it and ends it: it does not outlive many pieces.
 * @throws CallError where it hangs or cannot be loaded; the signal's reason where that was aborted
 */
export async function withEngine<T>(
  file: File,
  { onTime, signal }: Watching,
  work: (engine: Engine) => Promise<T>,
): Promise<T> {
  signal.throwIfAborted();
  const { FFmpeg, FFFSType } = await library();
  const core = new FFmpeg();
  const watch = new Watchdog(signal);
  const said: string[] = [];
  core.on('log', ({ message }) => {
    watch.alive();
    said.push(message);
    if (said.length > 20) said.shift();
  });
  core.on('progress', ({ time }) => {
    watch.alive();
    onTime(time);
  });
  const doing = <R>(promise: Promise<R>) => watch.over(promise, workPatienceMs);
  try {
    const coreURL = `${location.origin}${enginePath}/core/ffmpeg-core.js`;
    await watch.over(core.load({ coreURL }), loadPatienceMs);
    await doing(core.createDir('/in'));
    await doing(core.mount(FFFSType.WORKERFS, { blobs: [{ name: 'recording', data: file }] }, '/in'));
    return await work({
      input,
      ffmpeg: async (words) => (await doing(core.exec(words))) === 0,
      ffprobe: async (words) => void (await doing(core.ffprobe(words))),
      read: (path) => doing(readIfThere(core, path)),
      lastWords: () => said.at(-1) ?? '',
    });
  } finally {
    core.terminate();
  }
}

/** Past the bundler, which cannot pack a worker that loads its own core. */
async function library(): Promise<typeof import('@ffmpeg/ffmpeg')> {
  try {
    return await import(
      /* webpackIgnore: true */ /* turbopackIgnore: true */ `${enginePath}/ffmpeg/index.js`
    );
  } catch {
    throw new CallError(
      'The part of Benchtake that prepares recordings could not be loaded.',
      'Is the bench machine still reachable? The recording can also be sent as it is.',
      0,
    );
  }
}

async function readIfThere(core: FFmpeg, path: string): Promise<Uint8Array<ArrayBuffer> | null> {
  const folder = await core.listDir('/');
  if (!folder.some(({ name }) => `/${name}` === path)) return null;
  const data = await core.readFile(path);
  // Read without an encoding it is bytes, in a buffer that was handed over and is shared with nobody.
  if (typeof data === 'string' || !(data.buffer instanceof ArrayBuffer)) return null;
  return new Uint8Array(data.buffer, data.byteOffset, data.byteLength);
}
