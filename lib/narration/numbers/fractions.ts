import { FRACTION_WORDS } from '../lexicon/number-words';
import type { Token } from '../words/token';
import type { Part } from './span';
import { readSmall } from './whole';

type Tokens = readonly Token[];
const wordAt = (tokens: Tokens, at: number): string => tokens[at]?.word ?? '';

const written = (value: number): string => String(Number(value.toFixed(6)));
const fraction = (value: number, to: number): Part => ({ value, digits: written(value), to });

/** "a half", "three quarters", "one sixteenth", "7/8": below one, read at `at`. */
export function readFraction(tokens: Tokens, at: number): Part | null {
  const slash = /^(\d+)\/(\d+)$/.exec(wordAt(tokens, at));
  if (slash) return Number(slash[2]) > 0 ? fraction(Number(slash[1]) / Number(slash[2]), at + 1) : null;
  const article = ['a', 'an', 'one'].includes(wordAt(tokens, at));
  const count = article ? { value: 1, to: at + 1 } : readSmall(tokens, at, false);
  if (!count || count.value >= 64) return null;
  const parts = FRACTION_WORDS[wordAt(tokens, count.to)];
  if (parts === undefined) return null;
  // "a third string", "three third frets": an ordinal unless it is a plural or "one third".
  if (parts === 3 && article && wordAt(tokens, count.to + 1) !== 'of') return null;
  return fraction(count.value / parts, count.to + 1);
}

/** "half a", "half an", "quarter of a" before a unit. */
export function readBareFraction(tokens: Tokens, at: number): Part | null {
  const word = wordAt(tokens, at);
  const next = wordAt(tokens, at + 1);
  if (word === 'half' && (next === 'a' || next === 'an')) return fraction(0.5, at + 2);
  if (word === 'quarter' && next === 'of') return fraction(0.25, at + 1);
  return null;
}

/** "and a half" behind a whole number or its unit. */
export function readAndFraction(tokens: Tokens, at: number): Part | null {
  return wordAt(tokens, at) === 'and' ? readFraction(tokens, at + 1) : null;
}
