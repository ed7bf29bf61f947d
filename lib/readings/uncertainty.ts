import type { MeterRange, UnitId } from '@/shared/readings';
import { decimalsOf } from './rational';
import { convert, fromBase, stepOf, toBase, unitOf } from './units';

/** JCGM 100:2008, 6.2.1 and 6.3.3: k = 2 gives about 95 %. */
const coverageFactor = 2;
/** Enough digits for a reading told in the unit of a range. */
const rangeDecimals = 15;

interface Measured {
  /** Digits as shown. */
  text: string;
  unit: UnitId;
}

/**
 * Expanded uncertainty (k = 2) of a reading by its meter, in the base unit. The meter's limits, ± (percent of the
 * reading + counts), and half a step of the last digit shown are both taken as rectangular (JCGM 100:2008, 4.3.7
 * and F.2.2.1: standard uncertainty a / √3) and combined in quadrature (5.1.2).
 * @returns null when none of the meter's ranges holds the reading
 * @throws DigitsError
 */
export function expandedUncertainty(reading: Measured, ranges: readonly MeterRange[]): number | null {
  const range = rangeFor(reading, ranges);
  if (!range) return null;
  const shown = Math.abs(inUnit(reading, range.unit));
  const limit = ((shown * range.percent) / 100 + range.counts * range.resolution) * stepOf(range.unit);
  return combinedExpanded([rectangular(limit), rectangular(lastDigit(reading) / 2)]);
}

/** Standard uncertainty of a value that lies anywhere within ± the limit (JCGM 100:2008, 4.3.7, equation 7). */
export function rectangular(limit: number): number {
  return limit / Math.sqrt(3);
}

/** Independent standard uncertainties of one result in quadrature (JCGM 100:2008, 5.1.2), expanded with k = 2. */
export function combinedExpanded(standard: readonly number[]): number {
  return coverageFactor * Math.hypot(...standard);
}

/**
 * The range that the reading was taken on. The place of the last digit tells it, as each range has its own; where
 * no range has that place, it is the smallest that holds the value, which is what a meter picks by itself.
 */
function rangeFor(reading: Measured, ranges: readonly MeterRange[]): MeterRange | null {
  const { quantity } = unitOf(reading.unit);
  const holding = ranges
    .filter((range) => unitOf(range.unit).quantity === quantity)
    .filter((range) => Math.abs(inUnit(reading, range.unit)) <= range.fullScale)
    .sort((a, b) => a.fullScale * stepOf(a.unit) - b.fullScale * stepOf(b.unit));
  const sameDigit = holding.find((range) =>
    isClose(range.resolution * stepOf(range.unit), lastDigit(reading)),
  );
  return sameDigit ?? holding[0] ?? null;
}

function inUnit({ text, unit }: Measured, target: UnitId): number {
  return unit === target
    ? fromBase(toBase(text, unit), unit)
    : Number(convert(text, unit, target, rangeDecimals));
}

/** One step of the last digit shown, in the base unit. */
function lastDigit({ text, unit }: Measured): number {
  return 10 ** -decimalsOf(text) * stepOf(unit);
}

function isClose(a: number, b: number): boolean {
  return Math.abs(a - b) <= 1e-9 * Math.max(a, b);
}
