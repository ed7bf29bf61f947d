export { mediaTypeOf } from './media-types';
export { type ByteRange, ifRangeHolds, type RangeAnswer, readRange } from './range';
export { listenResultSchema } from './results';
