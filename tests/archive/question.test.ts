import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type QuestionContext, readQuestion, withoutParts } from '@/lib/archive/question';
import { clientIdSchema } from '@/shared/ids';
import { instrumentTypes } from '@/shared/instruments';

const clientId = (number: number) => clientIdSchema.parse(String(number).padStart(20, '0'));
const wilma = clientId(1);
const chip = clientId(2);
const unknown = new Set(['conducter', 'soldir', 'blurpo']);
const context: QuestionContext = {
  today: '2026-11-25',
  hemisphere: 'north',
  firstDayOfWeek: 1,
  instrumentTypes: [...instrumentTypes, 'hurdy-gurdy'],
  clients: [
    { id: wilma, name: 'Wilma Brackley' },
    { id: chip, name: 'Chip Ostrander' },
  ],
  ownSynonyms: [{ said: 'the twanger', means: 'single coil' }],
  knows: (word) => !unknown.has(word),
  near: (word) => (word === 'soldir' ? 'solder' : null),
};
const read = (question: string) => readQuestion(question, context);
const firstWords = (question: string) => read(question).terms.map(({ any }) => any[0]);

describe('a question as a whole', () => {
  it('is understood with its trace', () => {
    const question = read('How did I trace that four-conductor last spring?');
    expect(question.parts.map(({ kind, means }) => `${kind}: ${means.split(',')[0]}`)).toEqual([
      'time: between 1 March and 31 May 2026',
      'marker: marker: measurement',
      'words: “trace”',
      'words: “four-conductor”',
    ]);
    expect(question.span).toEqual({ from: '2026-03-01', to: '2026-05-31' });
    expect(question.terms.map(({ any }) => any[0])).toEqual(['trace', 'fourconductor']);
    expect(question.kinds).toEqual(['trace', 'joint']);
  });

  it.each([
    ['that one where the volume was scratchy', ['volume', 'crackle']],
    ['show me the time I fixed the dead spot', ['repair', 'deadspot']],
    ['what was the thing with the loose brace again', ['loosebrace']],
    ['the slab-style with no sound', ['slab', 'style', 'nosound']],
    ['HUM until I touch the strings', ['touchhum', 'string']],
    ['plays sharp up the neck', ['intonation']],
    ['the twanger', ['singlecoil']],
  ])('loses its fillers: %s', (question, words) => {
    expect(firstWords(question)).toEqual(words);
  });

  it('looks for signs, causes and cures too, for less', () => {
    const [term] = read('crackling volume').terms;
    expect(term?.any[0]).toBe('crackle');
    expect(term?.close).toBe(1);
    expect(term?.any).toContain('contactcleaner');
    expect(term?.any.length).toBeLessThanOrEqual(14);
  });
});

describe('parts', () => {
  it('are taken away one by one, with all that they add', () => {
    const full = read('bass with 8.1k neck in March for Wilma, assumed');
    const gone = full.parts.reduce((question, { id }) => withoutParts(question, [id]), full);
    expect(full.parts.map(({ kind }) => kind)).toEqual([
      'time',
      'value',
      'instrument',
      'basis',
      'client',
      'words',
    ]);
    expect(gone).toEqual({ ...read(''), findings: [] });
  });

  it('keep their ids where the rest of the question changes', () => {
    const id = read('hum last week').parts.find(({ kind }) => kind === 'time')?.id;
    expect(id).toBe('time-last-week');
    expect(read('buzz in the amp last week').parts.map((part) => part.id)).toContain(id);
  });

  it('have ids of their own, without commas', () => {
    const ids = read('hum, hum 8k, 8k neck, last week last week').parts.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.join('')).not.toContain(',');
  });

  it('that are not there change nothing', () => {
    const question = read('hum');
    expect(withoutParts(question, ['no-such-part', ''])).toEqual(question);
  });

  it('of time that overlap narrow one another', () => {
    expect(read('in 2025, after June 2025').span).toEqual({ from: '2025-07-01', to: '2025-12-31' });
  });
});

