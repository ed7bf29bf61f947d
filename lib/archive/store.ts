export { calendarOf, setCalendar } from './calendar-store';
export { listQuestions, removeQuestion, saveQuestion } from './questions-store';
export { searchArchive } from './search-store';
export { setSynonyms, synonymsOf } from './synonyms-store';
export { forgetChangedWords, keepArchiveAtLeisure, mendArchive, rebuildArchive } from './upkeep-store';
