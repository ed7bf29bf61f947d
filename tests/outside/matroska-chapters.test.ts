import { describe, expect, it } from 'vitest';
import { chapterFormats } from '@/lib/handover';

/**
 * RFC 9559, "Chapter Examples", Example 1: Basic Chaptering. Start and end in nanoseconds, and the title.
 * mkvmerge itself reads what we write in tests/media/chapters.test.ts.
 */
const EXAMPLE: readonly [bigint, bigint, string][] = [
  [0n, 5_000_000_000n, 'Intro'],
  [5_000_000_000n, 25_000_000_000n, 'Before the crime'],
  [25_000_000_000n, 27_500_000_000n, 'The crime'],
  [27_500_000_000n, 38_000_000_000n, 'The killer arrested'],
  [38_000_000_000n, 43_000_000_000n, 'Credits'],
];

/** RFC 9559, section 5.1.7: where each element stands. MKVToolNix's names in XML are in the comments. */
const PATHS = new Set([
  'Chapters',
  'Chapters/EditionEntry',
  'Chapters/EditionEntry/EditionUID',
  'Chapters/EditionEntry/EditionFlagDefault',
  'Chapters/EditionEntry/ChapterAtom',
  'Chapters/EditionEntry/ChapterAtom/ChapterUID',
  'Chapters/EditionEntry/ChapterAtom/ChapterTimeStart',
  'Chapters/EditionEntry/ChapterAtom/ChapterTimeEnd',
  'Chapters/EditionEntry/ChapterAtom/ChapterDisplay',
  'Chapters/EditionEntry/ChapterAtom/ChapterDisplay/ChapterString', // ChapString
  'Chapters/EditionEntry/ChapterAtom/ChapterDisplay/ChapLanguageIETF', // ChapLanguageBCP47
]);

/** Every element with its path and text; throws where one is not closed in turn. */
function elements(xml: string): { path: string; text: string }[] {
  const open: string[] = [];
  const found: { path: string; text: string }[] = [];
  for (const [, closing, name = '', text = ''] of xml.matchAll(/<(\/?)(\w+)>([^<]*)/g)) {
    if (closing) expect(open.pop()).toBe(name);
    else {
      open.push(name);
      found.push({ path: open.join('/'), text });
    }
  }
  expect(open).toEqual([]);
  return found;
}

function nanoseconds(time: string): bigint {
  const [, hours = '', minutes = '', seconds = '', parts = ''] =
    /^(\d+):(\d\d):(\d\d)\.(\d{9})$/.exec(time) ?? [];
  return ((BigInt(hours) * 60n + BigInt(minutes)) * 60n + BigInt(seconds)) * 1_000_000_000n + BigInt(parts);
}

describe('Matroska chapters', () => {
  const chapters = EXAMPLE.map(([start, end, title]) => ({
    startMs: Number(start / 1_000_000n),
    endMs: Number(end / 1_000_000n),
    title,
  }));
  const written = elements(chapterFormats.matroska.write(chapters));
  const textsOf = (name: string) =>
    written.filter(({ path }) => path.endsWith(`/${name}`)).map(({ text }) => text);

  it('have the elements of the standard, each in its place', () => {
    expect(new Set(written.map(({ path }) => path))).toEqual(PATHS);
  });

  it('have the times and titles of its basic example', () => {
    expect(textsOf('ChapterTimeStart').map(nanoseconds)).toEqual(EXAMPLE.map(([start]) => start));
    expect(textsOf('ChapterTimeEnd').map(nanoseconds)).toEqual(EXAMPLE.map(([, end]) => end));
    expect(textsOf('ChapterString')).toEqual(EXAMPLE.map(([, , title]) => title));
  });

  it('have ids that are whole numbers, not 0, each once', () => {
    const ids = textsOf('ChapterUID');
    expect(ids.every((id) => /^[1-9]\d*$/.test(id))).toBe(true);
    expect(new Set(ids).size).toBe(EXAMPLE.length);
    expect(textsOf('EditionUID').every((id) => /^[1-9]\d*$/.test(id))).toBe(true);
  });
});
