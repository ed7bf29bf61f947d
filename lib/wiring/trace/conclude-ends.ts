import type { Conclusion, PairCell } from '@/shared/wiring';
import { impliedBy, weakest } from './basis';
import type { PairFact } from './facts';
import type { Model } from './model';
import { cellOf, type Net, nameOf } from './net';
import { sayEnd, sayList, sayPair, sayValue, sentence } from './say';

/** Ends that are one point, shorts, leaks, what hangs on the metal, and ends that lead nowhere. */
export function concludeEnds(model: Model): Conclusion[] {
  return [
    ...model.own.facts.flatMap((fact) => endsOf(model, fact)),
    ...clearOfMetal(model),
    ...looseEnds(model),
  ];
}

function endsOf(model: Model, fact: PairFact): Conclusion[] {
  const isOnMetal = fact.a < model.conductorCount && fact.b >= model.conductorCount;
  if (fact.state === 'leakage') return [leak(model, fact)];
  if (isOnMetal && fact.state === 'joined') return [onMetal(model, fact, 'is connected to')];
  if (isOnMetal && fact.state === 'winding' && model.conductorCount > 1)
    return [onMetal(model, fact, 'reaches, through a winding,')];
  if (fact.state !== 'joined') return [];
  return [joined(model, fact), ...short(model, fact)];
}

function pairConclusion(
  model: Model,
  fact: PairFact,
  rest: Pick<Conclusion, 'kind' | 'text'> & { prefix: string },
): Conclusion {
  const [a, b] = [nameOf(model.net, fact.a), nameOf(model.net, fact.b)];
  return {
    key: `${rest.prefix}:${a}|${b}`,
    kind: rest.kind,
    about: [a, b],
    basis: fact.basis,
    text: sentence(rest.text),
    because: sentence(`${sayPair(a, b)} ${fact.because ?? `reads ${sayValue(fact.ohms)}`}.`),
    readings: fact.readings,
  };
}

function leak(model: Model, fact: PairFact): Conclusion {
  const [a, b] = [nameOf(model.net, fact.a), nameOf(model.net, fact.b)];
  const text = `there is leakage between ${sayEnd(a)} and ${sayEnd(b)}: moisture, flux, a bruised sleeve, or fingers on the leads.`;
  return pairConclusion(model, fact, { prefix: 'leak', kind: 'leakage', text });
}

function onMetal(model: Model, fact: PairFact, how: string): Conclusion {
  const [a, b] = [nameOf(model.net, fact.a), nameOf(model.net, fact.b)];
  return pairConclusion(model, fact, {
    prefix: 'metal',
    kind: 'on shield',
    text: `${a} ${how} ${sayEnd(b)} inside the pickup.`,
  });
}

function joined(model: Model, fact: PairFact): Conclusion {
  const [a, b] = [nameOf(model.net, fact.a), nameOf(model.net, fact.b)];
  return pairConclusion(model, fact, {
    prefix: 'joined',
    kind: 'joined',
    text: `${sayEnd(a)} and ${sayEnd(b)} are one and the same point.`,
  });
}

/** Joined, and no winding can lie elsewhere: the coil between the two is shorted. */
function short(model: Model, fact: PairFact): Conclusion[] {
  if (fact.b >= model.conductorCount) return [];
  const others = model.own.terminals
    .map((_, at) => at)
    .filter((at) => at !== fact.a && at !== fact.b && at < model.conductorCount);
  const isAlone = others.every((at) => cellOf(model.own, fact.a, at).state === 'open');
  if (!isAlone) return [];
  const [a, b] = [nameOf(model.net, fact.a), nameOf(model.net, fact.b)];
  const text = `the coil between ${a} and ${b} is shorted, or both are the same end of one.`;
  return [pairConclusion(model, fact, { prefix: 'short', kind: 'short', text })];
}

function clearOfMetal({ own, conductorCount }: Model): Conclusion[] {
  return own.terminals.slice(conductorCount).flatMap((metal, i) => {
    const cells = own.terminals.slice(0, conductorCount).map((_, at) => cellOf(own, at, conductorCount + i));
    if (!cells.every((cell) => cell.state === 'open')) return [];
    return [
      {
        key: `clear:${metal}`,
        kind: 'clear of shield',
        about: [metal],
        basis: basisOf(cells),
        text: `Every conductor stands clear of the ${metal}.`,
        because: `None of them reads through to the ${metal}.`,
        readings: readingsOf(cells),
      },
    ];
  });
}

/** Conductors that read open to everything there is; two of them alone are the ends of an open coil. */
function looseEnds({ own, conductorCount }: Model): Conclusion[] {
  const conductors = own.terminals.map((_, at) => at).slice(0, conductorCount);
  const loose = conductors
    .map((at) => ({ at, name: nameOf(own, at), cells: cellsOf(own, at) }))
    .filter(({ cells }) => cells.length > 0 && cells.every((cell) => cell.state === 'open'));
  const isWound = (at: number) =>
    conductors.some((other) => other !== at && own.componentOf[other] === own.componentOf[at]);
  const restIsWound = conductors.every((at) => isWound(at) || loose.some((end) => end.at === at));
  // A coil with one conductor has its other end on the shield.
  const ends =
    conductorCount === 1 && own.terminals.includes('shield')
      ? [...loose.map((end) => end.name), 'shield']
      : loose.map((end) => end.name);
  const isPair = loose.length > 0 && ends.length === 2 && restIsWound;
  return [
    ...loose.map(({ name, cells }) => looseEnd(name, cells)),
    ...(isPair
      ? [
          openCoil(
            ends,
            loose.flatMap(({ cells }) => cells),
          ),
        ]
      : []),
  ];
}

function cellsOf(own: Net, at: number): PairCell[] {
  return own.terminals.flatMap((_, other) => (other === at ? [] : [cellOf(own, at, other)]));
}

function looseEnd(name: string, cells: PairCell[]): Conclusion {
  return {
    key: `loose:${name}`,
    kind: 'loose end',
    about: [name],
    basis: basisOf(cells),
    text: sentence(`${name} leads nowhere.`),
    because: sentence(`${name} reads open to everything else.`),
    readings: readingsOf(cells),
  };
}

function openCoil(names: string[], cells: PairCell[]): Conclusion {
  return {
    key: `open coil:${names.join('|')}`,
    kind: 'open coil',
    about: names,
    basis: basisOf(cells),
    text: sentence(`the coil between ${sayList(names.map(sayEnd))} is open.`),
    because: sentence(
      `${sayList(names.map(sayEnd))} read open, and no other end is left that could belong to them.`,
    ),
    readings: readingsOf(cells),
  };
}

function basisOf(cells: readonly PairCell[]) {
  const bases = cells.map((cell) => cell.basis ?? 'implied');
  return bases.every((basis) => basis === 'measured') ? weakest(...bases) : impliedBy(...bases);
}

function readingsOf(cells: readonly PairCell[]): string[] {
  return [...new Set(cells.flatMap((cell) => cell.readings))].sort();
}
