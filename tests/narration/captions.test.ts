import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  CaptionsError,
  readCaptions,
  shiftLines,
  splitOverTakes,
  writeSubRip,
  writeWebVtt,
} from '@/lib/narration';
import { takeIdSchema } from '@/shared/ids';
import type { NarrationLine } from '@/shared/narration';

const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);
const texts = (bytes: Uint8Array): string[] => readCaptions(bytes).lines.map((line) => line.text);

function utf16(text: string, littleEndian: boolean, mark: boolean): Uint8Array {
  const bytes = new Uint8Array((text.length + (mark ? 1 : 0)) * 2);
  const view = new DataView(bytes.buffer);
  const units = [...(mark ? [0xfeff] : []), ...Array.from(text, (letter) => letter.charCodeAt(0))];
  for (const [at, unit] of units.entries()) view.setUint16(at * 2, unit, littleEndian);
  return bytes;
}

const VTT = 'WEBVTT\n\n00:01.000 --> 00:02.500\nfour point oh eight\n\n00:03.000 --> 00:04.000\nkay\n';
const SRT =
  '1\n00:00:01,000 --> 00:00:02,500\nfour point oh eight\n\n2\n00:00:03,000 --> 00:00:04,000\nkay\n';

describe('formats', () => {
  it.each([
    ['webvtt', VTT],
    ['subrip', SRT],
    ['timed-text', '[0:01] four point oh eight\n[0:03] kay\n'],
  ])('reads %s', (format, text) => {
    const read = readCaptions(utf8(text));
    expect(read.format).toBe(format);
    expect(read.lines.map((line) => [line.startMs, line.text])).toEqual([
      [1000, 'four point oh eight'],
      [3000, 'kay'],
    ]);
  });

  it('goes by content, not by the name', () => {
    expect(readCaptions(utf8(SRT), 'take.vtt').format).toBe('subrip');
    expect(readCaptions(utf8(VTT), 'take.srt').format).toBe('webvtt');
  });

  it('reads plain times with and without brackets, with hours, and words that go on in the next row', () => {
    const read = readCaptions(utf8('0:05 so\n(1:02:03) right\nand then\n2:00:00.250 - there\n'));
    expect(read.lines.map((line) => [line.startMs, line.text])).toEqual([
      [5000, 'so'],
      [3_723_000, 'right and then'],
      [7_200_250, 'there'],
    ]);
  });

  it('gives plain lines an end before the next one, and no longer than slow speech', () => {
    const [first, second] = readCaptions(utf8('0:00 one two three\n5:00 four\n')).lines;
    expect(first?.endMs).toBe(2000);
    expect(second?.endMs).toBe(302_000);
  });
});

describe('encodings and line ends', () => {
  it('drops a byte-order mark and takes CRLF and CR', () => {
    expect(texts(utf8(`\uFEFF${VTT.replaceAll('\n', '\r\n')}`))).toEqual(['four point oh eight', 'kay']);
    expect(texts(utf8(SRT.replaceAll('\n', '\r')))).toEqual(['four point oh eight', 'kay']);
  });

  it.each([
    ['little-endian with mark', true, true],
    ['big-endian with mark', false, true],
    ['little-endian without', true, false],
    ['big-endian without', false, false],
  ])('reads UTF-16 %s', (_name, littleEndian, mark) => {
    expect(texts(utf16(SRT, littleEndian, mark))).toEqual(['four point oh eight', 'kay']);
  });

  it('falls back to Windows-1252', () => {
    const bytes = Uint8Array.from([...utf8('0:01 it'), 0x92, ...utf8('s 5 '), 0xb5, ...utf8('F')]);
    expect(texts(bytes)).toEqual(['it’s 5 µF']);
  });
});

describe('WebVTT as it comes', () => {
  it('takes out styling, settings, notes, regions and entities, and keeps voices', () => {
    const text = `WEBVTT - made at the bench
Kind: captions

STYLE
::cue { color: red }

NOTE nobody reads this
nor this

REGION
id:one

intro
00:00.000 --> 00:02.000 align:start position:10%
<v.loud Wilma Tarrant>three <c.big>&lt; four</c> <00:00:01.000>&amp; five</v>

00:01:00.000 --> 00:01:02.000
<v Ann>yes</v> <v Bea>no</v>
`;
    const read = readCaptions(utf8(text));
    expect(read.lines.map(({ text: words, voice }) => [voice, words])).toEqual([
      ['Wilma Tarrant', 'three < four & five'],
      ['Ann', 'yes'],
      ['Bea', 'no'],
    ]);
    expect(read.unread).toEqual([]);
  });

  it('lists what it could not read and keeps the rest', () => {
    const read = readCaptions(utf8(`${VTT}\nnonsense\n\n00:05.000 --> 00:06.000\nyes\n`));
    expect(read.lines).toHaveLength(3);
    expect(read.unread).toEqual([{ line: 9, content: 'nonsense' }]);
  });

  it('puts cues in order of time and leaves overlapping ones alone', () => {
    const text = 'WEBVTT\n\n00:10.000 --> 00:14.000\nlater\n\n00:01.000 --> 00:12.000\nsooner\n';
    expect(texts(utf8(text))).toEqual(['sooner', 'later']);
  });

  it('unrolls rolling captions and leaves ordinary repeats', () => {
    const rows = [
      'so this is a bass',
      'it crackles on the neck',
      'pickup volume and I',
      'think it is the jack',
    ];
    const cues = rows.map((row, at) => {
      const before = at > 0 ? `${rows[at - 1]}\n` : '';
      return `00:0${at}.000 --> 00:0${at + 1}.000\n${before}${row}\n`;
    });
    expect(texts(utf8(`WEBVTT\n\n${cues.join('\n')}`))).toEqual(rows);
    expect(
      texts(utf8('0:01 yes\n0:02 yes\n0:03 that is four point two\n0:09 five\n0:20 no\n0:25 six\n0:30 on\n')),
    ).toHaveLength(7);
  });
});

