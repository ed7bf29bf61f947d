import type { Complaint } from './complaints';
import { type PairFact, pairKey } from './facts';
import { areApart, idsOf, type Net, nameOf } from './net';
import { sayOhms, sayPair } from './say';
import { inQuadrature } from './uncertainty';

/** A winding without a tap in it, between two nodes. */
export type Section = { nodes: [number, number]; fact: PairFact };

/** Windings that hang together. A plain chain has `nodes` and `sections` in order from one end to the other. */
export type Strand = {
  shape: 'chain' | 'unsettled' | 'branching' | 'bare';
  nodes: number[];
  sections: Section[];
};

/** Winding facts by pair, between nodes or between terminals. */
type Links = ReadonlyMap<number, PairFact>;
export type Triple = { ends: [number, number]; middle: number; facts: [PairFact, PairFact, PairFact] };

export function strandsOf(net: Net): Strand[] {
  const components = [...new Set(net.componentOf)];
  return components.map((component) => strandOf(net, nodesIn(net, component)));
}

export function nodesIn(net: Net, component: number): number[] {
  return [...new Set(net.nodeOf.filter((_, at) => net.componentOf[at] === component))];
}

function strandOf(net: Net, nodes: number[]): Strand {
  if (nodes.length === 1) return { shape: 'bare', nodes, sections: [] };
  const whole = new Set(tapsAmong(net.links, nodes).map((tap) => pairKey(...tap.ends)));
  const sections = pairsOf(nodes).flatMap(([a, b]): Section[] => {
    const fact = net.links.get(pairKey(a, b));
    return fact && !whole.has(pairKey(a, b)) ? [{ nodes: [a, b], fact }] : [];
  });
  if (!isSettled(net, nodes) || sections.length !== nodes.length - 1)
    return { shape: 'unsettled', nodes, sections };
  return inOrder(nodes, sections);
}

/** Every pair has a value, so that what lies between what is no longer open. */
function isSettled(net: Net, nodes: readonly number[]): boolean {
  return (
    nodes.length === 2 ||
    pairsOf(nodes).every(([a, b]) => typeof net.links.get(pairKey(a, b))?.ohms === 'number')
  );
}

function inOrder(nodes: number[], sections: Section[]): Strand {
  const at = (node: number) => sections.filter((section) => section.nodes.includes(node));
  const start = nodes.find((node) => at(node).length === 1);
  if (start === undefined || nodes.some((node) => at(node).length > 2))
    return { shape: 'branching', nodes, sections };
  const order = [start];
  const run: Section[] = [];
  for (let node = start; run.length < sections.length; ) {
    const next = at(node).find((section) => !run.includes(section));
    if (!next) return { shape: 'branching', nodes, sections };
    run.push(next);
    node = next.nodes[0] === node ? next.nodes[1] : next.nodes[0];
    order.push(node);
  }
  return { shape: 'chain', nodes: order, sections: run.map((section, i) => facing(section, order[i])) };
}

function facing(section: Section, first: number | undefined): Section {
  const [a, b] = section.nodes;
  return a === first ? section : { nodes: [b, a], fact: section.fact };
}

export function pairsOf<T>(items: readonly T[]): [T, T][] {
  return items.flatMap((a, at) => items.slice(at + 1).map((b): [T, T] => [a, b]));
}

/** Where one end lies between two others: the two parts add up to the whole within their uncertainty. */
export function tapsAmong(links: Links, points: readonly number[]): Triple[] {
  return triplesOf(links, points).filter((triple) => missBy(triple) <= allowedFor(triple));
}

/** Three fully read ends, the largest value taken for the whole. */
function triplesOf(links: Links, nodes: readonly number[]): Triple[] {
  return nodes.flatMap((a, i) =>
    nodes.slice(i + 1).flatMap((b, j) =>
      nodes.slice(i + j + 2).flatMap((c) => {
        const triple = tripleOf(links, a, b, c);
        return triple ? [triple] : [];
      }),
    ),
  );
}

function tripleOf(links: Links, a: number, b: number, c: number): Triple | null {
  const sides = [
    { ends: [a, b] as const, middle: c, fact: links.get(pairKey(a, b)) },
    { ends: [a, c] as const, middle: b, fact: links.get(pairKey(a, c)) },
    { ends: [b, c] as const, middle: a, fact: links.get(pairKey(b, c)) },
  ].sort((x, y) => (y.fact?.ohms ?? 0) - (x.fact?.ohms ?? 0));
  const [whole, one, two] = sides;
  if (!whole?.fact || !one?.fact || !two?.fact) return null;
  if (sides.some((side) => typeof side.fact?.ohms !== 'number')) return null;
  return { ends: [...whole.ends], middle: whole.middle, facts: [whole.fact, one.fact, two.fact] };
}

function missBy({ facts: [whole, one, two] }: Triple): number {
  return Math.abs((whole.ohms ?? 0) - (one.ohms ?? 0) - (two.ohms ?? 0));
}

function allowedFor({ facts }: Triple): number {
  return inQuadrature(...facts.map((fact) => fact.uncertaintyOhms ?? 0));
}

/** Three values that do not add up, with no common point that would explain them. */
export function sumComplaints(net: Net): Complaint[] {
  return [...new Set(net.componentOf)].flatMap((component) =>
    triplesOf(net.links, nodesIn(net, component))
      .filter((triple) => missBy(triple) > allowedFor(triple) && !mayMeetElsewhere(net, triple))
      .map((triple) => sumComplaint(net, triple)),
  );
}

/** Three windings may meet at a fourth point: one that fits, or one that is not read far enough to rule it out. */
function mayMeetElsewhere(net: Net, triple: Triple): boolean {
  const [whole, one, two] = triple.facts.map((fact) => fact.ohms ?? 0);
  const isTooLong = (whole ?? 0) - (one ?? 0) - (two ?? 0) > allowedFor(triple);
  const points = [...triple.ends, triple.middle];
  const others = [...new Set(net.nodeOf)].filter(
    (node) => !points.includes(node) && !areApart(net, node, triple.middle),
  );
  return !isTooLong && others.some((node) => mayBeBetween(net, points, node));
}

function mayBeBetween(net: Net, points: readonly number[], node: number): boolean {
  const isRead = points.every((point) => typeof net.links.get(pairKey(point, node))?.ohms === 'number');
  const between = pairsOf(points).map((ends) => tapsAmong(net.links, [...ends, node])[0]?.middle === node);
  return !isRead || between.every(Boolean);
}

function sumComplaint(net: Net, triple: Triple): Complaint {
  const [whole, one, two] = triple.facts;
  const say = (fact: PairFact) =>
    `${sayPair(nameOf(net, fact.a), nameOf(net, fact.b))} ${sayOhms(fact.ohms ?? 0)}`;
  const readings = idsOf(triple.facts);
  return {
    key: `sum:${[...readings].sort().join('|')}`,
    text: `${say(one)} and ${say(two)} do not add up to ${say(whole)} (off by ${sayOhms(missBy(triple))}, ${sayOhms(allowedFor(triple))} allowed): read them again, or the windings meet at a point that is not brought out.`,
    readings,
  };
}
