import fc from 'fast-check';
import type { TraceInput, TraceReading } from '@/shared/wiring';
import { solveOhms } from './network';
import { kick, pair } from './traces';

/** A pickup as it truly is: windings between points, each conductor on a point. */
export type TruePickup = {
  conductors: string[];
  /** The point of each conductor. */
  pointOf: number[];
  windings: { from: number; to: number; ohms: number; row: string; fromIsPositive: boolean }[];
};

const names = ['red', 'white', 'green', 'black', 'blue', 'yellow'];

/** What hangs together, by conductors in each chain, as ordinary pickups have it (common practice, no source). */
const builds = [[2], [3], [2, 2], [2, 3], [2, 2, 2], [3, 3]];

/** Ordinary, healthy pickups with every coil's row and direction, conductors in any order. */
export const truePickup: fc.Arbitrary<TruePickup> = fc.constantFrom(...builds).chain((chains) => {
  const count = chains.reduce((sum, size) => sum + size, 0);
  const coils = count - chains.length;
  return fc
    .record({
      conductors: fc.shuffledSubarray(names.slice(0, count), { minLength: count }),
      ohms: fc.array(fc.integer({ min: 2000, max: 9000 }), { minLength: coils, maxLength: coils }),
      ways: fc.array(fc.boolean(), { minLength: coils, maxLength: coils }),
    })
    .map(({ conductors, ohms, ways }) => {
      const pointOf = conductors.map((_, at) => at);
      const starts = chains.flatMap((size, at) => {
        const first = chains.slice(0, at).reduce((sum, one) => sum + one, 0);
        return Array.from({ length: size - 1 }, (_, i) => ({
          from: first + i,
          row: at % 2 === 0 ? 'slug' : 'screw',
        }));
      });
      const windings = starts.map(({ from, row }, at) => ({
        from,
        to: from + 1,
        ohms: ohms[at] ?? 4000,
        row,
        fromIsPositive: ways[at] ?? true,
      }));
      return { conductors, pointOf, windings };
    });
});

/** Every reading of the pickup that can be taken, all of them true. */
export function everyReading(pickup: TruePickup): TraceReading[] {
  const { conductors } = pickup;
  const pairs = conductors.flatMap((a, i) =>
    conductors
      .slice(i + 1)
      .map((b, j) => pair(`p${i}-${i + 1 + j}`, [a, b], ohmsBetween(pickup, i, i + 1 + j))),
  );
  const kicks = pickup.windings.flatMap(({ from, to, row, fromIsPositive }) => {
    const leads: [string, string] = [conductors[from] ?? '', conductors[to] ?? ''];
    const sign = fromIsPositive ? 1 : -1;
    const other = row === 'slug' ? 'screw' : 'slug';
    return [
      kick(`k${from}`, leads, row, { sign, size: 'large' }),
      kick(`k${from}s`, leads, other, { sign, size: 'small' }),
    ];
  });
  const whole = pickup.windings.flatMap((one) => {
    const next = pickup.windings.find(({ from }) => from === one.to);
    if (!next || next.fromIsPositive !== one.fromIsPositive) return [];
    const leads: [string, string] = [conductors[one.from] ?? '', conductors[next.to] ?? ''];
    return [kick(`w${one.from}`, leads, one.row, { sign: one.fromIsPositive ? 1 : -1 })];
  });
  const metal = conductors.map((name, at) => pair(`s${at}`, [name, 'shield'], null));
  return [...pairs, ...kicks, ...whole, ...metal];
}

function ohmsBetween({ windings }: TruePickup, i: number, j: number): number | null {
  const between = windings.filter(({ from, to }) => from >= i && to <= j);
  return between.length === j - i ? between.reduce((sum, { ohms }) => sum + ohms, 0) : null;
}

export function traceOf({ conductors }: TruePickup, readings: TraceReading[]): TraceInput {
  return { subject: 'pickup', conductors, shield: true, readings };
}

/**
 * Pickups with anything wrong that a meter can see: open coils, ends joined or on the shield, several
 * windings meeting at one point. Every pair of terminals with its true resistance.
 */
export const faultyPickup: fc.Arbitrary<{ conductors: string[]; readings: TraceReading[] }> = fc
  .record({
    conductors: fc.shuffledSubarray(names, { minLength: 1 }),
    points: fc.array(fc.integer({ min: 0, max: 6 }), { minLength: 7, maxLength: 7 }),
    // Each point hangs on an earlier one by a winding, or on nothing.
    hangsOn: fc.array(fc.option(fc.nat()), { minLength: 7, maxLength: 7 }),
    ohms: fc.array(fc.integer({ min: 1000, max: 9000 }), { minLength: 7, maxLength: 7 }),
  })
  .map(({ conductors, points, hangsOn, ohms }) => {
    const terminals = [...conductors, 'shield'];
    const used = [...new Set(terminals.map((_, at) => points[at] ?? 0))];
    const resistors = used.flatMap((point, at) => {
      const other = hangsOn[at];
      if (at === 0 || other === null || other === undefined) return [];
      return [{ from: `point ${point}`, to: `point ${used[other % at]}`, ohms: ohms[at] ?? 4000 }];
    });
    const joined = terminals.map((name, at) => [name, `point ${points[at] ?? 0}`]);
    const readings = terminals.flatMap((a, i) =>
      terminals.slice(i + 1).map((b, j) => {
        const value = solveOhms(resistors, joined, a, b);
        return pair(`p${i}-${i + 1 + j}`, [a, b], Number.isFinite(value) ? Math.round(value) : null);
      }),
    );
    return { conductors, readings };
  });
