import type { MeterRange, UnitId } from '@/shared/readings';
import { decimalsOf } from './rational';
import { toBase, unitOf } from './units';

/** JCGM 100:2008, 6.2.1 and 6.3.3: k = 2 gives about 95 %. */
const coverageFactor = 2;

interface Measured {
  /** Digits as shown. */
  text: string;
  unit: UnitId;
}

/**
 * Expanded uncertainty (k = 2) of a reading by its meter, in the base unit. The meter's limits, ± (percent of the
 * reading + counts), and half a count of the last digit shown are both taken as rectangular (JCGM 100:2008,
 * 4.3.7: standard uncertainty a / √3) and combined in quadrature (5.1.2).
 * @returns null when none of the meter's ranges holds the reading
 */
export function expandedUncertainty({ text, unit }: Measured, ranges: readonly MeterRange[]): number | null {
  const value = Math.abs(toBase(text, unit));
  const range = rangeFor(value, unit, ranges);
  if (!range) return null;
  const limit = (value * range.percent) / 100 + range.counts * toBase(plain(range.resolution), range.unit);
  const halfDigit = toBase(plain(10 ** -decimalsOf(text) / 2), unit) - toBase('0', unit);
  return coverageFactor * Math.hypot(limit / Math.sqrt(3), halfDigit / Math.sqrt(3));
}

/** The smallest range that still shows the value: what a meter picks by itself. */
function rangeFor(value: number, unit: UnitId, ranges: readonly MeterRange[]): MeterRange | null {
  const { quantity } = unitOf(unit);
  const holding = ranges
    .filter((range) => unitOf(range.unit).quantity === quantity)
    .map((range) => ({ range, fullScale: toBase(plain(range.fullScale), range.unit) }))
    .filter(({ fullScale }) => fullScale >= value)
    .sort((a, b) => a.fullScale - b.fullScale);
  return holding[0]?.range ?? null;
}

/** Digits without an exponent: 1e-7 is written 0.0000001. */
function plain(value: number): string {
  return value.toFixed(20).replace(/\.?0+$/, '');
}
