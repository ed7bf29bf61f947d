import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demoJob } from '@/db/demo/demo-job';
import { privateWordsIn } from '@/lib/narration';
import { markerKinds } from '@/shared/markers';

type Known = Parameters<typeof privateWordsIn>[1];

/** All invented; the numbers lie in ranges that are kept free for fiction (from memory). */
const marla: Known = {
  clientName: 'Marla Quillfeather',
  reach: 'phone 555-0142, evenings only\nmarla@quillfeather.example\n12 Larkspur Road, Penhallow',
  serial: '40417283',
};
const known = (some: Partial<Known>): Known => ({ clientName: null, reach: null, serial: null, ...some });

const found = (text: string, of: Known = marla): string[] =>
  privateWordsIn(text, of).map(({ reason, words }) => `${reason}: ${words}`);

describe('the client’s name', () => {
  it.each([
    ['What Marla asked for', ['name: Marla']],
    ['Marla’s neck pickup', ['name: Marla']],
    ["MARLA'S NECK PICKUP", ['name: MARLA']],
    ['Marlas Guitar', ['name: Marlas']],
    ['What Marla Quillfeather Asked For', ['name: Marla Quillfeather']],
    ['Quillfeather, Marla', ['name: Quillfeather', 'name: Marla']],
    ['the quillfeather bass', ['name: quillfeather']],
    ['Frets for Quill Feather', ['name: Quill Feather']],
    ['Marla-Quillfeather_take-2', ['name: Marla-Quillfeather']],
    ['Sound check with Marlo', ['name: Marlo']],
  ])('is found in “%s”', (title, words) => expect(found(title)).toEqual(words));

  it.each([
    ["Rose's bridge pickup", 'Rose Marsh', ['name: Rose']],
    ['Set-Up For Rose', 'Rose Marsh', ['name: Rose']],
    ['Rose Marsh wants it low', 'Rose Marsh', ['name: Rose Marsh']],
    ['What Mark asked for', 'Mark Neck', ['name: Mark']],
    ['Mark wants it low', 'Mark Neck', ['name: Mark']],
    ['Tilda Strings wants new strings', 'Tilda Strings', ['name: Tilda Strings']],
    ['An inlay for An Do', 'An Do', ['name: An Do']],
    ['Zoe’s fret dress', 'Zoë Brèl', ['name: Zoe']],
    ['Zoe\u0308 is back', 'Zoë Brèl', ['name: Zoe\u0308']],
  ])('is told from the word in “%s”', (title, clientName, words) =>
    expect(found(title, known({ clientName }))).toEqual(words),
  );

  it.each([
    ['Гитара Марии Перовой', 'Мария Перова', ['name: Марии Перовой']],
    ['Η κιθάρα του Παπαστρουθή', 'Λίνος Παπαστρουθής', ['name: Παπαστρουθή']],
    ['ΛΙΝΟΣ: βραχίονας', 'Λίνος Παπαστρουθής', ['name: ΛΙΝΟΣ']],
    ['田中さんのギター', '田中 花子', ['name: 田中']],
    ['הגיטרה של מרים', 'מרים לבנון', ['name: מרים']],
    ['جيتار لمريم', 'مريم الزهراني', ['name: لمريم']],
  ])('is found in other scripts: “%s”', (title, clientName, words) =>
    expect(found(title, known({ clientName }))).toEqual(words),
  );
});

describe('what the ticket knows besides', () => {
  it.each([
    ['Ring 555 0142', ['phone: 555 0142']],
    ['+1 555-0142', ['phone: 1 555-0142']],
    ['5550142', ['phone: 5550142']],
    ['٥٥٥-٠١٤٢', ['phone: ٥٥٥-٠١٤٢']],
    ['\u200f555\u200f-0142', ['phone: 555\u200f-0142']],
    ['Write to MARLA@quillfeather.example', ['email: MARLA@quillfeather.example']],
    ['marla at quillfeather dot example', ['email: marla at quillfeather dot example']],
    ['Collected from 12 larkspur road', ['address: 12 larkspur road']],
    ['Off to Penhallow', ['address: Penhallow']],
    ['Serial 4041-7283', ['serial: 4041-7283']],
    ['4041 7283, on the neck plate', ['serial: 4041 7283']],
    ['No. ４０４１７２８３', ['serial: ４０４１７２８３']],
  ])('is found in “%s”', (title, words) => expect(found(title)).toEqual(words));

  it.each([
    ['Call 01632 960142', '+44 (0)1632 960 142', ['phone: 01632 960142']],
    ['Call 960-142', '01632 960142', ['phone: 960-142']],
    ['By the old pump, Tanner’s Yard', 'Flat 3, Tanner’s Yard', ['address: Tanner’s Yard']],
    ['ask marla_q', '@marla_q', ['name: marla_q']],
  ])('is found in “%s” however “%s” is grouped', (title, reach, words) =>
    expect(found(title, known({ reach }))).toEqual(words),
  );

  it.each(['AB12-3456', 'ab 12 3456', 'AB123456', 'ab12/3456'])('a serial with letters: %s', (title) =>
    expect(found(title, known({ serial: 'no. AB123456' }))).toEqual([`serial: ${title}`]),
  );

  it('a serial under four characters is none, nor are words', () => {
    expect(found('Fret 117', known({ serial: '117' }))).toEqual([]);
    expect(found('A guitar of unknown make', known({ serial: 'unknown' }))).toEqual([]);
    expect(found('4041 turns of 7283', known({ serial: '40417283' }))).toEqual([]);
  });
});

