import { type Chapter, oneLine, shortTime, webvttTime } from '@/lib/film';
import type { ChapterListFile } from '@/shared/handover';
import { matroskaXml } from './matroska-chapters';
import { markupText } from './title';

/** One way of writing a chapter list. */
export interface ChapterFormat {
  /** For the page. */
  label: string;
  contentType: string;
  extension: string;
  write(chapters: readonly Chapter[]): string;
}

/** Add a format here; the page and the route offer whatever stands in this table. */
export const chapterFormats = {
  text: {
    label: 'Text',
    contentType: 'text/plain; charset=utf-8',
    extension: 'txt',
    write: (chapters) => chapters.map(textLine).join(''),
  },
  webvtt: {
    label: 'WebVTT',
    contentType: 'text/vtt; charset=utf-8',
    extension: 'vtt',
    write: (chapters) => ['WEBVTT\n', ...chapters.map(webvttCue)].join('\n'),
  },
  matroska: {
    label: 'Matroska XML',
    contentType: 'application/xml; charset=utf-8',
    extension: 'xml',
    write: matroskaXml,
  },
  ffmetadata: {
    label: 'FFmpeg metadata',
    contentType: 'text/plain; charset=utf-8',
    extension: 'ffmetadata',
    write: (chapters) => [';FFMETADATA1\n', ...chapters.map(ffmetadataSection)].join('\n'),
  },
  json: {
    label: 'JSON',
    contentType: 'application/json',
    extension: 'json',
    write: (chapters) => `${JSON.stringify(chapterListFile(chapters), null, 2)}\n`,
  },
} satisfies Record<string, ChapterFormat>;

export type ChapterFormatName = keyof typeof chapterFormats;

/**
 * The list that goes below a video: common practice, no source. Right-to-left titles get no direction marks:
 * each line is a paragraph of its own (Unicode UAX #9, rule P1), so none can turn another, and hosts read the
 * time where the line begins.
 */
function textLine(chapter: Chapter): string {
  return `${`${shortTime(chapter.startMs)} ${oneLine(chapter.title)}`.trimEnd()}\n`;
}

/** W3C WebVTT, sections 4.2.3 (chapter title text, character references) and 4.6.2 (files of chapter titles). */
function webvttCue(chapter: Chapter): string {
  return `${webvttTime(chapter.startMs)} --> ${webvttTime(chapter.endMs)}\n${markupText(oneLine(chapter.title))}\n`;
}

/** FFmpeg Formats Documentation, section Metadata: a chapter section and its escapes. */
function ffmetadataSection(chapter: Chapter): string {
  const title = oneLine(chapter.title).replace(/[=;#\\]/g, '\\$&');
  return `[CHAPTER]\nTIMEBASE=1/1000\nSTART=${chapter.startMs}\nEND=${chapter.endMs}\ntitle=${title}\n`;
}

function chapterListFile(chapters: readonly Chapter[]): ChapterListFile {
  return {
    version: 1,
    chapters: chapters.map(({ startMs, endMs, title }) => ({ startMs, endMs, title: oneLine(title) })),
  };
}
