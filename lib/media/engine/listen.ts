import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { dirname } from 'node:path';
import { Frame, type Stream } from 'node-av/lib';
import { isSpeechModelFile } from '../model-store';
import type { ListenResult } from '../results';
import { endSeconds } from './duration';
import { problems } from './errors';
import { FilterChain, filterValue } from './filter-chain';
import { clockOf, type Input, withInput } from './input';
import { decode, openDecoder } from './native';
import { Pace, type Watch } from './pace';
import { soundSource } from './viewing-copy';

/** What the models were taught on: 16 000 samples a second, one channel. */
const modelRateHz = 16_000;
/** Sound heard at once: models were taught on half a minute, and lines come as often as this. */
const heardAtOnceSeconds = 20;

/**
 * Has a speech model (a Whisper model in ggml layout) listen to the sound, by FFmpeg's `whisper` filter. Lines come as
 * they are heard. Throws a DomainError without sound, or without a model that can be used.
 * @param model path of the model file
 * @param heard path of the file that the filter writes its lines into; it goes when the work ends
 */
export function listen(
  path: string,
  model: string,
  heard: string,
  watch: Watch<ListenResult>,
): Promise<ListenResult> {
  return withInput(path, async (input) => {
    if (!input.sound) throw problems.noSound();
    if (!isSpeechModelFile(model)) throw problems.noModel();
    mkdirSync(dirname(heard), { recursive: true });
    // What a worker that was ended in the middle of an earlier listening has left.
    rmSync(heard, { force: true });
    try {
      return await hear(input, input.sound, path, model, heard, new Pace(watch));
    } finally {
      rmSync(heard, { force: true });
    }
  });
}

async function hear(
  input: Input,
  stream: Stream,
  path: string,
  model: string,
  heard: string,
  pace: Pace<ListenResult>,
): Promise<ListenResult> {
  const decoder = openDecoder(stream, 1);
  if (!decoder) throw problems.nothingDecodes();
  // Taken once: what a stream tells of its start may change while others are discarded.
  const zeroSeconds = input.zeroSeconds;
  const totalSeconds = (await endSeconds(input, path, pace)) - zeroSeconds;
  const secondsAt = clockOf(stream);
  const frame = new Frame();
  frame.alloc();
  let chain: FilterChain | null = null;
  let startSeconds = 0;
  let seconds = 0;
  const result = () => ({ captions: readSoFar(heard), offsetMs: Math.round(startSeconds * 1000) });
  const use = (decoded: Frame) => {
    seconds = (secondsAt(decoded.bestEffortTimestamp) ?? zeroSeconds + seconds) - zeroSeconds;
    if (!chain) {
      chain = ears(decoded, stream, model, heard);
      startSeconds = seconds;
    }
    chain.push(decoded, () => undefined);
  };
  try {
    input.keepOnly(stream);
    while (input.read()) {
      decode(decoder, input.packet, frame, use);
      if (pace.due) await pace.rest(seconds / totalSeconds || 0, result());
    }
    decode(decoder, null, frame, use);
    // The chain is made in a callback, which the compiler does not follow.
    (chain as FilterChain | null)?.push(null, () => undefined);
  } finally {
    (chain as FilterChain | null)?.free();
    frame.free();
    decoder.freeContext();
  }
  return result();
}

function ears(first: Frame, stream: Stream, model: string, heard: string): FilterChain {
  const { num, den } = stream.timeBase;
  const filters =
    // Counted from the first sound: what lies before 0 cannot be written in SubRip.
    `asetpts=PTS-STARTPTS,aresample=${modelRateHz},aformat=sample_fmts=flt:channel_layouts=mono,` +
    // English is what proposals are read from; to guess the language, a model would look at every piece once more.
    `whisper=model=${filterValue(model)}:language=en:use_gpu=false:queue=${heardAtOnceSeconds}:` +
    `destination=${filterValue(heard)}:format=srt`;
  try {
    return new FilterChain('abuffer', soundSource(first, `${num}/${den}`), filters);
  } catch {
    // The model is the one thing here that comes from outside.
    throw problems.noModel();
  }
}

/** The filter writes its lines into a file; before the first one there may be none. */
function readSoFar(path: string): string {
  try {
    return readFileSync(path, 'utf8');
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return '';
    throw error;
  }
}
