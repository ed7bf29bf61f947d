import {
  BEFORE_PRONOUN_ONE,
  DIGIT_WORDS,
  LABEL_NOUNS,
  POINT_WORDS,
  SCALE_WORDS,
  TEEN_WORDS,
  TENS_WORDS,
} from '../lexicon/number-words';
import { isUnitWord } from '../lexicon/unit-words';
import { STOP, type Token } from '../words/token';
import type { Part } from './span';

type Tokens = readonly Token[];

const wordAt = (tokens: Tokens, at: number): string => tokens[at]?.word ?? '';
/** True when nothing stands between this word and the next but a line end. */
const runsOn = (tokens: Tokens, at: number): boolean => {
  const token = tokens[at];
  const next = tokens[at + 1];
  if (!token || !next) return false;
  if (token.stop === STOP.clause && next.line !== token.line && next.word === 'and') return true;
  return (
    token.stop === STOP.none ||
    (token.stop === STOP.soft && next.line !== token.line && !/[,]/.test(token.text))
  );
};

const SIXTY_FOURTHS = new Set(['fourth', 'fourths', 'forth', 'forths', 'fours']);

/** "sixty-fourths" and "thirty-seconds of an inch" are units: the number ends before them. */
export function isPartOfInch(tokens: Tokens, at: number): boolean {
  const next = wordAt(tokens, at + 1);
  if (wordAt(tokens, at) === 'sixty') return SIXTY_FOURTHS.has(next);
  const ofAnInch = wordAt(tokens, at + 2) === 'of' && wordAt(tokens, at + 4).startsWith('inch');
  return wordAt(tokens, at) === 'thirty' && (next === 'seconds' || next === 'second') && ofAnInch;
}

function isPronounOne(tokens: Tokens, at: number): boolean {
  if (wordAt(tokens, at) !== 'one' || (tokens[at - 1]?.stop ?? STOP.full) > STOP.none) return false;
  const next = wordAt(tokens, at + 1);
  return (
    BEFORE_PRONOUN_ONE.has(wordAt(tokens, at - 1)) &&
    !POINT_WORDS.has(next) &&
    !isUnitWord(next) &&
    next !== 'hundred' &&
    next !== 'and'
  );
}

/** 0 to 99 in words, or a written whole number. A leading "oh" only counts inside a number. */
export function readSmall(tokens: Tokens, at: number, inside: boolean): Part | null {
  const word = wordAt(tokens, at);
  if (/^\d+$/.test(word)) return { value: Number(word), digits: word, to: at + 1 };
  if ((word === 'oh' || word === 'o') && !inside) return null;
  const digit = DIGIT_WORDS[word];
  if (digit !== undefined)
    return !inside && isPronounOne(tokens, at) ? null : { value: digit, digits: String(digit), to: at + 1 };
  const teen = TEEN_WORDS[word];
  if (teen !== undefined) return { value: teen, digits: String(teen), to: at + 1 };
  const tens = TENS_WORDS[word];
  if (tens === undefined || isPartOfInch(tokens, at)) return null;
  const unit = runsOn(tokens, at) ? DIGIT_WORDS[wordAt(tokens, at + 1)] : undefined;
  if (!unit) return { value: tens, digits: String(tens), to: at + 1 };
  return { value: tens + unit, digits: String(tens + unit), to: at + 2 };
}

/** "a hundred and twenty", "four hundred sixty-two". */
function readHundreds(tokens: Tokens, at: number): Part | null {
  const word = wordAt(tokens, at);
  const head: Part | null =
    word === 'hundred' || word === 'thousand'
      ? { value: 1, digits: '1', to: at }
      : word === 'a' && ['hundred', 'thousand', 'million'].includes(wordAt(tokens, at + 1))
        ? { value: 1, digits: '1', to: at + 1 }
        : readSmall(tokens, at, false);
  if (!head || wordAt(tokens, head.to) !== 'hundred') return head;
  if (head.to > at && !runsOn(tokens, head.to - 1)) return head;
  const rest = readAfterAnd(tokens, head.to + 1);
  const value = head.value * 100 + (rest?.value ?? 0);
  return { value, digits: String(value), to: rest?.to ?? head.to + 1 };
}

