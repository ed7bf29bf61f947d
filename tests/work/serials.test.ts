import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parsePattern, readSerial, SerialPatternError, sayLayout } from '@/lib/work';
import { readByPatterns } from '@/lib/work/serials';

const today = 2026;
const read = (words: string, serial: string, year = today) => readSerial(parsePattern(words), serial, year);

function problemOf(words: string): SerialPatternError {
  try {
    parsePattern(words);
  } catch (error) {
    if (error instanceof SerialPatternError) return error;
    throw error;
  }
  throw new Error(`It was understood: ${words}`);
}

/** One piece of a pattern with the part of a serial that it reads. */
interface Written {
  words: string;
  signs: string;
  field: 'factory' | 'number' | 'skip';
}

const countWords = 'one two three four five six seven eight nine ten'.split(' ');
const letters = 'ABCDEFGHJKLMNPQRSTUVWXYZ'.split('');
const digits = '0123456789'.split('');
const classes = [
  { name: 'digit', signs: digits },
  { name: 'letter', signs: letters },
  { name: 'character', signs: [...digits, ...letters] },
];

const other: fc.Arbitrary<Written> = fc
  .record({
    of: fc.constantFrom(...classes),
    field: fc.constantFrom('factory', 'number', 'skip'),
    count: fc.integer({ min: 1, max: 10 }),
    inWords: fc.boolean(),
    seeds: fc.array(fc.nat(), { minLength: 10, maxLength: 10 }),
  })
  .map(({ of, field, count, inWords, seeds }) => ({
    words: `${inWords ? countWords[count - 1] : count} ${of.name}${count === 1 ? '' : 's'} ${field}`,
    signs: seeds
      .slice(0, count)
      .map((seed) => of.signs[seed % of.signs.length])
      .join(''),
    field,
  }));

const two = (value: number) => String(value).padStart(2, '0');
const date = fc.record({
  year: fc.integer({ min: 1850, max: today }),
  digits: fc.constantFrom(2, 4),
  month: fc.integer({ min: 1, max: 12 }),
});

describe('a serial that was written by a pattern', () => {
  it('is read back by it: year, month, factory', () => {
    fc.assert(
      fc.property(
        fc.array(other, { maxLength: 4 }),
        date,
        fc.array(other, { maxLength: 4 }),
        (a, made, b) => {
          const year = String(made.year).slice(-made.digits);
          const dated = {
            words: `${made.digits} digits year, two digits month`,
            signs: `${year}${two(made.month)}`,
          };
          const pieces = [...a, dated, ...b];
          const reading = read(
            pieces.map((piece) => piece.words).join(', '),
            pieces.map((piece) => piece.signs).join(''),
          );
          const factory = [...a, ...b].filter(({ field }) => field === 'factory').map(({ signs }) => signs);
          expect(reading?.years).toContain(made.year);
          expect(
            reading?.years.every((one) => String(one).endsWith(year) && one >= 1850 && one <= today),
          ).toBe(true);
          expect(reading?.years.length).toBe(
            made.digits === 4 ? 1 : made.year % 100 > 26 && made.year % 100 < 50 ? 1 : 2,
          );
          expect(reading?.month).toBe(made.month);
          expect(reading?.factory).toBe(factory.length > 0 ? factory.join('') : null);
        },
      ),
    );
  });

  it('is read the same with spaces and dashes put in anywhere', () => {
    fc.assert(
      fc.property(
        fc.array(other, { minLength: 1, maxLength: 4 }),
        fc.array(fc.constantFrom('', ' ', '-', ' – '), { minLength: 60, maxLength: 60 }),
        (pieces, between) => {
          const words = ['four digits year', ...pieces.map((piece) => piece.words)].join(', ');
          const serial = `1984${pieces.map((piece) => piece.signs).join('')}`;
          const spread = [...serial].map((sign, index) => sign + (between[index] ?? '')).join('');
          expect(read(words, serial)).not.toBeNull();
          expect(read(words, spread)).toEqual(read(words, serial));
        },
      ),
    );
  });

  it('does not fit when a sign is missing or there is one too many', () => {
    fc.assert(
      fc.property(fc.array(other, { minLength: 1, maxLength: 5 }), (pieces) => {
        const words = ['four digits year', ...pieces.map((piece) => piece.words)].join(', ');
        const serial = `1984${pieces.map((piece) => piece.signs).join('')}`;
        expect(read(words, `${serial}7`)).toBeNull();
        expect(read(words, serial.slice(0, -1))).toBeNull();
      }),
    );
  });

  it('says what was understood, a line for each piece, and reads its own line again', () => {
    fc.assert(
      fc.property(fc.array(other, { minLength: 1, maxLength: 5 }), (pieces) => {
        const layout = parsePattern(['four digits year', ...pieces.map((piece) => piece.words)].join(', '));
        expect(parsePattern(sayLayout(layout).join(', '))).toEqual(layout);
      }),
    );
  });
});

