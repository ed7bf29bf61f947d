import { describe, expect, it } from 'vitest';
import { parseQuickEntry, type QuickContext, type QuickEntry, sayNewReading } from '@/lib/readings';
import { newReadingSchema } from '@/shared/readings';

const guitar: QuickContext = { instrumentType: 'electric guitar' };
const amplifier: QuickContext = { instrumentType: 'valve amplifier' };
const known: QuickContext = { ...guitar, conductors: ['white/red', 'green', 'black 2', 'red'] };

function read(line: string, context: QuickContext = guitar): string {
  return outcome(parseQuickEntry(line, context));
}

/** "resistance | neck pickup, red – white: 4.08 kΩ", "? question | choice | choice", "… what is missing". */
function outcome(entry: QuickEntry): string {
  if (entry.state === 'understood') return `${entry.reading.kind} | ${sayNewReading(entry.reading)}`;
  if (entry.state === 'question') return `? ${entry.choices.map(({ label }) => label).join(' | ')}`;
  return entry.state === 'unfinished' ? '…' : '';
}

describe('readings of pickups', () => {
  it.each([
    ['neck red-white 4.08k', 'resistance | neck pickup, red – white: 4.08 kΩ'],
    ['bridge total 8.8k', 'resistance | bridge pickup: 8.8 kΩ'],
    ['red-green open', 'resistance | red – green: open'],
    ['neck 7.9k', 'resistance | neck pickup: 7.9 kΩ'],
    ['bridge 8k8', 'resistance | bridge pickup: 8.8 kΩ'],
    ['BRIDGE 8K8', 'resistance | bridge pickup: 8.8 kΩ'],
    ['neck 7,9k', 'resistance | neck pickup: 7,9 kΩ'],
    ['neck 7.90 kΩ', 'resistance | neck pickup: 7.90 kΩ'],
    ['neck 7.90 k\u2126', 'resistance | neck pickup: 7.90 kΩ'],
    ['neck 7.9 kohms', 'resistance | neck pickup: 7.9 kΩ'],
    ['neck 7900 ohm', 'resistance | neck pickup: 7900 Ω'],
    ['neck 7900Ω', 'resistance | neck pickup: 7900 Ω'],
    ['the neck pickup reads 7.9k', 'resistance | neck pickup: 7.9 kΩ'],
    ['Neck Pickup 7.9k', 'resistance | neck pickup: 7.9 kΩ'],
    ['7.9k neck', 'resistance | neck pickup: 7.9 kΩ'],
    ['middle 6.2k', 'resistance | middle pickup: 6.2 kΩ'],
    ['neck red to white 4.08k', 'resistance | neck pickup, red – white: 4.08 kΩ'],
    ['neck red and white 4.08k', 'resistance | neck pickup, red – white: 4.08 kΩ'],
    ['neck red/white 4.08k', 'resistance | neck pickup, red – white: 4.08 kΩ'],
    ['neck red – white 4.08k', 'resistance | neck pickup, red – white: 4.08 kΩ'],
    ['neck RD/WH 4.08k', 'resistance | neck pickup, red – white: 4.08 kΩ'],
    ['RED-WHITE 4.08K neck', 'resistance | neck pickup, red – white: 4.08 kΩ'],
    ['red white 4.08k', 'resistance | red – white: 4.08 kΩ'],
    ['green and bare OL', 'resistance | green – shield: open'],
    ['red-bare 0L', 'resistance | red – shield: open'],
    ['red-green O.L', 'resistance | red – green: open'],
    ['red-green over range', 'resistance | red – green: open'],
    ['red-green ∞', 'resistance | red – green: open'],
    ['cover-bare 0.3 ohm', 'resistance | frame – shield: 0.3 Ω'],
    ['tip sleeve 7.6k', 'resistance | tip – sleeve: 7.6 kΩ'],
    ['hot-ground 7.6k', 'resistance | hot – ground: 7.6 kΩ'],
    ['WHRD-GN 4.0k', 'resistance | white/red – green: 4.0 kΩ'],
    ['neck 7.9k at 24 °C', 'resistance | neck pickup, at 24 °C: 7.9 kΩ'],
    ['neck 7.9k @ 75F', 'resistance | neck pickup, at 23.89 °C: 7.9 kΩ'],
    ['neck 4.5 H at 1 kHz', 'inductance | neck pickup, inductance, at 1000 Hz: 4.5 H'],
    ['bridge 3.8H @ 120 Hz', 'inductance | bridge pickup, inductance, at 120 Hz: 3.8 H'],
    ['tone cap 22n', 'capacitance | tone cap, capacitance: 22 nF'],
    ['cable 470 pF', 'capacitance | cable, capacitance: 470 pF'],
    ['treble bleed 1n2', 'capacitance | treble bleed, capacitance: 1.2 nF'],
    ['cap 0.047\u03bcF', 'capacitance | cap, capacitance: 0.047 µF'],
    ['volume pot 478k', 'resistance | volume pot: 478 kΩ'],
    ['volume pot 1M', 'resistance | volume pot: 1 MΩ'],
    ['tone pot 0.512 Mohm', 'resistance | tone pot: 0.512 MΩ'],
    ['jack joint 0.2 ohm', 'resistance | jack joint: 0.2 Ω'],
    ['neck joint 0.2 ohm', 'resistance | neck joint: 0.2 Ω'],
    ['neck 7.9k ±1%', 'resistance | neck pickup ±1%: 7.9 kΩ'],
  ])('%s', (line, expected) => {
    expect(read(line)).toBe(expected);
  });
});

