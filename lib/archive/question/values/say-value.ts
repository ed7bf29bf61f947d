import { fromBase, kindOf } from '@/lib/readings';
import type { Meant } from './kinds-meant';

const mostDigits = 5;

export interface ValueRange {
  low: number | null;
  high: number | null;
  near: number | null;
}

/** "resistance near 8.1 kΩ", "string height between 1.5 and 2 mm". */
export function sayRange({ low, high, near }: ValueRange, { unit, kindIds }: Meant): string {
  const digits = (base: number) => String(Number(fromBase(base, unit).toPrecision(mostDigits)));
  const kinds = kindIds.map((id) => kindOf(id).label.toLowerCase());
  const what = kinds.length > 2 ? 'a reading' : kinds.join(' or ');
  const told = unit === '64ths' ? '/64 in' : ` ${unit}`;
  if (near !== null) return `${what} near ${digits(near)}${told}`;
  if (low !== null && high !== null) return `${what} between ${digits(low)} and ${digits(high)}${told}`;
  return low !== null ? `${what} over ${digits(low)}${told}` : `${what} under ${digits(high ?? 0)}${told}`;
}
