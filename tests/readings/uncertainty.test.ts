import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { copperAt, expandedUncertainty, plateDissipation } from '@/lib/readings';
import { cautions } from '@/lib/safety';
import type { MeterRange } from '@/shared/readings';

const handHeld: MeterRange[] = [
  { unit: 'kΩ', fullScale: 200, resolution: 0.1, percent: 0.8, counts: 2 },
  { unit: 'Ω', fullScale: 200, resolution: 0.1, percent: 0.8, counts: 3 },
  { unit: 'kΩ', fullScale: 20, resolution: 0.01, percent: 0.8, counts: 2 },
  { unit: '°F', fullScale: 400, resolution: 1, percent: 1, counts: 4 },
];
const expanded = (text: string, unit: MeterRange['unit']) => expandedUncertainty({ text, unit }, handHeld);
/** Worked by hand: limits, half a digit, both over √3, in quadrature, twice. */
const byHand = (limit: number, halfDigit: number) => 2 * Math.sqrt(limit ** 2 / 3 + halfDigit ** 2 / 3);

describe('the uncertainty of a reading by its meter', () => {
  it('takes the range whose last digit is shown', () => {
    expect(expanded('4.08', 'kΩ')).toBeCloseTo(byHand(0.008 * 4080 + 20, 5), 9);
    expect(expanded('4.1', 'kΩ')).toBeCloseTo(byHand(0.008 * 4100 + 200, 50), 9);
    expect(expanded('120.5', 'Ω')).toBeCloseTo(byHand(0.008 * 120.5 + 0.3, 0.05), 9);
  });

  it('takes the smallest range that holds the value when no last digit fits', () => {
    expect(expanded('4.0805', 'kΩ')).toBeCloseTo(byHand(0.008 * 4080.5 + 20, 0.05), 9);
    expect(expanded('150', 'Ω')).toBeCloseTo(byHand(0.008 * 150 + 0.3, 0.5), 9);
  });

  it('tells a reading in the unit of the range', () => {
    expect(expanded('4080', 'Ω')).toBeCloseTo(byHand(0.008 * 4080 + 20, 0.5), 9);
  });

  it('takes the percent of degrees Fahrenheit as they are shown', () => {
    expect(expanded('68', '°F')).toBeCloseTo((byHand(0.68 + 4, 0.5) * 5) / 9, 9);
  });

  it('takes a negative reading by its size', () => {
    expect(expanded('-4.08', 'kΩ')).toBe(expanded('4.08', 'kΩ'));
  });

  it('has none beyond the ranges, or of another quantity', () => {
    expect(expanded('201', 'kΩ')).toBeNull();
    expect(expanded('1', 'V')).toBeNull();
    expect(expandedUncertainty({ text: '1', unit: 'kΩ' }, [])).toBeNull();
  });

  it('does not depend on the order of the ranges', () => {
    fc.assert(
      fc.property(
        fc.shuffledSubarray(handHeld, { minLength: handHeld.length }),
        fc.constantFrom('4.08', '4.1', '0.5', '150', '19.99'),
        (ranges, text) => {
          expect(expandedUncertainty({ text, unit: 'kΩ' }, ranges)).toBe(expanded(text, 'kΩ'));
        },
      ),
    );
  });
});

describe('a coil at another temperature', () => {
  it('comes back to itself', () => {
    const celsius = fc.double({ min: -20, max: 60, noNaN: true });
    fc.assert(
      fc.property(celsius, celsius, (was, target) => {
        const there = copperAt({ ohms: 8080, celsius: was }, target);
        expect(copperAt({ ohms: there.ohms, celsius: target }, was).ohms).toBeCloseTo(8080, 6);
      }),
    );
  });

  it('carries both uncertainties: the slope against a difference quotient', () => {
    const coil = { ohms: 8080, celsius: 28 };
    const { uncertaintyOhms } = copperAt({ ...coil, uncertaintyOhms: 85, uncertaintyCelsius: 2 });
    const step = 1e-4;
    const slopeC = (copperAt({ ...coil, celsius: 28 + step }).ohms - copperAt(coil).ohms) / step;
    const slopeOhms = copperAt({ ohms: 8081, celsius: 28 }).ohms - copperAt(coil).ohms;
    expect(uncertaintyOhms).toBeCloseTo(Math.sqrt((slopeC * 2) ** 2 + (slopeOhms * 85) ** 2), 2);
    expect(copperAt(coil).uncertaintyOhms).toBe(0);
  });
});

describe('plate dissipation', () => {
  it('follows from volts and amperes, behind its caution', () => {
    const { watts, basis, caution } = plateDissipation({ plateVolts: 410, biasAmps: 0.035 });
    expect(watts).toBeCloseTo(14.35, 9);
    expect(basis).toBe('implied');
    expect(cautions[caution]).toMatch(/lethal/);
  });

  it('carries the uncertainties of both, whichever way the leads were', () => {
    const known = { uncertaintyVolts: 4, uncertaintyAmps: 0.0005 };
    const straight = plateDissipation({ plateVolts: 410, biasAmps: 0.035, ...known });
    expect(straight.uncertaintyWatts).toBeCloseTo(Math.sqrt(0.14 ** 2 + 0.205 ** 2), 9);
    expect(plateDissipation({ plateVolts: -410, biasAmps: 0.035, ...known })).toEqual(straight);
  });
});