describe('kicks of the needle', () => {
  const said = (row: string, sign: string, steel = 'laid on', leads = ['red', 'white']) =>
    `polarity-kick | ${row} row, steel ${steel}, red lead on ${leads[0]}, black lead on ${leads[1]}: ${sign} kick`;
  it.each([
    ['slug + red/white touch', said('slug', '+')],
    ['slug − red/white touch', said('slug', '−')],
    ['screw minus green-black touched', said('screw', '−', 'laid on', ['green', 'black'])],
    ['screw + green/black lift', said('screw', '+', 'taken off', ['green', 'black'])],
    ['slug + red/white small touch', said('slug', '+ small')],
    ['SLUG + RED/WHITE TOUCH', said('slug', '+')],
    ['red/white slug kick up touch', said('slug', '+')],
    ['slug + red/white kick', '? steel laid on | steel taken off'],
    ['slug red/white touch', '…'],
    ['+ red/white touch', '…'],
    ['slug + touch', '…'],
    ['slug + - red/white touch', '…'],
    ['slug + red/red touch', '…'],
  ])('%s', (line, expected) => {
    expect(read(line)).toBe(expected);
  });

  it('keeps the pickup that the kick belongs to', () => {
    expect(read('neck pickup slug + red/white touch')).toContain('| neck pickup, slug row');
    expect(read('slug + red/white touch', { ...guitar, lastSubject: 'bridge pickup' })).toContain(
      '| bridge pickup, slug row',
    );
  });
});

describe('conductors of two colours', () => {
  it.each([
    ['white/red-green 4.0k', known, 'resistance | white/red – green: 4.0 kΩ'],
    ['white/red green 4.0k', known, 'resistance | white/red – green: 4.0 kΩ'],
    ['red - black 2 4.1k', known, 'resistance | red – black 2: 4.1 kΩ'],
    ['white/red 4.0k', guitar, 'resistance | white – red: 4.0 kΩ'],
    // Not known as one conductor, three colours in a row say too little.
    ['white/red green 4.0k', guitar, '…'],
    ['white/red-green 4.0k', guitar, '…'],
    ['red-red 4.0k', guitar, '…'],
    ['red-mauve 4.0k', guitar, '? red-mauve: 4.0 kΩ'],
  ])('%s', (line, context, expected) => {
    expect(read(line, context)).toBe(expected);
  });
});