describe('the words of a pattern', () => {
  it.each([
    ['two digits year, two digits month', '8407'],
    ['2 digits for the year; 2 digits for the month', '8407'],
    ['year in two digits then month in two digits', '8407'],
    ['Two Digits: year', '84'],
    ['two digits year\ntwo digits month\nthe rest number', '8407 12345'],
    ['a letter ignored, two digits year, the rest', 'S84xyz-1'],
    ['skip two characters, two digits year', '#x84'],
    ['two digits year, anything', '84'],
    ['two digits year, two anything ignored', '84xy'],
    ['two digits year, a dash, two digits week', '84-53'],
    ['two digits year, "-", two digits week', '84–01'],
    ['the letters SN, two digits year', 'sn84'],
    ['“SN”, two digits year', 'SN 84'],
    ['two digits year, a slash, the rest number', '84/1'],
    ['two digits year, two digits week number', '8412'],
    ['two digits year, a space, one digit number', '84  7'],
  ])('“%s” reads %s', (words, serial) => {
    expect(read(words, serial)?.years).toEqual([1884, 1984]);
  });

  it.each([
    ['two digits year, two fingers month', 'two fingers month'],
    ['digits year', 'digits year'],
    ['two year', 'two year'],
    ['two digits', 'two digits'],
    ['two digits year month', 'two digits year month'],
    ['the rest year', 'the rest year'],
    ['the rest number, two digits year', 'the rest'],
    ['two letters year', 'year'],
    ['five digits year', 'year'],
    ['0 digits year', '0 digits year'],
    ['two digits ignored', 'two digits ignored'],
    ['one letter factory: NN north works', 'NN north works'],
    ['one letter month: A Smarch', 'A Smarch'],
    ['one letter year: A 84', 'A 84'],
    ['one letter factory: N north works, N south works', 'N south works'],
    ['constructor year', 'constructor year'],
    ['', ''],
  ])('“%s” is refused and names the piece “%s”', (words, piece) => {
    const error = problemOf(words);
    expect(error.extra).toEqual({ piece });
    expect(error.message).not.toBe('');
    expect(error.detail).not.toBe('');
  });

  it('never falls over, whatever is typed', () => {
    const word = fc.constantFrom(
      ...'two 3 a digits letters year month the rest : , = " “ - dash factory N north is then ignored'.split(
        ' ',
      ),
    );
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ maxLength: 300 }),
          fc.array(word).map((all) => all.join(' ')),
        ),
        (words) => {
          try {
            expect(parsePattern(words).length).toBeGreaterThan(0);
          } catch (error) {
            expect(error).toBeInstanceOf(SerialPatternError);
          }
        },
      ),
    );
  });

  it('reads codes that the repairer has written down, and no others', () => {
    const words =
      'two letters factory: AB north works, CD south works, one letter month: A January, B Feb, two digits year';
    expect(read(words, 'cdb84')).toMatchObject({ factory: 'south works', month: 2, years: [1884, 1984] });
    expect(read(words, 'EFB84')).toBeNull();
    expect(read('one letter year: A = 1981, B means 1982', 'B')?.years).toEqual([1982]);
    expect(read('one letter year: A 1981, B 2082, the rest', 'B1')).toBeNull();
  });
});

describe('a date in a serial', () => {
  it('leaves the century open and never guesses it', () => {
    expect(read('two digits year', '84')?.years).toEqual([1884, 1984]);
    expect(read('two digits year', '49')?.years).toEqual([1949]);
    expect(read('two digits year', '26')?.years).toEqual([1926, 2026]);
    expect(read('two digits year', '26', 2025)?.years).toEqual([1926]);
    expect(read('one digit year', '4')?.years).toContain(1974);
    expect(read('three digits year', '984')?.years).toEqual([1984]);
    expect(read('four digits year', '1849')).toBeNull();
    expect(read('four digits year', '2027')).toBeNull();
  });

  it('puts the parts of a split year together', () => {
    expect(read('one digit year, five digits number, one digit year', '8123454')?.years).toEqual([
      1884, 1984,
    ]);
  });

  it.each([
    ['two digits month', '00'],
    ['two digits month', '13'],
    ['two digits week', '54'],
    ['four digits year, two digits month, two digits day', '19840431'],
    ['four digits year, two digits month, two digits day', '19830229'],
    ['three digits day', '367'],
    ['four digits year, three digits day', '1983366'],
  ])('“%s” does not fit %s', (words, serial) => {
    expect(read(words, serial)).toBeNull();
  });

  // ISO 8601-1:2019, 3.1.1.20 (leap year) and 5.2.3 (ordinal date): day 366 and 29 February exist in leap years only.
  it('takes the years in which the day exists', () => {
    expect(read('two digits year, two digits month, two digits day', '000229')?.years).toEqual([2000]);
    expect(read('two digits year, three digits day', '00366')?.years).toEqual([2000]);
    expect(read('two digits year, three digits day', '00365')?.years).toEqual([1900, 2000]);
  });

  it('is said in one sentence', () => {
    expect(read('two digits year, two digits month, the rest number', '84071234')?.sentence).toBe(
      '84 is the year (1884 or 1984), 07 the month (July), 1234 the number.',
    );
    expect(read('one letter factory: N north works, four digits year', 'N1984')?.sentence).toBe(
      'N is the factory (north works), 1984 the year.',
    );
    expect(read('one digit year', '4')?.sentence).toBe('4 is the year (a year that ends in 4).');
    expect(read('four digits year, three digits day', '1984212')?.sentence).toBe(
      '1984 is the year, 212 the day of the year.',
    );
  });
});

describe('the readings of a serial', () => {
  it('come from the repairer’s own patterns only, with their names', () => {
    expect(readByPatterns([], '8407', today)).toEqual([]);
    expect(readByPatterns([{ name: 'newer', words: 'two digits year' }], null, today)).toEqual([]);
    const readings = readByPatterns(
      [
        { name: 'year first', words: 'two digits year, two digits month' },
        { name: 'month first', words: 'two digits month, two digits year' },
        { name: 'longer', words: 'two digits year, six digits number' },
      ],
      '11-05',
      today,
    );
    expect(readings).toMatchObject([
      { pattern: 'year first', years: [1911, 2011], month: 5 },
      { pattern: 'month first', years: [1905, 2005], month: 11 },
    ]);
  });
});
