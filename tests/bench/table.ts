/** One line of the table: our figure beside its reference, both in `unit`. */
export interface Row {
  name: string;
  ours: number;
  /** Null where nothing outside can be held beside it. */
  reference: number | null;
  referenceName: string;
  unit: string;
  /** In words; nothing fails when it is missed. */
  target: string;
}

const headings = ['what', 'ours', 'reference', 'ratio', 'unit', 'target', 'reference is'];

/** The rows as one aligned table. */
export function table(rows: readonly Row[]): string {
  const lines = [headings, ...rows.map(cells)];
  const widths = headings.map((_, column) => Math.max(...lines.map((line) => line[column]?.length ?? 0)));
  return lines
    .map((line) =>
      line
        .map((cell, column) => cell.padEnd(widths[column] ?? 0))
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
}

function cells({ name, ours, reference, referenceName, unit, target }: Row): string[] {
  const ratio = reference === null ? '' : `${(ours / reference).toFixed(2)} ×`;
  return [
    name,
    number(ours),
    reference === null ? '' : number(reference),
    ratio,
    unit,
    target,
    referenceName,
  ];
}

function number(value: number): string {
  return value.toFixed(value >= 100 ? 0 : value >= 10 ? 1 : value >= 0.1 ? 2 : 4);
}

export type Work = () => unknown;

/**
 * Runs ours and the reference by turns, so that a noisy machine disturbs both, and keeps the best of each.
 * @returns milliseconds
 */
export async function best(
  runs: number,
  ours: Work,
  reference: Work,
): Promise<{ ours: number; reference: number }> {
  let [bestOurs, bestReference] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (let run = 0; run < runs; run++) {
    bestReference = Math.min(bestReference, await time(reference));
    bestOurs = Math.min(bestOurs, await time(ours));
  }
  return { ours: bestOurs, reference: bestReference };
}

/** Wall time in milliseconds. */
export async function time(work: Work): Promise<number> {
  const start = performance.now();
  await work();
  return performance.now() - start;
}
