import type { Harness, JackSetting } from '@/shared/jack';
import { type Element, elementsOf, joint } from './elements';
import { numbering, ohmsOf } from './network';
import { jackSleeve, jackTip } from './places';
import { type Numbered, type Shape, shapeOf } from './shape';

/**
 * What the meter sees over and above the network: up to 2 Ω of contacts in switches and jack, up to 20 Ω between
 * a wiper at its stop and the lug. Common practice, no source.
 */
export const residualOhms = { contacts: 2, stop: 20 } as const;

/** Infinity is open. */
export type Range = { ohms: number; leastOhms: number; mostOhms: number };

/** What a fault does to the wiring, as changes to its parts and joints. */
export type Edit = {
  /** Parts and joints taken out, by id. */
  cut?: readonly string[];
  /** Places joined that should not be. */
  bridge?: readonly (readonly [string, string])[];
  /** Two joints whose near ends are exchanged. */
  exchange?: readonly (readonly [string, string])[];
  /** A part of another value. */
  value?: { id: string; range: Range };
  /** The selector makes this position wherever its lever stands. */
  position?: string;
  /** Switches that stay thrown, or never are. */
  stuck?: { id: string; thrown: boolean };
};

/** A harness with its networks kept, so that a table of faults builds each only once. */
export type Model = {
  harness: Harness;
  numberOf: (place: string) => number;
  wirings: Map<string, Wiring>;
  ranges: Map<string, Range>;
};

/** Parts and joints with their places numbered. */
export type Wiring = readonly (Element & Numbered)[];

export function modelOf(harness: Harness): Model {
  return { harness, numberOf: numbering(), wirings: new Map(), ranges: new Map() };
}

export const keyOf = ({ position, thrown, down }: JackSetting) => [position, thrown, down].join('|');

export type Question = { setting: JackSetting; between: readonly [string, string] };

export const atJack = (setting: JackSetting): Question => ({ setting, between: [jackTip, jackSleeve] });

/**
 * The range between two places of the harness, with a fault or without.
 *
 * The limits are the worst corners, and exact: the resistance between two terminals never falls when any resistor
 * rises (Rayleigh's monotonicity law), so all parts at their least give the least, all at their most the most.
 * `key` names the fault; answers are kept under it.
 */
export function predict(
  model: Model,
  { setting, between }: Question,
  fault: { key: string; edit: Edit },
): Range {
  const key = `${fault.key}#${keyOf(setting)}#${between[0]}#${between[1]}`;
  const known = model.ranges.get(key);
  if (known) return known;
  const range = rangeOf(model, wiringOf(model, setting, fault.edit), between);
  model.ranges.set(key, range);
  return range;
}

export const sound = { key: '', edit: {} } as const;

/** The parts and joints in one setting, with the edit made. */
export function wiringOf(model: Model, setting: JackSetting, edit: Edit): Wiring {
  return applied(model, standing(model, asMade(model.harness, setting, edit)), edit);
}

export function shapeBetween(model: Model, wiring: Wiring, [from, to]: readonly [string, string]): Shape {
  return shapeOf(wiring, model.numberOf(from), model.numberOf(to));
}

export function rangeOf(model: Model, wiring: Wiring, between: readonly [string, string]): Range {
  const shape = shapeBetween(model, wiring, between);
  const stops = wiring.filter(({ isStop, a }) => isStop && shape.holds(a)).length;
  return {
    ohms: ohmsOf(shape, (at) => wiring[at]?.ohms ?? 0),
    leastOhms: ohmsOf(shape, (at) => wiring[at]?.leastOhms ?? 0),
    // A resistance of r in place of a joint raises the total by r at most: no branch carries more than all of it.
    mostOhms:
      ohmsOf(shape, (at) => wiring[at]?.mostOhms ?? 0) + residualOhms.contacts + stops * residualOhms.stop,
  };
}

function standing(model: Model, setting: JackSetting): Wiring {
  const key = keyOf(setting);
  const known = model.wirings.get(key);
  if (known) return known;
  const wiring = elementsOf(model.harness, setting).map((element) => numbered(model, element));
  model.wirings.set(key, wiring);
  return wiring;
}

/** Written out, so that every engine gives them one layout: this is read millions of times. */
function numbered({ numberOf }: Model, element: Element): Wiring[number] {
  const { id, from, to, ohms, leastOhms, mostOhms, isStop } = element;
  return { id, from, to, ohms, leastOhms, mostOhms, isStop, a: numberOf(from), b: numberOf(to) };
}

/** The setting that the contacts really make. */
function asMade(harness: Harness, setting: JackSetting, { position, stuck }: Edit): JackSetting {
  if (position === undefined && !stuck) return setting;
  const thrown = harness.switches
    .map(({ id }) => id)
    .filter((id) => (id === stuck?.id ? stuck.thrown : setting.thrown.includes(id)));
  return { ...setting, position: position ?? setting.position, thrown };
}

function applied(model: Model, wiring: Wiring, { cut, bridge, exchange, value }: Edit): Wiring {
  const kept = cut ? wiring.filter(({ id }) => !cut.includes(id)) : wiring;
  const swapped = (exchange ?? []).reduce((all, [one, other]) => exchanged(all, one, other), kept);
  const valued = value
    ? swapped.map((one) => (one.id === value.id ? { ...one, ...value.range } : one))
    : swapped;
  const bridges = (bridge ?? []).map(([from, to]) => numbered(model, joint(`${from}-${to}`, from, to)));
  return bridges.length ? [...valued, ...bridges] : valued;
}

function exchanged(wiring: Wiring, one: string, other: string): Wiring {
  const [first, second] = [wiring.find(({ id }) => id === one), wiring.find(({ id }) => id === other)];
  if (!first || !second) return wiring;
  return wiring.map((each) => {
    if (each === first) return { ...each, from: second.from, a: second.a };
    return each === second ? { ...each, from: first.from, a: first.a } : each;
  });
}