describe('set-up', () => {
  it.each([
    ['low E 12th 1.8mm', 'string-height | string height, low E string, fret 12: 1.8 mm'],
    ['low e 12th 1,8 mm', 'string-height | string height, low E string, fret 12: 1,8 mm'],
    ['low E fret 12 1.8mm', 'string-height | string height, low E string, fret 12: 1.8 mm'],
    ['low E 12th fret 1.8mm', 'string-height | string height, low E string, fret 12: 1.8 mm'],
    ['1.8mm at the 12th, high E string', 'string-height | string height, high E string, fret 12: 1.8 mm'],
    ['3rd string 12th fret 1.6mm', 'string-height | string height, 3rd string, fret 12: 1.6 mm'],
    ['string 6 fret 17 1.9mm', 'string-height | string height, 6 string, fret 17: 1.9 mm'],
    ['fret 12 A string 1.7mm', 'string-height | string height, A string, fret 12: 1.7 mm'],
    ['G string 1st fret .018"', 'string-height | string height, G string, fret 1: .018 in'],
    ['bass side 6/64', 'string-height | string height, bass side: 6/64 in (2.38 mm)'],
    ['bass side 6/64"', 'string-height | string height, bass side: 6/64 in (2.38 mm)'],
    ['treble side 4.5/64 in', 'string-height | string height, treble side: 4.5/64 in (1.79 mm)'],
    ['bass side fret 12 6/64', 'string-height | string height, fret 12, bass side: 6/64 in (2.38 mm)'],
    ['relief .010"', 'relief | relief: .010 in'],
    ['relief .010″', 'relief | relief: .010 in'],
    ['relief 10 thou', 'relief | relief: 10 thou'],
    ['relief -0.1 mm', 'relief | relief: -0.1 mm'],
    ['relief −0.1 mm', 'relief | relief: -0.1 mm'],
    ['nut slot low E 0.5 mm', 'nut-slot-depth | nut slot depth, low E string: 0.5 mm'],
    ['nut width 43 mm', 'length | nut width, length: 43 mm'],
    ['fret height 1.1mm', 'fret-height | fret height: 1.1 mm'],
    ['bridge pickup bass side 2.4mm', 'pickup-height | bridge pickup, pickup height, bass side: 2.4 mm'],
    ['low E 12th -4 cents', 'intonation | intonation, low E string, fret 12: -4 cents'],
    ['intonation G +3', 'intonation | intonation, G string: +3 cents'],
    ['scale length 648 mm', 'length | scale length, length: 648 mm'],
    ['G string gauge .017"', 'length | G string gauge, length: .017 in'],
    ['humidity 45%', 'humidity | humidity: 45 % RH'],
    ['45 %RH', 'humidity | humidity: 45 % RH'],
    ['temperature 21.5 C', 'temperature | temperature: 21.5 °C'],
    ['temperature 68F', 'temperature | temperature: 68 °F'],
    ['weight 3.6 kg', 'mass | mass: 3.6 kg'],
    ['body 2100 g', 'mass | body, mass: 2100 g'],
    ['A 440 Hz', 'pitch | A, pitch: 440 Hz'],
    ['tension 71 N', 'string-tension | string tension: 71 N'],
    ['low E open 82.4 Hz', 'pitch | low E open, pitch: 82.4 Hz'],
  ])('%s', (line, expected) => {
    expect(read(line)).toBe(expected);
  });

  it.each([
    ['ukulele', 'action 12th 2.6 mm', 'string-height | string height, fret 12: 2.6 mm'],
    ['ukulele', 'C string 12th 2.5mm', 'string-height | string height, C string, fret 12: 2.5 mm'],
    ['violin family', 'G string action 5.5 mm', 'string-height | string height, G string: 5.5 mm'],
    ['violin family', 'E 3.5mm', 'string-height | string height, E string: 3.5 mm'],
    ['banjo', 'relief .008"', 'relief | relief: .008 in'],
  ])('%s: %s', (instrumentType, line, expected) => {
    expect(read(line, { instrumentType })).toBe(expected);
  });
});

describe('amplifiers and pedals', () => {
  it.each([
    ['plate 410 V', 'plate-voltage | plate voltage: 410 V'],
    ['V1 plate 180V', 'plate-voltage | V1, plate voltage: 180 V'],
    ['B+ 410V', 'plate-voltage | plate voltage: 410 V'],
    ['bias 35mA', 'bias-current | bias current: 35 mA'],
    ['bias 35 MA', 'bias-current | bias current: 35 mA'],
    ['bias -52 V', 'voltage | bias, voltage: -52 V'],
    ['heater 6.3 V', 'voltage | heater, voltage: 6.3 V'],
    ['cathode resistor 1k5', 'resistance | cathode resistor: 1.5 kΩ'],
    ['speaker 8 ohm', 'resistance | speaker: 8 Ω'],
    ['bias 0.035', '? bias current: 0.035 A | bias current: 0.035 mA'],
  ])('%s', (line, expected) => {
    expect(read(line, amplifier)).toBe(expected);
  });

  it.each([
    ['9.2V', 'voltage | voltage: 9.2 V'],
    ['battery 9.2 v', 'voltage | battery, voltage: 9.2 V'],
    ['current 12.4 mA', 'current | current: 12.4 mA'],
    ['supply 850 µA', 'current | supply, current: 850 µA'],
  ])('pedal: %s', (line, expected) => {
    expect(read(line, { instrumentType: 'effects pedal' })).toBe(expected);
  });
});

