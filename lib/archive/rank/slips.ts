/** How many slips of typing a word is allowed: none in a short one, where every word is near another. */
export function mostSlips(word: string): number {
  if (word.length < 4 || /\d/.test(word)) return 0;
  return word.length < 8 ? 1 : 2;
}

/**
 * Letters left out, put in, mistaken or swapped with their neighbour between two words (optimal string alignment,
 * after F. J. Damerau, "A technique for computer detection and correction of spelling errors", CACM 7, 1964).
 * @param most more than that is not counted
 */
export function slipsBetween(a: string, b: string, most: number): number {
  if (Math.abs(a.length - b.length) > most) return most + 1;
  let [before, last] = [
    new Array<number>(b.length + 1).fill(0),
    Array.from({ length: b.length + 1 }, (_, j) => j),
  ];
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      const isSwap = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      row[j] = Math.min(
        at(last, j) + 1,
        at(row, j - 1) + 1,
        at(last, j - 1) + (same ? 0 : 1),
        isSwap ? at(before, j - 2) + 1 : Number.POSITIVE_INFINITY,
      );
    }
    if (Math.min(...row) > most) return most + 1;
    [before, last] = [last, row];
  }
  return at(last, b.length);
}

function at(row: readonly number[], index: number): number {
  return row[index] ?? Number.POSITIVE_INFINITY;
}
