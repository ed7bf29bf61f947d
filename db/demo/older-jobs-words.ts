import type { NewReading, ReadingDetails, ReadingKindId, UnitId } from '@/shared/readings';
import type { NewPart, NewWorkItem, Part } from '@/shared/work';
import type { Terminal } from './demo-types';

/** Short forms that the older jobs are written down in. Prices are in the smallest unit of the workshop's currency. */

/** Without a price of its own it is in that of another, or nothing was said. */
export const asked = (what: string, priceMinor?: number): NewWorkItem => ({
  what,
  origin: 'asked',
  outcome: 'done',
  ...(priceMinor === undefined ? {} : { charge: 'agreed', priceMinor }),
});

export const found = (what: string, priceMinor?: number): NewWorkItem => ({
  ...asked(what, priceMinor),
  origin: 'found',
});

export const forFree = (what: string): NewWorkItem => ({
  what,
  origin: 'offered',
  outcome: 'done',
  charge: 'free',
});

export const declined = (what: string, why: string): NewWorkItem => ({
  what,
  origin: 'offered',
  outcome: 'declined',
  why,
});

export const notDone = (what: string, why: string): NewWorkItem => ({
  what,
  origin: 'asked',
  outcome: 'not done',
  why,
});

export const fitted = (what: string, source: NonNullable<Part['source']> = 'stock'): NewPart => ({
  what,
  deed: 'fitted',
  source,
});

export const removed = (what: string, fate: NonNullable<Part['fate']>): NewPart => ({
  what,
  deed: 'removed',
  fate,
});

/** The whole pickup between hot and ground, in kΩ. */
export const whole = (subject: string, digits: string, note?: string): NewReading => ({
  kind: 'resistance',
  value: digits,
  unit: 'kΩ',
  subject,
  between: ['hot', 'ground'],
  ...(note === undefined ? {} : { note }),
});

/** Any other value: its kind, digits and unit as they were read. */
export const read = (
  kind: ReadingKindId,
  digits: string,
  unit: UnitId,
  rest: { subject?: string; details?: ReadingDetails; note?: string; between?: [Terminal, Terminal] } = {},
): NewReading => ({ kind, value: digits, unit, ...rest });

/** String height over a fret, in mm. */
export const action = (string: string, fret: number, digits: string, note?: string): NewReading =>
  read('string-height', digits, 'mm', { details: { string, fret }, ...(note === undefined ? {} : { note }) });

/** Two conductors that nothing connects. */
export const apart = (subject: string, one: Terminal, other: Terminal): NewReading => ({
  kind: 'resistance',
  open: true,
  unit: 'kΩ',
  subject,
  between: [one, other],
});

/** A winding between two conductors, in kΩ. */
export const winding = (subject: string, one: Terminal, other: Terminal, digits: string): NewReading => ({
  kind: 'resistance',
  value: digits,
  unit: 'kΩ',
  subject,
  between: [one, other],
});

/** A needle meter with these leads went up clearly when steel was laid on the row: `red` is the positive end. */
export const kick = (subject: string, row: string, red: Terminal, black: Terminal): NewReading => ({
  kind: 'polarity-kick',
  subject,
  details: { leads: { red, black }, steel: 'laid on', row, sign: 1, size: 'large' },
});
