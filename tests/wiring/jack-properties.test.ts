import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  expectedAtJack,
  faultTable,
  judgeAtJack,
  prepareHarness,
  type Resistor,
  solve,
} from '@/lib/wiring/jack';
import { type Element, elementsOf } from '@/lib/wiring/jack/elements';
import { listFaults } from '@/lib/wiring/jack/faults';
import { modelOf, residualOhms, wiringOf } from '@/lib/wiring/jack/predict';
import type { HarnessInput, JackReadingInput, JackSetting } from '@/shared/jack';
import { harnesses, threeSingles } from './jack-harnesses';
import { solveOhms } from './set/network';

const node = fc.constantFrom('a', 'b', 'c', 'd', 'e', 'f');
const someOhms = fc.oneof(fc.integer({ min: 1, max: 1_000_000 }), fc.constant(0));
const networks = fc.array(fc.record({ from: node, to: node, ohms: someOhms }), { maxLength: 14 });

const isClose = (one: number, other: number) =>
  one === other || Math.abs(one - other) <= 1e-6 * Math.max(one, other, 1e-3);

describe('the solver', () => {
  it('reads the same from both ends', () => {
    fc.assert(
      fc.property(networks, (network) => {
        expect(isClose(solve(network, 'a', 'b').ohms, solve(network, 'b', 'a').ohms)).toBe(true);
      }),
    );
  });

  it('never rises when a resistor is laid in parallel', () => {
    fc.assert(
      fc.property(networks, node, node, someOhms, (network, from, to, ohms) => {
        const before = solve(network, 'a', 'b').ohms;
        const after = solve([...network, { from, to, ohms }], 'a', 'b').ohms;
        expect(after <= before || isClose(after, before)).toBe(true);
      }),
    );
  });

  it('agrees with plain elimination', () => {
    fc.assert(
      fc.property(networks, (network) => {
        const resistors = network.filter(({ ohms }) => ohms > 0);
        const joints = network.filter(({ ohms }) => ohms === 0).map(({ from, to }) => [from, to]);
        expect(isClose(solve(network, 'a', 'b').ohms, solveOhms(resistors, joints, 'a', 'b'))).toBe(true);
      }),
    );
  });
});

const anyHarness = fc.constantFrom(...Object.values(harnesses));
/** Where each part lies within its tolerance; as many as there can be parts. */
const sampling = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 60, maxLength: 60 });

/** An instrument whose parts lie somewhere within their tolerances, wiper stops and contacts too. */
function built(elements: readonly Element[], where: readonly number[]): Resistor[] {
  const place = (at: number) => where[at % where.length] ?? 0;
  const network = elements.map(({ from, to, leastOhms, mostOhms, isStop }, at): Resistor => {
    const ohms = isStop ? place(at) * residualOhms.stop : leastOhms + place(at) * (mostOhms - leastOhms);
    return { from, to, ohms };
  });
  return [...network, { from: 'meter', to: 'tip', ohms: place(elements.length) * residualOhms.contacts }];
}

/** The digits of a meter of four digits. */
const shown = (ohms: number) => (Number.isFinite(ohms) ? Number(ohms.toPrecision(4)) : null);

describe('the tolerances', () => {
  it('bound whatever is built within them', () => {
    fc.assert(
      fc.property(anyHarness, sampling, (input, where) => {
        const harness = prepareHarness(input);
        for (const { setting, leastOhms, mostOhms } of expectedAtJack(input)) {
          const { ohms } = solve(built(elementsOf(harness, setting), where), 'meter', 'sleeve');
          expect(ohms).toBeGreaterThanOrEqual((leastOhms ?? Number.POSITIVE_INFINITY) * (1 - 1e-9));
          expect(ohms).toBeLessThanOrEqual((mostOhms ?? Number.POSITIVE_INFINITY) * (1 + 1e-9));
        }
      }),
    );
  });

  it('let every sound instrument pass', () => {
    fc.assert(
      fc.property(anyHarness, sampling, (input, where) => {
        const harness = prepareHarness(input);
        const readings = expectedAtJack(input).map(({ setting }) => ({
          ...setting,
          ohms: shown(solve(built(elementsOf(harness, setting), where), 'meter', 'sleeve').ohms),
        }));
        expect(judgeAtJack(input, readings).verdict).toBe('pass');
      }),
      { numRuns: 50 },
    );
  });
});

