import { parseText } from 'media-captions';
import { describe, expect, it } from 'vitest';
import { readCaptions, writeWebVtt } from '@/lib/narration';
import { scoredSet } from '../narration/scored-set';

/**
 * W3C, WebVTT: The Web Video Text Tracks Format. Short examples in the forms of its sections 1.1 to 1.5
 * (simple cues, several lines, metadata header and comments, cue settings, voices and classes), read here and
 * by an independent parser (media-captions).
 */
const EXAMPLES: Readonly<Record<string, string>> = {
  'simple cues':
    'WEBVTT\n\n00:11.000 --> 00:13.000\nWe are in the back room\n\n00:13.000 --> 00:16.000\nWe are actually at the bench\n',
  'hours and identifiers':
    'WEBVTT\n\n1\n00:00:00.500 --> 00:00:02.000\nfirst\n\nlast cue\n02:00:00.000 --> 02:00:02.000\nsecond\n',
  'several lines in a cue':
    'WEBVTT\n\n00:01.000 --> 00:04.000\nNever drink liquid nitrogen.\n\n00:05.000 --> 00:09.000\n- It will perforate your stomach.\n- You could die.\n',
  'header text and comments':
    'WEBVTT Bench talk\n\nNOTE one line\n\n00:01.000 --> 00:02.000\nyes\n\nNOTE\nseveral\nlines\n\n00:03.000 --> 00:04.000\nno\n',
  'style blocks': 'WEBVTT\n\nSTYLE\n::cue {\n  color: papayawhip;\n}\n\n00:01.000 --> 00:02.000\nstyled\n',
  'cue settings':
    'WEBVTT\n\n00:00:00.000 --> 00:00:04.000 position:10%,line-left align:left size:35%\nWhere did he go?\n\n00:00:03.000 --> 00:00:06.500 position:90% align:right size:35%\nI think he went down this lane.\n',
  'tags and references':
    'WEBVTT\n\n00:01.000 --> 00:02.000\n<b>bold</b> <i.class>italic</i> <u>under</u> 3 &lt; 4 &amp; 5\n',
  'timestamps in the text': 'WEBVTT\n\n00:16.500 --> 00:18.500\n<00:17.000>one <00:17.500>two\n',
  'byte-order mark and CRLF': '\uFEFFWEBVTT\r\n\r\n00:01.000 --> 00:02.000\r\nyes\r\n',
};

const plain = (text: string): string =>
  text
    .replace(/<[^>]*>/g, '')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&amp;', '&')
    .replace(/\s+/g, ' ')
    .trim();

/** The byte-order mark is the decoder's business (Encoding standard), so the parser gets the text without it. */
async function independently(text: string): Promise<[number, number, string][]> {
  const { cues, errors } = await parseText(text.replace(/^\uFEFF/, ''), { type: 'vtt' });
  expect(errors).toEqual([]);
  return cues.map((cue) => [
    Math.round(cue.startTime * 1000),
    Math.round(cue.endTime * 1000),
    plain(cue.text),
  ]);
}

const here = (text: string): [number, number, string][] =>
  readCaptions(new TextEncoder().encode(text)).lines.map((line) => [line.startMs, line.endMs, line.text]);

describe('WebVTT', () => {
  it.each(Object.entries(EXAMPLES))('%s: read as an independent parser reads it', async (_name, text) => {
    expect(here(text)).toEqual(await independently(text));
  });

  it('what is written here, an independent parser reads', async () => {
    for (const { lines } of scoredSet())
      expect(await independently(writeWebVtt(lines))).toEqual(
        lines.map((line) => [line.startMs, line.endMs, line.text]),
      );
  });

  it('voices (section 1.5) are read as voices', () => {
    const text = 'WEBVTT\n\n00:11.000 --> 00:13.000\n<v Odalys Wickersham>We are in the back room\n';
    const [line] = readCaptions(new TextEncoder().encode(text)).lines;
    expect(line).toMatchObject({ voice: 'Odalys Wickersham', text: 'We are in the back room' });
  });
});
