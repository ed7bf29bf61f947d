import { parseText } from 'media-captions';
import { describe, expect, it } from 'vitest';
import { WebVTTParser } from 'webvtt-parser';
import entities from 'webvtt-parser/html-entities.json';
import { chapterFormats } from '@/lib/handover';
import { awkwardTitles, brokenTitles, chaptersNamed } from '../handover/awkward';

/**
 * W3C WebVTT, read back by two independent parsers: webvtt-parser, W3C's validator, which knows the rules for
 * chapter files (section 4.6.2), and media-captions with its strict checks on.
 */
const hours = [
  { startMs: 0, endMs: 59_000, title: 'Case open' },
  { startMs: 59_000, endMs: 3_600_000, title: 'Pots & <caps> --> jack' },
  { startMs: 3_600_000, endMs: 3_723_456, title: 'Łódź, ½ turn' },
];

function validated(text: string): [number, number, string][] {
  const { cues, errors } = new WebVTTParser(entities).parse(text, 'chapters');
  expect(errors).toEqual([]);
  return cues.map((cue) => [
    Math.round(cue.startTime * 1000),
    Math.round(cue.endTime * 1000),
    cue.tree.children.map((node) => node.value).join(''),
  ]);
}

describe('WebVTT chapters', () => {
  it('are valid and read back as they were', () => {
    expect(validated(chapterFormats.webvtt.write(hours))).toEqual(
      hours.map(({ startMs, endMs, title }) => [startMs, endMs, title]),
    );
  });

  it('are read by another parser in strict mode', async () => {
    const { cues, errors } = await parseText(chapterFormats.webvtt.write(hours), {
      type: 'vtt',
      strict: true,
      errors: true,
    });
    expect(errors).toEqual([]);
    expect(cues.map((cue) => [cue.startTime, cue.endTime])).toEqual([
      [0, 59],
      [59, 3600],
      [3600, 3723.456],
    ]);
    expect(cues[1]?.text).toBe('Pots &amp; &lt;caps&gt; --&gt; jack');
  });

  it('keep every title: other scripts, emoji, 300 characters, markup', () => {
    const read = validated(chapterFormats.webvtt.write(chaptersNamed(awkwardTitles)));
    expect(read.map(([, , title]) => title)).toEqual(awkwardTitles);
  });

  it('stay valid with line ends and control characters in a title', () => {
    const titles = brokenTitles.map(([broken]) => broken);
    const read = validated(chapterFormats.webvtt.write(chaptersNamed(titles)));
    expect(read.map(([, , title]) => title)).toEqual(brokenTitles.map(([, title]) => title));
  });

  it('have the signature line and are valid when there is none', () => {
    expect(chapterFormats.webvtt.write([])).toBe('WEBVTT\n');
    expect(validated(chapterFormats.webvtt.write([]))).toEqual([]);
  });
});
