import type { SoundEffect, SpokenLine, TakeScript } from '../takes/script';
import { lengthMs } from '../voice';
import { effect, roomTone } from './effects';
import { addInto, type Samples } from './samples';

export type Voiced = SpokenLine & { samples: Samples; endMs: number };

/** Speaks every line of a take; a line that runs into the next one, or over the end, is an error. */
export function voiceLines(take: TakeScript, speak: (text: string) => Samples): Voiced[] {
  const voiced = take.lines.map((line) => {
    const samples = speak(line.text);
    return { ...line, samples, endMs: line.startMs + lengthMs(samples) };
  });
  for (const [i, line] of voiced.entries()) {
    const limitMs = voiced[i + 1]?.startMs ?? take.lengthMs;
    if (line.endMs > limitMs) {
      throw new Error(`${take.name}: "${line.text}" ends at ${line.endMs} ms, after ${limitMs} ms`);
    }
  }
  return voiced;
}

/** How loud each sound stands beside the voice. */
const gains: Record<SoundEffect['kind'], number> = {
  tick: 0.6,
  clack: 0.5,
  tap: 0.9,
  beep: 0.42,
  crackle: 1.1,
  hiss: 0.6,
  strum: 0.42,
};

/** Voice, tools and room of one take. */
export function mixTake(take: TakeScript, voiced: Voiced[]): Samples {
  const mix = roomTone(take.lengthMs);
  for (const line of voiced) addInto(mix, line.samples, line.startMs, 1);
  for (const sound of take.sounds) addInto(mix, effect(sound), sound.ms, gains[sound.kind]);
  return mix.map((sample) => Math.max(-1, Math.min(1, sample)));
}
