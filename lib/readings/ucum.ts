import type { Reading } from '@/shared/readings';
import { unitOf } from './units';

/** A value in a form that other programs read: the digits as shown and a code of the UCUM. */
export interface UcumValue {
  value: string;
  ucumCode: string;
}

/** The value of a reading for exports, in the unit it was read in; null for an open circuit and for a kick. */
export function ucumValue({
  kind,
  open,
  valueText,
  unit,
}: Pick<Reading, 'kind' | 'open' | 'valueText' | 'unit'>): UcumValue | null {
  if (open || valueText === null || kind === 'polarity-kick') return null;
  return { value: valueText, ucumCode: unitOf(unit).ucum };
}
