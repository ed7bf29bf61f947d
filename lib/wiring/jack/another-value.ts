import type { Harness } from '@/shared/jack';
import { sayOhms } from '../trace/say';
import type { Fault } from './fault';
import { type Measured, openFromOhms } from './fit';
import { type Model, type Question, type Range, rangeOf, wiringOf } from './predict';

export type Answered = Question & { measured: Measured };

/** A part, and what it was said to be. */
type Part = { id: string; kind: Fault['kind']; name: string; leastOhms: number; mostOhms: number };

/** Pots as sold. Common practice, no source. */
const usualPots = [25_000, 50_000, 100_000, 250_000, 300_000, 500_000, 1_000_000] as const;

/** Every part whose value could be another one so that all readings come out, with that value. */
export function otherValues(model: Model, readings: readonly Answered[]): Fault[] {
  return partsOf(model.harness).flatMap((part) => {
    const range = findValue(model, part, readings);
    const isAsMarked = range && range.mostOhms >= part.leastOhms && range.leastOhms <= part.mostOhms;
    if (!range || isAsMarked) return [];
    return [
      {
        key: `${part.kind}/${part.id}`,
        kind: part.kind,
        title: titleOf(part, range),
        edit: { value: { id: part.id, range } },
      },
    ];
  });
}

function partsOf({ pickups, volumes, resistors }: Harness): Part[] {
  const limits = (one: { ohms: number; tolerancePercent: number }) => ({
    leastOhms: one.ohms * (1 - one.tolerancePercent / 100),
    mostOhms: one.ohms * (1 + one.tolerancePercent / 100),
  });
  return [
    ...pickups.flatMap(({ id, subject, coils }) =>
      coils.map((coil, i) => ({
        id: `${id}.coil${i}`,
        kind: 'coil of another value' as const,
        name: coils.length === 1 ? `${subject}'s coil` : `${subject}'s ${coil.name} coil`,
        ...limits(coil),
      })),
    ),
    ...volumes.map((pot) => ({
      id: `${pot.id}.track`,
      kind: 'pot of another value' as const,
      name: pot.name,
      ...limits(pot),
    })),
    ...resistors.map((one) => ({
      id: one.id,
      kind: 'resistor of another value' as const,
      name: one.name,
      ...limits(one),
    })),
  ];
}

function titleOf({ name, kind }: Part, { ohms, leastOhms, mostOhms }: Range): string {
  if (mostOhms === endless) return `${name} is ${sayOhms(leastOhms)} or more`;
  const usual = kind === 'pot of another value' ? nearestPot(ohms) : null;
  const like = usual === null ? '' : `, like a ${sayOhms(usual)} pot`;
  const digits = Number(ohms.toPrecision(3));
  return `${name} is not as marked but about ${sayOhms(digits)}${like}`;
}

/** Within the usual ±20 %. */
function nearestPot(ohms: number): number | null {
  const nearest = usualPots.reduce((best, pot) =>
    Math.abs(Math.log(pot / ohms)) < Math.abs(Math.log(best / ohms)) ? pot : best,
  );
  return Math.abs(nearest - ohms) <= nearest / 5 ? nearest : null;
}

/** No part of a harness is smaller; above `largest` it is as good as off, which is another fault. */
const [smallest, largest] = [50, 2_500_000];
/** Stands for no upper limit, and can still be reckoned with. */
const endless = 1e10;

/** The values that every reading allows. */
function findValue(model: Model, part: Part, readings: readonly Answered[]): Range | null {
  let [least, most] = [0, endless];
  let [sharpest, ohms] = [Number.POSITIVE_INFINITY, Number.NaN];
  for (const reading of readings) {
    const allowed = allowedBy(model, part.id, reading);
    if (!allowed) return null;
    least = Math.max(least, allowed.leastOhms);
    most = Math.min(most, allowed.mostOhms);
    const width = (allowed.mostOhms - allowed.leastOhms) / allowed.leastOhms;
    if (width < sharpest) [sharpest, ohms] = [width, allowed.ohms];
  }
  const isUsable = least <= most && least > smallest && least < largest;
  return isUsable
    ? { ohms: Math.min(Math.max(ohms || least, least), most), leastOhms: least, mostOhms: most }
    : null;
}

/** The values of one part that bring one reading about, whatever the other parts are within their tolerances. */
function allowedBy(model: Model, id: string, { setting, between, measured }: Answered): Range | null {
  const at = (ohms: number) => {
    const range = { ohms, leastOhms: ohms, mostOhms: ohms };
    return rangeOf(model, wiringOf(model, setting, { value: { id, range } }), between);
  };
  const [none, some, all] = [at(0), at(probeOhms), at(Number.POSITIVE_INFINITY)];
  const curve = (which: keyof Range) => inverse(none[which], some[which], all[which]);
  const { ohms, uncertaintyOhms } = measured;
  const isOpen = ohms >= openFromOhms;
  const leastOhms = curve('mostOhms')(isOpen ? openFromOhms : ohms - uncertaintyOhms, 'least');
  const mostOhms = curve('leastOhms')(isOpen ? Number.POSITIVE_INFINITY : ohms + uncertaintyOhms, 'most');
  if (leastOhms === null || mostOhms === null || leastOhms > mostOhms) return null;
  const own = curve('ohms')(ohms, 'least');
  return {
    ohms: own === null ? leastOhms : Math.min(Math.max(own, leastOhms), mostOhms),
    leastOhms,
    mostOhms,
  };
}

const probeOhms = 10_000;

/**
 * The resistance of a network as one resistor r of it varies is (none·k + all·r) / (k + r): bilinear, and rising.
 * Three values give the curve, and so the r for any total.
 *
 * Asked for the `least` r it answers null when even an infinite one stays below the total; for the `most`, when
 * even none at all is above it.
 */
function inverse(none: number, some: number, all: number) {
  return (total: number, which: 'least' | 'most'): number | null => {
    if (which === 'least' ? total > all : total < none) return null;
    if (which === 'least' && total <= none) return 0;
    if (total >= all) return Number.POSITIVE_INFINITY;
    if (total <= none) return 0;
    if (all === Number.POSITIVE_INFINITY) return (probeOhms * (total - none)) / (some - none);
    const k = (probeOhms * (all - some)) / (some - none);
    return (k * (total - none)) / (all - total);
  };
}
