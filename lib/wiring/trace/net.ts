import type { PairCell } from '@/shared/wiring';
import { compareBasis, impliedBy } from './basis';
import type { Complaint } from './complaints';
import { type PairFact, pairKey } from './facts';
import { sayPair, sayValue } from './say';
import { inQuadrature } from './uncertainty';

/**
 * What the facts make of the terminals: ends that are one point share a node, nodes that read
 * through a winding share a component. Both are named by their lowest terminal.
 */
export type Net = {
  terminals: readonly string[];
  facts: readonly PairFact[];
  nodeOf: readonly number[];
  componentOf: readonly number[];
  /** The best winding fact between two nodes. */
  links: ReadonlyMap<number, PairFact>;
  /** A fact that shows two components apart. */
  apart: ReadonlyMap<number, PairFact>;
};

export function buildNet(terminals: readonly string[], facts: readonly PairFact[]): Net {
  const nodeOf = unite(terminals.length, facts, ['joined']);
  const componentOf = unite(terminals.length, facts, ['joined', 'winding']);
  const links = new Map<number, PairFact>();
  const apart = new Map<number, PairFact>();
  for (const fact of facts) {
    if (fact.state === 'winding') keepBetter(links, nodeOf, fact);
    if (fact.state === 'open' || fact.state === 'leakage') keepBetter(apart, componentOf, fact);
  }
  return { terminals, facts, nodeOf, componentOf, links, apart };
}

function unite(count: number, facts: readonly PairFact[], states: string[]): number[] {
  const group = Array.from({ length: count }, (_, at) => at);
  for (const fact of facts) {
    if (!states.includes(fact.state)) continue;
    const [low, high] = [group[fact.a] ?? 0, group[fact.b] ?? 0].sort((x, y) => x - y);
    for (let at = 0; at < count; at++) if (group[at] === high) group[at] = low ?? 0;
  }
  return group;
}

function keepBetter(kept: Map<number, PairFact>, groupOf: readonly number[], fact: PairFact): void {
  const [a, b] = [groupOf[fact.a] ?? 0, groupOf[fact.b] ?? 0];
  if (a === b) return;
  const before = kept.get(pairKey(a, b));
  if (!before || isBetter(fact, before)) kept.set(pairKey(a, b), fact);
}

function isBetter(fact: PairFact, before: PairFact): boolean {
  if (fact.state !== before.state) return fact.state === 'open';
  const basis = compareBasis(fact.basis, before.basis);
  if ((fact.ohms === null) !== (before.ohms === null)) return fact.ohms !== null;
  if (basis !== 0) return basis > 0;
  return (fact.uncertaintyOhms ?? 0) < (before.uncertaintyOhms ?? 0);
}

/** The facts along the shortest way from one terminal to another. */
export function pathBetween(net: Net, from: number, to: number, states = ['joined', 'winding']): PairFact[] {
  const cameBy = new Map<number, { fact: PairFact; before: number }>();
  const queue = [from];
  for (let at = queue.shift(); at !== undefined && at !== to; at = queue.shift()) {
    for (const fact of net.facts) {
      if (!states.includes(fact.state) || (fact.a !== at && fact.b !== at)) continue;
      const other = fact.a === at ? fact.b : fact.a;
      if (other === from || cameBy.has(other)) continue;
      cameBy.set(other, { fact, before: at });
      queue.push(other);
    }
  }
  const path: PairFact[] = [];
  for (let step = cameBy.get(to); step; step = cameBy.get(step.before)) path.unshift(step.fact);
  return path;
}

/** True when the two terminals cannot be one winding: a reading shows their components apart. */
export function areApart(net: Net, a: number, b: number): boolean {
  return apartFact(net, a, b) !== undefined;
}

export function apartFact(net: Net, a: number, b: number): PairFact | undefined {
  const [x, y] = [net.componentOf[a] ?? 0, net.componentOf[b] ?? 0];
  return x === y ? undefined : net.apart.get(pairKey(x, y));
}

export function nameOf(net: Net, at: number): string {
  return net.terminals[at] ?? '';
}

