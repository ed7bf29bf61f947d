// Too heavy for the browser, so not through the pure door.

export { bundleRecordOf } from './bundle/record-store';
export { zipStream } from './bundle/zip-out-store';
export { bringInBundle, writeBundle } from './bundle-store';
export { chapterListOf } from './chapter-store';
export { captionedStillOf, clipOf } from './clip-store';
export { cutResults, forecastCut, getCutView, patchCut, pathOfCut, removeCut, startCut } from './cut-store';
export { decideFinding, findingsOf } from './findings-store';
export { logoOf, removeLogo, setLogo } from './logo-store';
export { type NoteFormatName, noteFormats } from './notes';
export { notesOf, patchNotes } from './notes-store';
export { patchSummary, summaryPdfOf } from './summary-store';
export { getHandOverView } from './view-store';
