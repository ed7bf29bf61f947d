import { type Chapter, shortTime, webvttTime } from '@/lib/film';

/** One way of writing a chapter list. */
export interface ChapterFormat {
  contentType: string;
  extension: string;
  write(chapters: readonly Chapter[]): string;
}

/** Add a format here; the page and the route offer whatever stands in this table. */
export const chapterFormats = {
  text: {
    contentType: 'text/plain; charset=utf-8',
    extension: 'txt',
    write: (chapters) =>
      chapters.map((chapter) => `${shortTime(chapter.startMs)} ${chapter.title}\n`).join(''),
  },
  webvtt: {
    contentType: 'text/vtt; charset=utf-8',
    extension: 'vtt',
    write: (chapters) => ['WEBVTT\n', ...chapters.map(cue)].join('\n'),
  },
} satisfies Record<string, ChapterFormat>;

export type ChapterFormatName = keyof typeof chapterFormats;

/** W3C WebVTT, section 4.5 (chapter cues) and 4.2.2 (escapes in cue text). */
function cue(chapter: Chapter): string {
  const title = chapter.title.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
  return `${webvttTime(chapter.startMs)} --> ${webvttTime(chapter.endMs)}\n${title}\n`;
}