/** The cell of the pair grid: what was read, or what follows for a pair that was not. */
export function cellOf(net: Net, a: number, b: number): PairCell {
  const fact = net.facts.find((one) => pairKey(one.a, one.b) === pairKey(a, b));
  if (fact) return cell(net, a, b, fact, []);
  const [nodeA, nodeB] = [net.nodeOf[a] ?? 0, net.nodeOf[b] ?? 0];
  if (nodeA === nodeB) return impliedCell(net, a, b, 'joined', null);
  if (net.componentOf[a] === net.componentOf[b]) {
    return impliedCell(net, a, b, 'winding', net.links.get(pairKey(nodeA, nodeB)) ?? null);
  }
  const apart = apartFact(net, a, b);
  if (!apart) return cell(net, a, b, null, []);
  const near = net.componentOf[apart.a] === net.componentOf[a] ? apart.a : apart.b;
  const far = near === apart.a ? apart.b : apart.a;
  return cell(net, a, b, apart, [...pathBetween(net, a, near), ...pathBetween(net, far, b)]);
}

function impliedCell(
  net: Net,
  a: number,
  b: number,
  state: 'joined' | 'winding',
  link: PairFact | null,
): PairCell {
  const path = pathBetween(net, a, b, state === 'joined' ? ['joined'] : ['joined', 'winding']);
  const facts = link ? [link, ...path.filter((fact) => fact.state === 'joined')] : path;
  return {
    between: [nameOf(net, a), nameOf(net, b)],
    state,
    ohms: link?.ohms ?? null,
    uncertaintyOhms: link?.uncertaintyOhms ?? null,
    basis: impliedBy(...facts.map((fact) => fact.basis)),
    readings: idsOf(facts),
  };
}

function cell(net: Net, a: number, b: number, fact: PairFact | null, path: PairFact[]): PairCell {
  const direct = fact !== null && pairKey(fact.a, fact.b) === pairKey(a, b);
  const bases = fact ? [fact.basis, ...path.map((step) => step.basis)] : [];
  return {
    between: [nameOf(net, a), nameOf(net, b)],
    state: fact?.state ?? 'unread',
    ohms: direct ? fact.ohms : null,
    uncertaintyOhms: direct ? fact.uncertaintyOhms : null,
    basis: fact ? (direct ? fact.basis : impliedBy(...bases)) : null,
    readings: fact ? idsOf([fact, ...path]) : [],
  };
}

export function idsOf(facts: readonly PairFact[]): string[] {
  return [...new Set(facts.flatMap((fact) => fact.readings))];
}

/** Readings of different pairs that cannot all be true. */
export function netComplaints(net: Net): Complaint[] {
  return net.facts.flatMap(
    (fact) => insideNode(net, fact) ?? brokenPath(net, fact) ?? otherValue(net, fact) ?? [],
  );
}

function insideNode(net: Net, fact: PairFact): Complaint | null {
  if (fact.state === 'joined' || fact.state === 'disputed') return null;
  if (net.nodeOf[fact.a] !== net.nodeOf[fact.b]) return null;
  return complain(net, fact, pathBetween(net, fact.a, fact.b, ['joined']));
}

function brokenPath(net: Net, fact: PairFact): Complaint | null {
  if (fact.state !== 'open' && fact.state !== 'leakage') return null;
  if (net.componentOf[fact.a] !== net.componentOf[fact.b]) return null;
  return complain(net, fact, pathBetween(net, fact.a, fact.b));
}

function otherValue(net: Net, fact: PairFact): Complaint | null {
  const link = net.links.get(pairKey(net.nodeOf[fact.a] ?? 0, net.nodeOf[fact.b] ?? 0));
  if (!link || link === fact || link.ohms === null || fact.ohms === null || fact.state !== 'winding')
    return null;
  // Ends that count as one point may still be a few ohms apart.
  const allowed = inQuadrature(link.uncertaintyOhms ?? 0, fact.uncertaintyOhms ?? 0) + 10;
  return Math.abs(link.ohms - fact.ohms) <= allowed ? null : complain(net, fact, [link]);
}

function complain(net: Net, fact: PairFact, others: PairFact[]): Complaint {
  const say = (one: PairFact) =>
    `${sayPair(nameOf(net, one.a), nameOf(net, one.b))} ${one.because ?? `reads ${sayValue(one.ohms)}`}`;
  const readings = idsOf([fact, ...others]);
  return {
    key: `cross:${[...readings].sort().join('|')}`,
    text: `${say(fact)}, but ${others.map(say).join(' and ')}: these cannot all be right.`,
    readings,
  };
}
