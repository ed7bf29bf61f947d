import type { NewReading, Reading, ReadingDetails, ReadingKindId, UnitId } from '@/shared/readings';
import { kindOf } from './kinds';
import { convert } from './units';

interface Sayable {
  kind: ReadingKindId;
  open?: boolean | undefined;
  value?: string | number | undefined;
  unit?: UnitId | undefined;
  subject?: string | undefined;
  between?: readonly [string, string] | null | undefined;
  details?: ReadingDetails | undefined;
}

/** "4.08 kΩ", "open", "6/64 in (2.38 mm)", "+ kick". */
export function sayValue({ kind, open, value, unit, details }: Sayable): string {
  if (kind === 'polarity-kick')
    return `${details?.sign === -1 ? '−' : '+'} ${details?.size ? `${details.size} ` : ''}kick`;
  if (open) return 'open';
  const digits = String(value ?? '');
  if (unit === '64ths') return `${digits}/64 in (${convert(digits, '64ths', 'mm', 2)} mm)`;
  if (unit === '%RH') return `${digits} % RH`;
  return `${digits} ${unit ?? ''}`.trim();
}

/** Where a reading was taken: "red – white", "low E, fret 12"; at the jack, how the instrument stood. */
export function sayPlace({ kind, between, details = {} }: Sayable): string {
  if (kind === 'polarity-kick') {
    const { leads, row, steel } = details;
    return `${row} row, steel ${steel}, red lead on ${leads?.red}, black lead on ${leads?.black}`;
  }
  if (details.jack) {
    const { position, thrown, down } = details.jack;
    return [position, ...thrown.map((id) => `${id} thrown`), ...down.map((id) => `${id} down`)].join(', ');
  }
  const parts = [
    between && `${between[0]} – ${between[1]}`,
    details.string && `${details.string} string`,
    details.fret !== undefined && `fret ${details.fret}`,
    details.side && `${details.side} side`,
    details.testFrequencyHz !== undefined && `at ${details.testFrequencyHz} Hz`,
    details.celsius !== undefined && `at ${details.celsius} °C`,
  ];
  return parts.filter(Boolean).join(', ');
}

/** The whole reading in one line: "neck pickup, red – white: 4.08 kΩ". */
export function sayNewReading(reading: Sayable): string {
  const kind =
    reading.kind === 'resistance' || reading.kind === 'polarity-kick'
      ? ''
      : kindOf(reading.kind).label.toLowerCase();
  const what = [reading.subject, kind, sayPlace(reading)].filter(Boolean).join(', ');
  return what ? `${what}: ${sayValue(reading)}` : sayValue(reading);
}

export function sayReading(reading: Reading): string {
  return sayNewReading(asSayable(reading));
}

export function asSayable(reading: Reading): Sayable & NewReading {
  const { kind, open, valueText, unit, subject, between, details } = reading;
  return { kind, open, ...(valueText === null ? {} : { value: valueText }), unit, subject, between, details };
}
