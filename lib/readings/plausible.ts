import type { Reading } from '@/shared/readings';
import { kindOf, type PlausibleContext, plausibleRange } from './kinds';
import { sayBase } from './say-base';

/**
 * The caution for a value that is out of the ordinary; null for an ordinary one and for an open circuit. It never
 * refuses: the film shows what the meter showed.
 */
export function plausibilityCaution(
  reading: Pick<Reading, 'kind' | 'baseValue' | 'subject'>,
  { instrumentType }: Pick<PlausibleContext, 'instrumentType'>,
): string | null {
  const { kind, baseValue, subject } = reading;
  const range = plausibleRange(kindOf(kind), { subject, instrumentType });
  if (baseValue === null || !range || (baseValue >= range.low && baseValue <= range.high)) return null;
  const [value, low, high] = [baseValue, range.low, range.high].map((base) => sayBase(base, kind));
  return `${value} is outside ${low} to ${high}, which is usual for ${range.of} (common practice). Look at the meter once more.`;
}
