import { CallError } from '@/app/_parts/call';
import { sizeInWords } from '@/app/_parts/words';
import { type Engine, withEngine } from './engine';
import { type Part, shareOf } from './part';
import { copyArguments, leadMs, lookArguments, readLook } from './prepare-plan';

/** The result is made in memory, three times over at its end: beyond this a browser gives up in the middle. */
const mostPreparedBytes = 1_000_000_000;
/** Beyond this a phone may. */
export const heavyForPhonesBytes = 300_000_000;

/** A recording made ready, or why it cannot be and should be sent as it is. */
export interface Prepared {
  file: File;
  /** Milliseconds that it starts before the moment asked for; null where that cannot be told. */
  leadMs: number | null;
  keepsRecordedAt: boolean;
}

interface Watching {
  /** From 0 to 1; null where the length is not known. */
  onShare: (share: number | null) => void;
  signal: AbortSignal;
}

/** What ffmpeg.wasm cannot do with a recording: it can still be sent as it is. */
export class CannotPrepareError extends CallError {
  constructor(title: string, detail: string) {
    super(title, detail, 0);
  }
}

/**
 * Copies a part of a recording into an MP4 without place and device tags, here in the browser.
 * @throws CannotPrepareError where it is beyond what can be done here
 */
export async function prepare(file: File, part: Part, { onShare, signal }: Watching): Promise<Prepared> {
  let partMs: number | null = null;
  const onTime = (us: number) => onShare(partMs ? Math.min(1, Math.max(0, us / 1000 / partMs)) : null);
  return withEngine(file, { onTime, signal }, async (engine) => {
    const look = await lookAt(engine, engine.input);
    if (!look?.hasFilm) throw cannotOpen(file);
    const share = shareOf(part, look.durationMs);
    if (share === 0) throw emptyPart();
    refuseTooLarge(file.size * (share ?? 1));
    partMs = share === null || look.durationMs === null ? null : share * look.durationMs;
    const made = await engine.ffmpeg(copyArguments(engine.input, '/out.mp4', part, look.recordedAt));
    const bytes = made ? await engine.read('/out.mp4') : null;
    if (!bytes || bytes.length === 0) throw cannotCopy(engine.lastWords());
    const result = await lookAt(engine, '/out.mp4');
    if (!result?.hasFilm) throw emptyPart();
    return {
      file: new File([bytes], asMp4(file.name), {
        type: 'video/mp4',
        lastModified: file.lastModified,
      }),
      leadMs: leadMs(part, look.durationMs, result.durationMs),
      keepsRecordedAt: look.recordedAt !== null,
    };
  });
}

async function lookAt(engine: Engine, path: string) {
  const output = `/look${path.replaceAll('/', '-')}.json`;
  await engine.ffprobe(lookArguments(path, output));
  const written = await engine.read(output);
  return written ? readLook(new TextDecoder().decode(written)) : null;
}

function refuseTooLarge(bytes: number): void {
  if (bytes <= mostPreparedBytes) return;
  throw new CannotPrepareError(
    `The part is about ${sizeInWords(bytes)}: too large to prepare in a browser.`,
    `Choose a part of less than ${sizeInWords(mostPreparedBytes)}, or send the recording as it is.`,
  );
}

function cannotOpen(file: File): CannotPrepareError {
  return new CannotPrepareError(
    `“${file.name}” cannot be opened here.`,
    'Send it as it is: the bench machine knows more kinds of recordings. Place and device tags then stay in it.',
  );
}

function cannotCopy(lastWords: string): CannotPrepareError {
  return new CannotPrepareError(
    'The recording cannot be put into an MP4 as it is.',
    `Send it unprepared: place and device tags then stay in it. (${lastWords})`,
  );
}

function emptyPart(): CannotPrepareError {
  return new CannotPrepareError(
    'Nothing of the recording lies in that part.',
    'Look at the times: the part must lie within the recording.',
  );
}

function asMp4(name: string): string {
  const dot = name.lastIndexOf('.');
  return `${dot > 0 ? name.slice(0, dot) : name}.mp4`;
}
