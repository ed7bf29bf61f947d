import { describe, expect, it } from 'vitest';
import type { Chapter } from '@/lib/film';
import { chapterRules } from '@/lib/handover';
import { chaptersNamed } from './awkward';

const good = chaptersNamed(['Case open', 'Meter out', 'Rewire']);
const durationMs = 60_000;
const found = (chapters: readonly Chapter[], filmMs = durationMs) =>
  chapterRules(chapters, filmMs).map(({ rule, chapter }) => [rule, chapter]);
/** The good list with one chapter changed. */
const withChange = (index: number, change: Partial<Chapter>): Chapter[] =>
  good.map((chapter, at) => (at === index ? { ...chapter, ...change } : chapter));

/** The rules that video hosts put up for chapter lists: common practice, no source. */
describe('the rules of video hosts', () => {
  it('find nothing in a good list', () => {
    expect(chapterRules(good, durationMs)).toEqual([]);
  });

  it.each<[string, Chapter[], [string, number | null][]]>([
    ['no chapters', [], [['at least three', null]]],
    ['two chapters', good.slice(0, 2), [['at least three', null]]],
    ['a first that begins later', withChange(0, { startMs: 5_000 }), [['first at 0:00', 0]]],
    ['a first within the first second', withChange(0, { startMs: 40 }), [['first at 0:00', 0]]],
    ['a short one', withChange(1, { startMs: 30_001 }), [['at least 10 seconds each', 1]]],
    ['a short last', withChange(2, { startMs: 50_001 }), [['at least 10 seconds each', 2]]],
    ['one of exactly ten seconds', withChange(1, { startMs: 30_000 }), []],
    ['equal times', withChange(1, { startMs: 40_000 }), [['rising', 2]]],
    ['falling times', withChange(1, { startMs: 45_000 }), [['rising', 2]]],
    ['times that the list tells as equal', withChange(1, { startMs: 40_900 }), [['rising', 2]]],
    ['one beyond the end', withChange(2, { startMs: 60_000 }), [['rising', 2]]],
    ['100 characters', withChange(1, { title: 'x'.repeat(100) }), []],
    ['101 characters', withChange(1, { title: 'x'.repeat(101) }), [['title length', 1]]],
    ['angle brackets', withChange(1, { title: 'in -> out' }), [['angle brackets', 1]]],
    ['no title', withChange(1, { title: ' \n' }), [['empty title', 1]]],
    ['a title that nobody sees', withChange(1, { title: '\u200b\u2060\u200f' }), [['empty title', 1]]],
    [
      'a chapter that is long in truth but short in whole seconds',
      withChange(1, { startMs: 30_000 }).map((c, at) => (at === 2 ? { ...c, startMs: 39_999 } : c)),
      [['at least 10 seconds each', 1]],
    ],
  ])('%s', (_what, chapters, findings) => {
    expect(found(chapters)).toEqual(findings);
  });

  it('explain what they find', () => {
    const list = [
      { startMs: 400, endMs: 9_000, title: 'a <b>' },
      { startMs: 9_000, endMs: 20_000, title: '' },
    ];
    expect(chapterRules(list, 20_000).map(({ sentence }) => sentence)).toEqual([
      'Hosts show chapters from three on; here are two. Make more markers public.',
      'The first chapter begins at 0:00.400. Hosts take no list that does not begin at 0:00.',
      '“a <b>” lasts 8 seconds. Hosts want at least 10 seconds each.',
      '“a <b>” has < or > in it. Hosts take neither in a description.',
      'The chapter at 0:09 has no title. Hosts skip such a line.',
    ]);
  });

  it('hold for a long list as for a short one', () => {
    const many = Array.from({ length: 500 }, (_, index) => `Joint ${index}`);
    expect(chapterRules(chaptersNamed(many), 500 * 20_000)).toEqual([]);
    expect(found(chaptersNamed(many), 499 * 20_000)).toEqual([['rising', 499]]);
  });
});
