import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { heldBack, privateLeft, publicAlias, publicWords } from '@/lib/handover/public-words';

/** All invented; the numbers lie in ranges that are kept free for fiction (from memory). */
const job = (alias = 'a returning client', name = 'Marla Quillfeather') => ({
  client: {
    name,
    alias,
    reach: 'phone 555-0142, evenings only\nmarla@quillfeather.example\n12 Larkspur Road, Penhallow',
  },
  instrument: { serial: '40417283' },
});

describe('the alias in the place of the name', () => {
  it.each([
    ['What Marla asked for', 'What a returning client asked for'],
    ['Marla’s neck pickup', 'A returning client’s neck pickup'],
    ["MARLA'S NECK PICKUP", 'A returning client’s NECK PICKUP'],
    ['Marlas Guitar', 'A returning client’s Guitar'],
    ['the Marla guitar', 'the returning client guitar'],
    ['A Marla guitar', 'A returning client guitar'],
    ['Mr Quillfeather wants it low', 'A returning client wants it low'],
    ['for my client, Marla, who rang', 'for my client who rang'],
    ['my client Marla’s bass', 'my client’s bass'],
    ['Done. Marla Quillfeather came.', 'Done. A returning client came.'],
    ['Quillfeather, Marla', 'A returning client'],
    ['Sound check with Marlo', 'Sound check with a returning client'],
    ['Marla and Dave', 'A returning client and (held back)'],
  ])('“%s”', (text, made) => expect(publicWords(text, job())).toBe(made));

  it('takes the ending of an alias in the plural', () => {
    expect(publicWords('Marla’s bass', job('the wedding players'))).toBe('The wedding players’ bass');
    expect(publicWords('a Marla bass', job('the wedding players'))).toBe('a wedding players bass');
  });

  it.each([
    ['Гитара Марии Перовой', 'Мария Перова', 'Гитара a client'],
    ['田中さんのギター', '田中 花子', 'A clientさんのギター'],
    ['جيتار لمريم', 'مريم الزهراني', 'جيتار a client'],
    ['Rose Marsh wants it low', 'Rose Marsh', 'A client wants it low'],
  ])('in “%s”', (text, name, made) => expect(publicWords(text, job('a client', name))).toBe(made));

  it('is not one that gives the client away', () => {
    expect(publicAlias(job('Marla Q.'))).toBe('the client');
    expect(publicAlias(job('the quillfeather lady'))).toBe('the client');
    expect(publicAlias(job(' '))).toBe('the client');
    expect(publicAlias(job('Big Dave'))).toBe('Big Dave');
  });
});

describe('what has no other name', () => {
  it.each([
    ['Thanks to Dave', 'Thanks to (held back)'],
    ['Ring 555 0142 or marla@quillfeather.example', 'Ring (held back) or (held back)'],
    ['Off to Penhallow', 'Off to (held back)'],
    ['No. 4041-7283 on the plate', 'No. (held back) on the plate'],
    ['SN40417283', 'SN(held back)'],
    ['take_40417283b', 'take_(held back)b'],
  ])('“%s”', (text, made) => expect(publicWords(text, job())).toBe(made));

  it('leaves alone what only looks alike', () => {
    for (const text of ['Rose wood fretboard', '1404172839 turns', '4.08 kΩ and 3.97 kΩ', ''])
      expect(publicWords(text, job('a client', 'Rose Marsh'))).toBe(text);
  });

  it('is told of in words written by hand; the alias is not', () => {
    const left = privateLeft(
      'Marla rang 555-0142 about SN40417283; thanks to Big Dave (held back)',
      job('Big Dave'),
    );
    expect(left.map(({ reason, words }) => [reason, words])).toEqual([
      ['name', 'Marla'],
      ['phone', '555-0142'],
      ['serial', '40417283'],
    ]);
  });
});

const syllables = fc.constantFrom('zub', 'quil', 'vor', 'mizh', 'tweph', 'grol', 'yax', 'plun');
const invented = fc.array(syllables, { minLength: 2, maxLength: 3 }).map((parts) => {
  const word = parts.join('');
  return word.charAt(0).toUpperCase() + word.slice(1);
});
const nameWord = fc.oneof(
  invented,
  fc.constantFrom('Zu', 'Qo', 'Łuź', 'Жмыхов', 'Ζβώλης', '田中', 'מרים', 'Ünşöğ'),
);
const digits = (length: number) =>
  fc
    .array(fc.integer({ min: 1, max: 9 }), { minLength: length, maxLength: length })
    .map((all) => all.join(''));

const someone = fc.record({
  first: nameWord,
  last: nameWord,
  phone: digits(9).map((all) => `0${all.slice(0, 4)} ${all.slice(4)}`),
  email: invented.map((word) => `${word.toLowerCase()}@post.example`),
  serial: digits(8),
  alias: fc.constantFrom('a client', 'the drummer', 'an old hand', 'my neighbours', 'Big Dave', ''),
});

describe('properties', () => {
  it('no word of the name, no number, address or serial of the record comes through', () => {
    const filler = fc.constantFrom(
      'the neck pickup',
      'for',
      'wants it low',
      '4.08 kΩ',
      '’s bass',
      ',',
      '.',
      'a',
      '🎸',
      '\n',
      '(',
    );
    const places = fc.array(
      fc.oneof(filler, fc.constantFrom('first', 'last', 'whole', 'phone', 'email', 'serial')),
      {
        maxLength: 12,
      },
    );
    fc.assert(
      fc.property(someone, places, fc.constantFrom(' ', ' ', '  ', '-'), (who, parts, between) => {
        const { first, last, phone, email, serial, alias } = who;
        const said: Record<string, string> = { first, last, whole: `${first} ${last}`, phone, email, serial };
        const text = parts.map((part) => said[part] ?? part).join(between);
        const record = {
          client: { name: `${first} ${last}`, alias, reach: `${phone}\n${email}` },
          instrument: { serial },
        };
        const made = publicWords(text, record);
        const words = made.toLowerCase().match(/[\p{L}\p{M}]+/gu) ?? [];
        for (const part of [first, last]) expect(words).not.toContain(part.toLowerCase());
        for (const secret of [phone, phone.replace(' ', ''), email, serial])
          expect(made).not.toContain(secret);
        expect(privateLeft(made, record)).toEqual([]);
      }),
      { numRuns: 300 },
    );
  });

  it('what is public already stays as it is', () => {
    const text = 'Red to hot, black and bare to ground';
    expect(publicWords(text, job())).toBe(text);
    expect(publicWords(`${heldBack} at the end`, job())).toBe(`${heldBack} at the end`);
  });
});
