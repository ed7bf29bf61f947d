/**
 * What is assumed of a hand-held meter that is not named: ±(0.8 % + 3 counts), and half an ohm for
 * leads and clips. Common practice, no source.
 */
export const typicalMeter = { partOfReading: 0.008, counts: 3, leadsOhms: 0.5 } as const;

export const typicalMeterText = 'no meter named: ±(0.8 % + 3 counts) and half an ohm of leads assumed';

/** The step of the last digit that was shown, at least three digits: 4080 Ω was 4.08 kΩ, so 10 Ω. */
export function lastDigitOhms(ohms: number): number {
  const size = Math.abs(ohms);
  if (size < 1) return 0.1;
  let step = 10 ** (Math.floor(Math.log10(size)) - 2);
  while (step > 0.01 && Math.abs(size / step - Math.round(size / step)) > 1e-6) step /= 10;
  return step;
}

/**
 * Expanded uncertainty (k = 2) of one resistance reading. Limits of a meter are rectangular, so the
 * standard uncertainty is the limit over √3 (JCGM 100:2008, 4.3.7).
 */
export function expandedOhms(reading: { ohms: number; uncertaintyOhms?: number | undefined }): number {
  if (reading.uncertaintyOhms !== undefined) return reading.uncertaintyOhms;
  const { partOfReading, counts, leadsOhms } = typicalMeter;
  const limit = partOfReading * reading.ohms + counts * lastDigitOhms(reading.ohms) + leadsOhms;
  return (2 * limit) / Math.sqrt(3);
}

/** Independent parts in quadrature (JCGM 100:2008, 5.1.2). */
export function inQuadrature(...parts: number[]): number {
  return Math.sqrt(parts.reduce((sum, part) => sum + part * part, 0));
}
