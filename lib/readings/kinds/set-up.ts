import { bowedTypes, frettedTypes, strungTypes } from '@/shared/instruments';
import type { ReadingKind } from './kind';

const guitars = ['electric guitar', 'acoustic guitar', 'classical guitar'];

/** Ranges are common practice, no source. */
export const setUpKinds: readonly ReadingKind[] = [
  {
    id: 'relief',
    label: 'Relief',
    baseUnit: 'mm',
    units: ['mm', 'in', 'thou'],
    appliesTo: strungTypes,
    plausible: [
      { of: 'the scoop of a bowed fingerboard', instruments: bowedTypes, low: -0.5, high: 4 },
      { of: 'a neck', low: -0.5, high: 1.5 },
    ],
    decimals: 2,
    words: /\brelief\b/i,
  },
  {
    id: 'nut-slot-depth',
    label: 'Nut slot depth',
    baseUnit: 'mm',
    units: ['mm', 'in', 'thou'],
    plausible: [{ of: 'a nut slot', low: 0, high: 3 }],
    decimals: 2,
    words: /\bnut slot|slot depth|\bnut\b(?!.*\b(width|wide|spacing|length|radius)\b)/i,
  },
  {
    id: 'fret-height',
    label: 'Fret height',
    baseUnit: 'mm',
    units: ['mm', 'in', 'thou'],
    appliesTo: frettedTypes,
    plausible: [{ of: 'a fret', low: 0.1, high: 2 }],
    decimals: 2,
    words: /\b(fret (height|crown)|crown)\b/i,
  },
  {
    id: 'intonation',
    label: 'Intonation',
    baseUnit: 'cents',
    units: ['cents'],
    plausible: [{ of: 'intonation', low: -50, high: 50 }],
    decimals: 1,
    needs: ['string'],
    words: /\bintonation\b/i,
  },
  {
    id: 'pickup-height',
    label: 'Pickup height',
    baseUnit: 'mm',
    units: ['mm', '64ths', 'in'],
    plausible: [{ of: 'a pickup below its strings', low: 0.3, high: 15 }],
    decimals: 1,
    words: /\b(pickup height|pole gap|pickup gap|pickup .*side|side .*pickup)\b/i,
  },
  {
    id: 'string-height',
    label: 'String height',
    baseUnit: 'mm',
    units: ['mm', '64ths', 'in', 'thou'],
    plausible: [
      { of: 'a bowed instrument', instruments: bowedTypes, low: 0.2, high: 14 },
      { of: 'a guitar', instruments: guitars, low: 0.2, high: 6 },
      { of: 'a fretted instrument', low: 0.2, high: 10 },
    ],
    decimals: 2,
    needs: ['string'],
    words: /\b(action|string height|string clearance|height at|\d{1,2}(st|nd|rd|th))\b/i,
  },
  {
    id: 'string-tension',
    label: 'String tension',
    baseUnit: 'N',
    units: ['N', 'lbf'],
    plausible: [
      { of: 'a guitar string', instruments: guitars, low: 25, high: 160 },
      { of: 'a bass string', instruments: ['bass guitar'], low: 90, high: 280 },
      { of: 'a ukulele string', instruments: ['ukulele'], low: 10, high: 80 },
      { of: 'a string', low: 10, high: 350 },
    ],
    decimals: 1,
    cautions: ['string tension'],
    words: /\btension\b/i,
  },
];

/** Ranges are common practice, no source. */
export const generalKinds: readonly ReadingKind[] = [
  {
    id: 'pitch',
    label: 'Pitch',
    baseUnit: 'Hz',
    units: ['Hz', 'kHz'],
    plausible: [{ of: 'what is heard', low: 15, high: 20_000 }],
    decimals: 1,
    words: /\b(pitch|tuned to)\b/i,
  },
  {
    id: 'humidity',
    label: 'Humidity',
    baseUnit: '%RH',
    units: ['%RH'],
    plausible: [{ of: 'air', low: 5, high: 100 }],
    decimals: 0,
    words: /\bhumidity\b/i,
  },
  {
    id: 'temperature',
    label: 'Temperature',
    baseUnit: '°C',
    units: ['°C', '°F'],
    plausible: [{ of: 'a room or a part of an instrument', low: -20, high: 80 }],
    decimals: 1,
    words: /\btemp(erature)?\b/i,
  },
  {
    id: 'length',
    label: 'Length',
    baseUnit: 'mm',
    units: ['mm', 'in', 'cm', 'm', 'thou', '64ths'],
    plausible: [{ of: 'a length on an instrument', low: 0, high: 5_000 }],
    decimals: 1,
  },
  {
    id: 'mass',
    label: 'Mass',
    baseUnit: 'g',
    units: ['g', 'kg', 'oz', 'lb'],
    plausible: [{ of: 'an instrument or a part of one', low: 0, high: 60_000 }],
    decimals: 0,
    words: /\b(weight|weighs|mass)\b/i,
  },
];
