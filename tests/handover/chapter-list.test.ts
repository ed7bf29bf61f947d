import { describe, expect, it } from 'vitest';
import { type ChapterFormatName, chapterFormats } from '@/lib/handover';
import { chapterListSchema } from '@/shared/handover';
import { awkwardTitles, brokenTitles, chaptersNamed } from './awkward';

const hours = [
  { startMs: 0, endMs: 59_000, title: 'Case open' },
  { startMs: 59_000, endMs: 3_600_000, title: 'Pots & <caps> --> jack' },
  { startMs: 3_600_000, endMs: 3_723_456, title: 'Łódź, ½ turn' },
];
const names = Object.keys(chapterFormats) as ChapterFormatName[];

describe('the plain chapter list', () => {
  it('tells hours only when needed', () => {
    expect(chapterFormats.text.write(hours)).toBe(
      '0:00 Case open\n0:59 Pots & <caps> --> jack\n1:00:00 Łódź, ½ turn\n',
    );
  });

  it('has one line a chapter, the time first and the title as it is, also from right to left', () => {
    const lines = chapterFormats.text.write(chaptersNamed(awkwardTitles)).trimEnd().split('\n');
    expect(lines.map((line) => line.replace(/^\d+:\d\d /, ''))).toEqual(awkwardTitles);
  });
});

describe('FFmpeg metadata', () => {
  it('times each chapter in milliseconds and escapes what has a meaning', () => {
    expect(chapterFormats.ffmetadata.write([{ startMs: 250, endMs: 10_500, title: 'a=b; c#d\\e' }])).toBe(
      ';FFMETADATA1\n\n[CHAPTER]\nTIMEBASE=1/1000\nSTART=250\nEND=10500\ntitle=a\\=b\\; c\\#d\\\\e\n',
    );
  });
});

describe('JSON', () => {
  it('keeps to its schema and holds all there is', () => {
    const written: unknown = JSON.parse(chapterFormats.json.write(hours));
    expect(chapterListSchema.parse(written)).toEqual({ version: 1, chapters: hours });
    expect(chapterListSchema.parse(JSON.parse(chapterFormats.json.write([]))).chapters).toEqual([]);
  });
});

describe.each(names)('as %s', (name) => {
  const { write } = chapterFormats[name];

  it.each(brokenTitles)('line ends and control characters in %j do no harm', (broken, read) => {
    expect(write(chaptersNamed([broken, 'next']))).toBe(write(chaptersNamed([read, 'next'])));
  });

  it('the same list is written the same', () => {
    const before = structuredClone(hours);
    expect(write(hours)).toBe(write(before));
    expect(hours).toEqual(before);
  });
});

it('no two formats share a file name', () => {
  const extensions = names.map((name) => chapterFormats[name].extension);
  expect(new Set(extensions).size).toBe(names.length);
});
