/** Rounded timestamps (whole milliseconds in some containers) are no gap. */
const jitterSeconds = 0.003;
/** A step back by more than this is a clock that was set anew, not an overlap. */
const overlapSeconds = 10;

/** Where a run of samples goes. Counted in samples from take time 0. */
export interface Placing {
  /** Samples of silence that come before. */
  gap: number;
  /** Samples at the start of the run that have no place: before take time 0, or already heard. */
  skip: number;
  /** What to add to this and all later stamps: not 0 after the file's clock jumped. */
  shift: number;
}

/**
 * Places a run of samples by its time stamp.
 * @param cursor samples placed so far
 * @param stamp first sample's place by its presentation time, with the shift so far; null when it has none
 * @param limit no sound is expected beyond this place: a stamp beyond it is a damaged one
 */
export function placeRun(cursor: number, stamp: number | null, limit: number, sampleRateHz: number): Placing {
  if (stamp === null) return { gap: 0, skip: 0, shift: 0 };
  const drift = stamp - cursor;
  if (Math.abs(drift) <= jitterSeconds * sampleRateHz) return { gap: 0, skip: 0, shift: 0 };
  if (drift > 0)
    return stamp > limit ? { gap: 0, skip: 0, shift: -drift } : { gap: drift, skip: 0, shift: 0 };
  if (cursor > 0 && -drift > overlapSeconds * sampleRateHz) return { gap: 0, skip: 0, shift: -drift };
  return { gap: 0, skip: -drift, shift: 0 };
}
