export { type Cell, csvLine, writeCsv } from './bundle/csv';
export { type ChapterFormat, type ChapterFormatName, chapterFormats } from './chapter-list';
export {
  type ChapterFinding,
  type ChapterRule,
  chapterRules,
} from './chapter-rules';
export { captionOf, type SavedLine } from './clip';
export { type FindingFacts, findingsIn } from './findings';
export { type FixedChapters, fixChapters } from './fix-chapters';
export { withoutPrices } from './notes/prices';
export { heldBack, type PrivateRecord, publicWordsFor } from './public-words';
export {
  type CutAway,
  type KeptPiece,
  type PublishedFilm,
  type PublishedTime,
  publishedFilm,
  publishedTimeOf,
} from './published';
export { type ChapterNote, chaptersOfPublished } from './published-chapters';
