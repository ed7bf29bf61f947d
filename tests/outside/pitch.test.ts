import { describe, expect, it } from 'vitest';
import { centsBetween, nearestNote, noteHz, standardHz } from '@/lib/readings';

describe('pitch', () => {
  it('tunes to ISO 16: A in the treble stave is 440 Hz', () => {
    expect(standardHz).toBe(440);
    expect(noteHz('A4')).toBe(440);
  });

  /** Equal temperament on 440 Hz, as printed in tables of it (from memory): open strings, and the C of the middle. */
  it.each([
    ['E2', 82.41],
    ['A2', 110],
    ['D3', 146.83],
    ['G3', 196],
    ['B3', 246.94],
    ['E4', 329.63],
    ['C4', 261.63],
    ['E1', 41.2],
    ['Bb3', 233.08],
    ['G#4', 415.3],
  ])('%s is %d Hz', (note, hz) => {
    expect(noteHz(note)).toBeCloseTo(hz, 2);
    expect(nearestNote(hz)?.cents).toBeCloseTo(0, 0);
  });

  /** The just intervals in cents (A. J. Ellis's measure: 1200 to the octave), figures of the textbooks. */
  it.each([
    ['octave', 2, 1, 1200],
    ['fifth', 3, 2, 701.955],
    ['fourth', 4, 3, 498.045],
    ['major third', 5, 4, 386.314],
    ['minor third', 6, 5, 315.641],
    ['syntonic comma', 81, 80, 21.506],
  ])('a pure %s', (_, top, bottom, cents) => {
    expect(centsBetween(bottom, top)).toBeCloseTo(cents, 3);
    expect(centsBetween(top, bottom)).toBeCloseTo(-cents, 3);
  });
});