function faultyReadings(
  input: HarnessInput,
  at: number,
  where: readonly number[],
  settings: readonly JackSetting[],
) {
  const model = modelOf(prepareHarness(input));
  const faults = listFaults(model.harness);
  const fault = faults[at % faults.length];
  if (!fault) throw new Error('no faults');
  const readings = settings.map((setting): JackReadingInput => {
    const network = built(wiringOf(model, setting, fault.edit), where);
    return { ...setting, ohms: shown(solve(network, 'meter', 'sleeve').ohms) };
  });
  return { fault, readings };
}

describe('every single fault', () => {
  /** How many explanations of clearly more belief stand before it, those alike at the jack not counted. */
  function rankOf(input: HarnessInput, key: string, readings: JackReadingInput[]): number | null {
    const { verdict, explanations } = judgeAtJack(input, readings);
    if (verdict !== 'fail') return null;
    const own = explanations.find((one) => one.key === key);
    if (!own) return Number.POSITIVE_INFINITY;
    const before = explanations.filter(({ likelihood }) => likelihood > own.likelihood * 1.001);
    return before.filter(({ title }) => !own.alikeAtJack.includes(title)).length;
  }

  it.each(Object.entries(harnesses))(
    'of %s is among the first four that explain its own numbers',
    (_, input) => {
      const { rows, columns } = faultTable(input);
      const ranks = rows.map((row) => {
        const readings = columns.map(({ setting }, at) => ({
          ...setting,
          ohms: row.cells[at]?.ohms ?? null,
        }));
        return { title: row.title, rank: rankOf(input, row.key, readings) };
      });
      const seen = ranks.filter(({ rank }) => rank !== null);
      expect(seen.filter(({ rank }) => rank !== null && rank > 3)).toEqual([]);
      expect(seen.filter(({ rank }) => rank === 0).length).toBeGreaterThan(seen.length * 0.8);
      expect(seen.length).toBeGreaterThan(rows.length / 2);
    },
  );

  it('is among the explanations on any instrument within tolerance, whichever settings were read', () => {
    fc.assert(
      fc.property(
        anyHarness,
        fc.nat(),
        sampling,
        fc.infiniteStream(fc.boolean()),
        (input, at, where, isRead) => {
          const settings = expectedAtJack(input).map(({ setting }) => setting);
          const some = settings.filter(() => isRead.next().value);
          const { fault, readings } = faultyReadings(input, at, where, some);
          const { verdict, explanations } = judgeAtJack(input, readings);
          fc.pre(verdict === 'fail');
          const own = explanations.find(({ key }) => key === fault.key);
          // A single reading may fit more faults than anyone would read through.
          expect(own?.explainsAll ?? explanations.length === 24).toBe(true);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('has a next reading that rules out what it says, on the faulty instrument itself', () => {
    const up = expectedAtJack(threeSingles).filter(({ pots }) => pots === 'all up');
    fc.assert(
      fc.property(fc.nat(), sampling, (at, where) => {
        const { fault, readings } = faultyReadings(
          threeSingles,
          at,
          where,
          up.map(({ setting }) => setting),
        );
        const own = judgeAtJack(threeSingles, readings).explanations.find(({ key }) => key === fault.key);
        fc.pre(own?.next?.kind === 'jack');
        if (!own?.next) return;
        const [more] = faultyReadings(threeSingles, at, where, [own.next.setting]).readings;
        const after = judgeAtJack(threeSingles, [...readings, ...(more ? [more] : [])]).explanations;
        const left = after.filter(({ explainsAll }) => explainsAll).map(({ title }) => title);
        expect(left).toContain(own.title);
        expect(left.filter((title) => own.next?.rulesOut.includes(title))).toEqual([]);
      }),
      { numRuns: 40 },
    );
  });
});
