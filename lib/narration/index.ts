export {
  CaptionsError,
  readCaptions,
  type SplitCaptions,
  shiftLines,
  splitOverTakes,
  writeSubRip,
  writeWebVtt,
} from './captions';
export { NAMES_THAT_ARE_WORDS } from './lexicon/names';
export { type PrivateWords, privateWordsFor, privateWordsIn } from './private-words';
export { propose } from './propose';
export { sayHeard } from './record';
