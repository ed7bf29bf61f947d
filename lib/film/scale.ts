/** A graduation of the engraved scale. */
export interface Graduation {
  ms: number;
  /** Long graduations carry their time. */
  long: boolean;
}

/** Steps that people read without counting, in milliseconds. */
const steps = [
  100, 200, 500, 1_000, 2_000, 5_000, 10_000, 30_000, 60_000, 120_000, 300_000, 600_000, 1_800_000, 3_600_000,
];
const fewestPixelsBetweenLong = 90;
const shortPerLong = 5;

/**
 * Graduations in view, long ones far enough apart to carry their time.
 * @param pixelsPerMs how far the strip is drawn out
 */
export function graduations(fromMs: number, toMs: number, pixelsPerMs: number): Graduation[] {
  const longMs = steps.find((step) => step * pixelsPerMs >= fewestPixelsBetweenLong) ?? steps.at(-1) ?? 1;
  const shortMs = longMs / shortPerLong;
  const first = Math.max(0, Math.ceil(fromMs / shortMs));
  const count = Math.max(0, Math.floor(toMs / shortMs) - first + 1);
  return Array.from({ length: count }, (_, index) => ({
    ms: (first + index) * shortMs,
    long: (first + index) % shortPerLong === 0,
  }));
}
