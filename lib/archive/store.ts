export {
  backlogWork,
  listBacklogs,
  lookThroughFolder,
  orderImport,
  undoBacklog,
  viewBacklog,
} from './backlog-store';
export { calendarOf, setCalendar } from './calendar-store';
export {
  builtSearchScript,
  type PageSet,
  pagesOf,
  previewGiveOut,
  publicJsonOf,
  tableOf,
  wholeJsonOf,
} from './pages-store';
export { listQuestions, removeQuestion, saveQuestion } from './questions-store';
export {
  faultsAnswer,
  faultsTable,
  pickupsAnswer,
  pickupsTable,
  readingsAnswer,
  readingsPlot,
  readingsTable,
} from './reference-store';
export { searchArchive } from './search-store';
export { setSynonyms, synonymsOf } from './synonyms-store';
export { forgetChangedWords, keepArchiveAtLeisure, mendArchive, rebuildArchive } from './upkeep-store';
