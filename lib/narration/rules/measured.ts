import { type Quantity, UNITS, type UnitEntry } from '../lexicon/unit-words';
import { readNumberAt, type SpokenNumber } from '../numbers';
import { readAndFraction } from '../numbers/fractions';
import { PhraseBook, type PhraseMatch } from '../words/phrases';
import { STOP } from '../words/token';
import { stopAt, type Talk, wordAt } from './talk';

/** A number with its unit, or a bare one (`unit` empty, quantity null). */
export interface Measured {
  readonly from: number;
  readonly to: number;
  /** Where the number itself ends and its unit begins. */
  readonly unitFrom: number;
  readonly value: number;
  readonly digits: string;
  readonly unit: string;
  readonly orUnit: string | null;
  readonly quantity: Quantity | null;
  readonly singular: boolean;
  readonly shape: SpokenNumber['shape'];
  readonly signed: boolean;
}

const UNIT_BOOK = new PhraseBook(UNITS);

/** Written back with no more places than the number had; "1.5" stays "1.5". */
const digitsOf = (value: number): string => String(Number(value.toFixed(6)));

function unitAfter(talk: Talk, number: SpokenNumber): PhraseMatch<UnitEntry> | null {
  const last = number.to - 1;
  const comma = stopAt(talk, last) >= STOP.clause;
  const sameLine = talk.tokens[last]?.line === talk.tokens[number.to]?.line;
  if (comma || (stopAt(talk, last) === STOP.soft && sameLine)) return null;
  const ofA = wordAt(talk, number.to) === 'of' && ['a', 'an'].includes(wordAt(talk, number.to + 1));
  return UNIT_BOOK.matchAt(talk.tokens, ofA ? number.to + 2 : number.to);
}

/** "two mil and a half", "nine volts two", "four k seven": what is said behind the unit belongs to the number. */
function tailOf(
  talk: Talk,
  number: SpokenNumber,
  to: number,
): { value: number; digits: string; to: number } | null {
  if (stopAt(talk, to - 1) > STOP.none) return null;
  const fraction = readAndFraction(talk.tokens, to);
  const sum = fraction && Math.abs(number.value) + fraction.value;
  if (fraction && sum !== null) return { value: sum, digits: digitsOf(sum), to: fraction.to };
  if (number.shape !== 'integer') return null;
  const rest = readNumberAt(talk.tokens, to);
  const short = rest && rest.shape === 'integer' && /^\d{1,2}$/.test(rest.digits) && !rest.signed;
  if (!rest || !short || !endsThere(talk, rest.to)) return null;
  const digits = `${number.digits}.${rest.digits}`;
  return { value: Number(digits), digits, to: rest.to };
}

/** Behind "nine volts two" comes the end of the thought or a small word, no thing that is counted. */
const AFTER_TAIL = new Set([
  'and',
  'so',
  'on',
  'at',
  'there',
  'but',
  'which',
  'okay',
  'yeah',
  'across',
  'now',
  'from',
  'for',
  'is',
  "that's",
  'to',
]);
const endsThere = (talk: Talk, to: number): boolean =>
  stopAt(talk, to - 1) > STOP.none || AFTER_TAIL.has(wordAt(talk, to));

const PARTS: Readonly<Record<number, { unit: string; times: number }>> = {
  64: { unit: '64ths', times: 1 },
  32: { unit: '64ths', times: 2 },
  16: { unit: '64ths', times: 4 },
  8: { unit: '64ths', times: 8 },
};

function bare(number: SpokenNumber): Measured {
  return { ...number, unitFrom: number.to, unit: '', orUnit: null, quantity: null, singular: false };
}

/** "six over sixty-four", with or without "of an inch". */
function overInch(number: SpokenNumber, unit: PhraseMatch<UnitEntry> | null): Measured {
  const part = PARTS[number.denominator ?? 64] ?? { unit: '64ths', times: 1 };
  const value = number.value * part.times;
  const to = unit && unit.entry.quantity === 'length' ? unit.to : number.to;
  return { ...bare(number), value, digits: String(value), unit: part.unit, quantity: 'length', to };
}

function inKnownUnit(
  value: number,
  digits: string,
  unit: string,
): { value: number; digits: string; unit: string } {
  if (unit === 'cm') return { value: value * 10, digits: digitsOf(value * 10), unit: 'mm' };
  if (unit === '32nds') return { value: value * 2, digits: digitsOf(value * 2), unit: '64ths' };
  return { value, digits, unit };
}

function measure(talk: Talk, number: SpokenNumber): Measured {
  const unit = unitAfter(talk, number);
  if (number.shape === 'over') return overInch(number, unit);
  if (!unit) return bare(number);
  const { entry } = unit;
  const afterUnit = wordAt(talk, unit.to) === "'s" ? unit.to + 1 : unit.to;
  const tail = entry.quantity === 'none' ? null : tailOf(talk, number, afterUnit);
  return {
    ...bare(number),
    ...inKnownUnit(tail?.value ?? number.value, tail?.digits ?? number.digits, entry.unit),
    to: tail?.to ?? unit.to,
    unitFrom: unit.from,
    orUnit: entry.or ?? null,
    quantity: entry.quantity,
    singular: entry.singular ?? false,
  };
}

/** Every number of the talk with its unit. A number swallowed by the one before ("nine volts two") is left out. */
export function findMeasured(talk: Talk): Measured[] {
  const found: Measured[] = [];
  for (const number of talk.numbers) {
    if (number.from < (found.at(-1)?.to ?? 0)) continue;
    found.push(measure(talk, number));
  }
  return found;
}
