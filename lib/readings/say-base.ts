import type { ReadingKindId, UnitId } from '@/shared/readings';
import { kindOf } from './kinds';
import { fromBase, type Quantity, stepOf, unitOf, units } from './units';

/** Quantities that people tell with the prefix that suits the size: 8 Ω, 8 kΩ. */
const prefixed: ReadonlySet<Quantity> = new Set([
  'resistance',
  'voltage',
  'current',
  'capacitance',
  'inductance',
  'frequency',
]);
const mostDigits = 6;

/** A value that was worked out, not read, in the unit that suits its size: 8080 → "8.08 kΩ", 1.5e-8 → "15 nF". */
export function sayBase(value: number, kind: ReadingKindId): string {
  const id = unitForSize(value, kind);
  return `${plainNumber(fromBase(value, id))} ${id}`;
}

/** The largest unit in which the value is not below one; the smallest for less than that. */
function unitForSize(value: number, kind: ReadingKindId): UnitId {
  const { baseUnit } = kindOf(kind);
  const { quantity } = unitOf(baseUnit);
  if (!prefixed.has(quantity) || value === 0) return baseUnit;
  const bySize = units
    .filter((unit) => unit.quantity === quantity)
    .map(({ id }) => id)
    .sort((a, b) => stepOf(b) - stepOf(a));
  return bySize.find((id) => Math.abs(fromBase(value, id)) >= 1) ?? bySize.at(-1) ?? baseUnit;
}

/** Digits without float noise and without an exponent. */
export function plainNumber(value: number): string {
  const rounded = Number(value.toPrecision(mostDigits));
  return rounded.toLocaleString('en', { useGrouping: false, maximumSignificantDigits: mostDigits });
}
