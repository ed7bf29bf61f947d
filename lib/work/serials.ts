import type { SerialPattern, SerialReading } from '@/shared/claims';
import { monthName } from './serial-codes';
import {
  earliestYear,
  holds,
  plainSigns,
  type SerialField,
  type SerialLayout,
  type SerialRun,
  sayField,
} from './serial-layout';
import { parsePattern } from './serial-words';

/** What stands in a serial for one field: the signs, and what their code means. */
interface Found {
  run: SerialRun;
  signs: string;
  value: string;
}
type FoundFields = ReadonlyMap<SerialField, Found>;

/**
 * What a pattern makes of a serial; null where it does not fit: other signs, too many or too few of them, a code that
 * the pattern does not name, or a date that does not exist. Spaces and dashes count only where the pattern names them.
 * A year of fewer than four digits stands for every year from 1850 to `todayYear` that ends in them.
 */
export function readSerial(
  layout: SerialLayout,
  serial: string,
  todayYear: number,
): Omit<SerialReading, 'pattern'> | null {
  const found = matchPieces(layout, signsOf(layout, serial));
  if (!found) return null;
  const date = dateOf(found, todayYear);
  if (!date) return null;
  return {
    years: date.years,
    month: date.month,
    factory: found.get('factory')?.value ?? null,
    sentence: sentenceOf(found, date),
  };
}

/** What the repairer's own patterns make of a serial: those that fit it, in their order. */
export function readByPatterns(
  patterns: readonly SerialPattern[],
  serial: string | null,
  todayYear: number,
): SerialReading[] {
  if (serial === null) return [];
  return patterns.flatMap(({ name, words }) => {
    const reading = readSerial(parsePattern(words), serial, todayYear);
    return reading ? [{ pattern: name, ...reading }] : [];
  });
}

/** The signs that count, one by one. */
function signsOf(layout: SerialLayout, serial: string): string[] {
  const named = layout.map((piece) => (piece.kind === 'sign' ? piece.text : '')).join('');
  return [...plainSigns(serial.trim())].filter((sign) => !/[\s-]/.test(sign) || named.includes(sign));
}

/** Lays the pieces over the signs from left to right; null where they do not cover them exactly. */
function matchPieces(layout: SerialLayout, signs: readonly string[]): FoundFields | null {
  const found = new Map<SerialField, Found>();
  let at = 0;
  for (const piece of layout) {
    const length = piece.kind === 'sign' ? [...piece.text].length : (piece.count ?? signs.length - at);
    const part = signs.slice(at, at + length);
    at += length;
    if (part.length < length) return null;
    if (piece.kind === 'sign') {
      if (!sameSigns(part.join(''), piece.text)) return null;
    } else if (!keep(found, piece, part)) return null;
  }
  return at === signs.length ? found : null;
}

/** Notes what a run holds; pieces of one field are read together. False where the signs do not fit. */
function keep(found: Map<SerialField, Found>, run: SerialRun, part: readonly string[]): boolean {
  if (!part.every((sign) => holds(run.of, sign))) return false;
  if (run.field === 'skip') return true;
  const signs = part.join('');
  const value = run.codes ? run.codes.get(signs.toUpperCase()) : signs;
  if (value === undefined || signs === '') return false;
  const before = found.get(run.field);
  found.set(run.field, {
    run,
    signs: (before?.signs ?? '') + signs,
    value: (before?.value ?? '') + value,
  });
  return true;
}

function sameSigns(a: string, b: string): boolean {
  return a.toUpperCase() === b.toUpperCase();
}

interface SerialDate {
  years: number[];
  month: number | null;
}

/** The years, and the month, for which the date exists; null where there is none. */
function dateOf(found: FoundFields, todayYear: number): SerialDate | null {
  const [month, week, day] = (['month', 'week', 'day'] as const).map((field) => {
    const value = found.get(field)?.value;
    return value === undefined ? null : Number(value);
  });
  if (!within(month, 12) || !within(week, 53) || !within(day, 366)) return null;
  const ofYear = found.get('day')?.value.length === 3;
  const exists = (year: number) => dayExists(year, month ?? null, day ?? null, ofYear);
  const year = found.get('year');
  const years = year ? yearsEndingIn(year.value, todayYear).filter(exists) : [];
  // Without a year, the day need exist in a leap year only.
  if (year ? years.length === 0 : !exists(leapYear)) return null;
  return { years, month: month ?? null };
}

const leapYear = 2000;

function within(part: number | null | undefined, most: number): boolean {
  return part == null || (part >= 1 && part <= most);
}

/** ISO 8601 calendar: whether the month has the day, or the year the ordinal day, which then lies in that month. */
function dayExists(year: number, month: number | null, day: number | null, ofYear: boolean): boolean {
  if (day === null) return true;
  const first = ofYear ? 1 : (month ?? 1);
  const date = new Date(Date.UTC(year, first - 1, day));
  const inMonth = date.getUTCMonth() + 1 === (month ?? (ofYear ? date.getUTCMonth() + 1 : first));
  return date.getUTCFullYear() === year && inMonth;
}

function yearsEndingIn(digits: string, todayYear: number): number[] {
  const step = 10 ** digits.length;
  const years: number[] = [];
  for (let year = Number(digits); year <= todayYear; year += step) if (year >= earliestYear) years.push(year);
  return years;
}

/** "84 is the year (1884 or 1984), 07 the month (July), 1234 the number." */
function sentenceOf(found: FoundFields, date: SerialDate): string {
  const parts = [...found].map(([field, { run, signs, value }], index) => {
    const means = noteOn(field, { run, signs, value }, date);
    return `${signs} ${index === 0 ? 'is ' : ''}${sayField({ field, count: signs.length })}${means && ` (${means})`}`;
  });
  return `${parts.join(', ')}.`;
}

function noteOn(field: SerialField, { run, signs, value }: Found, { years, month }: SerialDate): string {
  if (field === 'year') {
    if (signs.length === 4 && !run.codes) return '';
    return years.length > 3 ? `a year that ends in ${signs}` : years.join(' or ');
  }
  if (field === 'month' && month !== null) return monthName(month);
  return run.codes ? value : '';
}
