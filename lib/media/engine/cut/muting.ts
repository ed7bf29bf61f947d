import type { CutSpan } from '@/shared/cut-engine';

/** 1 kHz at this peak: clearly heard, well below speech (about −26 dBFS). */
const tonePeak = 0.05;
const toneHz = 1000;
/** So that the tone does not click. */
const fadeSeconds = 0.005;

/** Makes spans of sound silent, or a tone, to the sample. Places are counted in samples from take time 0. */
export class Muting {
  readonly #spans: { from: number; to: number }[];
  readonly #tone: boolean;
  readonly #rateHz: number;

  constructor(mutes: readonly CutSpan[], muteWith: 'silence' | 'tone', rateHz: number) {
    this.#spans = mutes.map(({ fromMs, toMs }) => ({
      from: sampleAt(fromMs, rateHz),
      to: sampleAt(toMs, rateHz),
    }));
    this.#tone = muteWith === 'tone';
    this.#rateHz = rateHz;
  }

  /** @param at place of the first of `count` samples in each plane */
  apply(planes: readonly Float32Array[], at: number, count: number): void {
    for (const { from, to } of this.#spans) {
      const first = Math.max(0, from - at);
      const end = Math.min(count, to - at);
      if (first >= end) continue;
      for (const plane of planes) {
        if (this.#tone) this.#sound(plane.subarray(first, end), at + first - from, to - from);
        else plane.fill(0, first, end);
      }
    }
  }

  #sound(samples: Float32Array, into: number, length: number): void {
    const fade = Math.max(1, Math.min(fadeSeconds * this.#rateHz, length / 2));
    for (let i = 0; i < samples.length; i++) {
      const place = into + i;
      const level = tonePeak * Math.min(1, place / fade, (length - 1 - place) / fade);
      samples[i] = level * Math.sin((2 * Math.PI * toneHz * place) / this.#rateHz);
    }
  }
}

export function sampleAt(ms: number, rateHz: number): number {
  return Math.round((ms * rateHz) / 1000);
}
