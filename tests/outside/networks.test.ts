import { describe, expect, it } from 'vitest';
import { checkTotal, expandedOhms, planWiring, typicalMeter } from '@/lib/wiring';
import type { TraceInput } from '@/shared/wiring';
import { solveOhms } from '../wiring/set/network';
import { pair } from '../wiring/set/traces';

/**
 * OpenStax, College Physics, "Resistors in Series and Parallel", its three worked examples:
 * 1.00, 6.00 and 13.0 Ω in series are 20.0 Ω, in parallel 0.804 Ω, and 1.00 Ω before the other two in
 * parallel 5.11 Ω (figures from memory). Taken here as kΩ, so that they are windings.
 */
const threeCoils: TraceInput = {
  subject: 'textbook',
  conductors: ['red', 'white', 'green', 'black', 'blue', 'yellow'],
  readings: [
    pair('a', ['red', 'white'], 1000, { uncertaintyOhms: 0.1 }),
    pair('b', ['green', 'black'], 6000, { uncertaintyOhms: 0.1 }),
    pair('c', ['blue', 'yellow'], 13_000, { uncertaintyOhms: 0.1 }),
    pair('d', ['red', 'green'], null),
    pair('e', ['red', 'blue'], null),
    pair('f', ['green', 'blue'], null),
  ],
};

describe('networks against a textbook', () => {
  const ohmsOf = (id: string) => planWiring(threeCoils).plans.find((plan) => plan.id === id)?.predictedOhms;

  it('three in series', () => {
    expect(ohmsOf('series')).toBeCloseTo(20_000, 6);
  });

  it('three in parallel', () => {
    expect(ohmsOf('parallel')).toBeCloseTo(804, 0);
  });

  it('the brute-force solver that the plans are held against: one before two in parallel', () => {
    const resistors = [
      { from: 'a', to: 'b', ohms: 1000 },
      { from: 'b', to: 'c', ohms: 6000 },
      { from: 'b', to: 'c', ohms: 13_000 },
    ];
    expect(solveOhms(resistors, [], 'a', 'c')).toBeCloseTo(5105, 0);
  });

  it('the brute-force solver: a balanced bridge does not care for its middle resistor', () => {
    const bridge = (middle: number) => [
      { from: 'a', to: 'b', ohms: 30 },
      { from: 'b', to: 'd', ohms: 15 },
      { from: 'a', to: 'c', ohms: 10 },
      { from: 'c', to: 'd', ohms: 5 },
      { from: 'b', to: 'c', ohms: middle },
    ];
    expect(solveOhms(bridge(7), [], 'a', 'd')).toBeCloseTo(45 / 4, 9);
    expect(solveOhms(bridge(7000), [], 'a', 'd')).toBeCloseTo(45 / 4, 9);
  });
});

describe('uncertainty against JCGM 100:2008', () => {
  /** 4.3.7, example 2: limits of ±0.40 give a standard uncertainty of 0.23 (0.40 over √3; figures from memory). */
  it('takes the limits of a meter as rectangular', () => {
    const ohms = 4080;
    const limit = typicalMeter.partOfReading * ohms + typicalMeter.counts * 10 + typicalMeter.leadsOhms;
    expect(expandedOhms({ ohms }) / 2 / limit).toBeCloseTo(0.23 / 0.4, 2);
  });

  /** 5.2.2, example: ten independent 100 mΩ parts in quadrature are 0.32 Ω (figures from memory). */
  it('adds independent parts in quadrature', () => {
    const plan = planWiring(threeCoils).plans.find(({ id }) => id === 'series');
    expect(plan?.predictedUncertaintyOhms).toBeCloseTo((0.32 / Math.sqrt(10)) * Math.sqrt(3), 2);
  });
});

describe('common practice, no source', () => {
  it('a bridge pickup of 8.8 kΩ beside a neck of 8.08 kΩ is another pickup, not a fault', () => {
    const coils: TraceInput = {
      subject: 'bridge',
      conductors: ['red', 'white', 'green', 'black'],
      readings: [pair('a', ['red', 'white'], 4420), pair('b', ['green', 'black'], 4370)],
    };
    const [series] = planWiring(coils).plans;
    if (!series) throw new Error('no plan');
    expect(checkTotal(series, { ohms: 8800 }).verdict).toBe('pass');
    expect(checkTotal(series, { ohms: 8080 }).verdict).toBe('fail');
  });
});
