import fc from 'fast-check';
import { type ClockTake, type Film, layOut } from '@/lib/film';
import type { CutAway } from '@/lib/handover';
import { jobIdSchema, markerIdSchema, type TakeId, takeIdSchema } from '@/shared/ids';
import type { Marker } from '@/shared/markers';

const padded = (value: number): string => String(value).padStart(20, '0');

export const takeId = (index: number): TakeId => takeIdSchema.parse(padded(index));

/** Takes of these lengths, untrimmed, numbered from 1. */
export const filmOf = (...durationsMs: number[]): Film =>
  layOut(
    durationsMs.map((durationMs, index) => ({
      id: takeId(index + 1),
      durationMs,
      trimStartMs: 0,
      trimEndMs: null,
    })),
  );

export const cut = (take: number, fromMs: number, toMs: number): CutAway => ({
  takeId: takeId(take),
  fromMs,
  toMs,
});

let markers = 0;
export const marker = (title: string, take: number, ms: number, isPublic = true): Marker => ({
  id: markerIdSchema.parse(padded(++markers)),
  jobId: jobIdSchema.parse(padded(1)),
  takeId: takeId(take),
  kind: 'work',
  title,
  note: null,
  ms,
  endMs: null,
  public: isPublic,
});

/** Up to three trimmed takes of at most `longestMs`, so short that every millisecond can be looked at. */
export const films = (longestMs: number): fc.Arbitrary<Film> =>
  fc
    .array(
      fc.record({ durationMs: fc.nat(longestMs), trim: fc.nat(5), trimEnd: fc.option(fc.nat(longestMs)) }),
      {
        maxLength: 3,
      },
    )
    .map((takes) =>
      layOut(
        takes.map(
          ({ durationMs, trim, trimEnd }, index): ClockTake => ({
            id: takeId(index + 1),
            durationMs,
            trimStartMs: trim,
            trimEndMs: trimEnd,
          }),
        ),
      ),
    );

/** Cuts in any order: overlapping, touching, empty, backwards, beyond the end, of takes that are not there. */
export const cuts = (longestMs: number): fc.Arbitrary<CutAway[]> => {
  const ms = fc.integer({ min: -5, max: longestMs + 5 });
  return fc.array(
    fc.tuple(fc.integer({ min: 1, max: 4 }), ms, ms).map(([take, fromMs, toMs]) => cut(take, fromMs, toMs)),
    { maxLength: 6 },
  );
};

export const moments = (longestMs: number) =>
  fc.record({ takeId: fc.integer({ min: 1, max: 4 }).map(takeId), ms: fc.nat(longestMs + 5) });
