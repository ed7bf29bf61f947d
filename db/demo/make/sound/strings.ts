import { sampleRateHz } from '../voice';
import { addInto, fill, hissing, type Samples, samplesOf, soften } from './samples';

/** The open E chord, lowest string first, in hertz at equal temperament with A at 440. */
const chordHz = [82.407, 123.471, 164.814, 207.652, 246.942, 329.628];
const ringMs = 4300;
const betweenStringsMs = 42;

/**
 * A plucked string after Karplus and Strong (Computer Music Journal 7:2, 1983): a burst of noise runs round
 * a delay line as long as one period and is averaged with its neighbour on each round.
 */
export function pluck(frequencyHz: number, ms: number, seed: number): Samples {
  const period = Math.round(sampleRateHz / frequencyHz);
  const loop = soften(Float32Array.from({ length: period }, hissing(seed)), 0.35);
  const keep = 0.9985;
  let at = 0;
  return fill(ms, () => {
    const next = (at + 1) % period;
    const sample = loop[at] ?? 0;
    loop[at] = keep * 0.5 * (sample + (loop[next] ?? 0));
    at = next;
    return sample;
  });
}

/** The sound check: one slow strum through a small, mellow amplifier, faded at its end. */
export function strum(): Samples {
  const chord = fill(ringMs, () => 0);
  for (const [i, hertz] of chordHz.entries())
    addInto(chord, pluck(hertz, ringMs, 100 + i), i * betweenStringsMs);
  const fadeFrom = samplesOf(ringMs - 600);
  const amplified = soften(chord, 0.3).map((sample) => Math.tanh(1.1 * sample));
  return amplified.map(
    (sample, i) => sample * Math.min(1, (amplified.length - i) / (amplified.length - fadeFrom)),
  );
}
