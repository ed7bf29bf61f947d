import { expect, it } from 'vitest';
import { chapterFormats } from '@/lib/handover';

/**
 * FFmpeg Formats Documentation, section Metadata: the chapter of its example file, without the comment, and the
 * title of its file with a backslash put into a second one.
 */
it('FFmpeg metadata is written as its documentation shows it', () => {
  const written = chapterFormats.ffmetadata.write([
    { startMs: 0, endMs: 60_000, title: 'chapter #1' },
    { startMs: 60_000, endMs: 90_000, title: 'bike\\shed' },
  ]);
  expect(written.split('\n').filter((line) => line !== '')).toEqual([
    ';FFMETADATA1',
    '[CHAPTER]',
    'TIMEBASE=1/1000',
    'START=0',
    'END=60000',
    'title=chapter \\#1',
    '[CHAPTER]',
    'TIMEBASE=1/1000',
    'START=60000',
    'END=90000',
    'title=bike\\\\shed',
  ]);
});
