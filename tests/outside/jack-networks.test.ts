import { describe, expect, it } from 'vitest';
import { expectedAtJack, type Resistor, solve } from '@/lib/wiring/jack';
import { doubleCoil, fourPots, singleCoil, threeSingles, volume } from '../wiring/jack-harnesses';

const resistor = (from: string, to: string, ohms: number): Resistor => ({ from, to, ohms });

/** OpenStax, College Physics, "Resistors in Series and Parallel", its worked examples; figures from memory. */
describe('worked examples of a college textbook', () => {
  it('1.00, 6.00 and 13.0 Ω in series are 20.0 Ω', () => {
    const network = [resistor('a', 'b', 1), resistor('b', 'c', 6), resistor('c', 'd', 13)];
    expect(solve(network, 'a', 'd').ohms).toBeCloseTo(20, 9);
  });

  it('the same in parallel are 0.804 Ω', () => {
    const network = [1, 6, 13].map((ohms) => resistor('a', 'b', ohms));
    expect(solve(network, 'a', 'b').ohms).toBeCloseTo(0.804, 3);
  });

  it('1.00 Ω before the other two in parallel is 5.11 Ω', () => {
    const network = [resistor('a', 'b', 1), resistor('b', 'c', 6), resistor('b', 'c', 13)];
    expect(solve(network, 'a', 'c').ohms).toBeCloseTo(5.11, 2);
  });
});

/** Twelve equal resistors along the edges of a cube, the problem of every circuits textbook; figures from memory. */
describe('a cube of 1 Ω edges', () => {
  const corners = [0, 1, 2, 3, 4, 5, 6, 7];
  const edges = corners.flatMap((corner) =>
    [1, 2, 4].filter((bit) => !(corner & bit)).map((bit) => resistor(`${corner}`, `${corner | bit}`, 1)),
  );

  it.each([
    ['edge', '1', 7 / 12],
    ['diagonal of a face', '3', 3 / 4],
    ['diagonal of the cube', '7', 5 / 6],
  ])('%s', (_, to, ohms) => {
    expect(edges).toHaveLength(12);
    expect(solve(edges, '0', to).ohms).toBeCloseTo(ohms, 9);
  });
});

/** A ladder of n equal sections reads a ratio of Fibonacci numbers; its limit, the golden ratio, from memory. */
describe('a ladder of 1 Ω rungs and rails', () => {
  const ladder = (sections: number) =>
    Array.from({ length: sections }, (_, i) => [
      resistor(`${i}`, `${i + 1}`, 1),
      resistor(`${i + 1}`, 'ground', 1),
    ]).flat();

  it.each([
    [1, 2],
    [2, 5 / 3],
    [3, 13 / 8],
    [4, 34 / 21],
    [30, (1 + Math.sqrt(5)) / 2],
  ])('of %i sections', (sections, ohms) => {
    expect(solve(ladder(sections), '0', 'ground').ohms).toBeCloseTo(ohms, 9);
  });
});

/** Wheatstone's bridge: balanced, its middle carries nothing; unbalanced, by Kirchhoff's two laws on paper. */
describe('bridges', () => {
  const bridge = (middle: number, last: number) => [
    resistor('a', 'b', 30),
    resistor('b', 'd', 15),
    resistor('a', 'c', 10),
    resistor('c', 'd', last),
    resistor('b', 'c', middle),
  ];

  it.each([0, 7, 7000, Number.POSITIVE_INFINITY])('balanced, with %f Ω across', (middle) => {
    expect(solve(bridge(middle, 5), 'a', 'd').ohms).toBeCloseTo(45 / 4, 9);
  });

  /**
   * Delta a-b-c of 30, 10 and 20 Ω to a star of 5, 10 and 10/3 Ω: 5 + (10 + 15) ∥ (10/3 + 50/3)
   * = 5 + 25 ∥ 20 = 145/9 Ω.
   */
  it('unbalanced, by delta and star', () => {
    expect(solve(bridge(20, 50 / 3), 'a', 'd').ohms).toBeCloseTo(145 / 9, 9);
  });
});

/** Harnesses worked on paper with the product over the sum. */
describe('harnesses by hand', () => {
  const read = (input: Parameters<typeof expectedAtJack>[0], label: string) => {
    const found = expectedAtJack(input).find((one) => one.label === label);
    if (!found) throw new Error(`no setting "${label}"`);
    return found;
  };

  it('8.08 kΩ beside 500 kΩ is 7.951 kΩ', () => {
    const one = {
      pickups: [singleCoil('neck', 8080)],
      volumes: [volume('neck')],
      positions: [{ name: 'on', on: ['neck'] }],
    };
    const { ohms, explanation } = read(one, 'on, pots up');
    expect(ohms).toBeCloseTo((8080 * 500_000) / 508_080, 6);
    expect(explanation).toBe('neck 8.08 kΩ beside neck volume 500 kΩ');
  });

  it('both pickups of a four-pot harness: 8051, 8790, 500 000 and 500 000 Ω side by side are 4132.68 Ω', () => {
    expect(read(fourPots, 'both, pots up').ohms).toBeCloseTo(4132.68, 2);
  });

  it('both split to their slug coils: 4080, 4420 and twice 500 000 Ω side by side are 2103.75 Ω', () => {
    expect(read(fourPots, 'both, neck split thrown, bridge split thrown, pots up').ohms).toBeCloseTo(
      2103.75,
      2,
    );
  });

  it('6700 and 6100 Ω beside 250 000 Ω are 3152.7 Ω', () => {
    expect(read(threeSingles, '2, pots up').ohms).toBeCloseTo(3152.68, 1);
  });

  it('an ordinary volume turned down takes the jack to ground', () => {
    expect(read(fourPots, 'both, bridge volume down')).toMatchObject({ outcome: 'short', ohms: 0 });
  });

  it('two coils in parallel, thrown by a switch: 4080 beside 3971 Ω are 2012.4 Ω', () => {
    const one = {
      pickups: [doubleCoil('neck', 4080, 3971)],
      positions: [{ name: 'on', on: ['neck'] }],
      switches: [{ kind: 'parallel' as const, id: 'p', name: 'mini switch', pickup: 'neck' }],
    };
    expect(read(one, 'on, mini switch thrown').ohms).toBeCloseTo(2012.38, 2);
    expect(read(one, 'on').ohms).toBeCloseTo(8051, 9);
  });
});
