import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ClockTake, filmTimeOf, layOut, momentAt, stepFrom } from '@/lib/film';
import { takeIdSchema } from '@/shared/ids';

const takeId = (index: number) => takeIdSchema.parse(String(index).padStart(20, '0'));
const take = (
  index: number,
  durationMs: number,
  trimStartMs = 0,
  trimEndMs: number | null = null,
): ClockTake => ({
  id: takeId(index),
  durationMs,
  trimStartMs,
  trimEndMs,
});

const length = fc.oneof(fc.constant(0), fc.nat(20), fc.nat(11_000_000));
const anyTakes = fc
  .array(fc.record({ durationMs: length, trimStartMs: length, trimEndMs: fc.option(length) }), {
    maxLength: 12,
  })
  .map((takes) => takes.map((values, index): ClockTake => ({ id: takeId(index), ...values })));

describe('a film', () => {
  it('lays takes end to end from 0', () => {
    const film = layOut([take(1, 1000), take(2, 500, 100, 400), take(3, 0)]);
    expect(film.durationMs).toBe(1300);
    expect(film.takes.map((placed) => [placed.filmStartMs, placed.filmEndMs])).toEqual([
      [0, 1000],
      [1000, 1300],
      [1300, 1300],
    ]);
  });

  it('shows nothing when it is empty', () => {
    expect(momentAt(layOut([]), 0)).toBeNull();
    expect(momentAt(layOut([take(1, 0)]), 5)).toBeNull();
  });

  it('gives a seam to the take that begins there, and the end to the last take', () => {
    const film = layOut([take(1, 1000), take(2, 0), take(3, 500)]);
    expect(momentAt(film, 999)).toEqual({ takeId: takeId(1), ms: 999 });
    expect(momentAt(film, 1000)).toEqual({ takeId: takeId(3), ms: 0 });
    expect(momentAt(film, 1500)).toEqual({ takeId: takeId(3), ms: 500 });
    expect(momentAt(film, 99_999)).toEqual({ takeId: takeId(3), ms: 500 });
    expect(momentAt(film, -1)).toEqual({ takeId: takeId(1), ms: 0 });
  });

  it('says when a trim has cut a moment away, and where the nearest shown one is', () => {
    const film = layOut([take(1, 1000, 200, 800)]);
    expect(filmTimeOf(film, { takeId: takeId(1), ms: 100 })).toEqual({ filmMs: 0, shown: false });
    expect(filmTimeOf(film, { takeId: takeId(1), ms: 900 })).toEqual({ filmMs: 600, shown: false });
    expect(filmTimeOf(film, { takeId: takeId(9), ms: 0 })).toBeNull();
  });

  it('film time to moment and back is the same film time', () => {
    fc.assert(
      fc.property(anyTakes, fc.double({ min: 0, max: 1, noNaN: true }), (takes, share) => {
        const film = layOut(takes);
        const filmMs = Math.floor(share * film.durationMs);
        const moment = momentAt(film, filmMs);
        if (film.durationMs === 0) expect(moment).toBeNull();
        else expect(moment && filmTimeOf(film, moment)).toEqual({ filmMs, shown: true });
      }),
    );
  });

  it('a moment that is shown comes back as itself, whatever the order of the takes', () => {
    fc.assert(
      fc.property(anyTakes, fc.nat(), fc.nat(), (takes, whichTake, whichMs) => {
        const chosen = takes[whichTake % Math.max(1, takes.length)];
        const reversed = layOut([...takes].reverse());
        const placed = chosen && reversed.takes.find((candidate) => candidate.takeId === chosen.id);
        if (!placed || placed.endMs === placed.startMs) return;
        // The very end of a take is the seam, which belongs to the next one.
        const moment = {
          takeId: placed.takeId,
          ms: placed.startMs + (whichMs % (placed.endMs - placed.startMs)),
        };
        const at = filmTimeOf(reversed, moment);
        expect(at?.shown).toBe(true);
        expect(at && momentAt(reversed, at.filmMs)).toEqual(moment);
      }),
    );
  });

  it('is as long as what is kept of its takes, and never goes back', () => {
    fc.assert(
      fc.property(anyTakes, (takes) => {
        const film = layOut(takes);
        expect(film.takes.reduce((sum, placed) => sum + placed.endMs - placed.startMs, 0)).toBe(
          film.durationMs,
        );
        film.takes.forEach((placed, index) => {
          expect(placed.filmStartMs).toBe(film.takes[index - 1]?.filmEndMs ?? 0);
          expect(placed.filmEndMs).toBeGreaterThanOrEqual(placed.filmStartMs);
        });
      }),
    );
  });

  it('steps over the ends of takes', () => {
    const film = layOut([take(1, 1000), take(2, 500)]);
    expect(stepFrom(film, { takeId: takeId(1), ms: 990 }, 40)).toEqual({ takeId: takeId(2), ms: 30 });
    expect(stepFrom(film, { takeId: takeId(2), ms: 10 }, -40)).toEqual({ takeId: takeId(1), ms: 970 });
  });
});
