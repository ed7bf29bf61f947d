import Database from 'better-sqlite3';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { linesOf, listOf } from '@/lib/archive/lexicon/lines';
import { keysOf } from '@/lib/archive/lexicon/phrase-book';
import { stemOf } from '@/lib/archive/lexicon/stem';
import { relatedTo, synonymGroups } from '@/lib/archive/lexicon/trade';
import { preparedStretches, prepareWords } from '@/lib/archive/words';

const groups = synonymGroups.flatMap(linesOf).map((line) => {
  const [names = '', said = ''] = line.split('=');
  const [word = '', broader = ''] = names.split('<').map((part) => part.trim());
  return { word, broader: listOf(broader), said: listOf(said) };
});

describe('the synonyms', () => {
  it('cover the trade in many groups', () => {
    expect(groups.length).toBeGreaterThanOrEqual(120);
    expect(groups.filter(({ said }) => said.length === 0)).toEqual([]);
  });

  it('say each thing in one group only', () => {
    const owners = new Map<string, string>();
    const twice = groups.flatMap(({ word, said }) =>
      [word, ...said].flatMap((phrase) => {
        const keys = keysOf(phrase).join(' ');
        const owner = owners.get(keys) ?? word;
        owners.set(keys, owner);
        return owner === word ? [] : [`${phrase}: ${owner} and ${word}`];
      }),
    );
    expect(twice).toEqual([]);
  });

  it('hold no phrase of which small words leave one word or none', () => {
    const short = groups.flatMap(({ said }) =>
      said.filter((phrase) => /[\s-]/.test(phrase) && keysOf(phrase).length < 2),
    );
    expect(short).toEqual([]);
  });

  it('keep words that one term of the index can hold', () => {
    expect(groups.filter(({ word }) => !/^[a-z]+$/.test(word)).map(({ word }) => word)).toEqual([]);
  });
});

describe('prepared words', () => {
  /** Ways to say one thing; common practice, no source. */
  it.each([
    [
      'fourconductor',
      [
        'four-conductor',
        '4-conductor',
        'four wire',
        '4 core',
        '4-core cable',
        'Four Conductors',
        'multi-conductor',
      ],
    ],
    ['groundloop', ['ground loop', 'earth loops', 'Earth-Loop']],
    ['crackle', ['scratchy', 'crackly', 'crackles', 'crackling', 'noisy pot', 'noisy pots']],
    ['pot', ['potentiometer', 'pots', 'volume control', 'tone control', 'pot']],
    ['ground', ['earth', 'grounded', 'common', 'chassis', 'gnd']],
    ['stringheight', ['action', 'string height', 'height of the strings', 'high action']],
    ['relief', ['relief', 'neck bow', 'forward bow']],
    ['trussrod', ['truss', 'truss rod', 'truss rods']],
    ['jack', ['jack', 'output socket', 'output jack', 'barrel jack']],
    ['shielding', ['shielding', 'screening', 'screened', 'copper foil']],
    ['dryjoint', ['dry joint', 'cold joints', 'cold solder joint', 'a dry solder joint']],
    ['heater', ['heater', 'filaments']],
    ['valve', ['valve', 'tubes', '12AX7', 'output tube']],
    ['capacitor', ['cap', 'condenser', 'capacitors', 'filter caps']],
    ['outofphase', ['out of phase', 'out-of-phase', 'reversed polarity', 'wrong phase']],
    ['hollow', ['thin sound', 'sounds thin', 'hollow', 'nasal']],
    ['coilsplit', ['coil split', 'coil-tap', 'split coil', 'coil tapped']],
    ['intonation', ['intonation', 'plays sharp up the neck', 'playing sharp up the neck']],
    ['tuningdrift', ["won't stay in tune", 'does not stay in tune', 'keeps going out of tune']],
    ['tuner', ['machine head', 'tuners', 'tuning pegs', 'loose tuner']],
    ['crack', ['crack', 'split', 'top crack']],
    ['soundpost', ['soundpost', 'sound post', 'sound-posts', 'the soundpost fell']],
    ['cutsout', ['intermittent', 'cuts out', 'cutting out', 'comes and goes']],
  ])('%s', (word, said) => {
    for (const text of said) expect(prepareWords(text).split(' '), text).toContain(word);
  });

  it.each([
    ['wound', 'wind'],
    ['it sang', 'sing'],
    ['it broke', 'break'],
    ['broken', 'break'],
    ['colored', 'coloured'],
    ['équalizer', 'equaliser'],
  ])('meets another form: %s and %s', (a, b) => {
    expect(prepareWords(a).split(' ').map(stemOf)).toEqual(prepareWords(b).split(' ').map(stemOf));
  });

  it.each([
    ['8.1k', '8p1kohm 8p1'],
    ['8.10 kΩ', '8p1kohm 8p1'],
    ['eight point one k', '8p1kohm 8p1'],
    ['4k7', '4p7kohm 4p7'],
    ['.010 inch', '0p01in 0p01'],
    ['point zero one zero inches', '0p01in 0p01'],
    ['8 ohm', '8ohm'],
    ['1,000 ohms', '1000ohm'],
    ['two hundred and fifty k', '250kohm'],
    ['four thirty two volts', '432v'],
    ['the 12th', '12th'],
    ['the twelfth', '12th'],
    ['that one', 'one'],
  ])('keeps numbers as words: %s', (text, prepared) => {
    expect(prepareWords(text)).toBe(prepared);
  });

  it("takes in the repairer's own words", () => {
    const own = [
      { said: 'the twanger', means: 'single coil' },
      { said: 'zorp', means: 'loose cap screw' },
      { said: '', means: '' },
    ];
    expect(prepareWords('that twanger', own)).toContain('singlecoil');
    expect(prepareWords('a zorp', own)).toContain(prepareWords('loose cap screw', own).split(' ')[0]);
    expect(prepareWords('that twanger')).toBe('twanger');
  });

  it('tells where in the text each stretch stands', () => {
    const text = 'Lowered the Earth-Loop’s café hum';
    const told = preparedStretches(text).map(({ start, end, words }) => [text.slice(start, end), words[0]]);
    expect(told).toEqual([
      ['Lowered', 'low'],
      ['Earth-Loop’s', 'groundloop'],
      ['café', 'cafe'],
      ['hum', 'hum'],
    ]);
  });

  it('takes any text, and gives words that hold no sign of a query', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 300 }), (text) => {
        expect(prepareWords(text)).not.toMatch(/["'()*:^+.-]/);
      }),
      { numRuns: 500 },
    );
  });

  it('does not depend on what was prepared before', () => {
    const line = 'scratchy volume pot, eight point one k';
    const first = prepareWords(line);
    for (let count = 0; count < 30_000; count++) prepareWords(`word${count}`);
    expect(prepareWords(line)).toBe(first);
  });
});

