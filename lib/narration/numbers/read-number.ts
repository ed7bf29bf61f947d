import { DIGIT_WORDS, MINUS_WORDS, POINT_WORDS, TEEN_WORDS, TENS_WORDS } from '../lexicon/number-words';
import { isUnitWord } from '../lexicon/unit-words';
import { STOP, type Token } from '../words/token';
import { readAfterPoint } from './after-point';
import { readAndFraction, readBareFraction, readFraction } from './fractions';
import type { SpokenNumber } from './span';
import { readSmall, readWhole } from './whole';

type Tokens = readonly Token[];
type Unsigned = Omit<SpokenNumber, 'from' | 'signed'>;

const wordAt = (tokens: Tokens, at: number): string => tokens[at]?.word ?? '';
const stopAt = (tokens: Tokens, at: number): number => tokens[at]?.stop ?? STOP.full;
/** Words that a number can begin with; digits and signs aside. */
const STARTERS: ReadonlySet<string> = new Set([
  ...[DIGIT_WORDS, TEEN_WORDS, TENS_WORDS].flatMap((words) => Object.keys(words)),
  ...POINT_WORDS,
  ...MINUS_WORDS,
  'plus',
  'a',
  'an',
  'hundred',
  'thousand',
  'half',
  'quarter',
]);
const THOUSAND = new Set(['thousand']);

/** "4.08", ".012", "3.97 one". */
function readWrittenDecimal(tokens: Tokens, at: number): Unsigned | null {
  const word = wordAt(tokens, at);
  if (!/^\d*\.\d+$/.test(word)) return null;
  const extra = DIGIT_WORDS[wordAt(tokens, at + 1)];
  const goesOn =
    extra !== undefined && stopAt(tokens, at) === STOP.none && isUnitWord(wordAt(tokens, at + 2));
  const digits = (word.startsWith('.') ? `0${word}` : word) + (goesOn ? String(extra) : '');
  return { to: at + (goesOn ? 2 : 1), value: Number(digits), digits, shape: 'decimal', denominator: null };
}

/** "point oh one two", "oh point two". */
function readPointed(tokens: Tokens, at: number): Unsigned | null {
  const start = ['oh', 'o'].includes(wordAt(tokens, at)) ? at + 1 : at;
  if (!POINT_WORDS.has(wordAt(tokens, start))) return null;
  const after = readAfterPoint(tokens, start + 1);
  return after && decimal('0', after);
}

function decimal(whole: string, after: { digits: string; to: number }): Unsigned {
  const digits = `${whole}.${after.digits}`;
  return { to: after.to, value: Number(digits), digits, shape: 'decimal', denominator: null };
}

/** "6/64", "six over sixty-four", "three over thirty two". */
function readOver(tokens: Tokens, at: number): Unsigned | null {
  const slash = /^(\d+)\/(8|16|32|64)$/.exec(wordAt(tokens, at));
  if (slash) return over(Number(slash[1]), Number(slash[2]), at + 1);
  const count = readSmall(tokens, at, false);
  if (!count || wordAt(tokens, count.to) !== 'over') return null;
  const parts = readSmall(tokens, count.to + 1, false);
  return parts && [8, 16, 32, 64].includes(parts.value) ? over(count.value, parts.value, parts.to) : null;
}

const over = (count: number, parts: number, to: number): Unsigned => ({
  to,
  value: count,
  digits: String(count),
  shape: 'over',
  denominator: parts,
});

function withTail(
  tokens: Tokens,
  whole: { value: number; digits: string; to: number; pieces: number },
): Unsigned {
  const { value, digits, to, pieces } = whole;
  const runsOn = stopAt(tokens, to - 1) === STOP.none || tokens[to]?.line !== tokens[to - 1]?.line;
  if (runsOn && POINT_WORDS.has(wordAt(tokens, to))) {
    const after = readAfterPoint(tokens, to + 1);
    if (after) return thousands(tokens, decimal(digits, after));
  }
  const rest = runsOn ? (readAndFraction(tokens, to) ?? readSlashTail(tokens, to)) : null;
  if (rest) {
    const sum = value + rest.value;
    return { to: rest.to, value: sum, digits: String(sum), shape: 'fraction', denominator: null };
  }
  const row = pieces >= 3 && digits.length === pieces;
  return { to, value, digits, shape: row ? 'row' : 'integer', denominator: null };
}

const readSlashTail = (tokens: Tokens, at: number) =>
  wordAt(tokens, at).includes('/') ? readFraction(tokens, at) : null;

function thousands(tokens: Tokens, number: Unsigned): Unsigned {
  if (!THOUSAND.has(wordAt(tokens, number.to))) return number;
  const value = Number((number.value * 1000).toPrecision(12));
  return { ...number, value, digits: String(value), to: number.to + 1 };
}

function readUnsigned(tokens: Tokens, at: number): Unsigned | null {
  const direct = readWrittenDecimal(tokens, at) ?? readPointed(tokens, at) ?? readOver(tokens, at);
  if (direct) return direct;
  const part = readFraction(tokens, at) ?? readBareFraction(tokens, at);
  if (part) return { ...part, shape: 'fraction', denominator: null };
  const whole = readWhole(tokens, at);
  return whole && withTail(tokens, whole);
}

/** The number that begins at `at`, or null. Signs count only right before a number. */
export function readNumberAt(tokens: Tokens, at: number): SpokenNumber | null {
  const word = wordAt(tokens, at);
  if (!STARTERS.has(word) && !/^[\d.+-]/.test(word)) return null;
  const minus = MINUS_WORDS.has(word);
  const signed = minus || word === 'plus' || word === '+';
  const number = readUnsigned(tokens, signed ? at + 1 : at);
  if (!number) return null;
  if (!minus) return { ...number, from: at, signed };
  return { ...number, from: at, signed, value: -number.value, digits: `-${number.digits}` };
}

/** All numbers in the talk, in order, none overlapping another. */
export function findNumbers(tokens: Tokens): SpokenNumber[] {
  const found: SpokenNumber[] = [];
  for (let at = 0; at < tokens.length; ) {
    const number = readNumberAt(tokens, at);
    if (number) found.push(number);
    at = number?.to ?? at + 1;
  }
  return found;
}
