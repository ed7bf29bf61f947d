import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import { HarnessProblem } from './problems';
import { type Shape, shapeOf } from './shape';

/** Zero ohms (a milliohm and less) is a joint: its two nodes become one. From 1 TΩ on it is no connection. */
export type Resistor = { from: string; to: string; ohms: number };

export type Solution = {
  state: 'ohms' | 'short' | 'open';
  /** 0 for a short, Infinity for open. */
  ohms: number;
  /** Nodes with no path to either terminal, sorted. */
  floating: string[];
};

/**
 * Resistance between two nodes of a resistor network, by nodal analysis: one ampere goes in at `from` and
 * comes out at `to`, which stands at 0 V; the voltage at `from` is the resistance.
 * @throws HarnessProblem for a negative resistance or one that is not a number
 */
export function solve(network: readonly Resistor[], from: string, to: string): Solution {
  for (const { from: a, to: b, ohms } of network) {
    if (ohms >= 0) continue;
    throw new HarnessProblem(
      `The resistance between ${a} and ${b} is ${ohms} Ω.`,
      'A resistance is zero (a joint), above zero, or infinite (no connection). Correct this one.',
      { field: 'ohms', value: ohms },
    );
  }
  const numberOf = numbering();
  const numbered = network.map((one) => ({ a: numberOf(one.from), b: numberOf(one.to), ohms: one.ohms }));
  const shape = shapeOf(numbered, numberOf(from), numberOf(to));
  return {
    state: shape.state,
    ohms: ohmsOf(shape, (at) => numbered[at]?.ohms ?? 0),
    floating: floatingNodes(network, from, to),
  };
}

/** Gives each name a number, counting up from 0, and the same one again when asked again. */
export function numbering(): (name: string) => number {
  const numbers = new Map<string, number>();
  return (name) => {
    const number = numbers.get(name) ?? numbers.size;
    numbers.set(name, number);
    return number;
  };
}

/** The resistance of a shape with the given values. */
export function ohmsOf(shape: Shape, ohmsAt: (at: number) => number): number {
  if (shape.state === 'short') return 0;
  if (shape.state === 'open') return Number.POSITIVE_INFINITY;
  const unknown = shape.size - 1;
  const conductances = Matrix.zeros(unknown, unknown);
  const add = (row: number, column: number, siemens: number) => {
    if (row > 0 && column > 0) {
      conductances.set(row - 1, column - 1, conductances.get(row - 1, column - 1) + siemens);
    }
  };
  for (const { a, b, at } of shape.branches) {
    const siemens = 1 / ohmsAt(at);
    add(a, a, siemens);
    add(b, b, siemens);
    add(a, b, -siemens);
    add(b, a, -siemens);
  }
  const current = Matrix.zeros(unknown, 1);
  current.set(0, 0, 1);
  return new CholeskyDecomposition(conductances).solve(current).get(0, 0);
}

function floatingNodes(network: readonly Resistor[], from: string, to: string): string[] {
  const names = [...new Set(network.flatMap((one) => [one.from, one.to]))];
  const seen = new Set([from, to]);
  const connected = network.filter(({ ohms }) => ohms !== Number.POSITIVE_INFINITY);
  for (const node of seen) {
    for (const one of connected) {
      if (one.from === node) seen.add(one.to);
      if (one.to === node) seen.add(one.from);
    }
  }
  return names.filter((name) => !seen.has(name)).sort();
}
