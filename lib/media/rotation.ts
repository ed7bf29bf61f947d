export type Rotation = 0 | 90 | 180 | 270;

/**
 * Degrees clockwise that a player turns the picture, from a display matrix (ISO/IEC 14496-12, 8.3.2.3): nine
 * 32-bit numbers, a and b first. Odd angles go to the nearest quarter turn.
 */
export function clockwiseFrom(matrix: ArrayLike<number>): Rotation {
  const degrees = (Math.atan2(matrix[1] ?? 0, matrix[0] ?? 1) * 180) / Math.PI;
  const quarters: readonly Rotation[] = [0, 90, 180, 270];
  return quarters[(Math.round(degrees / 90) + 4) % 4] ?? 0;
}

/** Whether a quarter turn swaps width and height. */
export function isSideways(rotation: Rotation): boolean {
  return rotation === 90 || rotation === 270;
}