/** "… and twenty" or "… twenty" after hundreds or thousands. */
function readAfterAnd(tokens: Tokens, at: number): Part | null {
  if (!runsOn(tokens, at - 1)) return null;
  const start = wordAt(tokens, at) === 'and' ? at + 1 : at;
  const rest = readSmall(tokens, start, true);
  return rest && rest.value < 100 && rest.value > 0 && !startsFraction(tokens, rest.to) ? rest : null;
}

const startsFraction = (tokens: Tokens, at: number): boolean =>
  /^(?:half|thirds?|quarters?|fourths|eighths?|sixteenths?)$/.test(wordAt(tokens, at));

/** Pieces said one after another ("four sixty two", "one oh five") as one row of digits. */
function readRow(tokens: Tokens, first: Part): { part: Part; pieces: number } {
  let part = first;
  let pieces = 1;
  let lastPiece = first;
  for (;;) {
    const next = runsOn(tokens, part.to - 1) ? readSmall(tokens, part.to, true) : null;
    if (!next || next.digits.length > 2 || startsFraction(tokens, next.to)) break;
    const hesitation = lastPiece.value >= 20 && Math.floor(next.value / 10) * 10 === lastPiece.value;
    const digits = hesitation ? part.digits.slice(0, -2) + next.digits : part.digits + next.digits;
    part = { value: Number(digits), digits, to: next.to };
    lastPiece = next;
    pieces++;
  }
  return { part, pieces };
}

const isScale = (word: string): boolean => SCALE_WORDS[word] !== undefined;

/** "two thousand four hundred and ten", "a million two hundred thousand". */
function readScaled(tokens: Tokens, at: number, first: Part): Part {
  let part = first;
  let total = 0;
  let scale = SCALE_WORDS[wordAt(tokens, part.to)];
  while (scale !== undefined && runsOn(tokens, part.to - 1)) {
    total += part.value * scale;
    const after = part.to + 1;
    const start = wordAt(tokens, after) === 'and' ? after + 1 : after;
    const rest = runsOn(tokens, after - 1) ? readHundreds(tokens, start) : null;
    if (!rest || rest.value >= scale) return { value: total, digits: String(total), to: after };
    part = rest;
    scale = SCALE_WORDS[wordAt(tokens, part.to)];
  }
  const value = total + part.value;
  return total === 0
    ? { ...first, to: Math.max(first.to, at) }
    : { value, digits: String(value), to: part.to };
}

export interface Whole extends Part {
  /** How many pieces were said as a row; 1 for an ordinary number. */
  readonly pieces: number;
}

/** A whole number in words or digits. After "fret", "string", "pin" a number is a name and stays short. */
export function readWhole(tokens: Tokens, at: number): Whole | null {
  const head = readHundreds(tokens, at);
  if (!head || head.to === at) return null;
  if (LABEL_NOUNS.has(wordAt(tokens, at - 1)) && (tokens[at - 1]?.stop ?? 0) < STOP.soft)
    return { ...head, pieces: 1 };
  if (isScale(wordAt(tokens, head.to))) return { ...readScaled(tokens, at, head), pieces: 1 };
  const plain = wordAt(tokens, head.to - 1) !== 'hundred' && head.digits.length <= 2;
  if (!plain) return { ...head, pieces: 1 };
  const { part, pieces } = readRow(tokens, head);
  return lastPieceOnly(tokens, at, head, part, pieces);
}

/** "one, eight point two" without its comma: the digit before belongs to something else. */
function lastPieceOnly(tokens: Tokens, at: number, head: Part, row: Part, pieces: number): Whole | null {
  const oh = tokens.slice(at, row.to).some((token) => ['oh', 'o', 'zero', '0'].includes(token.word));
  const single = pieces === 2 && row.digits.length <= 3 && head.digits.length + 1 === row.digits.length;
  const pointed = POINT_WORDS.has(wordAt(tokens, row.to));
  return single && pointed && !oh ? { ...head, pieces: 1 } : { ...row, pieces };
}
