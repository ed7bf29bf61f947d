import type { WorkItem } from '@/shared/work';

type Price = Pick<WorkItem, 'priceMinor' | 'currency'>;

/** What is free has no price, and a price has a currency: the workshop's, where none was named. */
export function settledPrice(
  { charge, priceMinor, currency }: Pick<WorkItem, 'charge' | 'priceMinor' | 'currency'>,
  workshopCurrency: string,
): Price {
  if (charge === 'free' || priceMinor === null) return { priceMinor: null, currency: null };
  return { priceMinor, currency: currency ?? workshopCurrency };
}
