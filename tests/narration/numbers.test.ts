import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findNumbers } from '@/lib/narration/numbers';
import { tokenise } from '@/lib/narration/words/tokenise';
import { decimalInWords, wholeInWords } from './say-number';

const hear = (...rows: string[]): string[] =>
  findNumbers(
    tokenise(
      rows.map((text, at) => ({ startMs: at * 2000, endMs: at * 2000 + 1900, text })),
      [],
    ),
  ).map((number) => (number.denominator === null ? number.digits : `${number.digits}/${number.denominator}`));

describe('numbers as they are said', () => {
  it.each([
    ['four point oh eight k', ['4.08']],
    ['point oh one two', ['0.012']],
    ['oh point two', ['0.2']],
    ['nought point nought nought two', ['0.002']],
    ['a hundred and twenty k', ['120']],
    ['one twenty k', ['120']],
    ['four eighty volts', ['480']],
    ['one oh five', ['105']],
    ['two and a half millimetres', ['2.5']],
    ['three quarters of a mil', ['0.75']],
    ['ten and fifteen sixteenths of an inch', ['10.9375']],
    ['six sixty-fourths', ['6']],
    ['five over sixty four', ['5/64']],
    ['6/64', ['6/64']],
    ['minus three millivolts', ['-3']],
    ['4 point oh 8', ['4.08']],
    ['3.97 one k', ['3.971']],
    ['two thousand four hundred and ten', ['2410']],
    ['four point oh ate k', ['4.08']],
    ['four um point uh oh eight', ['4.08']],
    ['three point nine three point nine seven one', ['3.9', '3.971']],
    ['fifty fifty-one thou', ['51']],
    ['string three two point four', ['3', '2.4']],
    ['this one eight point two', ['8.2']],
    ['1,200 ohms', ['1200']],
    ['½ an inch', ['0.5']],
  ])('%s', (words, expected) => {
    expect(hear(words)).toEqual(expected);
  });

  it('runs over line breaks', () => {
    expect(hear('bridge is eight point', 'one four k')).toEqual(['8.14']);
    expect(hear('two hundred and', 'thirty one k')).toEqual(['231']);
  });
});

describe('any number in words comes back as that number', () => {
  it('whole numbers, British and American', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 999_999_999 }), fc.boolean(), (value, british) => {
        expect(hear(`${wholeInWords(value, british)} ohms`)).toEqual([String(value)]);
      }),
      { numRuns: 1000 },
    );
  });

  it('decimals, with every digit that was said', () => {
    const digits = fc.string({ unit: fc.constantFrom(...'0123456789'), minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 9999 }),
        digits,
        fc.boolean(),
        fc.boolean(),
        (whole, after, oh, minus) => {
          const heard = hear(`${minus ? 'minus ' : ''}${decimalInWords(whole, after, oh)} volts`);
          expect(heard).toEqual([`${minus ? '-' : ''}${whole}.${after}`]);
        },
      ),
      { numRuns: 1000 },
    );
  });

  it('in two lines, broken anywhere between words', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 999 }),
        fc.integer({ min: 0, max: 999 }),
        fc.nat(),
        (whole, after, place) => {
          const words = `reads ${decimalInWords(whole, String(after), true)} kay`.split(' ');
          const cut = 1 + (place % (words.length - 1));
          expect(hear(words.slice(0, cut).join(' '), words.slice(cut).join(' '))).toEqual([
            `${whole}.${after}`,
          ]);
        },
      ),
      { numRuns: 500 },
    );
  });
});
