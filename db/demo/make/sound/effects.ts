import { noise } from '../scene/geometry';
import type { SoundEffect } from '../takes/script';
import { fill, hissing, type Samples, sharpen, soften } from './samples';
import { strum } from './strings';

const turn = 2 * Math.PI;

/** A probe tip on metal. */
function tick(): Samples {
  const hiss = hissing(1);
  return fill(
    60,
    (s) => 0.5 * hiss() * Math.exp(-s * 900) + 0.16 * Math.sin(turn * 3700 * s) * Math.exp(-s * 160),
  );
}

/** A thing laid on the wooden bench. */
function clack(): Samples {
  const hiss = hissing(2);
  return fill(220, (s) => {
    const wood = 0.5 * Math.sin(turn * 190 * s) + 0.3 * Math.sin(turn * 410 * s);
    return wood * Math.exp(-s * 38) + 0.35 * hiss() * Math.exp(-s * 300);
  });
}

/** Steel on a pole piece. */
function tap(): Samples {
  const hiss = hissing(3);
  return fill(160, (s) => {
    const ring = 0.3 * Math.sin(turn * 2150 * s) + 0.2 * Math.sin(turn * 3310 * s);
    return ring * Math.exp(-s * 70) + 0.45 * hiss() * Math.exp(-s * 420);
  });
}

/** The continuity tone of the meter. */
function beep(): Samples {
  return fill(320, (s) => 0.2 * Math.sin(turn * 2400 * s) * Math.min(1, s * 200, (0.32 - s) * 200));
}

/** A broken joint through an amplifier: sparse bursts that thin out. */
function crackle(lengthMs: number): Samples {
  const random = noise(5);
  let burst = 0;
  const raw = fill(lengthMs, (s) => {
    const rest = 1 - (s * 1000) / lengthMs;
    if (random() < 0.0016 * rest) burst = 0.5 + 0.5 * random();
    burst *= 0.985;
    return burst * (random() * 2 - 1);
  });
  return soften(raw, 0.45);
}

/** Flux boiling off under the iron. */
function hiss(lengthMs: number): Samples {
  const white = hissing(6);
  const sputter = noise(7);
  const lengthS = lengthMs / 1000;
  let spit = 0;
  const raw = fill(lengthMs, (s) => {
    if (sputter() < 0.0004) spit = 1;
    spit *= 0.9985;
    const swell = Math.min(1, s * 5) * Math.min(1, (lengthS - s) * 1.6);
    return white() * swell * (0.16 + 0.14 * spit);
  });
  return sharpen(soften(raw, 0.7), 0.25);
}

export function effect(sound: SoundEffect): Samples {
  switch (sound.kind) {
    case 'tick':
      return tick();
    case 'clack':
      return clack();
    case 'tap':
      return tap();
    case 'beep':
      return beep();
    case 'strum':
      return strum();
    case 'crackle':
      return crackle(sound.lengthMs);
    case 'hiss':
      return hiss(sound.lengthMs);
  }
}

/** A quiet workshop: soft air and a trace of mains hum under it. */
export function roomTone(ms: number): Samples {
  const air = soften(fill(ms, hissing(8)), 0.06).map((sample) => sample * 0.003);
  const hum = fill(ms, (s) => 0.0004 * Math.sin(turn * 50 * s) + 0.0003 * Math.sin(turn * 100 * s));
  return air.map((sample, i) => sample + (hum[i] ?? 0));
}
