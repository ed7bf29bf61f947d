import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { placeOf } from '@/lib/archive/reference/place';
import { readingsPlot } from '@/lib/archive/reference/plot';
import { enough, spreadOf, standingOf } from '@/lib/archive/reference/spread';
import { readTyped } from '@/lib/archive/reference/typed';
import type { ReadingGroup } from '@/shared/reference';

const beside = { open: 0, notMeasured: 0 };
const what = (n: number) => `${n === 1 ? 'reading' : 'readings'} of “neck pickup”`;
const values = fc
  .array(fc.double({ min: 1, max: 1e6, noNaN: true }), { minLength: 1, maxLength: 60 })
  .map((list) => list.sort((a, b) => a - b));

describe('the spread of readings', () => {
  it('shows the points instead of quartiles where there are too few', () => {
    expect(spreadOf([1, 2, 3, 4], beside)).toMatchObject({
      n: 4,
      quartiles: null,
      few: [1, 2, 3, 4],
      max: 4,
    });
    expect(spreadOf([], beside)).toMatchObject({ n: 0, min: null, max: null, few: [] });
    expect(spreadOf([1, 2, 3, 4, 5], { open: 2, notMeasured: 3 })).toEqual({
      ...{ n: 5, min: 1, max: 5, few: [], open: 2, notMeasured: 3 },
      quartiles: { lower: 2, median: 3, upper: 4 },
    });
  });

  it('keeps its figures in order', () => {
    fc.assert(
      fc.property(values, (list) => {
        const { min, quartiles, max } = spreadOf(list, beside);
        const row = [min, quartiles?.lower, quartiles?.median, quartiles?.upper, max].filter(
          (each) => each != null,
        );
        expect(row).toEqual([...row].sort((a, b) => a - b));
      }),
    );
  });
});

describe('where a new reading stands', () => {
  const hundred = Array.from({ length: 100 }, (_, at) => 7000 + 10 * at);

  it('is told in hundredths, never more than there is', () => {
    expect(standingOf(7065, hundred, what).sentence).toBe(
      'Lower than 93 % of the 100 readings of “neck pickup” measured here.',
    );
    expect(standingOf(7985, hundred, what).sentence).toContain('Higher than 99 %');
    expect(standingOf(1, hundred, what).sentence).toContain('Lower than all 100');
    expect(standingOf(9e9, hundred, what).sentence).toContain('Higher than all 100');
    expect(standingOf(7, [7, 7, 7, 7, 7], what).sentence).toContain('The same as all 5');
    expect(standingOf(6, [...Array(999).fill(7), 5].sort(), what).sentence).toContain('Lower than 99 %');
  });

  it('is not judged by too few', () => {
    expect(standingOf(7, [6, 8], what)).toMatchObject({ isEnough: false, below: 1, equal: 0, above: 1 });
    expect(standingOf(7, [6, 8], what).sentence).toContain('too few to judge');
    expect(standingOf(7, [], what).sentence).toContain('nothing to judge by');
  });

  it('counts every earlier one once', () => {
    fc.assert(
      fc.property(values, fc.nat(59), (list, at) => {
        const { n, below, equal, above, isEnough } = standingOf(list[at % list.length] ?? 0, list, what);
        expect(below + equal + above).toBe(n);
        expect(equal).toBeGreaterThan(0);
        expect(isEnough).toBe(n >= enough);
      }),
    );
  });
});

describe('what was measured', () => {
  const place = (fields: Partial<Parameters<typeof placeOf>[0]>) =>
    placeOf({ kind: 'resistance', subject: 'Neck pickup', between: null, details: {}, ...fields });

  it('is named so that only like is held against like', () => {
    expect(place({})).toBe('neck pickup');
    expect(place({ subject: ' Neck ' })).toBe('neck pickup');
    expect(place({ between: ['hot', 'ground'] })).toBe('neck pickup');
    expect(place({ between: ['red', 'white'] })).toBe('neck pickup, between conductors');
    expect(place({ between: ['WH', 'bare'] })).toBe('neck pickup, conductor to shield or frame');
    expect(place({ subject: 'volume pot', between: ['lug 3', 'lug 1'] })).toBe('volume pot, lug 1 – lug 3');
    expect(place({ kind: 'relief', subject: 'neck' })).toBe('neck');
    expect(place({ kind: 'string-height', subject: '', details: { string: 'low E', fret: 12 } })).toBe(
      'low E string, fret 12',
    );
    expect(place({ subject: '' })).toBe('nothing named');
    const jack = { position: 'Bridge', thrown: [], down: ['volume'] };
    expect(place({ subject: 'jack', details: { jack } })).toBe('at the jack, bridge, volume down');
  });

  it('is read from a typed line as it would be noted', () => {
    expect(readTyped('neck 7.2k', 'electric guitar')).toMatchObject({ place: 'neck pickup', value: 7200 });
    expect(readTyped('low E 12th 1.8 mm', 'electric guitar')).toMatchObject({
      kind: 'string-height',
      value: 1.8,
    });
    for (const line of ['red-white open', 'neck', '', '?? ! 🎸'])
      expect(readTyped(line, '').unclear, line).toEqual(expect.any(String));
  });
});

describe('the plot', () => {
  const group = (place: string, sorted: number[]): ReadingGroup => ({
    ...spreadOf(sorted, beside),
    ...{ instrument: 'electric guitar', place },
  });
  const draw = (groups: ReadingGroup[], mark?: { value: number; said: string }) =>
    readingsPlot({ kind: 'resistance', groups, mark, width: 640, id: 'p' });

  it('is one picture with a title, a description and no style sheet or script of its own', () => {
    const svg = draw([group('neck pickup', [7000, 7100, 7200, 7300, 9000]), group('bridge pickup', [8000])]);
    for (const part of ['role="img"', 'aria-labelledby="p-title"', 'aria-describedby="p-desc"'])
      expect(svg?.split('>')[0]).toContain(part);
    expect(svg).toMatch(/<title id="p-title">Resistance by what was measured<\/title>/);
    expect(svg).not.toMatch(/<style|<script|href=|style=/);
    expect(svg?.match(/<circle/g)).toHaveLength(1);
    expect(svg).toContain('neck pickup, electric guitar (5)');
    expect(svg).toContain('kΩ');
  });

  it('escapes what people wrote', () => {
    const svg = draw([group('<img onerror=x>', [7000])]);
    expect(svg).toContain('&lt;img');
    expect(svg).not.toContain('<img');
  });

  it('keeps small and large values apart, and takes one alone', () => {
    expect(draw([group('coil', [10, 12, 14]), group('pot', [250_000, 500_000])])).not.toMatch(
      /NaN|undefined|Infinity/,
    );
    expect(draw([group('coil', [0])], { value: 5, said: 'the new reading' })).not.toMatch(
      /NaN|undefined|Infinity/,
    );
    expect(draw([group('coil', [])])).toBeNull();
  });
});
