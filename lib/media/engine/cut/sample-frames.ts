import { AV_SAMPLE_FMT_FLTP } from 'node-av/constants';
import { Frame } from 'node-av/lib';
import { check } from '../native';
import { layoutOf, planesOf, type SoundFormat } from './sound-mixer';

/** Collects samples into frames of one size and hands each on; the frame is used again afterwards. */
export class SampleFrames {
  readonly #frame = new Frame();
  readonly #format: SoundFormat;
  readonly #size: number;
  readonly #use: (frame: Frame) => void;
  #planes: Float32Array[] = [];
  #filled = 0;
  /** Samples taken so far. */
  count = 0;

  constructor(format: SoundFormat, size: number, use: (frame: Frame) => void) {
    this.#format = format;
    this.#size = size;
    this.#use = use;
    this.#frame.alloc();
    this.#renew();
  }

  /** Adds samples[first] up to samples[end - 1] of each plane. */
  add(planes: readonly Float32Array[], first: number, end: number): void {
    for (let at = first; at < end; ) {
      const length = Math.min(end - at, this.#size - this.#filled);
      for (const [channel, plane] of this.#planes.entries())
        plane.set((planes[channel] ?? plane).subarray(at, at + length), this.#filled);
      at += length;
      this.#advance(length);
    }
  }

  /** Hands on the last, shorter frame. */
  finish(): void {
    if (this.#filled > 0) this.#hand();
  }

  free(): void {
    this.#frame.free();
  }

  #advance(length: number): void {
    this.#filled += length;
    this.count += length;
    if (this.#filled === this.#size) this.#hand();
  }

  #hand(): void {
    this.#frame.nbSamples = this.#filled;
    this.#frame.pts = BigInt(this.count - this.#filled);
    this.#use(this.#frame);
    this.#filled = 0;
    // An encoder or a filter may still hold what it was given.
    if (!this.#frame.isWritable) this.#renew();
  }

  #renew(): void {
    this.#frame.unref();
    this.#frame.format = AV_SAMPLE_FMT_FLTP;
    this.#frame.sampleRate = this.#format.sampleRateHz;
    this.#frame.channelLayout = layoutOf(this.#format);
    this.#frame.nbSamples = this.#size;
    check(this.#frame.getBuffer(0), 'room for the sound');
    this.#planes = planesOf(this.#frame, this.#format.channels, this.#size);
  }
}
