export { chapterListOf } from './chapter-store';
export { cutResults, forecastCut, getCutView, patchCut, pathOfCut, removeCut, startCut } from './cut-store';
export { decideFinding, findingsOf } from './findings-store';
