import type { Frame } from 'node-av/lib';
import type { CutLoudness } from '@/shared/cut-engine';
import { FilterChain } from '../filter-chain';
import { SampleFrames } from './sample-frames';
import type { SampleSink } from './sound-line';
import { type SoundFormat, samplesSource } from './sound-mixer';

/** EBU R 128 asks for no more than −1 dBTP. */
const mostTruePeakDbtp = -1;
/** The limiter looks at samples only: true peaks lie a little above them. */
const limitDbfs = -2;

/** What is done to the whole sound. */
export interface Levelling {
  gainDb: number;
  limited: boolean;
}

/** One gain for the whole sound, so that nothing pumps; limited only where peaks would otherwise go too high. */
export function levelling(measured: CutLoudness, lufs: number): Levelling {
  if (measured.integratedLufs === null) return { gainDb: 0, limited: false };
  const gainDb = lufs - measured.integratedLufs;
  return { gainDb, limited: (measured.truePeakDbtp ?? Number.NEGATIVE_INFINITY) + gainDb > mostTruePeakDbtp };
}

/** Levels samples and hands them on in frames of one size; at the end, null. */
export class LevelledFrames implements SampleSink {
  readonly #frames: SampleFrames;
  readonly #gain: number;
  readonly #limiter: FilterChain | null;
  readonly #use: (frame: Frame | null) => void;

  constructor(
    format: SoundFormat,
    size: number,
    { gainDb, limited }: Levelling,
    use: (frame: Frame | null) => void,
  ) {
    this.#gain = 10 ** (gainDb / 20);
    this.#limiter = limited ? limiterOf(format, size) : null;
    this.#use = use;
    this.#frames = new SampleFrames(format, size, (frame) => this.#hand(frame));
  }

  get count(): number {
    return this.#frames.count;
  }

  add(planes: readonly Float32Array[], first: number, end: number): void {
    if (this.#gain !== 1) for (const plane of planes) amplify(plane, first, end, this.#gain);
    this.#frames.add(planes, first, end);
  }

  finish(): void {
    this.#frames.finish();
    this.#limiter?.push(null, this.#use);
    this.#use(null);
  }

  free(): void {
    this.#frames.free();
    this.#limiter?.free();
  }

  #hand(frame: Frame): void {
    if (this.#limiter) this.#limiter.push(frame, this.#use);
    else this.#use(frame);
  }
}

function amplify(plane: Float32Array, first: number, end: number, gain: number): void {
  for (let i = first; i < end; i++) plane[i] = (plane[i] ?? 0) * gain;
}

function limiterOf(format: SoundFormat, size: number): FilterChain {
  const limit = 10 ** (limitDbfs / 20);
  return new FilterChain(
    'abuffer',
    samplesSource(format),
    `alimiter=limit=${limit}:level=disabled:attack=5:release=50:latency=true,aformat=sample_fmts=fltp,asetnsamples=n=${size}:p=0`,
  );
}
