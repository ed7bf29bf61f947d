import { noise } from '../scene/geometry';
import { sampleRateHz } from '../voice';

/** Sound as samples at 48 kHz between -1 and 1. */
export type Samples = Float32Array;

export function samplesOf(ms: number): number {
  return Math.round((ms / 1000) * sampleRateHz);
}

/** Fills `ms` of sound from a function of the time in seconds. */
export function fill(ms: number, wave: (seconds: number) => number): Samples {
  return Float32Array.from({ length: samplesOf(ms) }, (_, i) => wave(i / sampleRateHz));
}

/** White noise, the same at every run. */
export function hissing(seed: number): () => number {
  const random = noise(seed);
  return () => random() * 2 - 1;
}

/** One-pole low-pass: `share` of the new sample is let in, 0 to 1. */
export function soften(samples: Samples, share: number): Samples {
  let held = 0;
  return samples.map((sample) => {
    held += share * (sample - held);
    return held;
  });
}

/** What the low-pass takes away. */
export function sharpen(samples: Samples, share: number): Samples {
  const low = soften(samples, share);
  return samples.map((sample, i) => sample - (low[i] ?? 0));
}

/** Adds a sound into a longer one at `atMs`; what reaches past its end is cut. */
export function addInto(target: Samples, sound: Samples, atMs: number, gain = 1): void {
  const start = samplesOf(atMs);
  const end = Math.min(sound.length, target.length - start);
  for (let i = 0; i < end; i += 1) target[start + i] = (target[start + i] ?? 0) + (sound[i] ?? 0) * gain;
}
