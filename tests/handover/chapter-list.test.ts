import { parseText } from 'media-captions';
import { describe, expect, it } from 'vitest';
import { chapterFormats } from '@/lib/handover';

const hours = [
  { startMs: 0, endMs: 59_000, title: 'Case open' },
  { startMs: 59_000, endMs: 3_600_000, title: 'Pots & <caps> --> jack' },
  { startMs: 3_600_000, endMs: 3_723_456, title: 'Łódź, ½ turn' },
];

describe('the plain chapter list', () => {
  it('tells hours only when needed', () => {
    expect(chapterFormats.text.write(hours)).toBe(
      '0:00 Case open\n0:59 Pots & <caps> --> jack\n1:00:00 Łódź, ½ turn\n',
    );
  });
});

// Outside check: W3C WebVTT, read back by media-captions, an independent parser, with its strict checks on.
describe('WebVTT chapters', () => {
  it('are read back by an independent parser, in strict mode, as they were', async () => {
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

  it('have the signature line and are valid when there is none', async () => {
    expect(chapterFormats.webvtt.write([])).toBe('WEBVTT\n');
  });
});
