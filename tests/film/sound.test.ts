import { describe, expect, it } from 'vitest';
import { graduations, layOut, levelFor, soundOfFilm } from '@/lib/film';
import { takeIdSchema } from '@/shared/ids';

const first = takeIdSchema.parse('1'.repeat(20));
const second = takeIdSchema.parse('2'.repeat(20));

describe('the sound of a film', () => {
  it('lies on the film’s clock, trims left out, unknown sound flat', () => {
    const film = layOut([
      { id: first, durationMs: 1000, trimStartMs: 500, trimEndMs: null },
      { id: second, durationMs: 1000, trimStartMs: 0, trimEndMs: null },
    ]);
    const peaks = new Int8Array([-10, 10, -20, 20, -30, 30, -64, 127]);
    const sound = soundOfFilm(film, (takeId) => (takeId === first ? peaks : null), 4);
    expect([...sound.lowest]).toEqual([-30 / 128, -0.5, 0, 0, 0, 0]);
    expect([...sound.highest]).toEqual([30 / 128, 127 / 128, 0, 0, 0, 0]);
  });

  it('is drawn from the finest level that a long film can bear', () => {
    expect(levelFor(60_000, [4, 100, 20])).toBe(100);
    expect(levelFor(5 * 3_600_000, [4, 100, 20])).toBe(20);
    expect(levelFor(1000, [])).toBeNull();
  });
});

describe('the engraved scale', () => {
  it('carries times far enough apart to be read', () => {
    const marks = graduations(0, 60_000, 0.02);
    const long = marks.filter((mark) => mark.long).map((mark) => mark.ms);
    expect(long).toEqual([
      0, 5_000, 10_000, 15_000, 20_000, 25_000, 30_000, 35_000, 40_000, 45_000, 50_000, 55_000, 60_000,
    ]);
    expect(marks).toHaveLength(61);
  });

  it('draws what is in view only', () => {
    expect(graduations(3_600_000, 3_601_000, 1).length).toBeLessThan(60);
  });
});
