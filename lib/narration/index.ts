export {
  CaptionsError,
  readCaptions,
  type SplitCaptions,
  shiftLines,
  splitOverTakes,
  writeSubRip,
  writeWebVtt,
} from './captions';
export { propose } from './propose';
export { sayHeard } from './record';
