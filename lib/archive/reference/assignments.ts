import { letterCode, readMetal } from '@/lib/wiring';
import type { Assignment, BasisCounts, ConductorUse, TracedCoil, TracedPickup } from '@/shared/reference';

type Found = Pick<TracedPickup, 'coils' | 'basis' | 'trace' | 'job'>;
/** Jobs that are named for one assignment. */
const mostNamed = 8;

/**
 * What cables turned out to be: those alike in coils, rows and positive ends together, the ones that were measured (or
 * follow from what was) most often first. Nothing is said of a cable of which nothing is known.
 */
export function assignmentsOf(pickups: readonly Found[]): Assignment[] {
  const groups = new Map<string, Assignment>();
  for (const { coils, basis, trace, job } of pickups) {
    if (basis === null) continue;
    const key = keyOf(coils);
    const group = groups.get(key) ?? { coils: coils.map(bare), counts: noCounts(), traces: [] };
    group.counts[basis] += 1;
    if (group.traces.length < mostNamed) group.traces.push({ trace, job });
    groups.set(key, group);
  }
  return [...groups.values()].sort(
    (a, b) => proven(b.counts) - proven(a.counts) || all(b.counts) - all(a.counts),
  );
}

/** Of each conductor, which end of which coil it was, only where that was measured or follows from what was. */
export function usesOf(
  conductors: readonly { name: string; code: string }[],
  pickups: readonly Found[],
): ConductorUse[] {
  return conductors.map(({ name, code }) => {
    const counts = new Map<string, number>();
    for (const { coils } of pickups) {
      for (const end of coils.filter(isProven).flatMap((coil) => endOf(coil, code) ?? []))
        counts.set(end, (counts.get(end) ?? 0) + 1);
    }
    const uses = [...counts].map(([end, count]) => ({ end, count })).sort((a, b) => b.count - a.count);
    return { name, code, uses };
  });
}

/** How many of a group were measured or follow from what was. */
export function proven({ measured, implied }: BasisCounts): number {
  return measured + implied;
}

function all(counts: BasisCounts): number {
  return proven(counts) + counts.assumed + counts.stated;
}

const noCounts = (): BasisCounts => ({ measured: 0, implied: 0, assumed: 0, stated: 0 });
const isProven = ({ basis }: TracedCoil) => basis === 'measured' || basis === 'implied';
const bare = ({ row, ends }: TracedCoil) => ({ row, ends });

/** "positive end of the slug coil", "one end of a coil"; null where the conductor is no end of it. */
function endOf({ row, ends }: TracedCoil, code: string): string | null {
  const end = ends.find(({ names }) => names.some((name) => codeOf(name) === code));
  if (!end) return null;
  const coil = row === null ? 'a coil of no known row' : `the ${row} coil`;
  const isTold = ends.some(({ isPositive }) => isPositive);
  return `${isTold ? (end.isPositive ? 'positive' : 'negative') : 'one'} end of ${coil}`;
}

/** The same for coils that differ only in the order they are told in. */
function keyOf(coils: readonly TracedCoil[]): string {
  return coils
    .map(({ row, ends }) => {
      const told = ends.map(
        ({ names, isPositive }) => names.map(codeOf).sort().join('=') + (isPositive ? '+' : ''),
      );
      return `${row ?? ''}:${told.sort().join('–')}`;
    })
    .sort()
    .join(' ');
}

function codeOf(name: string): string {
  return readMetal(name) ?? letterCode(name);
}
