const columns = 16;
const rows = 9;
/** Mean difference of brightness, of 255, below which nothing but hands has moved. */
const leastDifference = 14;
/** A change of view stands out from what moves all the time. */
const timesUsual = 2.5;

/** A picture as 16 × 9 mean brightnesses. */
export type Glance = Float32Array;

/** @param luma brightness plane, `stride` bytes a row */
export function glanceAt(luma: Uint8Array, stride: number, width: number, height: number): Glance {
  const sums = new Float32Array(columns * rows);
  const counts = new Float32Array(columns * rows);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const cell = Math.floor((y * rows) / height) * columns + Math.floor((x * columns) / width);
      sums[cell] = (sums[cell] ?? 0) + (luma[y * stride + x] ?? 0);
      counts[cell] = (counts[cell] ?? 0) + 1;
    }
  }
  return sums.map((sum, cell) => sum / Math.max(1, counts[cell] ?? 1));
}

export interface TimedGlance {
  ms: number;
  glance: Glance;
}

/** Moments at which the camera seems to have been moved, or to look at something else. */
export function findViewChanges(glances: readonly TimedGlance[]): { ms: number }[] {
  const differences = glances
    .slice(1)
    .map(({ glance }, i) => difference(glance, glances[i]?.glance ?? glance));
  const usual = [...differences].sort((a, b) => a - b)[differences.length >> 1] ?? 0;
  // With a handful of stills the middle one may itself be a change.
  const limit = differences.length < 4 ? leastDifference * 2 : Math.max(leastDifference, usual * timesUsual);
  return glances.slice(1).flatMap(({ ms }, i) => ((differences[i] ?? 0) > limit ? [{ ms }] : []));
}

function difference(a: Glance, b: Glance): number {
  return a.reduce((sum, value, cell) => sum + Math.abs(value - (b[cell] ?? 0)), 0) / a.length;
}