describe('values', () => {
  it.each([
    ['8.1k neck', ['resistance'], null, null, 8100],
    ['8k1 neck', ['resistance'], null, null, 8100],
    ['8.1 neck', ['resistance'], null, null, 8100],
    ['pickups under 7k', ['resistance'], null, 7000, null],
    ['pot over 500 kohm', ['resistance'], 500_000, null, null],
    ['pot over 1M', ['resistance'], 1_000_000, null, null],
    ['between 1.5 and 2 mm action', ['string-height'], 1.5, 2, null],
    ['action 1.5-2mm', ['string-height'], 1.5, 2, null],
    ['action under 2', ['string-height'], null, 2, null],
    ['about 0.010 relief', ['relief'], null, null, 0.254],
    ['relief 10 thou', ['relief'], null, null, 0.254],
    ['8 ohm speaker', ['resistance'], null, null, 8],
    ['over 20 mA bias', ['bias-current'], 0.02, null, null],
    ['bias at 35 mA', ['bias-current'], null, null, 0.035],
    ['22n cap', ['capacitance'], null, null, 2.2e-8],
    ['action 4/64', ['string-height'], null, null, 1.5875],
    ['humidity below 35 %', ['humidity'], null, 35, null],
    ['2 kohm or more', ['resistance'], 2000, null, null],
  ])('%s', (question, kindIds, low, high, near) => {
    const [value, ...others] = read(question).values;
    expect(others).toEqual([]);
    expect(value?.kindIds).toEqual(kindIds);
    for (const [got, meant] of [
      [value?.low, low],
      [value?.high, high],
      [value?.near, near],
    ])
      if (meant === null || meant === undefined) expect(got).toBeNull();
      else expect(got).toBeCloseTo(meant, 12);
  });

  it.each([
    '12AX7 microphonic',
    'string 3 buzzes on fret 5',
    '4-conductor cable',
    '12 string',
    'the 2nd take',
    '1/4 jack',
    '5 amp fuse',
    '3 way switch',
  ])('finds none in: %s', (question) => {
    expect(read(question).values).toEqual([]);
  });

  it('says what was measured, and leaves it to be looked for', () => {
    const question = read('8.1k neck');
    expect(question.values[0]?.subject).toBe('neck');
    expect(question.values[0]?.words).toEqual(['8p1kohm', '8p1']);
    expect(question.terms.map(({ any }) => any[0])).toEqual(['neck']);
    expect(question.parts[0]?.means).toBe('resistance near 8.1 kΩ');
  });

  it('takes a part that is named by its value as words too', () => {
    expect(firstWords('8 ohm speaker')).toEqual(['8ohm', 'speaker']);
  });

  it('does not take a year or a day for a value', () => {
    const question = read('8k neck in 2024 on 3 March 2024');
    expect(question.values.map(({ near }) => near)).toEqual([8000]);
    expect(question.span).toEqual({ from: '2024-03-03', to: '2024-03-03' });
  });
});

describe('instruments', () => {
  it.each([
    ['the bass that hums', ['bass guitar']],
    ['amp with no sound', ['valve amplifier', 'solid-state amplifier']],
    ['tube amp hum', ['valve amplifier']],
    ['acoustic with a crack', ['acoustic guitar']],
    ['electric bass', ['bass guitar']],
    ['cello wolf', ['violin family']],
    ['double bass soundpost', ['violin family']],
    ['uke tuner', ['ukulele']],
    ['hurdy-gurdy wheel', ['hurdy-gurdy']],
    ['bass side action', []],
    ['bass bar', []],
    ['no bass on both pickups', []],
    ['electric shock from the strings', []],
    ['5 amp fuse', []],
  ])('%s', (question, types) => {
    expect(read(question).instruments).toEqual(types);
  });
});

