import { runInNewContext } from 'node:vm';
import { describe, expect, it } from 'vitest';
import { isSearchData, lookUp } from '@/lib/archive/pages/look-up';
import { SearchGatherer } from '@/lib/archive/pages/search-data';
import type { PublicJob } from '@/shared/archive-exports';

const bare: PublicJob = {
  ...{ number: 1, title: 'Bass', day: '2026-03-17', chapters: [], readings: [], traces: [], done: [] },
  instrument: { type: 'bass guitar', maker: null, model: null },
};
const chapter = (title: string, note: string | null = null) => ({
  atMs: 65_000,
  kind: 'work' as const,
  title,
  note,
});
const traced: PublicJob = {
  ...bare,
  number: 2,
  title: 'Unlabelled pickup',
  day: '2026-04-02',
  instrument: { type: 'electric guitar', maker: 'Wrenholt', model: 'Two' },
  chapters: [chapter('Scratchy volume pot cleaned', 'Turned fifty times')],
  traces: [
    {
      ...{
        subject: 'neck pickup',
        conductors: ['red', 'white', 'green', 'black'],
        shield: true,
        follows: [],
      },
      joined: [{ atMs: 70_000, title: 'In series', basis: 'measured', lines: [] }],
    },
  ],
  readings: [
    {
      ...{
        atMs: null,
        kind: 'resistance',
        subject: 'neck pickup',
        place: 'red – white',
        between: ['red', 'white'],
      },
      ...{
        value: '4.08 kΩ',
        digits: '4.08',
        unit: 'kΩ',
        open: false,
        baseValue: 4080,
        basis: 'measured',
        note: null,
      },
    },
  ],
};
const fretted: PublicJob = {
  ...bare,
  number: 3,
  title: 'Frets levelled',
  day: '2026-05-01',
  done: [{ atMs: null, what: 'Levelled and crowned the frets' }],
};

/** The data as a browser gets it: the script is run, not parsed here. */
function dataOf(jobs: readonly PublicJob[]) {
  const gatherer = new SearchGatherer();
  for (const job of jobs) gatherer.add(job);
  const window: Record<string, unknown> = {};
  runInNewContext(gatherer.script(), { window });
  const data: unknown = JSON.parse(JSON.stringify(window.archiveData));
  if (!isSearchData(data)) throw new Error('The script gave no data.');
  return data;
}
const data = dataOf([bare, traced, fretted]);
const pages = (question: string) => lookUp(data, question).map(({ page }) => page);

describe('the search in the pages', () => {
  it.each([
    ['four wire', ['jobs/0002.html']],
    ['4 conductor', ['jobs/0002.html']],
    ['4-core', ['jobs/0002.html']],
    ['crackly potentiometer', ['jobs/0002.html']],
    ['4.08k', ['jobs/0002.html']],
    ['levelling a fret', ['jobs/0003.html']],
    ['fret dress', ['jobs/0003.html']],
    ['wrenh', ['jobs/0002.html']],
    ['how did I do the neck pickup in series', ['jobs/0002.html']],
    ['guitar', ['jobs/0003.html', 'jobs/0002.html', 'jobs/0001.html']],
    ['harpsichord', []],
    ['', []],
    ['constructor __proto__ toString', []],
    ['<script>" OR 1=1 --', []],
  ])('%j finds %j', (question, expected) => expect(pages(question)).toEqual(expected));

  it('leads to the moments that answer, the best first', () => {
    expect(lookUp(data, 'four wire in series')[0]).toEqual({
      ...{ page: 'jobs/0002.html', title: 'Unlabelled pickup', day: '2026-04-02' },
      moments: [{ anchor: 'trace-1', shown: 'Trace of the neck pickup: In series' }],
    });
    expect(lookUp(data, 'turned')[0]?.moments).toEqual([
      { anchor: 'chapter-1', shown: '1:05 Scratchy volume pot cleaned' },
    ]);
  });

  it.each(['</script><script>', '\u2028\u2029', '__proto__', 'constructor', '🎸', '\\"'])(
    'takes %j in for what it is',
    (title) => {
      const hostile = dataOf([{ ...bare, title: `${title} kerfing`, chapters: [chapter(title)] }]);
      expect(lookUp(hostile, 'kerfing')[0]?.title).toBe(`${title} kerfing`);
      expect(hostile.moments[1]?.[2]).toBe(`1:05 ${title}`);
    },
  );

  it('holds no sign in its script that ends an element', () => {
    const gatherer = new SearchGatherer();
    gatherer.add({ ...bare, title: '</script><!--\u2028' });
    expect(gatherer.script()).not.toMatch(/[<>&\u2028\u2029]/);
  });

  it('is not there without its data', () => {
    for (const nothing of [undefined, null, 3, {}, { jobs: [], moments: [] }])
      expect(isSearchData(nothing)).toBe(false);
  });
});
