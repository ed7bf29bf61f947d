import type { Reading } from '@/shared/readings';

/**
 * Standard annealed copper: constant-mass temperature coefficient of resistance at 20 °C, per °C
 * (IEC 60028:1925).
 */
export const copperPerCelsius = 0.00393;
export const referenceCelsius = 20;

/** A winding as it was measured; uncertainties are expanded alike (k = 2). */
export interface WarmCoil {
  ohms: number;
  celsius: number;
  uncertaintyOhms?: number;
  uncertaintyCelsius?: number;
}

/**
 * What a copper winding would read at another temperature, so that coils measured on a cold and on a warm day can
 * be compared. The uncertainties are carried through in quadrature (JCGM 100:2008, 5.1.2).
 * @param celsius the temperature to compare at
 */
export function copperAt(
  coil: WarmCoil,
  celsius = referenceCelsius,
): { ohms: number; uncertaintyOhms: number } {
  const { ohms, uncertaintyOhms = 0, uncertaintyCelsius = 0 } = coil;
  const was = warmth(coil.celsius);
  const ratio = warmth(celsius) / was;
  const perCelsius = (ohms * ratio * copperPerCelsius) / was;
  return {
    ohms: ohms * ratio,
    uncertaintyOhms: Math.hypot(ratio * uncertaintyOhms, perCelsius * uncertaintyCelsius),
  };
}

/**
 * A resistance that was noted with a temperature, as it would read at 20 °C.
 * @param uncertaintyOhms expanded (k = 2), by the meter; undefined without one
 * @returns null for any other reading
 */
export function comparedAt20(
  { kind, baseValue, details }: Pick<Reading, 'kind' | 'baseValue' | 'details'>,
  uncertaintyOhms?: number,
): { ohms: number; uncertaintyOhms: number } | null {
  if (kind !== 'resistance' || baseValue === null || details.celsius === undefined) return null;
  return copperAt({ ohms: baseValue, celsius: details.celsius, uncertaintyOhms: uncertaintyOhms ?? 0 });
}

/** Resistance at a temperature, over that at 20 °C. */
function warmth(celsius: number): number {
  return 1 + copperPerCelsius * (celsius - referenceCelsius);
}
