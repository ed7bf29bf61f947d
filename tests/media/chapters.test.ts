import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { z } from 'zod';
import type { Chapter } from '@/lib/film';
import { type ChapterFormatName, chapterFormats } from '@/lib/handover';
import { awkwardTitles, brokenTitles, chaptersNamed } from '../handover/awkward';
import { ffmpeg, made, recording, removeMade, tone } from './make';

afterAll(removeMade);

/** Longer than the longest list here, so that no chapter lies beyond the film. */
const filmSeconds = 600;
const odd: Chapter[] = [
  { startMs: 0, endMs: 10_001, title: 'Case open' },
  { startMs: 10_001, endMs: 83_456, title: 'Pots & <caps> --> jack' },
  { startMs: 83_456, endMs: 599_999, title: 'Last chord' },
];
const lists: [string, Chapter[], string[]][] = [
  ['odd times', odd, odd.map(({ title }) => title)],
  ['other scripts, emoji, markup, 300 characters', chaptersNamed(awkwardTitles), [...awkwardTitles]],
  [
    'line ends and control characters',
    chaptersNamed(brokenTitles.map(([broken]) => broken)),
    brokenTitles.map(([, read]) => read),
  ],
  ['a chapter without a title', chaptersNamed(['', 'next']), ['', 'next']],
  ['no chapters', [], []],
];

const film = () => recording('film.m4a', ...tone(filmSeconds, 440, 8000), '-c:a', 'aac', '-b:a', '8k');

function written(name: string, format: ChapterFormatName, chapters: readonly Chapter[]): string {
  const path = join(made, `${name}.${chapterFormats[format].extension}`);
  writeFileSync(path, chapterFormats[format].write(chapters));
  return path;
}

const probed = z.object({
  chapters: z.array(
    z.object({
      time_base: z.string(),
      start: z.int(),
      end: z.int(),
      tags: z.object({ title: z.string() }),
    }),
  ),
});

/** What ffprobe, an independent program, finds in a file. */
function probedChapters(path: string): Chapter[] {
  const text = execFileSync('ffprobe', ['-v', 'error', '-show_chapters', '-of', 'json', path], {
    encoding: 'utf8',
  });
  return probed.parse(JSON.parse(text)).chapters.map((chapter) => {
    const [part = 1, whole = 1] = chapter.time_base.split('/').map(Number);
    const ms = (ticks: number) => Math.round((ticks * part * 1000) / whole);
    return { startMs: ms(chapter.start), endMs: ms(chapter.end), title: chapter.tags.title };
  });
}

const expected = (chapters: readonly Chapter[], titles: readonly string[]): Chapter[] =>
  chapters.map((chapter, index) => ({ ...chapter, title: titles[index] ?? '' }));

/** FFmpeg's own command reads the metadata file; ffprobe reads the chapters back. */
describe.each(['mp4', 'mkv'])('FFmpeg metadata into %s', (container) => {
  test.each(lists)('%s', (name, chapters, titles) => {
    const metadata = written(name, 'ffmetadata', chapters);
    const path = join(made, `ffmpeg ${name}.${container}`);
    ffmpeg('-i', film(), '-f', 'ffmetadata', '-i', metadata, '-map_chapters', '1', '-c', 'copy', path);
    expect(probedChapters(path)).toEqual(expected(chapters, titles));
  });
});

/** mkvmerge of MKVToolNix takes the XML; mkvextract writes it out again, ffprobe reads the chapters. */
describe('Matroska XML by mkvmerge', () => {
  test.each(lists)('%s', (name, chapters, titles) => {
    const xml = written(name, 'matroska', chapters);
    const path = join(made, `mkvmerge ${name}.mkv`);
    // mkvmerge ends with 1 for a warning: that fails here too.
    execFileSync('mkvmerge', ['--quiet', '-o', path, '--chapters', xml, film()]);
    expect(probedChapters(path)).toEqual(expected(chapters, titles));
    const out = execFileSync('mkvextract', [path, 'chapters', '-'], { encoding: 'utf8' });
    expect(read(out)).toEqual(read(readFileSync(xml, 'utf8')));
  });
});

/** What the elements hold, whatever their order and layout. */
function read(xml: string): Record<string, string[]> {
  const names = [
    'EditionUID',
    'ChapterUID',
    'ChapterTimeStart',
    'ChapterTimeEnd',
    'ChapterString',
    'ChapLanguageIETF',
  ];
  return Object.fromEntries(
    names.map((name) => [
      name,
      [...xml.matchAll(new RegExp(`<${name}>([^<]*)<`, 'g'))].map(([, text = '']) =>
        text.replaceAll('&quot;', '"'),
      ),
    ]),
  );
}
