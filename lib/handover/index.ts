export { type ChapterFormat, type ChapterFormatName, chapterFormats } from './chapter-list';