describe('what goes with a trouble', () => {
  /** Signs, causes and cures; common practice, no source. */
  it.each([
    ['hum', 'groundloop'],
    ['hum', 'noearth'],
    ['touchhum', 'bridgeground'],
    ['crackle', 'contactcleaner'],
    ['hollow', 'outofphase'],
    ['tuningdrift', 'nutbind'],
    ['redplating', 'bias'],
    ['fretbuzz', 'frethigh'],
    ['rattle', 'loosebrace'],
    ['soundpostdown', 'postset'],
    ['fretsprout', 'dried'],
    ['groundloop', 'hum'],
  ])('%s: %s', (word, other) => {
    expect(relatedTo(word)).toContain(other);
  });

  it('a plain thing is asked for alone', () => {
    for (const thing of ['pot', 'jack', 'valve', 'string', 'solder', 'glue'])
      expect(relatedTo(thing)).toEqual([]);
  });
});

describe('stems', () => {
  it('are those of the stemmer of SQLite’s FTS5, an independent program', () => {
    const text = `${synonymGroups.join(' ')} sing singing happily relational conditional rational digitizer operator feudalism
      decisiveness hopefulness callousness formality sensitivity triplicate formative formalize electrical goodness
      revival allowance inference airliner adjustable defensible irritant replacement adoption communism activate
      angularity homologous effective bowdlerize probate rate cease controlling rolling agreed plastered motoring
      conflated troubled sized hopping tanned falling hissing fizzed failing filing caresses ponies ties caress cats`;
    const words = [...new Set(text.match(/[a-z]+/g))];
    const database = new Database(':memory:');
    database.exec("CREATE VIRTUAL TABLE texts USING fts5(words, tokenize = 'porter unicode61')");
    database.exec('CREATE VIRTUAL TABLE terms USING fts5vocab(texts, instance)');
    const insert = database.prepare('INSERT INTO texts (rowid, words) VALUES (?, ?)');
    words.forEach((word, at) => {
      insert.run(at + 1, word);
    });
    const rows = z
      .array(z.object({ term: z.string(), doc: z.int() }))
      .parse(database.prepare('SELECT term, doc FROM terms').all());
    database.close();
    expect(rows.length).toBe(words.length);
    const wrong = rows.flatMap(({ term, doc }) => {
      const word = words[doc - 1] ?? '';
      return stemOf(word) === term ? [] : [`${word}: ${stemOf(word)}, not ${term}`];
    });
    expect(wrong).toEqual([]);
  });
});
