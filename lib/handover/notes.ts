export { composeNotes } from './notes/compose';
export {
  type NoteFormat,
  type NoteFormatName,
  type NotesMeta,
  noteFormats,
  notesMetaOf,
  writeNotes,
} from './notes/formats';
export type { NoteOptions } from './notes/making';
export { type PrivateInNote, privateInNotes } from './notes/private';
export { type NoteSection, noteSections } from './notes/sections';
