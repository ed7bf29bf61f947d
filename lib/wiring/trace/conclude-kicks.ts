import type { Conclusion } from '@/shared/wiring';
import { type PairFact, pairKey } from './facts';
import type { Kick } from './kicks';
import { type Model, ofKind } from './model';
import { nameOf } from './net';
import { isAcross, type RowFact } from './rows';
import type { Section } from './sections';

/** The row each winding lies under, its positive end, and the poles that the rows turn to the strings. */
export function concludeKicks(model: Model): Conclusion[] {
  const sections = model.strands.flatMap((strand) => strand.sections);
  return [
    ...sections.flatMap((section) =>
      (model.rows.get(section) ?? []).flatMap((fact) => fromRow(model, section, fact)),
    ),
    ...acrossTaps(model, sections),
    ...polesOf(model),
  ];
}

/** Clear kicks across several sections at once: the row holds for one of them, whichever it is. */
function acrossTaps(model: Model, sections: readonly Section[]): Conclusion[] {
  const { net, kicks } = model;
  const across = kicks.filter(
    (kick) => kick.isLarge && !sections.some((section) => isAcross(net, kick, section)),
  );
  const groups = new Map<string, Kick[]>();
  for (const kick of across) {
    const key = `${pairKey(kick.a, kick.b)}:${kick.row}`;
    groups.set(key, [...(groups.get(key) ?? []), kick]);
  }
  return [...groups.values()].flatMap(([first, ...more]) => {
    if (!first) return [];
    const isOneWay = more.every((kick) => kick.aIsPositive === first.aIsPositive);
    const positive = net.nodeOf[first.aIsPositive ? first.a : first.b] ?? 0;
    const fact: RowFact = {
      row: first.row,
      positive: isOneWay ? positive : null,
      basis: first.basis,
      positiveBasis: isOneWay ? first.basis : null,
      readings: [first, ...more].map((kick) => kick.id),
      why: 'kick',
    };
    return ofPair(model, [first.a, first.b], fact);
  });
}

function ofPair(model: Model, pair: [number, number], fact: RowFact): Conclusion[] {
  const row = rowConclusion(model, pair, fact);
  return fact.positive === null ? [row] : [row, positiveConclusion(model, pair, fact, fact.positive)];
}

/** One conclusion for each pair of ends that the section was read or kicked across. */
function fromRow(model: Model, section: Section, fact: RowFact): Conclusion[] {
  return pairsAcross(model, section).flatMap((pair) => ofPair(model, pair, fact));
}

function pairsAcross({ net, kicks }: Model, section: Section): [number, number][] {
  const facts = net.facts.filter(
    (fact: PairFact) => fact.state === 'winding' && isOn(net.nodeOf, fact, section),
  );
  const across = kicks.filter((kick: Kick) => isAcross(net, kick, section));
  const byKey = new Map([...facts, ...across].map(({ a, b }) => [pairKey(a, b), [a, b] as [number, number]]));
  return [...byKey.values()];
}

function isOn(nodeOf: readonly number[], { a, b }: PairFact, section: Section): boolean {
  return pairKey(nodeOf[a] ?? 0, nodeOf[b] ?? 0) === pairKey(...section.nodes);
}

const whyRow: Record<RowFact['why'], (fact: RowFact) => string> = {
  kick: (fact) => `Steel at the ${fact.row} row gives a clear kick.`,
  'other row': () => 'Steel at the other row gives only a slight kick.',
  'other coil': () => 'The other coil lies under the other row.',
  'taken over': () => 'It is taken over from another pickup.',
};

function rowConclusion({ net }: Model, [i, j]: [number, number], fact: RowFact): Conclusion {
  const [a, b] = [nameOf(net, i), nameOf(net, j)];
  return {
    key: `row:${a}|${b}:${fact.row}`,
    kind: 'row',
    about: [a, b],
    basis: fact.basis,
    text: `The winding of ${a} and ${b} has its coil under the ${fact.row} row.`,
    because: whyRow[fact.why](fact),
    readings: fact.readings,
    row: fact.row,
  };
}

function positiveConclusion(
  { net }: Model,
  [i, j]: [number, number],
  fact: RowFact,
  node: number,
): Conclusion {
  const [a, b] = [nameOf(net, i), nameOf(net, j)];
  const positive = net.nodeOf[i] === node ? a : b;
  const basis = fact.positiveBasis ?? fact.basis;
  return {
    key: `positive:${a}|${b}:${fact.row}`,
    kind: 'positive end',
    about: [a, b],
    basis,
    text: `${positive.charAt(0).toUpperCase()}${positive.slice(1)} is the positive end under the ${fact.row} row.`,
    because:
      basis === 'assumed'
        ? 'It is taken over from another pickup.'
        : `With the red lead on ${positive}, steel laid on the ${fact.row} row makes the meter go positive.`,
    readings: basis === 'assumed' ? [] : fact.readings,
    row: fact.row,
    positive,
  };
}

function polesOf({ trace }: Model): Conclusion[] {
  return ofKind(trace.readings, 'pole').map(({ row, up, basis, id }) => ({
    key: `pole:${row}:${up}`,
    kind: 'pole',
    about: [],
    basis,
    text: `The ${row} row turns its ${up} pole to the strings.`,
    because: 'The compass showed it.',
    readings: [id],
    row,
  }));
}
