import type { Plan } from '@/shared/wiring';

export type Resistor = { from: string; to: string; ohms: number };

/**
 * Resistance between two ends of a network by brute force: conductances into a Laplacian, one amp in,
 * Gaussian elimination. `points` are ends that are one point. Infinite when nothing connects the two.
 */
export function solveOhms(
  resistors: readonly Resistor[],
  points: readonly string[][],
  from: string,
  to: string,
): number {
  const names = [...new Set([...resistors.flatMap((one) => [one.from, one.to]), ...points.flat(), from, to])];
  const parent = new Map(names.map((name) => [name, name]));
  const root = (name: string): string => (parent.get(name) === name ? name : root(parent.get(name) ?? name));
  for (const [first, ...others] of points)
    for (const other of others) parent.set(root(other), root(first ?? other));
  if (root(from) === root(to)) return 0;
  const nodes = connected(resistors, root, root(to));
  if (!nodes.includes(root(from))) return Number.POSITIVE_INFINITY;
  const free = nodes.filter((node) => node !== root(to));
  const rows = free.map((node) => [
    ...free.map((other) => conductance(resistors, root, node, other)),
    node === root(from) ? 1 : 0,
  ]);
  return eliminate(rows)[free.indexOf(root(from))] ?? Number.NaN;
}

type Root = (name: string) => string;

function connected(resistors: readonly Resistor[], root: Root, start: string): string[] {
  const seen = new Set([start]);
  for (const node of seen) {
    for (const { from, to } of resistors) {
      if (root(from) === node) seen.add(root(to));
      if (root(to) === node) seen.add(root(from));
    }
  }
  return [...seen];
}

function conductance(resistors: readonly Resistor[], root: Root, node: string, other: string): number {
  return resistors.reduce((sum, { from, to, ohms }) => {
    const [a, b] = [root(from), root(to)];
    if (a === b) return sum;
    if (node === other) return a === node || b === node ? sum + 1 / ohms : sum;
    return (a === node && b === other) || (a === other && b === node) ? sum - 1 / ohms : sum;
  }, 0);
}

function eliminate(rows: number[][]): number[] {
  const count = rows.length;
  for (let pivot = 0; pivot < count; pivot++) {
    const best = rows
      .slice(pivot)
      .reduce((kept, row) => (Math.abs(row[pivot] ?? 0) > Math.abs(kept[pivot] ?? 0) ? row : kept));
    rows.splice(rows.indexOf(best), 1);
    rows.splice(
      pivot,
      0,
      best.map((value) => value / (best[pivot] ?? 1)),
    );
    const lead = rows[pivot] ?? [];
    for (let at = 0; at < count; at++) {
      const row = rows[at] ?? [];
      const factor = row[pivot] ?? 0;
      if (at !== pivot) rows[at] = row.map((value, column) => value - factor * (lead[column] ?? 0));
    }
  }
  return rows.map((row) => row[count] ?? 0);
}

/** What a plan joins, as points of a network; the link of a split goes to where it is switched. */
export function pointsOf(plan: Plan): string[][] {
  const hot = ['HOT', ...plan.hot];
  const ground = ['GROUND', ...plan.ground];
  const switched = plan.lines
    .filter((line) => line.role === 'joined' && line.goesTo.includes('switch'))
    .flatMap((line) => line.ends);
  const links = plan.lines
    .filter((line) => !switched.includes(line.ends[0] ?? ''))
    .flatMap((line) => (line.role === 'joined' || line.inside ? [line.ends] : []));
  if (plan.linkSwitchedTo === 'hot') hot.push(...switched);
  if (plan.linkSwitchedTo === 'ground') ground.push(...switched);
  return [hot, ground, ...links];
}
