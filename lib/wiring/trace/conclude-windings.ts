import type { Conclusion } from '@/shared/wiring';
import { impliedBy, weakest } from './basis';
import type { PairFact } from './facts';
import { type Model, windingsByPair } from './model';
import { areApart, idsOf, nameOf } from './net';
import type { RowFact } from './rows';
import { sayEnd, sayOhms, sayPair, sayValue, sentence } from './say';
import { nodesIn, type Strand, type Triple, tapsAmong } from './sections';

/** Coils, tapped coils, coils linked inside, and a coil that is alone on its two ends. */
export function concludeWindings(model: Model): Conclusion[] {
  const found = windingsByPair(model.net);
  const terminals = model.terminals.map((_, at) => at);
  return [
    ...[...found.values()].map((fact) => coil(model, fact)),
    ...tapsAmong(found, terminals).map((triple) => tapped(model, triple)),
    ...linkedByJoint(model),
    ...linkedByRows(model),
    ...singleCoil(model),
  ];
}

function coil({ net }: Model, fact: PairFact): Conclusion {
  const [a, b] = [nameOf(net, fact.a), nameOf(net, fact.b)];
  const value = fact.ohms === null ? '' : ` of ${sayOhms(fact.ohms)}`;
  return {
    key: `coil:${a}|${b}`,
    kind: 'coil',
    about: [a, b],
    basis: fact.basis,
    text: sentence(`${sayEnd(a)} and ${sayEnd(b)} are the two ends of a winding${value}.`),
    because: sentence(`${sayPair(a, b)} ${fact.because ?? `reads ${sayValue(fact.ohms)}`}.`),
    readings: fact.readings,
    ...(fact.ohms === null ? {} : { ohms: fact.ohms }),
    ...(fact.uncertaintyOhms === null ? {} : { uncertaintyOhms: fact.uncertaintyOhms }),
  };
}

function tapped({ net }: Model, { ends, middle, facts: [whole, one, two] }: Triple): Conclusion {
  const [a, m, b] = [nameOf(net, ends[0]), nameOf(net, middle), nameOf(net, ends[1])];
  const sum = `${sayValue(one.ohms)} and ${sayValue(two.ohms)} add up to ${sayValue(whole.ohms)}`;
  return {
    key: `tapped:${a}|${m}|${b}`,
    kind: 'tapped coil',
    about: [a, m, b],
    basis: impliedBy(whole.basis, one.basis, two.basis),
    text: sentence(`${sayEnd(m)} is a tap (or a link brought out) between ${sayEnd(a)} and ${sayEnd(b)}.`),
    because: sentence(`${sum} within what the meter can tell.`),
    readings: idsOf([whole, one, two]),
  };
}

/** Two conductors that are one point in the middle of a chain: the link was made inside. */
function linkedByJoint({ net, conductorCount }: Model): Conclusion[] {
  return [...new Set(net.componentOf)].flatMap((component) =>
    tapsAmong(net.links, nodesIn(net, component)).flatMap((triple) =>
      net.facts
        .filter(
          (fact) =>
            fact.state === 'joined' && fact.b < conductorCount && net.nodeOf[fact.a] === triple.middle,
        )
        .map((fact) => linked(net, [fact.a, fact.b], fact, triple)),
    ),
  );
}

function linked(net: Model['net'], [i, j]: [number, number], joint: PairFact, triple: Triple): Conclusion {
  const [a, b] = [nameOf(net, i), nameOf(net, j)];
  const [whole, one, two] = triple.facts;
  return {
    key: `linked:${a}|${b}`,
    kind: 'linked inside',
    about: [a, b],
    basis: impliedBy(...[joint, ...triple.facts].map((fact) => fact.basis)),
    text: sentence(`${a} and ${b} are already joined inside, between two windings.`),
    because: sentence(
      `${sayPair(a, b)} reads ${sayValue(joint.ohms)}, with ${sayValue(one.ohms)} and ${sayValue(two.ohms)} on its two sides (${sayValue(whole.ohms)} in all).`,
    ),
    readings: idsOf([joint, ...triple.facts]),
  };
}

