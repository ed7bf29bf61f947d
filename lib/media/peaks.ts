/** Zoom levels kept on disk, finest first; each coarser one divides the finest. */
export const peakLevels = [100, 20, 4] as const;
const finest = peakLevels[0];

export function peaksFileName(pairsPerSecond: number): string {
  return `peaks-${pairsPerSecond}.bin`;
}

/** Collects 16-bit samples into pairs (lowest, highest) of the finest level. Silence where nothing was added. */
export class PeakCollector {
  readonly #sampleRateHz: number;
  #bytes = new Int8Array(finest * 2 * 60);
  #pairs = 0;
  #cursor = 0;
  #lowest = 32767;
  #highest = -32768;

  constructor(sampleRateHz: number) {
    this.#sampleRateHz = sampleRateHz;
  }

  /** Samples placed so far, silence included. */
  get cursor(): number {
    return this.#cursor;
  }

  /** Whole pairs so far. */
  get pairs(): number {
    return this.#pairs;
  }

  /** Pairs from one place on, as bytes; a view that holds until the next `add`. */
  from(firstPair: number): Int8Array {
    return this.#bytes.subarray(firstPair * 2, this.#pairs * 2);
  }

  addSilence(count: number): void {
    this.#run(count, () => {
      this.#lowest = Math.min(this.#lowest, 0);
      this.#highest = Math.max(this.#highest, 0);
    });
  }

  /** Adds samples[first] up to samples[end - 1]. */
  add(samples: Int16Array, first: number, end: number): void {
    let at = first;
    this.#run(end - first, (length) => {
      let lowest = this.#lowest;
      let highest = this.#highest;
      for (const stop = at + length; at < stop; at++) {
        const sample = samples[at] ?? 0;
        if (sample < lowest) lowest = sample;
        if (sample > highest) highest = sample;
      }
      this.#lowest = lowest;
      this.#highest = highest;
    });
  }

  /** Closes the last, shorter pair. */
  finish(): void {
    if (this.#highest >= this.#lowest) this.#close();
  }

  #run(count: number, use: (length: number) => void): void {
    for (let left = count; left > 0; ) {
      const length = Math.min(left, this.#boundary() - this.#cursor);
      use(length);
      left -= length;
      this.#cursor += length;
      if (this.#cursor === this.#boundary()) this.#close();
    }
  }

  /** Place of the first sample that no longer belongs to the open pair. */
  #boundary(): number {
    return Math.ceil(((this.#pairs + 1) * this.#sampleRateHz) / finest);
  }

  #close(): void {
    if (this.#pairs * 2 === this.#bytes.length) {
      const longer = new Int8Array(this.#bytes.length * 2);
      longer.set(this.#bytes);
      this.#bytes = longer;
    }
    this.#bytes[this.#pairs * 2] = toByte(this.#lowest);
    this.#bytes[this.#pairs * 2 + 1] = toByte(this.#highest);
    this.#pairs += 1;
    this.#lowest = 32767;
    this.#highest = -32768;
  }
}

/**
 * Pairs of a coarser level out of pairs of the finest.
 * @param pairs whole groups, but for the last one when the sound is at its end
 */
export function coarser(pairs: Int8Array, pairsPerSecond: number): Int8Array {
  const group = (finest / pairsPerSecond) * 2;
  const out = new Int8Array(Math.ceil(pairs.length / group) * 2);
  for (let at = 0, to = 0; at < pairs.length; at += group, to += 2) {
    const part = pairs.subarray(at, at + group);
    out[to] = part.reduce((lowest, value) => Math.min(lowest, value), 127);
    out[to + 1] = part.reduce((highest, value) => Math.max(highest, value), -127);
  }
  return out;
}

/** Pairs of the finest level that make whole pairs of every level. */
export function wholeGroups(pairs: number): number {
  const largest = finest / Math.min(...peakLevels);
  return pairs - (pairs % largest);
}

/** 16-bit sample to -127 … 127. */
function toByte(sample: number): number {
  return Math.max(-127, Math.round(sample / 258));
}
