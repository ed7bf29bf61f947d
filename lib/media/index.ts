export { cutPlan } from './cut';
export { mediaTypeOf } from './media-types';
export { type ByteRange, ifRangeHolds, type RangeAnswer, readRange } from './range';
export { numberedName, receivedName } from './received-name';
export { listenResultSchema } from './results';
