import type { MeterRange, Reading } from '@/shared/readings';
import { decimalsOf } from './rational';
import { expandedUncertainty } from './uncertainty';
import { stepOf } from './units';

type Read = Pick<Reading, 'kind' | 'open' | 'valueText' | 'unit'>;

/** JCGM 100:2008, 7.2.6: at most two significant digits. */
const significantDigits = 2;

/**
 * "4.08 kΩ ± 0.07 kΩ (k = 2)": the digits as read with their expanded uncertainty, which has at most two significant
 * digits and no more decimals than the reading, unless nothing would be left; rounded up (JCGM 100:2008, 7.2.6).
 * @returns null for an open circuit, a kick, and a value that no range of the meter holds
 */
export function sayUncertainty(reading: Read, ranges: readonly MeterRange[]): string | null {
  const { kind, open, valueText, unit } = reading;
  if (open || kind === 'polarity-kick' || valueText === null) return null;
  const expanded = expandedUncertainty({ text: valueText, unit }, ranges);
  if (expanded === null) return null;
  const margin = roundedUp(expanded / stepOf(unit), decimalsOf(valueText));
  const name = unit === '64ths' ? '/64 in' : unit === '%RH' ? ' % RH' : ` ${unit}`;
  return `${valueText}${name} ± ${margin}${name} (k = 2)`;
}

function roundedUp(margin: number, readDecimals: number): string {
  if (margin <= 0) return '0';
  const size = Math.floor(Math.log10(margin));
  const decimals = Math.max(-size, Math.min(significantDigits - 1 - size, readDecimals));
  const scale = 10 ** decimals;
  // Float noise must not lift 0.07 to 0.08.
  return (Math.ceil(margin * scale - 1e-9) / scale).toFixed(Math.max(0, decimals));
}
