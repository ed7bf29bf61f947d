import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ClockTake, chaptersOf, layOut } from '@/lib/film';
import { jobIdSchema, markerIdSchema, takeIdSchema } from '@/shared/ids';
import type { Marker } from '@/shared/markers';

const id = (index: number) => String(index).padStart(20, '0');
const takes: ClockTake[] = [
  { id: takeIdSchema.parse(id(1)), durationMs: 60_000, trimStartMs: 0, trimEndMs: null },
  { id: takeIdSchema.parse(id(2)), durationMs: 30_000, trimStartMs: 10_000, trimEndMs: null },
];
const marker = (title: string, take: 1 | 2, ms: number, isPublic = true): Marker => ({
  id: markerIdSchema.parse(id(ms % 1000)),
  jobId: jobIdSchema.parse(id(1)),
  takeId: takeIdSchema.parse(id(take)),
  kind: 'work',
  title,
  note: null,
  ms,
  endMs: null,
  public: isPublic,
});
const chapters = (markers: Marker[]) =>
  chaptersOf(layOut(takes), markers, 'A bass, crackling').map(({ startMs, title }) => [startMs, title]);

describe('chapters', () => {
  it('come from public markers in film order, each up to the next', () => {
    expect(chaptersOf(layOut(takes), [marker('Rewire', 2, 20_000), marker('Case open', 1, 0)], 'x')).toEqual([
      { startMs: 0, endMs: 70_000, title: 'Case open' },
      { startMs: 70_000, endMs: 80_000, title: 'Rewire' },
    ]);
  });

  it('begin at 0: a marker near the start opens the film, otherwise the job’s title does', () => {
    expect(chapters([marker('Case open', 1, 2_500)])).toEqual([[0, 'Case open']]);
    expect(chapters([marker('Meter out', 1, 20_000)])).toEqual([
      [0, 'A bass, crackling'],
      [20_000, 'Meter out'],
    ]);
  });

  it('leave out private markers and those that a trim has cut away', () => {
    expect(
      chapters([marker('Phone call', 1, 30_000, false), marker('Cut', 2, 5_000), marker('Kept', 1, 0)]),
    ).toEqual([[0, 'Kept']]);
  });

  it('share a chapter within one second, since the plain list tells whole seconds only', () => {
    expect(chapters([marker('A', 1, 0), marker('B', 1, 10_100), marker('C', 1, 10_900)])).toEqual([
      [0, 'A'],
      [10_100, 'B · C'],
    ]);
  });

  it('are none without public markers or without film', () => {
    expect(chapters([])).toEqual([]);
    expect(chaptersOf(layOut([]), [marker('A', 1, 0)], 'x')).toEqual([]);
  });

  it('always start at 0 and rise by whole seconds', () => {
    const times = fc.array(fc.record({ ms: fc.nat(60_000), take: fc.constantFrom<1 | 2>(1, 2) }), {
      minLength: 1,
      maxLength: 40,
    });
    fc.assert(
      fc.property(times, (moments) => {
        const made = chaptersOf(
          layOut(takes),
          moments.map(({ ms, take }) => marker('x', take, ms)),
          'x',
        );
        if (made.length === 0) return;
        expect(made[0]?.startMs).toBe(0);
        made.slice(1).forEach((chapter, index) => {
          expect(Math.floor(chapter.startMs / 1000)).toBeGreaterThan(
            Math.floor((made[index]?.startMs ?? 0) / 1000),
          );
          expect(made[index]?.endMs).toBe(chapter.startMs);
        });
      }),
    );
  });
});
