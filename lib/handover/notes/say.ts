import type { Basis } from '@/shared/readings';
import { type Inline, words } from './blocks';

/** "red, white and green" */
export function sayList(items: readonly string[]): string {
  if (items.length < 2) return items.join('');
  return `${items.slice(0, -1).join(', ')} and ${items.at(-1)}`;
}

export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** With a capital, and an end. */
export function sentence(text: string): string {
  const whole = capital(text.trim());
  return /[.!?…)”"]$/u.test(whole) ? whole : `${whole}.`;
}

/** "Rewire the neck pickup (3:10)". */
export function withTime(text: string, time: Inline | null): Inline[] {
  return time === null ? [words(text)] : [words(`${text} (`), time, words(')')];
}

/** "3:10 A sleeve over the joint". */
export function atTime(time: Inline | null, text: string): Inline[] {
  if (time === null) return [words(text)];
  return text === '' ? [time] : [time, words(` ${text}`)];
}

const meanings: Readonly<Record<Basis, string | null>> = {
  measured: null,
  implied: 'Implied means that it follows from what I measured.',
  assumed: 'Assumed means that I took it over from elsewhere and did not measure it here.',
  stated: 'Stated means that somebody told me so and I did not check it.',
};

/** What the words in a column of bases mean, as far as they are not "measured". */
export function explained(bases: Iterable<Basis>): string[] {
  const there = new Set(bases);
  return (['implied', 'assumed', 'stated'] as const).flatMap((basis) =>
    there.has(basis) ? (meanings[basis] ?? []) : [],
  );
}
