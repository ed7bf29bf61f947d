import { describe, expect, it } from 'vitest';
import { ifRangeHolds, readRange } from '@/lib/media';

// Outside check: the examples of RFC 9110, section 14.1.2, for a representation of 10 000 bytes.
describe('byte ranges, RFC 9110 section 14.1.2', () => {
  const part = (first: number, last: number) => ({ kind: 'part', range: { first, last } });
  it.each([
    ['bytes=0-499', part(0, 499)],
    ['bytes=500-999', part(500, 999)],
    ['bytes=-500', part(9500, 9999)],
    ['bytes=9500-', part(9500, 9999)],
    ['bytes=0-0', part(0, 0)],
    ['bytes=0-99999999', part(0, 9999)],
    ['bytes=-99999', part(0, 9999)],
    ['BYTES=1-2', part(1, 2)],
    ['bytes=10000-', { kind: 'unsatisfiable' }],
    ['bytes=-0', { kind: 'unsatisfiable' }],
    ['bytes=5-2', { kind: 'whole' }],
    ['bytes=a-b', { kind: 'whole' }],
    ['bytes=-', { kind: 'whole' }],
    ['lines=0-4', { kind: 'whole' }],
    ['bytes=0-0,-1', { kind: 'whole' }],
    [undefined, { kind: 'whole' }],
  ])('%s', (field, answer) => {
    expect(readRange(field, 10_000)).toEqual(answer);
  });

  it('of an empty file can never be satisfied', () => {
    expect(readRange('bytes=0-', 0)).toEqual({ kind: 'unsatisfiable' });
  });
});

describe('If-Range, RFC 9110 section 13.1.5', () => {
  const date = 'Tue, 17 Mar 2026 09:12:00 GMT';
  it('holds for the same strong tag or the very date', () => {
    expect(ifRangeHolds(undefined, '"a"', date)).toBe(true);
    expect(ifRangeHolds('"a"', '"a"', date)).toBe(true);
    expect(ifRangeHolds(date, '"a"', date)).toBe(true);
  });
  it('fails for another tag, a weak tag, another date', () => {
    expect(ifRangeHolds('"b"', '"a"', date)).toBe(false);
    expect(ifRangeHolds('W/"a"', '"a"', date)).toBe(false);
    expect(ifRangeHolds('Tue, 17 Mar 2026 09:12:01 GMT', '"a"', date)).toBe(false);
  });
});
