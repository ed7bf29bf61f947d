export { CaptionsError } from './errors';
export { readCaptions } from './read';
export { type SplitCaptions, shiftLines, splitOverTakes } from './split';
export { writeSubRip, writeWebVtt } from './write';
