import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { groupClaims } from '@/lib/work';
import { canBothBeTrue, contradictions } from '@/lib/work/claims';
import { yearSpans } from '@/lib/work/year-spans';
import { type ClaimKind, claimKinds } from '@/shared/claims';

const claim = (value: string, kind: ClaimKind = 'year', subject: string | null = null) => ({
  kind,
  subject,
  value,
});

describe('the years that words mean', () => {
  // Common practice, no source: how years and decades are spoken of.
  it.each<[string, [number, number][]]>([
    ['1978', [[1978, 1978]]],
    ['1978–80', [[1978, 1980]]],
    ['1978 to 1980', [[1978, 1980]]],
    ['1976/77', [[1976, 1977]]],
    ['between 1976 and 1978', [[1976, 1978]]],
    [
      '1998–02',
      [
        [1998, 1998],
        [1998, 2002],
      ],
    ],
    ['the 1970s', [[1970, 1979]]],
    ['late 1970s', [[1976, 1979]]],
    [
      'late 70s',
      [
        [1876, 1879],
        [1976, 1979],
        [2076, 2079],
      ],
    ],
    [
      'early seventies',
      [
        [1870, 1874],
        [1970, 1974],
        [2070, 2074],
      ],
    ],
    [
      'mid-’60s',
      [
        [1863, 1867],
        [1963, 1967],
        [2063, 2067],
      ],
    ],
    [
      '’78',
      [
        [1878, 1878],
        [1978, 1978],
        [2078, 2078],
      ],
    ],
    [
      '1884 or 1984',
      [
        [1884, 1884],
        [1984, 1984],
      ],
    ],
    ['about 1978', [[1976, 1980]]],
    ['c. 1978', [[1976, 1980]]],
    ['before 1980', [[0, 1979]]],
    ['1975 or later', [[1975, 9999]]],
    ['July 1978', [[1978, 1978]]],
    ['week 12 of 1978', [[1978, 1978]]],
    ['1978-07', [[1978, 1978]]],
    ['1978-07-12', [[1978, 1978]]],
  ])('%s', (text, spans) => {
    expect(yearSpans(text)).toEqual(spans);
  });

  it.each(['unknown', 'old', '19784', '', '1980 to 1978', '15s', 'nineties guitar'])('“%s”: none', (text) => {
    expect(yearSpans(text)).toBeNull();
  });

  it('holds every year that is written as itself, and a span of two', () => {
    const year = fc.integer({ min: 1850, max: 2100 });
    fc.assert(
      fc.property(year, year, (a, b) => {
        const [from, to] = a < b ? [a, b] : [b, a];
        expect(yearSpans(`${from} - ${to}`)).toEqual([[from, to]]);
        expect(canBothBeTrue(claim(`${from}–${to}`), claim(String(from)))).toBe(true);
        expect(canBothBeTrue(claim(`${from}–${to}`), claim(String(to + 1)))).toBe(false);
      }),
    );
  });
});

describe('claims that disagree', () => {
  it('stand side by side; those that can be true together stand on one side', () => {
    const claims = [claim('1978'), claim('1984'), claim('late 70s'), claim('1978 ')];
    const [group, ...others] = contradictions(claims);
    expect(others).toEqual([]);
    expect(group?.sides).toEqual([[claims[0], claims[2], claims[3]], [claims[1]]]);
  });

  it('are about the same thing: kind and subject, however they are written', () => {
    expect(contradictions([claim('1978'), claim('1984', 'year', 'neck')])).toEqual([]);
    expect(contradictions([claim('1978', 'year', 'Neck'), claim('1984', 'year', ' the neck ')])).toHaveLength(
      1,
    );
    expect(
      contradictions([
        claim('original', 'original part', 'bridge'),
        claim('Original.', 'original part', 'bridge'),
      ]),
    ).toEqual([]);
    expect(contradictions([claim('north works', 'factory'), claim('The North Works', 'factory')])).toEqual(
      [],
    );
    expect(contradictions([claim('north works', 'factory'), claim('south works', 'factory')])).toHaveLength(
      1,
    );
  });

  it('never include those of which it is not told what they are about', () => {
    expect(contradictions([claim('refinished', 'other'), claim('rewired', 'other')])).toEqual([]);
    expect(contradictions([claim('bridge', 'original part'), claim('nut', 'original part')])).toEqual([]);
  });

  it('lose no claim and make none; no side holds two that cannot both be true', () => {
    const any = fc.record({
      kind: fc.constantFrom(...claimKinds),
      subject: fc.constantFrom(null, 'neck', 'Neck', 'bridge'),
      value: fc.constantFrom(
        '1978',
        '1979',
        'late 70s',
        '1978–80',
        '1984',
        'original',
        'replaced',
        'before 1979',
      ),
    });
    fc.assert(
      fc.property(fc.array(any, { maxLength: 12 }), (claims) => {
        const groups = groupClaims(claims);
        const all = groups.flatMap(({ sides }) => sides.flat());
        expect(new Set(all)).toEqual(new Set(claims));
        expect(all).toHaveLength(claims.length);
        for (const side of groups.flatMap(({ sides }) => sides))
          for (const [a, b] of side.flatMap((one, at) =>
            side.slice(at + 1).map((two) => [one, two] as const),
          ))
            expect(canBothBeTrue(a, b) && canBothBeTrue(b, a)).toBe(true);
      }),
    );
  });
});