describe('marker kinds, basis and clients', () => {
  it.each([
    ['what did I measure on the neck', ['measurement']],
    ['what was wrong with the pedal', ['diagnosis']],
    ['how did the set-up turn out', ['result']],
    ['how it came in', ['intake']],
    ['final sound test', ['result']],
    ['how did I fix the hum', ['work']],
  ])('%s', (question, kinds) => {
    expect(read(question).markerKinds).toEqual(kinds);
  });

  it.each([
    ['assumed conductors', 'assumed'],
    ['not yet measured', 'assumed'],
    ['measured, not assumed', 'measured'],
    ['only measured readings', 'measured'],
    ['where I measured the neck', null],
    ['implied conductors', 'implied'],
  ])('%s', (question, basis) => {
    expect(read(question).basis).toBe(basis);
  });

  it.each([
    ['wilma brackley guitar', [wilma]],
    ['brackley bass', [wilma]],
    ["Wilma's amp", [wilma]],
    ['dead spot for Chip', [chip]],
    ['chip in the finish', []],
    ['Ostrander', [chip]],
  ])('%s', (question, clients) => {
    expect(read(question).clients).toEqual(clients);
  });
});

describe('typing slips', () => {
  it('take a word of the trade, inside a phrase too', () => {
    const question = read('four conducter');
    expect(question.terms).toMatchObject([{ isSlip: true }]);
    expect(question.terms[0]?.any[0]).toBe('fourconductor');
    expect(question.parts[0]).toMatchObject({ kind: 'slip', said: 'four conducter' });
  });

  it('take the nearest word that occurs', () => {
    expect(firstWords('soldir')).toEqual(['solder']);
  });

  it('leave a word that nothing is near', () => {
    expect(read('blurpo').terms).toMatchObject([{ any: ['blurpo'], isSlip: false }]);
  });
});

describe('whatever is typed', () => {
  it.each(['', '   ', 'show me that one where', '?!…', '😀😀', '"""', '* - +', '\u0000'])(
    'no words in %j',
    (question) => {
      expect(read(question).terms).toEqual([]);
    },
  );

  it.each([
    '"OR" NEAR(a b) AND NOT c* ^d -e col:f',
    "'; DROP TABLE jobs; --",
    'как починить гитару',
    '楽器の修理',
    '\ud800 lone',
    'İstanbul ǅ ŉ',
    'hum '.repeat(2500),
    'a'.repeat(10_000),
    '9'.repeat(10_000),
    'between '.repeat(1250),
    '1 to '.repeat(2000),
    'last '.repeat(2000),
    'the week before '.repeat(600),
    'in 9999-99-99 on 31 February 2026 week 99 2026-W99',
  ])('is read: %.20s', (question) => {
    const { parts, terms } = read(question);
    expect(terms.length).toBeLessThanOrEqual(24);
    expect(new Set(parts.map(({ id }) => id)).size).toBe(parts.length);
    for (const { any } of terms) for (const word of any) expect(word).toMatch(/^[^\s"'()*:^+-]+$/);
  });

  const words = fc.constantFrom(
    ...'last spring in march before since between and 8.1k under over bass amp hum 2024 ago two weeks the week 3 / - ½ ’s “ " ( İ ß 12AX7 . , to from early of year may'.split(
      ' ',
    ),
  );

  it('never throws, and says only what was typed', () => {
    fc.assert(
      fc.property(
        fc.array(fc.oneof(words, fc.string({ unit: 'binary', maxLength: 8 })), { maxLength: 30 }),
        (said) => {
          const typed = said.join(' ');
          const question = read(typed);
          for (const { said: part } of question.parts) expect(typed).toContain(part);
          if (question.span) expect(question.span.from <= question.span.to).toBe(true);
        },
      ),
      { numRuns: 1000 },
    );
  });

  it('is the same each time it is read', () => {
    fc.assert(
      fc.property(fc.array(words, { maxLength: 20 }), (said) => {
        expect(read(said.join(' '))).toEqual(read(said.join(' ')));
      }),
    );
  });
});
