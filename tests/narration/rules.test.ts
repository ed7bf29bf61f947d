import { describe, expect, it } from 'vitest';
import { propose } from '@/lib/narration';
import { UNITS } from '@/lib/narration/lexicon/unit-words';
import { kindOf, units } from '@/lib/readings';
import type { HeardProposal, NarrationContext, ProposalType } from '@/shared/narration';

const GUITAR: NarrationContext = {
  instrumentType: 'electric guitar',
  clientName: 'Tamsin Orrery',
  slang: [],
};

function hear(rows: string, context: Partial<NarrationContext> = {}): HeardProposal[] {
  let clockMs = 0;
  const lines = rows.split('\n').map((text) => {
    const startMs = clockMs;
    clockMs += text.split(' ').length * 430 + 300;
    return { startMs, endMs: clockMs - 300, text };
  });
  return propose(lines, { ...GUITAR, ...context });
}

function short(proposal: HeardProposal): string {
  switch (proposal.type) {
    case 'reading': {
      const { kind, digits, unit, between, subject, sign } = proposal.payload;
      const value = sign ?? (digits === null ? 'open' : `${digits} ${unit}`);
      return [kind, value, between?.join('-'), subject].filter(Boolean).join(' | ');
    }
    case 'coil-pair':
      return `${proposal.payload.conductors.join('-')} ${proposal.payload.row ?? ''}`.trim();
    case 'role':
      return `${proposal.payload.conductor} ${proposal.payload.role}`;
    case 'joint':
      return proposal.payload.conductors.join('-');
    case 'work': {
      const { origin, outcome, charge, description } = proposal.payload;
      return `${origin} ${outcome} ${charge}: ${description}`;
    }
    case 'private':
      return `${proposal.payload.reason}: ${proposal.words}`;
    case 'marker':
      return `${proposal.payload.markerKind}: ${proposal.payload.title}`;
    case 'camera-stop':
      return proposal.words;
  }
}

/** Proposals of one type in a short written form. */
const said = (rows: string, type: ProposalType, context: Partial<NarrationContext> = {}): string[] =>
  hear(rows, context)
    .filter((proposal) => proposal.type === type)
    .map(short);

describe('readings', () => {
  it.each([
    ['red to white is four point oh eight k', ['resistance | 4.08 kΩ | red-white']],
    ['Eight ohms, or eight k ohms.', ['resistance | 8 kΩ']],
    ['three point nine, three point nine seven one k', ['resistance | 3.971 kΩ']],
    ['seven point five, no sorry, seven point six k', ['resistance | 7.6 kΩ']],
    ['it should be about seven and it is eight point eight k', ['resistance | 8.8 kΩ']],
    ["you'd expect four k, the label says five k, not four k", []],
    ["it's less than one volt", []],
    ['that is a five hundred k pot with a nine volt battery and a ten ohm resistor', []],
    ['seven k would be normal', []],
    ['somewhere between seven k and nine k', []],
    ['red and green, nothing', ['resistance | open | red-green']],
    ['no continuity from white to black', ['resistance | open | white-black']],
    ['I did it for nothing and opened it up, the open strings ring', []],
    ['green and black, four point oh eight. Four point oh eight k.', ['resistance | 4.08 kΩ | green-black']],
    [
      "the neck pickup reads seven point nine and the bridge pickup's eight point two",
      ['resistance | 7.9 kΩ | neck', 'resistance | 8.2 kΩ | bridge'],
    ],
    ['low E at the twelfth is one point eight millimetres', ['string-height | 1.8 mm | low E, 12th fret']],
    ['action is 6/64 on the low E', ['string-height | 6 64ths | low E']],
    ['relief is ten mil', ['relief | 10 thou']],
    ['battery is nine volts two', ['voltage | 9.2 V | battery']],
    ['it has twenty two frets, six strings, and cost ninety pounds in nineteen eighty four', []],
    ['serial number four one two oh seven seven, took three minutes', []],
    ['low E intonates three cents flat', ['intonation | -3 cents | low E']],
    ['red lead on green, black lead on black, and that reads four k', ['resistance | 4 kΩ | green-black']],
  ])('%s', (words, expected) => {
    expect(said(words, 'reading')).toEqual(expected);
  });

  it('carries units and subjects over line breaks', () => {
    expect(said('so the bridge pickup is eight point\none four k', 'reading')).toEqual([
      'resistance | 8.14 kΩ | bridge',
    ]);
  });

  it('hears which way the needle kicks', () => {
    const words = 'red and white on the meter, touch a screwdriver to the slugs and it kicks positive';
    expect(said(words, 'reading')).toEqual(['polarity-kick | positive | red-white | slug coil']);
  });

  it('tells plate voltage and bias only in a valve amplifier’s words', () => {
    const context = { instrumentType: 'valve amplifier' };
    expect(said('plate voltage is four hundred and sixty two volts', 'reading', context)).toEqual([
      'plate-voltage | 462 V | plate',
    ]);
    expect(said('bias is thirty four milliamps', 'reading', context)).toEqual(['bias-current | 34 mA']);
  });

  it('uses kinds and units that the readings know', () => {
    const spoken = UNITS.filter((unit) => unit.quantity !== 'none' && unit.unit !== '32nds').map(
      (unit) => unit.unit,
    );
    for (const unit of new Set(spoken)) expect(units.find((known) => known.id === unit)?.id).toBe(unit);
    for (const kind of [
      'resistance',
      'polarity-kick',
      'string-height',
      'relief',
      'plate-voltage',
      'bias-current',
      'length',
    ] as const)
      expect(kindOf(kind), kind).toBeDefined();
  });
});

