import { describe, expect, it } from 'vitest';
import {
  asksNothing,
  countNarrowed,
  narrowed,
  notNarrowed,
  pageOf,
  readAsked,
  routeOf,
  searchOf,
} from '@/app/archive/_question/asked';
import { putBack, saidIn, takeAway, withWords } from '@/app/archive/_question/taken-away';
import { readTyped, sayRange } from '@/app/archive/_question/typed-range';

describe('the address is the question', () => {
  it('tells the same question the same way, and reads back what it told', () => {
    const search = 'kind=measurement&q=8.1k+neck&reading=resistance&low=7000&high=9000&from=2026-03-01';
    const asked = readAsked(search);
    expect(asked).toMatchObject({ q: '8.1k neck', kind: 'measurement', low: 7000, high: 9000 });
    expect(searchOf(asked)).toBe(
      'q=8.1k+neck&kind=measurement&from=2026-03-01&reading=resistance&low=7000&high=9000',
    );
    expect(readAsked(searchOf(asked))).toEqual(asked);
    expect(countNarrowed(asked)).toBe(3);
    expect(searchOf(notNarrowed(asked))).toBe('q=8.1k+neck');
  });

  it('leaves out what is unknown or wrong, and asks the rest', () => {
    const asked = readAsked(
      'q=hum&kind=banana&from=2026-02-30&low=&limit=9&today=2020-01-01&x=1&basis=assumed',
    );
    expect(searchOf(asked)).toBe('q=hum&basis=assumed');
    expect(searchOf(readAsked('q=hum&low=3&high=4'))).toBe('q=hum');
  });

  it('is plain where nothing is asked', () => {
    expect(pageOf(searchOf(readAsked('q=++')))).toBe('/archive');
    expect(asksNothing(readAsked('without=words-hum'))).toBe(true);
    expect(asksNothing(readAsked('instrument=banjo'))).toBe(false);
    expect(routeOf('q=hum', { limit: 40 })).toBe('/api/archive?q=hum&limit=40');
  });

  it('takes a filter off', () => {
    const asked = readAsked('q=hum&instrument=banjo&reading=resistance&low=0');
    expect(searchOf(asked)).toBe('q=hum&instrument=banjo&reading=resistance&low=0');
    const off = narrowed(asked, { instrument: undefined, reading: undefined, low: undefined });
    expect(searchOf(off)).toBe('q=hum');
  });
});

describe('parts that are taken away', () => {
  const asked = readAsked('q=Trace+last+spring');

  it('stay in the address until they are put back', () => {
    const without = takeAway(takeAway(asked, 'time-last-spring'), 'time-last-spring');
    expect(without.without).toBe('time-last-spring');
    expect(putBack(without, 'time-last-spring').without).toBe('');
    expect(saidIn('time-last-spring~2')).toBe('last spring');
  });

  it('are forgotten once their words are gone from the question', () => {
    const without = takeAway(asked, 'time-last-spring');
    expect(withWords(without, 'traced last-spring, the neck').without).toBe('time-last-spring');
    expect(withWords(without, 'trace').without).toBe('');
  });
});

describe('a range as it is typed', () => {
  // IEC 60062: 4k7 is 4.7 kΩ. The international inch is 25.4 mm.
  it.each([
    ['7k', 'resistance', 7000],
    ['7.5 kΩ', 'resistance', 7500],
    ['4k7', 'resistance', 4700],
    ['8', 'resistance', 8000],
    ['470 ohms', 'resistance', 470],
    ['1 M', 'resistance', 1_000_000],
    ['1.6', 'string-height', 1.6],
    ['6/64', 'string-height', 2.38125],
    ['22n', 'capacitance', 22e-9],
  ] as const)('reads %s of %s', (text, kind, base) => {
    const typed = readTyped(text, kind);
    expect('base' in typed && typed.base).toBeCloseTo(base, 12);
  });

  it('leaves an end open, and says what it cannot read', () => {
    expect(readTyped('  ', 'resistance')).toEqual({ base: null });
    expect(readTyped('7 mm', 'resistance')).toMatchObject({ wrong: expect.stringContaining('kΩ') });
    expect(readTyped('about seven', 'resistance')).toHaveProperty('wrong');
  });

  it('is said with its units', () => {
    expect(sayRange('resistance', 7000, 9000)).toBe('Resistance, 7 kΩ to 9 kΩ');
    expect(sayRange('resistance', undefined, 900)).toBe('Resistance, at most 900 Ω');
    expect(sayRange('resistance', 0, undefined)).toBe('Resistance, at least 0 Ω');
  });
});
