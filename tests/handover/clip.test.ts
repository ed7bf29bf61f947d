import { describe, expect, it } from 'vitest';
import { layOut } from '@/lib/film';
import { captionOf, clipSpanOf, clipSpecOf, coversAt, MomentGoneError, momentOf } from '@/lib/handover/clip';
import { cutSettingsSchema } from '@/shared/cut';
import { takeIdSchema } from '@/shared/ids';
import { markerSchema } from '@/shared/markers';
import { proposalSchema } from '@/shared/narration-record';
import { readingSchema } from '@/shared/readings';

const id = (letter: string) => letter.repeat(20);
const takeId = takeIdSchema.parse(id('t'));
const film = layOut([
  { id: takeIdSchema.parse(id('a')), durationMs: 50_000, trimStartMs: 0, trimEndMs: null },
  { id: takeId, durationMs: 200_000, trimStartMs: 10_000, trimEndMs: 190_000 },
]);

const markerLine = (ms: number, endMs: number | null = null) => ({
  type: 'marker' as const,
  marker: markerSchema.parse({
    ...{ id: id('m'), jobId: id('j'), takeId, kind: 'work', title: 'Soldering', note: null },
    ...{ ms, endMs, public: true },
  }),
});
const readingLine = (ms: number | null, more: object = {}) => ({
  type: 'reading' as const,
  reading: readingSchema.parse({
    ...{ id: id('r'), jobId: id('j'), takeId: ms === null ? null : takeId, ms, kind: 'resistance' },
    ...{ open: false, valueText: '4.08', unit: 'kΩ', baseValue: 4080, subject: 'neck pickup' },
    ...{ between: ['red', 'white'], basis: 'measured', meterId: null, details: {}, note: null },
    ...more,
  }),
});

describe('the span of a clip', () => {
  it.each([
    ['a point', markerLine(50_000), null, 48_000, 58_000],
    ['a reading', readingLine(50_000), null, 47_000, 53_000],
    ['a span', markerLine(50_000, 64_000), null, 50_000, 64_000],
    ['a long span', markerLine(50_000, 150_000), null, 50_000, 110_000],
    ['a point near the trimmed start', markerLine(10_500), null, 10_000, 18_500],
    ['a point at the trimmed end', markerLine(190_000), null, 188_000, 190_000],
    ['a wanted length', markerLine(50_000), 30_000, 48_000, 78_000],
    ['a wanted length too short for the usual lead', markerLine(50_000), 1000, 49_500, 50_500],
    ['a wanted length of a span', markerLine(50_000, 64_000), 5000, 50_000, 55_000],
    ['an odd length', readingLine(50_000), 1001, 49_500, 50_501],
  ])('of %s', (_name, line, lengthMs, fromMs, toMs) => {
    expect(clipSpanOf(film, line, lengthMs)).toEqual({ takeId, fromMs, toMs });
  });

  it.each([
    ['a reading without a moment', readingLine(null)],
    ['a moment before the trim', markerLine(9000)],
    ['a moment behind the trim', markerLine(195_000)],
    ['a span that begins where the take ends', markerLine(190_000, 195_000)],
  ])('is refused for %s', (_name, line) => {
    expect(() => clipSpanOf(film, line, null)).toThrow(MomentGoneError);
  });

  it('is refused where the take has no length, or has left the film', () => {
    const none = layOut([{ id: takeId, durationMs: 0, trimStartMs: 0, trimEndMs: null }]);
    expect(() => clipSpanOf(none, markerLine(0), null)).toThrow(MomentGoneError);
    expect(() => momentOf(layOut([]), markerLine(0))).toThrow(MomentGoneError);
  });
});

describe('the caption', () => {
  it('is a marker’s title, or a reading in words with how it is known', () => {
    expect(captionOf(markerLine(0))).toBe('Soldering');
    expect(captionOf(readingLine(0))).toBe('neck pickup, red – white: 4.08 kΩ (measured)');
    expect(captionOf(readingLine(0, { basis: 'stated', open: true, valueText: null, baseValue: null }))).toBe(
      'neck pickup, red – white: open (stated)',
    );
  });
});

describe('what the engine is told', () => {
  const spoken = (decision: string, startMs: number) =>
    proposalSchema.parse({
      ...{ id: id('p'), jobId: id('j'), takeId, startMs, endMs: startMs + 600 },
      heard: {
        ...{ type: 'private', key: `name ${startMs}`, startMs, endMs: startMs + 600 },
        ...{ words: 'Orla Penhallow', confidence: 1, about: null, payload: { reason: 'name' } },
      },
      ...{ decision, promisedAt: null, recordId: null },
    });
  const covered = { fromMs: 49_000, toMs: 51_000, x: 0, y: 0, width: 0.5, height: 0.5 };
  const settings = cutSettingsSchema.parse({
    widenMs: 100,
    muted: [{ takeId, fromMs: 56_000, toMs: 57_000 }],
    covers: [{ takeId, ...covered }],
    cutAway: [{ takeId, fromMs: 40_000, toMs: 60_000 }],
    lufs: -14,
  });

  it('mutes private words unless they were dismissed, and what was muted by hand; covers; cuts exactly', () => {
    const heard = [spoken('accepted', 52_000), spoken('dismissed', 54_000), spoken('open', 55_000)];
    const span = clipSpanOf(film, markerLine(50_000), null);
    const spec = clipSpecOf(settings, heard, () => '/takes/2.mp4', { film, span, caption: 'Soldering' });
    expect(spec).toMatchObject({ cutting: 'exact', loudness: null, title: 'Soldering', chapters: [] });
    expect(spec.pieces).toEqual([
      {
        path: '/takes/2.mp4',
        fromMs: 48_000,
        toMs: 58_000,
        mutes: [
          { fromMs: 51_900, toMs: 52_700 },
          { fromMs: 54_900, toMs: 55_700 },
          { fromMs: 56_000, toMs: 57_000 },
        ],
        covers: [covered],
      },
    ]);
  });

  it('covers a still for as long as the cover lasts', () => {
    expect(coversAt(settings, { takeId, ms: 48_999 })).toEqual([]);
    expect(coversAt(settings, { takeId, ms: 49_000 })).toHaveLength(1);
    expect(coversAt(settings, { takeId, ms: 51_000 })).toEqual([]);
    expect(coversAt(settings, { takeId: takeIdSchema.parse(id('a')), ms: 50_000 })).toEqual([]);
  });
});
