import type { ReadingKind } from './kind';

const fretted = ['electric guitar', 'bass guitar', 'acoustic guitar', 'classical guitar', 'ukulele', 'mandolin', 'banjo', 'other'];

export const setUpKinds: readonly ReadingKind[] = [
  {
    id: 'string-height',
    label: 'String height',
    baseUnit: 'mm',
    units: ['mm', '64ths', 'in', 'thou'],
    plausible: [{ low: 0.2, high: 10 }],
    decimals: 2,
    needs: ['string'],
    words: /\b(action|string height|height at|\d{1,2}(st|nd|rd|th))\b/i,
  },
  { id: 'relief', label: 'Relief', baseUnit: 'mm', units: ['mm', 'in', 'thou'], appliesTo: fretted, plausible: [{ low: -0.5, high: 1.5 }], decimals: 2, words: /\brelief\b/i },
  { id: 'nut-slot-depth', label: 'Nut slot depth', baseUnit: 'mm', units: ['mm', 'in', 'thou'], plausible: [{ low: 0, high: 3 }], decimals: 2, words: /\b(nut|slot)\b/i },
  { id: 'fret-height', label: 'Fret height', baseUnit: 'mm', units: ['mm', 'in', 'thou'], appliesTo: fretted, plausible: [{ low: 0.1, high: 2 }], decimals: 2, words: /\b(fret (height|crown)|crown)\b/i },
  {
    id: 'intonation',
    label: 'Intonation',
    baseUnit: 'cents',
    units: ['cents'],
    plausible: [{ low: -50, high: 50 }],
    decimals: 1,
    needs: ['string'],
    words: /\bintonation\b/i,
  },
  { id: 'pickup-height', label: 'Pickup height', baseUnit: 'mm', units: ['mm', '64ths', 'in'], plausible: [{ low: 0.3, high: 15 }], decimals: 1, words: /\b(pickup height|pole gap|pickup gap)\b/i },
  { id: 'string-tension', label: 'String tension', baseUnit: 'N', units: ['N', 'lbf'], plausible: [{ low: 10, high: 300 }], decimals: 1, cautions: ['string tension'], words: /\btension\b/i },
];

export const generalKinds: readonly ReadingKind[] = [
  { id: 'pitch', label: 'Pitch', baseUnit: 'Hz', units: ['Hz', 'kHz'], plausible: [{ low: 15, high: 20_000 }], decimals: 1, words: /\b(pitch|tuned to)\b/i },
  { id: 'humidity', label: 'Humidity', baseUnit: '%RH', units: ['%RH'], plausible: [{ low: 5, high: 100 }], decimals: 0, words: /\bhumidity\b/i },
  { id: 'temperature', label: 'Temperature', baseUnit: '°C', units: ['°C', '°F'], plausible: [{ low: -20, high: 80 }], decimals: 1, words: /\btemp(erature)?\b/i },
  { id: 'length', label: 'Length', baseUnit: 'mm', units: ['mm', 'in', 'cm', 'm', 'thou', '64ths'], plausible: [{ low: 0, high: 5_000 }], decimals: 1 },
  { id: 'mass', label: 'Mass', baseUnit: 'g', units: ['g', 'kg', 'oz'], plausible: [{ low: 0, high: 60_000 }], decimals: 0, words: /\b(weight|weighs|mass)\b/i },
];
