import fc from 'fast-check';
import { ToWords } from 'to-words';
import { describe, expect, it } from 'vitest';
import { findNumbers } from '@/lib/narration/numbers';
import { tokenise } from '@/lib/narration/words/tokenise';

const hear = (text: string): number[] =>
  findNumbers(tokenise([{ startMs: 0, endMs: 5000, text }], [])).map((number) => number.value);

/** A general-purpose library turns numbers into words (to-words); they are turned back here. */
describe.each(['en-US', 'en-GB'])('number words of an independent library, %s', (localeCode) => {
  const words = new ToWords({ localeCode });

  it('every whole number up to 2 000', () => {
    for (let value = 1; value <= 2000; value++) expect(hear(`${words.convert(value)} ohms`)).toEqual([value]);
  });

  it('whole numbers up to a thousand million', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 999_999_999 }), (value) => {
        expect(hear(words.convert(value))).toEqual([value]);
      }),
      { numRuns: 500 },
    );
  });

  it('decimals and negative numbers', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 99_999 }),
        fc.integer({ min: 1, max: 99 }),
        fc.boolean(),
        (whole, after, minus) => {
          const value = Number(`${minus ? '-' : ''}${whole}.${String(after).padStart(2, '0')}`);
          expect(hear(words.convert(value))).toEqual([value]);
        },
      ),
      { numRuns: 500 },
    );
  });
});
