import { expandedOhms } from '../trace';
import type { Range } from './predict';

/** A meter that shows an open circuit may still see this much through damp wood and fingers. Common practice, no source. */
export const openFromOhms = 20_000_000;

/** What was read: Infinity is open, which has no uncertainty. */
export type Measured = { ohms: number; uncertaintyOhms: number };

export function measuredOf(reading: { ohms: number | null; uncertaintyOhms?: number | undefined }): Measured {
  if (reading.ohms === null) return { ohms: Number.POSITIVE_INFINITY, uncertaintyOhms: 0 };
  const { ohms, uncertaintyOhms } = reading;
  return { ohms, uncertaintyOhms: expandedOhms({ ohms, uncertaintyOhms }) };
}

const isOpen = (ohms: number) => ohms >= openFromOhms;

/** The reading lies within the range and the meter's expanded uncertainty. */
export function agrees(range: Range, { ohms, uncertaintyOhms }: Measured): boolean {
  if (isOpen(ohms)) return isOpen(range.mostOhms);
  return ohms >= range.leastOhms - uncertaintyOhms && ohms <= range.mostOhms + uncertaintyOhms;
}

/** No reading could agree with both. */
export function areApart(one: Range, other: Range): boolean {
  const [low, high] = one.ohms <= other.ohms ? [one, other] : [other, one];
  if (isOpen(low.mostOhms)) return false;
  const meter = (ohms: number) => (Number.isFinite(ohms) ? expandedOhms({ ohms }) : 0);
  return low.mostOhms + meter(low.mostOhms) < high.leastOhms - meter(high.leastOhms);
}

export type Closeness = {
  /** Squared distance in combined standard uncertainties. */
  distance: number;
  /** Natural logarithm of the likelihood, up to a constant that is the same for every fault. */
  logLikelihood: number;
};

/** Far enough that no further step matters; what an impossible reading counts. */
const farthest = 100;

/**
 * Limits count as rectangular (JCGM 100:2008, 4.3.7), the meter's expanded uncertainty as k = 2, both in
 * quadrature.
 */
export function closeness(range: Range, { ohms, uncertaintyOhms }: Measured): Closeness {
  const bothOpen = isOpen(ohms) && isOpen(range.mostOhms);
  if (bothOpen) return { distance: 0, logLikelihood: 0 };
  if (isOpen(ohms) || isOpen(range.leastOhms)) return { distance: farthest, logLikelihood: -farthest };
  const halfWidth = (range.mostOhms - range.leastOhms) / 2;
  const standard = Math.hypot(halfWidth / Math.sqrt(3), uncertaintyOhms / 2, 0.1);
  const middle = (range.mostOhms + range.leastOhms) / 2;
  const distance = Math.min(((ohms - middle) / standard) ** 2, farthest);
  return { distance, logLikelihood: -distance / 2 - Math.log(standard) };
}
