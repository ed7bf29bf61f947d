import type { ReadingKind } from './kind';

const valveAmplifiers = ['valve amplifier'];

/** Ranges are common practice, no source. */
export const electricKinds: readonly ReadingKind[] = [
  {
    id: 'resistance',
    label: 'Resistance',
    baseUnit: 'Ω',
    units: ['kΩ', 'Ω', 'MΩ'],
    plausible: [
      // Before the pickups: "base plate", "shield", "jack" and joints are a few ohms, or anything.
      {
        of: 'a joint, a lead or a winding of power',
        subject:
          /\b(joint|continuity|shield|base ?plate|switch|jack|wire|lead|cable|speaker|transformer|heater|ground|earth)\b/i,
        low: 0,
        high: 50e6,
      },
      { of: 'a pot', subject: /\b(pot|potentiometer|volume|tone)\b/i, low: 10e3, high: 2.2e6 },
      {
        of: 'a pickup coil',
        subject: /\b(pickup|coil|neck|bridge|middle|humbucker)\b/i,
        low: 500,
        high: 40e3,
      },
      { of: 'a resistance', low: 0, high: 50e6 },
    ],
    decimals: 2,
    cautions: ['ohms without power'],
  },
  {
    id: 'polarity-kick',
    label: 'Polarity kick',
    baseUnit: 'kick',
    units: ['kick'],
    appliesTo: ['electric guitar', 'bass guitar', 'loose pickup', 'mandolin', 'other'],
    plausible: [],
    decimals: 0,
    needs: ['leads', 'steel', 'row', 'sign'],
    words: /\b(touch|kick|lay|laid|lift|taken off|steel)\b/i,
  },
  {
    id: 'inductance',
    label: 'Inductance',
    baseUnit: 'H',
    units: ['H', 'mH'],
    plausible: [
      {
        of: 'a pickup',
        instruments: ['electric guitar', 'bass guitar', 'loose pickup', 'mandolin'],
        low: 0.05,
        high: 25,
      },
      { of: 'an inductance', low: 1e-6, high: 500 },
    ],
    decimals: 2,
    needs: ['testFrequencyHz'],
  },
  {
    id: 'capacitance',
    label: 'Capacitance',
    baseUnit: 'F',
    units: ['nF', 'pF', 'µF'],
    plausible: [{ of: 'a capacitor', low: 1e-12, high: 1e-3 }],
    decimals: 1,
    words: /\b(caps?|capacitors?|capacitance)\b/i,
  },
  {
    id: 'voltage',
    label: 'Voltage',
    baseUnit: 'V',
    units: ['V', 'mV'],
    plausible: [
      { of: 'a valve amplifier', instruments: valveAmplifiers, low: -700, high: 700 },
      { of: 'a solid-state amplifier', instruments: ['solid-state amplifier'], low: -250, high: 250 },
      { of: 'something run from batteries or a low supply', low: -50, high: 50 },
    ],
    decimals: 2,
    words: /\b(battery|volts?|voltage)\b/i,
  },
  {
    id: 'current',
    label: 'Current',
    baseUnit: 'A',
    units: ['mA', 'µA', 'A'],
    plausible: [{ of: 'a hand-held meter', low: -10, high: 10 }],
    decimals: 1,
  },
  {
    id: 'plate-voltage',
    label: 'Plate voltage',
    baseUnit: 'V',
    units: ['V'],
    appliesTo: valveAmplifiers,
    plausible: [{ of: 'a plate', low: 60, high: 700 }],
    decimals: 0,
    cautions: ['valve amplifier', 'high voltage'],
    words: /\b(plate|anode|b\+)(?!\w)/i,
  },
  {
    id: 'bias-current',
    label: 'Bias current',
    baseUnit: 'A',
    units: ['mA'],
    appliesTo: valveAmplifiers,
    plausible: [{ of: 'one output valve', low: 0.002, high: 0.15 }],
    decimals: 1,
    cautions: ['valve amplifier', 'high voltage'],
    words: /\b(bias|idle|cathode)\b/i,
  },
];
