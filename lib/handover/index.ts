export { type ChapterFormat, type ChapterFormatName, chapterFormats } from './chapter-list';
export {
  type ChapterFinding,
  type ChapterRule,
  chapterRules,
} from './chapter-rules';
export { captionOf, type SavedLine } from './clip';
export { type FixedChapters, fixChapters } from './fix-chapters';
export {
  type CutAway,
  type KeptPiece,
  type PublishedFilm,
  type PublishedTime,
  publishedFilm,
  publishedTimeOf,
} from './published';
export { type ChapterNote, chaptersOfPublished } from './published-chapters';
