import { describe, expect, it } from 'vitest';
import { combinedExpanded, expandedUncertainty, rectangular, sayUncertainty } from '@/lib/readings';

const k = 2;

/** JCGM 100:2008, Guide to the expression of uncertainty in measurement. */
describe('uncertainty against JCGM 100', () => {
  /**
   * 4.3.7, example 2 (figures from memory): a digital voltmeter within 14e-6 of the reading and 2e-6 of its 1 V range
   * reads 0.928 571 V; limits of ± 15 µV, standard uncertainty 8.7 µV. Two millionths of 1 V are two counts here.
   */
  it('a digital voltmeter by its specification', () => {
    const range = { unit: 'V', fullScale: 1, resolution: 1e-6, percent: 14e-4, counts: 2 } as const;
    const expanded = expandedUncertainty({ text: '0.928571', unit: 'V' }, [range]);
    expect(Number(((expanded ?? 0) / k).toPrecision(2))).toBe(8.7e-6);
  });

  /** F.2.2.1: a display that steps by 1 adds 0.29 of a step; a meter without any other error has just that. */
  it('the last digit of a display', () => {
    const range = { unit: 'kΩ', fullScale: 20, resolution: 0.01, percent: 0, counts: 0 } as const;
    const expanded = expandedUncertainty({ text: '4.08', unit: 'kΩ' }, [range]);
    expect((expanded ?? 0) / k / 10).toBeCloseTo(0.29, 2);
  });

  /**
   * Annex H.1, calibration of an end gauge: inputs as the guide gives them, lengths in nm. Checked against
   * published worked code of the same example; the result, 32 nm, from memory.
   */
  it('the end gauge', () => {
    const gaugeNm = 50_000_623;
    const standardNm = 25;
    const difference = [5.8, 3.9, 6.7];
    const expansion = gaugeNm * 0.1 * rectangular(1e-6);
    const temperature = gaugeNm * 11.5e-6 * rectangular(0.05);
    expect(Number((combinedExpanded(difference) / k).toPrecision(2))).toBe(9.7);
    expect(Number(temperature.toPrecision(3))).toBe(16.6);
    expect(Number(expansion.toPrecision(2))).toBe(2.9);
    const combined = combinedExpanded([standardNm, ...difference, expansion, temperature]) / k;
    expect(Number(combined.toPrecision(2))).toBe(32);
  });

  /** 7.2.6: two significant digits at most, here never finer than the reading, and rounded up rather than down. */
  it.each([
    ['4.08', 'kΩ', 0.01, '4.08 kΩ ± 0.08 kΩ (k = 2)'],
    ['4.0800', 'kΩ', 0.0001, '4.0800 kΩ ± 0.065 kΩ (k = 2)'],
    ['408000', 'Ω', 1, '408000 Ω ± 6500 Ω (k = 2)'],
  ] as const)('%s %s', (valueText, unit, resolution, said) => {
    const range = { unit, fullScale: 1e6, resolution, percent: 1.37, counts: resolution === 0.01 ? 1 : 0 };
    expect(sayUncertainty({ kind: 'resistance', open: false, valueText, unit }, [range])).toBe(said);
  });
});
