import type { NewReading, UnitId } from '@/shared/readings';
import { kindOf, plausibleRange } from '../kinds';
import { sayNewReading, sayValue } from '../say';
import { toBase } from '../units';
import type { Choice, QuickContext, QuickEntry, Understood } from './entry';
import { areConductors } from './terminals';

/** Steps between units that are easily left out or put in: 8 Ω for 8 kΩ. */
const neighbours: Readonly<Partial<Record<UnitId, readonly UnitId[]>>> = {
  Ω: ['kΩ', 'MΩ'],
  kΩ: ['Ω', 'MΩ'],
  MΩ: ['kΩ', 'Ω'],
  mV: ['V'],
  V: ['mV'],
  µA: ['mA'],
  mA: ['µA', 'A'],
  A: ['mA'],
  µF: ['nF', 'pF'],
  nF: ['µF', 'pF'],
  pF: ['nF'],
  F: ['µF'],
  mH: ['H'],
  H: ['mH'],
  Hz: ['kHz'],
  kHz: ['Hz'],
  m: ['mm', 'cm'],
  cm: ['mm'],
  mm: ['in', 'thou', '64ths'],
  in: ['thou', '64ths', 'mm'],
  thou: ['in', 'mm'],
  '64ths': ['in', 'mm'],
  '°C': ['°F'],
  '°F': ['°C'],
  g: ['kg'],
  kg: ['g'],
};

/** A reading is kept as it stands where its value is usual; else it is asked about. */
export function checkPlausible(
  reading: NewReading,
  understood: Understood[],
  context: QuickContext,
): QuickEntry {
  const { value, unit } = reading;
  if (value === undefined || unit === undefined || isUsual(reading, context))
    return { state: 'understood', understood, reading };
  const better = (neighbours[unit] ?? [])
    .map((id) => ({ ...reading, unit: id }))
    .filter((other) => isUsual(other, context));
  const what = ownSubject(reading, context) || kindOf(reading.kind).label.toLowerCase();
  const question = `${sayValue(reading)} is outside what is usual for ${what}. ${better.length > 0 ? 'Which was it?' : 'Was it so?'}`;
  return { state: 'question', understood, question, choices: [...better, reading].map(choice) };
}

/** A number without a unit: the units of its kind in which it would be usual. */
export function askUnit(reading: NewReading, understood: Understood[], context: QuickContext): QuickEntry {
  const kind = kindOf(reading.kind);
  const usual = kind.units.map((unit) => ({ ...reading, unit })).filter((other) => isUsual(other, context));
  const readings = usual.length > 0 ? usual : kind.units.map((unit) => ({ ...reading, unit }));
  return {
    state: 'question',
    understood,
    question: `${reading.value} of what?`,
    choices: readings.map(choice),
  };
}

/** Readings that the line can mean, each to be chosen. */
export function askWhich(
  question: string,
  readings: readonly NewReading[],
  understood: Understood[],
): QuickEntry {
  return { state: 'question', understood, question, choices: readings.map(choice) };
}

function choice(reading: NewReading): Choice {
  return { label: sayNewReading(reading), reading };
}

function isUsual(reading: NewReading, context: QuickContext): boolean {
  const { value, unit } = reading;
  const range = plausibleRange(kindOf(reading.kind), {
    subject: ownSubject(reading, context),
    instrumentType: context.instrumentType,
  });
  if (value === undefined || unit === undefined || !range) return true;
  const base = toBase(String(value), unit);
  return base >= range.low && base <= range.high;
}

/** Two insulated conductors are the ends of a coil, whatever else is said; so is a loose pickup. */
function ownSubject({ kind, subject = '', between }: NewReading, { instrumentType }: QuickContext): string {
  if (subject !== '' || kind !== 'resistance') return subject;
  const isCoil = between ? areConductors(between) : instrumentType === 'loose pickup';
  return isCoil ? 'a coil' : '';
}