describe('what nobody told the ticket', () => {
  it.each([
    ['Thanks to Dave', ['name: Dave']],
    ['Mrs Ottery’s fiddle', ['name: Mrs Ottery']],
    ['Thanks To Mrs Ottery', ['name: Mrs Ottery']],
    ['Fitted at 42 Tansy Lane', ['address: 42 Tansy Lane']],
    ['Tel 01632 960 123', ['phone: 01632 960 123']],
    ['someone@workshop.example', ['email: someone@workshop.example']],
  ])('is found in “%s”', (title, words) => expect(found(title, known({}))).toEqual(words));
});

/** Titles as they are written over work at the bench; none of them tells of a person. */
const harmless = [
  ...markerKinds.map((kind) => kind.charAt(0).toUpperCase() + kind.slice(1)),
  ...demoJob.takes
    .flatMap(({ markers }) => markers.filter((marker) => marker.public))
    .map(({ title }) => title),
  demoJob.title,
  demoJob.client.alias,
  ...[
    'Neck pickup',
    'Bridge ground wire',
    'Bridge Ground Wire',
    'Rose wood fretboard',
    'Rose Wood Fretboard',
    'Will it hum?',
    'Mark the slugs',
    'Mark The Slugs',
    'Which wire belongs to red',
    'Green belongs to ground, bare to ground',
    'Thanks to shielding, no hum',
    'Strings 10-13-17-26-36-46',
    'Gauges 010 013 017 026 036 046',
    '2026-03-17 10:04',
    'The Client Summary',
    'Douglas fir top',
    'Number 2 slug row',
    'Slug Row 2',
    'The Long Road To Silence',
    'Frank talk about frets',
    'Jack plate, nut and case',
    'Chip in the nut',
    'Doctor the nut slots',
    'Lady finger',
    'Pearl dots, olive wood',
    'Rusty screws, sandy finish',
    'Art of the fret',
    'How to do an inlay',
    'New strings, low action',
    'Grace notes at 440 Hz',
    '8.08 kΩ, 4.08 kΩ and 3.97 kΩ',
    '4700 4720 4690 ohms',
    'White to green, black to ground',
    'Evenings at the bench: call it done',
    'Back at 3 o’clock',
    'a client',
  ],
];

describe('no false alarm', () => {
  const names = [
    'Marla Quillfeather',
    'Rose Marsh',
    'Mark Neck',
    'Will Bridge',
    'Sander Woodley',
    'Jack White',
  ];
  const more = ['Bartholomew Slotter', 'Tilda Strings', 'Tamsin Orrery', 'Фёдор Ключников', 'An Do', null];
  it.each([...names, ...more])('over the words of the trade, for a client called %s', (clientName) => {
    expect(harmless.flatMap((title) => found(title, { ...marla, clientName }))).toEqual([]);
  });
});

describe('places', () => {
  it('are those of the words in the text, in order, none on another', () => {
    const any = fc.oneof(
      fc.string({ unit: 'grapheme', maxLength: 40 }),
      fc.constantFrom(
        'Marla',
        '🎸',
        "o'clock",
        ' ',
        '555-0142',
        '12 Larkspur Road',
        '4041 7283',
        'x@y.example',
        'ש',
      ),
    );
    fc.assert(
      fc.property(fc.array(any, { maxLength: 8 }), (pieces) => {
        const text = pieces.join('');
        let free = 0;
        for (const { from, to, words } of privateWordsIn(text, marla)) {
          expect(from).toBeGreaterThanOrEqual(free);
          expect(to).toBeGreaterThan(from);
          expect(text.slice(from, to)).toBe(words);
          free = to;
        }
      }),
    );
  });

  it('stand behind signs outside the first plane and behind shortened words', () => {
    const text = '🎸🎸 at 3 o’clock: Marla’s guitar, for Mrs Ottery';
    expect(privateWordsIn(text, marla)).toEqual([
      { from: text.indexOf('Marla'), to: text.indexOf('’s guitar'), words: 'Marla', reason: 'name' },
      { from: text.indexOf('Mrs'), to: text.length, words: 'Mrs Ottery', reason: 'name' },
    ]);
  });

  it('the name is found wherever it stands between other words', () => {
    const word = fc.constantFrom('neck', 'Pickup', 'the', '8.08 kΩ', '🎸', 'гриф', 'קפוא');
    const row = fc.array(word, { maxLength: 5 });
    fc.assert(
      fc.property(row, row, fc.constantFrom('Marla', 'QUILLFEATHER', 'marla'), (before, after, name) => {
        const text = [...before, name, ...after].join(' ');
        expect(privateWordsIn(text, marla)).toContainEqual({
          from: [...before, ''].join(' ').length,
          to: [...before, ''].join(' ').length + name.length,
          words: name,
          reason: 'name',
        });
      }),
    );
  });
});
