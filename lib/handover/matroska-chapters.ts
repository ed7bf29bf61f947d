import { type Chapter, oneLine, webvttTime } from '@/lib/film';
import { markupText } from './title';

/**
 * Chapters as the XML that mkvmerge takes: the elements of RFC 9559, section 5.1.7, under the names of
 * MKVToolNix's `matroskachapters.dtd`. Ids are unique within the file, never 0, and the same for the same list.
 * The language is `und` (BCP 47, undetermined), because nobody has said in which one the titles are. An edition
 * has at least one chapter, so an empty list has no edition.
 */
export function matroskaXml(chapters: readonly Chapter[]): string {
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    '<Chapters>',
    ...(chapters.length > 0 ? edition(chapters) : []),
    '</Chapters>',
    '',
  ].join('\n');
}

function edition(chapters: readonly Chapter[]): string[] {
  return [
    '  <EditionEntry>',
    '    <EditionUID>1</EditionUID>',
    '    <EditionFlagDefault>1</EditionFlagDefault>',
    ...chapters.flatMap(atom),
    '  </EditionEntry>',
  ];
}

function atom(chapter: Chapter, index: number): string[] {
  return [
    '    <ChapterAtom>',
    `      <ChapterUID>${index + 1}</ChapterUID>`,
    `      <ChapterTimeStart>${nanosecondTime(chapter.startMs)}</ChapterTimeStart>`,
    `      <ChapterTimeEnd>${nanosecondTime(chapter.endMs)}</ChapterTimeEnd>`,
    '      <ChapterDisplay>',
    `        <ChapterString>${markupText(oneLine(chapter.title))}</ChapterString>`,
    '        <ChapLanguageIETF>und</ChapLanguageIETF>',
    '      </ChapterDisplay>',
    '    </ChapterAtom>',
  ];
}

/** "00:00:07.250000000": the times are counted in nanoseconds. */
function nanosecondTime(ms: number): string {
  return `${webvttTime(ms)}000000`;
}