/** One winding that kicks under both rows, or a tap with a row on either side. */
function linkedByRows(model: Model): Conclusion[] {
  return model.strands.flatMap((strand) => {
    const facts = strand.sections.flatMap((section) => model.rows.get(section) ?? []);
    const [first, second] = facts;
    const isWound = strand.shape === 'chain' && strand.sections.length <= 2 && isWhole(model, strand);
    if (!isWound || !first || !second || facts.length !== 2 || first.row === second.row) return [];
    return [
      strand.nodes.length === 3
        ? linkedAtTap(model, strand, [first, second])
        : linkedUnseen(model, strand, [first, second]),
    ];
  });
}

/** No conductor outside the strand may still turn out to belong to it. */
function isWhole({ own, conductorCount }: Model, strand: Strand): boolean {
  const [start = 0] = strand.nodes;
  const others = own.terminals.map((_, at) => at).slice(0, conductorCount);
  return others.every((at) => strand.nodes.includes(own.nodeOf[at] ?? at) || areApart(own, at, start));
}

function linkedAtTap({ net }: Model, strand: Strand, facts: [RowFact, RowFact]): Conclusion {
  const about = strand.nodes.map((node) => nameOf(net, node));
  return {
    key: `linked:tap:${about[1]}`,
    kind: 'linked inside',
    about,
    basis: impliedBy(...facts.map((fact) => fact.basis)),
    text: sentence(`${about[1]} is the link between two coils.`),
    because: 'The windings on its two sides kick under different rows.',
    readings: facts.flatMap((fact) => fact.readings),
  };
}

function linkedUnseen({ net }: Model, strand: Strand, [first, second]: [RowFact, RowFact]): Conclusion {
  const about = strand.nodes.map((node) => nameOf(net, node));
  return {
    key: `linked:rows:${about.join('|')}`,
    kind: 'linked inside',
    about,
    basis: impliedBy(first.basis, second.basis),
    text: `Two coils are linked inside, between ${about.join(' and ')}.`,
    because: `The same two ends kick clearly under both rows${sayDirection(first.positive, second.positive)}.`,
    readings: [...first.readings, ...second.readings],
  };
}

function sayDirection(first: number | null, second: number | null): string {
  if (first === null || second === null) return '';
  return first === second
    ? ', in the same direction: their signals add'
    : ', in opposite directions: their signals take from each other';
}

/** Two ends, one winding: a single coil, once nothing speaks for a second one linked inside. */
function singleCoil({ net, trace, strands, rows, kicks, conductorCount }: Model): Conclusion[] {
  const [strand, ...others] = strands.filter((one) => one.shape !== 'bare');
  const [section, ...more] = strand?.sections ?? [];
  if (!section || others.length > 0 || more.length > 0 || conductorCount > 2) return [];
  if (section.fact.b >= conductorCount && conductorCount === 2) return [];
  const [only, second] = rows.get(section) ?? [];
  const slight = kicks.filter((kick) => !kick.isLarge && kick.row !== only?.row);
  const isProved = trace.rows.length === 1 || (only?.why === 'kick' && !second && slight.length > 0);
  if (!isProved) return [];
  const [a, b] = [nameOf(net, section.fact.a), nameOf(net, section.fact.b)];
  return [
    {
      key: `single:${a}|${b}`,
      kind: 'single coil',
      about: [a, b],
      basis: impliedBy(weakest(section.fact.basis)),
      text: sentence(`this is a single coil between ${sayEnd(a)} and ${sayEnd(b)}.`),
      because: `${sentence(
        trace.rows.length === 1
          ? 'there is one row of poles and one winding'
          : `it kicks clearly under the ${only?.row} row and only slightly under the other`,
      )}.`,
      readings: [
        ...new Set([...section.fact.readings, ...(only?.readings ?? []), ...slight.map((kick) => kick.id)]),
      ],
    },
  ];
}
