import { describe, expect, it } from 'vitest';
import { copperAt, copperPerCelsius, referenceCelsius } from '@/lib/readings';

describe('copper at one temperature', () => {
  /** IEC 60028:1925: standard annealed copper, constant mass, 0.00393 = 1/254.45 per °C at 20 °C (from memory). */
  it('has the coefficient of IEC 60028', () => {
    expect(copperPerCelsius).toBe(0.00393);
    expect(1 / copperPerCelsius).toBeCloseTo(254.45, 2);
    expect(copperAt({ ohms: 1000, celsius: referenceCelsius }, 21).ohms).toBeCloseTo(1003.93, 9);
  });

  /** NBS Circular 31, Copper Wire Tables: the coefficient of 100 % copper at other temperatures (from memory). */
  it.each([
    [0, 0.00427],
    [15, 0.00401],
    [20, 0.00393],
    [25, 0.00385],
    [30, 0.00378],
    [50, 0.00352],
  ])('changes with the temperature it starts from: %d °C', (celsius, coefficient) => {
    expect(copperAt({ ohms: 1, celsius }, celsius + 1).ohms - 1).toBeCloseTo(coefficient, 5);
  });

  /** IEC 60034-1, resistance method: R2 / R1 = (235 + t2) / (235 + t1) for copper windings (from memory). */
  it('agrees with the rule for copper windings of machines to a tenth of a percent', () => {
    for (const celsius of [0, 10, 20, 30, 40]) {
      const rule = (8080 * (235 + 20)) / (235 + celsius);
      expect(Math.abs(copperAt({ ohms: 8080, celsius }).ohms / rule - 1)).toBeLessThan(0.001);
    }
  });
});
