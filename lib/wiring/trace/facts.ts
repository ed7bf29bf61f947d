import type { PairReading, WiringBasis } from '@/shared/wiring';
import { compareBasis } from './basis';
import type { Complaint } from './complaints';
import { sayPair, sayValue } from './say';
import { expandedOhms, inQuadrature } from './uncertainty';

/** Common practice, no source: below this two ends are one point, above that it is no winding, or open. */
export const limits = { joinedOhms: 5, windingOhms: 100_000, leakageOhms: 20_000_000 } as const;

export type PairState = 'joined' | 'winding' | 'leakage' | 'open' | 'disputed';

/** What is known of one pair of terminals; `a` < `b` are places in the list of terminals. */
export type PairFact = {
  a: number;
  b: number;
  state: PairState;
  ohms: number | null;
  uncertaintyOhms: number | null;
  basis: WiringBasis;
  readings: string[];
  /** Not read as a resistance: a kick across the pair, or what is left over. */
  because?: string;
};

export function stateOf(ohms: number | null): PairState {
  if (ohms === null || ohms > limits.leakageOhms) return 'open';
  if (ohms <= limits.joinedOhms) return 'joined';
  return ohms <= limits.windingOhms ? 'winding' : 'leakage';
}

export function pairKey(a: number, b: number): number {
  return a < b ? a * 16 + b : b * 16 + a;
}

/** One fact per pair that was read. Readings of one pair that disagree leave it disputed. */
export function readPairs(readings: readonly PairReading[], terminals: readonly string[]) {
  const facts: PairFact[] = [];
  const complaints: Complaint[] = [];
  for (const group of groupByPair(readings, terminals)) {
    const best = group.reduce((kept, reading) => (isBetter(reading, kept) ? reading : kept));
    const clashOfAll = furthestApart(group);
    const clashOfBest = furthestApart(group.filter((reading) => reading.basis === best.basis));
    for (const clash of [clashOfAll, clashOfBest]) if (clash) complaints.push(clashComplaint(clash));
    facts.push(factOf(best, terminals, clashOfBest));
  }
  return { facts: facts.sort((x, y) => pairKey(x.a, x.b) - pairKey(y.a, y.b)), complaints };
}

function groupByPair(readings: readonly PairReading[], terminals: readonly string[]): Group[] {
  const groups = new Map<number, Group>();
  for (const reading of readings) {
    const key = pairKey(terminals.indexOf(reading.between[0]), terminals.indexOf(reading.between[1]));
    const group = groups.get(key);
    if (group) group.push(reading);
    else groups.set(key, [reading]);
  }
  return [...groups.values()];
}

type Group = PairReading[];
type Clash = [PairReading, PairReading];

/** The two readings of a pair that lie furthest apart, when no uncertainty explains it. */
function furthestApart(group: Group): Clash | null {
  const value = (reading: PairReading) => reading.ohms ?? Number.POSITIVE_INFINITY;
  const [first] = group;
  if (!first) return null;
  const low = group.reduce((best, reading) => (value(reading) < value(best) ? reading : best), first);
  const high = group.reduce((best, reading) => (value(reading) > value(best) ? reading : best), first);
  return agree(low, high) ? null : [low, high];
}

function agree(low: PairReading, high: PairReading): boolean {
  const state = stateOf(low.ohms);
  if (low.ohms === null || high.ohms === null || state === 'open') return state === stateOf(high.ohms);
  const allowed = inQuadrature(expandOf(low.ohms, low), expandOf(high.ohms, high));
  // A leak wanders with moisture and touch, a joint with the clips: only its kind has to agree.
  const wanders = state === 'leakage' || state === 'joined';
  return (wanders && stateOf(high.ohms) === state) || high.ohms - low.ohms <= allowed;
}

function expandOf(ohms: number, reading: PairReading): number {
  return expandedOhms({ ohms, uncertaintyOhms: reading.uncertaintyOhms });
}

function factOf(best: PairReading, terminals: readonly string[], clash: Clash | null): PairFact {
  const state = clash ? 'disputed' : stateOf(best.ohms);
  const [a = 0, b = 0] = best.between.map((name) => terminals.indexOf(name)).sort((x, y) => x - y);
  const known = state === 'winding' || state === 'joined' || state === 'leakage';
  return {
    a,
    b,
    state,
    ohms: known ? best.ohms : null,
    uncertaintyOhms: known && best.ohms !== null ? expandOf(best.ohms, best) : null,
    basis: best.basis,
    readings: clash ? clash.map((reading) => reading.id) : [best.id],
  };
}

function isBetter(reading: PairReading, kept: PairReading): boolean {
  const basis = compareBasis(reading.basis, kept.basis);
  if (basis !== 0) return basis > 0;
  if (reading.ohms === null || kept.ohms === null) return false;
  return expandOf(reading.ohms, reading) < expandOf(kept.ohms, kept);
}

function clashComplaint([low, high]: Clash): Complaint {
  return {
    key: `clash:${[low.id, high.id].sort().join('|')}`,
    text: `${sayPair(...inOrder(low.between))} was read as ${sayValue(low.ohms)} and as ${sayValue(high.ohms)}: read it again and set the wrong one aside.`,
    readings: [low.id, high.id],
  };
}

function inOrder(between: readonly [string, string]): [string, string] {
  const [first, second] = between;
  return first < second ? [first, second] : [second, first];
}
