import type { Part, WorkItem } from '@/shared/work';
import { sayPrice } from './money';

/** "€45.00", "reduced €30.00", "free"; null where nothing was said. */
export function sayCharge({
  charge,
  priceMinor,
  currency,
}: Pick<WorkItem, 'charge' | 'priceMinor' | 'currency'>): string | null {
  if (charge === 'free') return 'free';
  const price = priceMinor !== null && currency !== null ? sayPrice(priceMinor, currency) : null;
  if (charge === null) return price;
  if (price === null) return charge;
  return charge === 'reduced' ? `reduced ${price}` : price;
}

const fromWords = {
  stock: 'from stock',
  client: 'from the client',
  instrument: 'from the instrument',
} as const;

/** "fitted, from stock"; "removed, returned". */
export function sayDeed({ deed, source, fate }: Pick<Part, 'deed' | 'source' | 'fate'>): string {
  return [deed, source && fromWords[source], fate].filter(Boolean).join(', ');
}

const dayWords = new Intl.DateTimeFormat('en-GB', {
  weekday: 'short',
  day: 'numeric',
  month: 'short',
  year: 'numeric',
  timeZone: 'UTC',
});

/** "Wed, 25 Nov 2026", of a day as 2026-11-25. */
export function dayInWords(day: string): string {
  return dayWords.format(Date.parse(day));
}
