export { mediaTypeOf } from './media-types';
export { type ByteRange, ifRangeHolds, type RangeAnswer, readRange } from './range';
export { looksLikeRecording } from './recording-names';
