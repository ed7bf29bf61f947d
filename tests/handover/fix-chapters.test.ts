import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Chapter, type ChapterStart, oneLine } from '@/lib/film';
import { chapterRules, fixChapters } from '@/lib/handover';
import { awkwardTitles, brokenTitles, chaptersNamed } from './awkward';

const listOf = (durationMs: number, ...starts: [number, string][]): Chapter[] =>
  starts.map(([startMs, title], index) => ({ startMs, endMs: starts[index + 1]?.[0] ?? durationMs, title }));
const inShort = (chapters: readonly Chapter[]) => chapters.map(({ startMs, title }) => [startMs, title]);

describe('fix for me', () => {
  it('leaves a good list as it is', () => {
    const good = chaptersNamed(['Case open', 'Meter out', 'Rewire']);
    expect(fixChapters(good, 60_000)).toEqual({ chapters: good, changes: [], left: [] });
  });

  it('moves the first to 0:00', () => {
    const fixed = fixChapters(listOf(90_000, [5_000, 'A'], [30_000, 'B'], [60_000, 'C']), 90_000);
    expect(inShort(fixed.chapters)[0]).toEqual([0, 'A']);
    expect(fixed.changes).toEqual(['“A” moves from 0:05 to 0:00.']);
  });

  it('joins a short one with the next, under the title that tells more', () => {
    const list = listOf(
      90_000,
      [0, 'Case open'],
      [20_000, 'Measurement'],
      [24_000, 'Neck coil'],
      [60_000, 'C'],
    );
    const fixed = fixChapters(list, 90_000);
    expect(inShort(fixed.chapters)).toEqual([
      [0, 'Case open'],
      [20_000, 'Neck coil'],
      [60_000, 'C'],
    ]);
    expect(fixed.changes).toEqual([
      '“Measurement” lasts only 4 seconds, so two chapters become one at 0:20, named “Neck coil” rather than “Measurement”.',
    ]);
  });

  it('joins a short last with the one before', () => {
    const list = listOf(69_000, [0, 'A'], [20_000, 'B'], [40_000, 'Last chord'], [60_000, 'Bye']);
    expect(inShort(fixChapters(list, 69_000).chapters)).toEqual([
      [0, 'A'],
      [20_000, 'B'],
      [40_000, 'Last chord'],
    ]);
  });

  it('of a title and none, keeps the title', () => {
    const fixed = fixChapters(listOf(90_000, [0, ''], [5_000, 'A'], [30_000, 'B'], [60_000, 'C']), 90_000);
    expect(fixed.changes).toEqual([
      '“(no title)” lasts only 5 seconds, so two chapters become one at 0:00, named “A” rather than “(no title)”.',
    ]);
  });

  it('shortens titles at a word, and changes angle brackets', () => {
    const long = 'probe '.repeat(40).trim();
    const fixed = fixChapters(chaptersNamed([long, 'in <-> out', 'x'.repeat(300)]), 60_000);
    expect(fixed.chapters.map(({ title }) => title)).toEqual([
      `${'probe '.repeat(16).trim()}…`,
      'in ‹-› out',
      `${'x'.repeat(99)}…`,
    ]);
    expect(fixed.changes).toEqual([
      '“in <-> out”: < and > become ‹ and ›.',
      expect.stringMatching(/^“probe .*…” is shortened from 239 to 96 characters\.$/),
      expect.stringMatching(/^“x+…” is shortened from 300 to 100 characters\.$/),
    ]);
  });

  it('never breaks a letter apart', () => {
    const family = '👨‍👩‍👧‍👦';
    const [chapter] = fixChapters(chaptersNamed([family.repeat(30), 'B', 'C']), 60_000).chapters;
    expect(chapter?.title).toBe(`${family.repeat(9)}…`);
  });

  it('puts a list in order, leaves out what the film does not have and names what has no name', () => {
    const list = listOf(60_000, [40_000, 'C'], [0, 'A'], [20_000, ' '], [60_000, 'D']);
    const fixed = fixChapters(list, 60_000);
    expect(inShort(fixed.chapters)).toEqual([
      [0, 'A'],
      [20_000, 'Part 2'],
      [40_000, 'C'],
    ]);
    expect(fixed.changes).toEqual([
      '“D” is left out: it begins at or after the end of the film.',
      'The chapters are put in the order of their times.',
      'The chapter at 0:20 has no title and is called “Part 2”.',
    ]);
  });

  it('says so where too few chapters are left', () => {
    const fixed = fixChapters(listOf(15_000, [0, 'A'], [2_000, 'B'], [4_000, 'C']), 15_000);
    expect(fixed.chapters).toHaveLength(1);
    expect(fixed.left).toEqual([
      {
        rule: 'at least three',
        chapter: null,
        sentence: 'Hosts show chapters from three on; here is one. Make more markers public.',
      },
    ]);
    expect(fixChapters([], 15_000).left.map(({ rule }) => rule)).toEqual(['at least three']);
  });
});