describe('wiring', () => {
  it.each<[string, ProposalType, string[]]>([
    [
      'red and white are one coil and green and black are the other',
      'coil-pair',
      ['red-white', 'green-black'],
    ],
    ['the slug coil is red and white', 'coil-pair', ['red-white slug']],
    ['red and green are not a coil', 'coil-pair', []],
    [
      'red is hot and black goes to ground along with the bare',
      'role',
      ['red hot', 'black ground', 'shield ground'],
    ],
    ['green becomes the positive end', 'role', ['green positive']],
    ['normally red is hot', 'role', []],
    ['red to ground is seven point two k', 'role', []],
    ['white and green are twisted together', 'joint', ['white-green']],
    ['so red gets joined to white', 'joint', ['red-white']],
    ['black and white together gives me four point one k', 'joint', []],
    ["don't solder red and white together", 'joint', []],
  ])('%s', (words, type, expected) => {
    expect(said(words, type)).toEqual(expected);
  });
});

describe('work', () => {
  it.each([
    [
      "she's asked for a new nut and a set-up",
      ['asked promised paid: new nut', 'asked promised paid: set-up'],
    ],
    ["I'll throw in a set of strings for free", ['offered promised free: set of strings']],
    ['he wants it back by Saturday', []],
  ])('%s', (words, expected) => {
    expect(said(words, 'work')).toEqual(expected);
  });

  const promise = "I told her I'd polish the frets for nothing.";
  const between =
    'Right so this takes a while and I talk about the weather while the glue goes off.\nAnd a bit more.';

  it('points a thing left undone at both moments', () => {
    const work = hear(`${promise}\n${between}\nI didn't get round to the frets.`).filter(
      (one) => one.type === 'work',
    );
    expect(work.map((one) => one.payload.outcome)).toEqual(['promised', 'not done']);
    expect(work[1]?.payload).toMatchObject({
      origin: 'offered',
      charge: 'free',
      promisedAt: { startMs: work[0]?.startMs },
    });
  });

  it('says of a promise that nothing more was heard of it, and up to where', () => {
    const [work] = hear(`${promise}\n${between}`).filter((one) => one.type === 'work');
    expect(work?.payload.unheardUntil?.endMs).toBeGreaterThan(8000);
  });

  it('hears what was found, done and declined', () => {
    expect(said("I noticed the nut is cracked so I'll make a new one", 'work')).toEqual([
      'found promised paid: nut',
    ]);
    expect(said('I noticed the switch is worn but he told me not to bother', 'work')).toEqual([
      'found declined paid: switch',
    ]);
  });
});

describe('private', () => {
  it.each([
    ['this is Tamsin Orrery and her guitar', ['name: Tamsin Orrery']],
    ['so Tamzin, or Orry, is coming', ['name: Tamzin', 'name: Orry']],
    ['it belongs to a guy called Zebulon', ['name: Zebulon']],
    ['mrs pennywhistle wants it back', ['name: mrs pennywhistle']],
    [
      'ring me on oh seven seven double oh nine double oh one two three',
      ['phone: oh seven seven double oh nine double oh one two three'],
    ],
    ['it is tam dot orrery at pondmail dot example', ['email: tam dot orrery at pondmail dot example']],
    ['write to tam@pondmail.example please', ['email: tam @ pondmail . example']],
    ['she lives at forty two larkspur road', ['address: forty two larkspur road']],
    ['serial number oh seven seven double oh nine double oh one', []],
    ['Will it fit? I mark it and bill it, frank talk', []],
  ])('%s', (words, expected) => {
    expect(said(words, 'private')).toEqual(expected);
  });
});

describe('camera and markers', () => {
  it('hears the end of a take', () => {
    expect(said("I'll stop the camera there", 'camera-stop')).toHaveLength(1);
    expect(said('the camera battery is fine and I stop it rattling', 'camera-stop')).toEqual([]);
  });

  it('titles chapters in the trade’s words', () => {
    const talk =
      "So on the bench today is a bass for Tamsin.\nLet's have a look at the crackle.\nRight, now I'm going to solder the jack.\nOkay let's hear it.";
    expect(said(talk, 'marker', { instrumentType: 'bass guitar' })).toEqual([
      'intake: What came in: bass guitar',
      'diagnosis: Looking for the crackle',
      'work: Soldering the jack',
      'result: Hearing the result',
    ]);
  });
});

describe('the repairer’s own words', () => {
  it('are taken for what they mean', () => {
    const slang = [{ said: 'kilo wotsits', means: 'k ohms' }];
    expect(said('red to white is four point two kilo wotsits', 'reading', { slang })).toEqual([
      'resistance | 4.2 kΩ | red-white',
    ]);
  });
});

describe('keys', () => {
  it('are the same for the same words, and do not depend on what is said later', () => {
    const first = hear('red to white is four point oh eight k.');
    const longer = hear('red to white is four point oh eight k.\nThank you.');
    expect(longer[0]?.key).toBe(first[0]?.key);
  });
});
