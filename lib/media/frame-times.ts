/** Rounding of stamps to whole milliseconds, and a little of a camera's own unevenness. */
const roundingSeconds = 0.0015;
const unevenness = 0.1;

/**
 * Whether the distances between pictures differ by more than rounding, so that frame numbers would lie.
 * @param times presentation times in seconds of successive pictures, in any order
 */
export function isVariable(times: readonly number[]): boolean {
  const sorted = [...new Set(times)].sort((a, b) => a - b);
  const steps = sorted.slice(1).map((time, i) => time - (sorted[i] ?? 0));
  if (steps.length < 2) return false;
  const median = medianOf(steps);
  return steps.some((step) => Math.abs(step - median) > Math.max(roundingSeconds, median * unevenness));
}

/** Pictures per second of the middle step; null for fewer than two pictures. */
export function rateOf(times: readonly number[]): number | null {
  const sorted = [...new Set(times)].sort((a, b) => a - b);
  const steps = sorted.slice(1).map((time, i) => time - (sorted[i] ?? 0));
  const median = medianOf(steps);
  return median > 0 ? 1 / median : null;
}

function medianOf(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[values.length >> 1] ?? 0;
}