const titles = fc.oneof(
  fc.string({ unit: 'grapheme', maxLength: 300 }),
  fc.string({ unit: 'binary', maxLength: 300 }),
  fc.constantFrom(...awkwardTitles, ...brokenTitles.map(([title]) => title), '', 'Work'),
);
const lists = fc
  .record({
    durationMs: fc.integer({ min: 1, max: 90_000 }),
    starts: fc.array(fc.record({ startMs: fc.nat(95_000), title: titles }), { maxLength: 8 }),
  })
  .map(({ durationMs, starts }) => ({
    durationMs,
    chapters: starts.map((start): Chapter => ({ ...start, endMs: durationMs })),
  }));

const wholeSeconds = (ms: number) => Math.floor(ms / 1000);
const farEnough = (fromMs: number, toMs: number) =>
  toMs - fromMs >= 10_000 && wholeSeconds(toMs) - wholeSeconds(fromMs) >= 10;

/** By trying every choice: the most chapters that can be kept with the first at 0 and all long enough. */
function mostThatFit(starts: readonly ChapterStart[], durationMs: number): number {
  const within = starts.map((start) => start.startMs).filter((ms) => ms < durationMs);
  if (within.length === 0) return 0;
  const times = within.sort((a, b) => a - b).slice(1);
  let most = 0;
  for (let choice = 0; choice < 2 ** times.length; choice++) {
    const chosen = [0, ...times.filter((_, index) => (choice >> index) % 2 === 1)];
    if (chosen.every((ms, index) => farEnough(ms, chosen[index + 1] ?? durationMs)))
      most = Math.max(most, chosen.length);
  }
  return most;
}

describe('any list, fixed', () => {
  it('passes all rules where three chapters can be had, and keeps as many as can be', () => {
    fc.assert(
      fc.property(lists, ({ chapters, durationMs }) => {
        const fixed = fixChapters(chapters, durationMs);
        const most = mostThatFit(chapters, durationMs);
        if (most > 0) expect(fixed.chapters).toHaveLength(most);
        const left = chapterRules(fixed.chapters, durationMs).map(({ rule }) => rule);
        const short = durationMs < 10_000 && fixed.chapters.length > 0;
        expect(left).toEqual([
          ...(most < 3 ? ['at least three'] : []),
          ...(short ? ['at least 10 seconds each'] : []),
        ]);
      }),
      { numRuns: 1000 },
    );
  });

  it('is not changed again, and says so', () => {
    fc.assert(
      fc.property(lists, ({ chapters, durationMs }) => {
        const once = fixChapters(chapters, durationMs);
        expect(fixChapters(once.chapters, durationMs)).toEqual({ ...once, changes: [] });
      }),
      { numRuns: 500 },
    );
  });

  it('keeps its order and its times, but for the first', () => {
    fc.assert(
      fc.property(lists, ({ chapters, durationMs }) => {
        const times = new Set(chapters.map((chapter) => chapter.startMs));
        const [first, ...others] = fixChapters(chapters, durationMs).chapters.map(({ startMs }) => startMs);
        expect(first ?? 0).toBe(0);
        for (const startMs of others) expect(times).toContain(startMs);
        expect(others).toEqual(others.toSorted((a, b) => a - b));
      }),
    );
  });

  it('says something exactly where something changed', () => {
    fc.assert(
      fc.property(lists, ({ chapters, durationMs }) => {
        const { chapters: fixed, changes } = fixChapters(chapters, durationMs);
        const before = chapters.map(({ startMs, title }) => [startMs, oneLine(title)]);
        expect(changes.length > 0).toBe(JSON.stringify(inShort(fixed)) !== JSON.stringify(before));
      }),
      { numRuns: 500 },
    );
  });
});