describe('what is asked instead of guessed', () => {
  it.each([
    ['neck 8 ohm', '? neck pickup: 8 kΩ | neck pickup: 8 Ω'],
    ['red-white 8 ohm', '? red – white: 8 kΩ | red – white: 8 Ω'],
    ['coil 8Ω', '? coil: 8 kΩ | coil: 8 Ω'],
    ['neck 7.9', '? neck pickup: 7.9 kΩ'],
    ['neck 7900', '? neck pickup: 7900 Ω'],
    ['red-white 4.08', '? red – white: 4.08 kΩ'],
    ['relief .010', '? relief: .010 mm | relief: .010 in | relief: .010 thou'],
    [
      'low E 12th 1.8',
      '? string height, low E string, fret 12: 1.8 mm | string height, low E string, fret 12: 1.8/64 in (0.71 mm)',
    ],
    ['neck 7.9k 8.1k', '? neck pickup 8.1k: 7.9 kΩ | neck pickup 7.9k: 8.1 kΩ'],
    ['red-white 4.08k open', '? red – white: 4.08 kΩ | red – white: open'],
    ['pot 1,000 ohm', '? pot: 1,000 Ω | pot: 1000 Ω'],
    ['pot 1 000 ohm', '? pot 1: 000 Ω | pot: 1000 Ω'],
    ['pot 2 mohm', '? pot: 2 MΩ'],
    ['neck -7.9k', '? neck pickup: -7.9 kΩ'],
    ['relief 10 mm', '? relief: 10 thou | relief: 10 mm'],
  ])('%s', (line, expected) => {
    expect(read(line)).toBe(expected);
  });

  it('takes a loose pickup for a coil', () => {
    expect(read('8 ohm', { instrumentType: 'loose pickup' })).toBe('? 8 kΩ | 8 Ω');
  });

  it('asks in words', () => {
    const entry = parseQuickEntry('neck 8 ohm', guitar);
    expect(entry).toMatchObject({ question: '8 Ω is outside what is usual for neck pickup. Which was it?' });
  });

  it.each([
    [
      'neck',
      'bridge pickup',
      'red-white',
      'low E 12th',
      '+',
      '.',
      '-',
      '4..08k',
      'neck 1,000,000k',
      'neck 4.0.8k',
      '12AX7',
      'R47',
      'neck 7.9x',
    ],
  ])('leaves %s unfinished', (...lines) => {
    for (const line of lines) expect(read(line), line).toBe('…');
  });

  it.each([
    ['bass side 5/32', '10/64'],
    ['low E 12 6/64', '12th'],
    ['low E 12th 10-12 mm', 'range'],
    ['low E 12th 1/3', '64ths'],
  ])('says how to write %s', (line, word) => {
    expect(parseQuickEntry(line, guitar)).toMatchObject({
      state: 'unfinished',
      missing: expect.stringContaining(word),
    });
  });

  it('asks for fewer words than a subject may have', () => {
    expect(read(`${'ab '.repeat(60)}7.9k`)).toBe('…');
  });
});

const examples = [
  'neck red-white 4.08k',
  'bridge total 8.8k',
  'red-green open',
  'slug + red/white touch',
  'low E 12th 1.8mm',
  'bass side 6/64',
  'relief .010"',
  'neck 7.9k',
  'bridge 8k8',
  'red-white 8 ohm',
];

describe('as it is typed, character by character', () => {
  it.each(examples)('%s never reads other digits than stand there', (line) => {
    for (let end = 0; end <= line.length; end++) {
      const typed = line.slice(0, end);
      const entry = parseQuickEntry(typed, guitar);
      if (entry.state !== 'understood') continue;
      expect(newReadingSchema.safeParse(entry.reading).success).toBe(true);
      const digits = String(entry.reading.value ?? '').replace(/\D/g, '');
      expect(typed.replace(/\D/g, ''), typed).toContain(digits);
    }
  });
});