describe('SubRip as it comes', () => {
  it('reads cues without blank lines or numbers between them, and full stops for commas', () => {
    const text =
      '1\n00:00:01.000 --> 00:00:02.000\n<i>one</i>\n2\n00:00:02,000 --> 00:00:03,000 X1:1 X2:2\n{\\an8}two\n';
    expect(texts(utf8(text))).toEqual(['one', 'two']);
  });
});

describe('files that are no captions', () => {
  it.each([
    ['', 1, ''],
    ['\n\nDear client,\nyour bass is ready.\n', 3, 'Dear client,'],
    ['WEBVTT\n\nnothing timed\n', 3, 'nothing timed'],
  ])('names the first line it could not read: %j', (text, line, content) => {
    const read = (): unknown => readCaptions(utf8(text), 'letter.txt');
    expect(read).toThrow(CaptionsError);
    try {
      read();
    } catch (error) {
      expect(error).toMatchObject({ kind: 'invalid', extra: { line, content } });
      expect(String(error)).toContain('letter.txt');
    }
  });

  it('throws nothing else, whatever the bytes', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 400 }), (bytes) => {
        try {
          return readCaptions(bytes).lines.length > 0;
        } catch (error) {
          return error instanceof CaptionsError;
        }
      }),
      { numRuns: 500 },
    );
  });

  it('throws nothing else on mangled captions', () => {
    const pieces = fc.constantFrom(
      'WEBVTT',
      '\n',
      '\n\n',
      '00:01.000 --> 00:02.000',
      '1',
      '-->',
      '<v A>',
      'x',
      '[0:03] y',
      '&amp;',
      '99:99:99,999',
      'NOTE',
      'STYLE',
      ' ',
    );
    fc.assert(
      fc.property(fc.array(pieces, { maxLength: 40 }), (parts) => {
        try {
          return Array.isArray(readCaptions(utf8(parts.join(''))).lines);
        } catch (error) {
          return error instanceof CaptionsError;
        }
      }),
      { numRuns: 500 },
    );
  });
});

const spokenText = fc
  .array(
    fc.constantFrom(
      'so',
      'four',
      'K',
      '<b>',
      'a < b',
      '&amp;',
      '-->',
      'Ω',
      '“ok”',
      '{\\an8}',
      '1',
      '0:05',
      'NOTE',
    ),
    { minLength: 1, maxLength: 8 },
  )
  .map((words) => words.join(' '));
const captionFile = fc
  .array(fc.tuple(fc.integer({ min: 0, max: 50_000_000 }), fc.integer({ min: 0, max: 9000 }), spokenText), {
    minLength: 1,
    maxLength: 20,
  })
  .map((cues) =>
    cues.map(([startMs, lasts, text]): NarrationLine => ({ startMs, endMs: startMs + lasts, text })),
  );

describe('writing', () => {
  it.each([
    ['WebVTT', writeWebVtt],
    ['SubRip', writeSubRip],
  ])('import, export, import of %s is stable', (_name, write) => {
    fc.assert(
      fc.property(captionFile, (lines) => {
        const once = readCaptions(utf8(write(lines))).lines;
        expect(readCaptions(utf8(write(once))).lines).toEqual(once);
      }),
    );
  });

  it('keeps voices in WebVTT', () => {
    const lines: NarrationLine[] = [{ startMs: 0, endMs: 1000, text: 'a < b', voice: 'Ann & Bea' }];
    expect(readCaptions(utf8(writeWebVtt(lines))).lines).toEqual(lines);
  });
});

describe('takes and offsets', () => {
  const [first, second] = [takeIdSchema.parse('a'.repeat(20)), takeIdSchema.parse('b'.repeat(20))];
  const takes = [
    { takeId: first, filmStartMs: 0, filmEndMs: 10_000, startMs: 500, endMs: 10_500 },
    { takeId: second, filmStartMs: 10_000, filmEndMs: 20_000, startMs: 0, endMs: 10_000 },
  ];
  const line = (startMs: number, endMs: number, text: string): NarrationLine => ({ startMs, endMs, text });

  it('deals lines out to the take that most of them is heard in, in take time', () => {
    const split = splitOverTakes(
      [line(1000, 2000, 'a'), line(9800, 11_800, 'b'), line(30_000, 31_000, 'c')],
      takes,
    );
    expect(split.takes.get(first)).toEqual([line(1500, 2500, 'a')]);
    expect(split.takes.get(second)).toEqual([line(0, 1800, 'b')]);
    expect(split.outside).toEqual([line(30_000, 31_000, 'c')]);
  });

  it('applies the offset first, and drops what ends before the film', () => {
    expect(shiftLines([line(0, 900, 'gone'), line(500, 2000, 'cut')], -1000)).toEqual([line(0, 1000, 'cut')]);
    expect(splitOverTakes([line(1000, 2000, 'a')], takes, 10_000).takes.get(second)).toEqual([
      line(1000, 2000, 'a'),
    ]);
  });
});
