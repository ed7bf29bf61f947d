import fc from 'fast-check';
import { quantileSeq } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { quantile } from '@/lib/archive/reference/spread';

/** Quantiles of type 7 (Hyndman and Fan, The American Statistician 50 (1996), 361–365). */
describe('quantiles against others', () => {
  const sorted = fc
    .array(fc.double({ min: -1e9, max: 1e9, noNaN: true }), { minLength: 5, maxLength: 200 })
    .map((list) => list.sort((a, b) => a - b));

  it('are those of mathjs, a general library of its own making', () => {
    fc.assert(
      fc.property(sorted, fc.constantFrom(0, 0.25, 0.5, 0.75, 1), (list, part) => {
        const theirs = Number(quantileSeq(list, part, true));
        expect(Math.abs(quantile(list, part) - theirs)).toBeLessThanOrEqual(
          1e-9 * Math.max(1, Math.abs(theirs)),
        );
      }),
    );
  });

  it('are those that Python prints for statistics.quantiles(…, method="inclusive")', () => {
    // Printed by Python 3.11; its manual names the method as the one for data that hold the extremes.
    const cases: [number[], number[]][] = [
      [
        [4080, 4150, 4210, 4300, 4470],
        [4150.0, 4210.0, 4300.0],
      ],
      [
        [7010, 7120, 7230, 7340, 7450, 7560],
        [7147.5, 7285.0, 7422.5],
      ],
      [
        [0.25, 0.5, 1, 1.5, 1.75, 2, 8],
        [0.75, 1.5, 1.875],
      ],
      [
        [1, 1, 1, 2, 2, 2, 2, 9],
        [1.0, 2.0, 2.0],
      ],
    ];
    for (const [list, quartiles] of cases)
      expect([0.25, 0.5, 0.75].map((part) => quantile(list, part))).toEqual(quartiles);
  });
});
