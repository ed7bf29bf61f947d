export { type CutPlan, chaptersInCut, cutPlan, type PlannedPiece } from './cut';
export { mediaTypeOf } from './media-types';
export { numberedName, receivedName } from './received-name';
export { type ByteRange, ifRangeHolds, type RangeAnswer, readRange } from './range';
export { listenResultSchema } from './results';
