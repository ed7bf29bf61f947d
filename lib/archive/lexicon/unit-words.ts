import { units } from '@/lib/readings';
import type { UnitId } from '@/shared/readings';

/** Units as words of letters alone, since an index parts words at every other sign. */
const plain: Readonly<Partial<Record<UnitId, string>>> = {
  Ω: 'ohm',
  kΩ: 'kohm',
  MΩ: 'megohm',
  µA: 'ua',
  µF: 'uf',
  '64ths': 'sixtyfourth',
  '°C': 'celsius',
  '°F': 'fahrenheit',
  '%RH': 'percent',
};

/** What is a unit only where no space stands before it: "2 in March" holds no inches. */
export const needsNoSpace: ReadonlySet<string> = new Set([
  'in',
  'r',
  'm',
  'a',
  'p',
  'n',
  'u',
  'f',
  'h',
  'c',
  'g',
  'ct',
  '"',
]);

const said = new Map<string, string>();
for (const { id, words } of units) {
  const kept = plain[id] ?? id.toLowerCase();
  for (const word of words) if (!said.has(word)) said.set(word, kept);
}
for (const [word, unit] of [
  ['w', 'watt'],
  ['watt', 'watt'],
  ['watts', 'watt'],
  ['db', 'db'],
] as const)
  said.set(word, unit);

/** The one word of a unit that is written without a space behind a number: the "k" of "8.1k"; null for none. */
export function unitJoined(letters: string): string | null {
  return said.get(letters) ?? null;
}

/** The one word of a unit that follows a number after a space; null for none. */
export function unitApart(word: string): string | null {
  return needsNoSpace.has(word) ? null : unitJoined(word);
}
