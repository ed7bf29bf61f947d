import type { WiringBasis } from '@/shared/wiring';

const strength: Record<WiringBasis, number> = { measured: 3, implied: 2, stated: 1, assumed: 0 };

/** The weakest of several: a chain of reasons is as good as its poorest link. */
export function weakest(...all: WiringBasis[]): WiringBasis {
  return all.reduce<WiringBasis>((low, basis) => (strength[basis] < strength[low] ? basis : low), 'measured');
}

/** What follows from these, without having been read itself. */
export function impliedBy(...all: WiringBasis[]): WiringBasis {
  return weakest('implied', ...all);
}

/** Positive when `a` is the stronger. */
export function compareBasis(a: WiringBasis, b: WiringBasis): number {
  return strength[a] - strength[b];
}
