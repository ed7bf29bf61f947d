/** ISO 16:1975: the standard tuning frequency, A in the treble stave. */
export const standardHz = 440;
const semitones = ['C', 'C#', 'D', 'D#', 'E', 'F', 'F#', 'G', 'G#', 'A', 'A#', 'B'] as const;
const flats: Readonly<Record<string, string>> = { Db: 'C#', Eb: 'D#', Gb: 'F#', Ab: 'G#', Bb: 'A#' };
const semitonesInOctave = 12;
const centsInSemitone = 100;
const octaveOfA = 4;

/** Cents from one frequency up to another; negative when it is flat. */
export function centsBetween(fromHz: number, toHz: number): number {
  return semitonesInOctave * centsInSemitone * Math.log2(toHz / fromHz);
}

/**
 * Frequency of a note in equal temperament.
 * @param note a letter, "#" or "b", and the octave counted from C: "E2", "Bb3"; A4 is the tuning note
 * @returns null when it is no such note
 */
export function noteHz(note: string, tuningHz = standardHz): number | null {
  const [, letter = '', octave] = /^([A-G][#b]?)(-?\d)$/.exec(note) ?? [];
  const place = semitones.findIndex((name) => name === (flats[letter] ?? letter));
  if (octave === undefined || place < 0) return null;
  const steps = place - semitones.indexOf('A') + semitonesInOctave * (Number(octave) - octaveOfA);
  return tuningHz * 2 ** (steps / semitonesInOctave);
}

/** The note nearest to a frequency in equal temperament, and how far off it is; negative cents are flat. */
export function nearestNote(hz: number, tuningHz = standardHz): { note: string; cents: number } | null {
  if (!(hz > 0) || !Number.isFinite(hz)) return null;
  const fromA = centsBetween(tuningHz, hz) / centsInSemitone;
  const steps = Math.round(fromA);
  const fromC = steps + semitones.indexOf('A');
  const letter = semitones[((fromC % semitonesInOctave) + semitonesInOctave) % semitonesInOctave] ?? 'A';
  const octave = octaveOfA + Math.floor(fromC / semitonesInOctave);
  return { note: `${letter}${octave}`, cents: (fromA - steps) * centsInSemitone };
}
