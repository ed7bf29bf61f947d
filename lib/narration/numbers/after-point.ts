import { DIGIT_WORDS, MISHEARD_DIGITS, POINT_WORDS, TEEN_WORDS, TENS_WORDS } from '../lexicon/number-words';
import { isUnitWord } from '../lexicon/unit-words';
import { STOP, type Token } from '../words/token';
import { isPartOfInch } from './whole';

type Tokens = readonly Token[];
const wordAt = (tokens: Tokens, at: number): string => tokens[at]?.word ?? '';

interface Piece {
  readonly digits: string;
  readonly to: number;
}

const isDigitLike = (word: string): boolean => DIGIT_WORDS[word] !== undefined || /^\d+$/.test(word);

function misheardDigit(tokens: Tokens, at: number): string | null {
  const digit = MISHEARD_DIGITS[wordAt(tokens, at)];
  const next = wordAt(tokens, at + 1);
  return digit !== undefined && (isDigitLike(next) || isUnitWord(next)) ? String(digit) : null;
}

/** One piece after the point: "oh", "nine", "seventeen", "twenty-five", "08", "double oh". */
function readPiece(tokens: Tokens, at: number): Piece | null {
  const word = wordAt(tokens, at);
  if (/^\d+$/.test(word)) return { digits: word, to: at + 1 };
  const digit = DIGIT_WORDS[word];
  if (digit !== undefined) return { digits: String(digit), to: at + 1 };
  const repeat = word === 'double' ? 2 : word === 'triple' ? 3 : 0;
  const repeated = DIGIT_WORDS[wordAt(tokens, at + 1)];
  if (repeat > 0 && repeated !== undefined) return { digits: String(repeated).repeat(repeat), to: at + 2 };
  const teen = TEEN_WORDS[word];
  if (teen !== undefined) return { digits: String(teen), to: at + 1 };
  const tens = isPartOfInch(tokens, at) ? undefined : TENS_WORDS[word];
  if (tens !== undefined) {
    const unit = (tokens[at]?.stop ?? 0) < STOP.clause ? DIGIT_WORDS[wordAt(tokens, at + 1)] : undefined;
    return unit ? { digits: String(tens + unit), to: at + 2 } : { digits: String(tens), to: at + 1 };
  }
  const misheard = misheardDigit(tokens, at);
  return misheard === null ? null : { digits: misheard, to: at + 1 };
}

/** A comma ends the digits; the end of a line does not. */
const goesOn = (tokens: Tokens, at: number): boolean => {
  const token = tokens[at];
  return (
    token !== undefined &&
    (token.stop === STOP.none || (token.stop === STOP.soft && tokens[at + 1]?.line !== token.line))
  );
};

/**
 * The digits said after "point". When another "point" follows, the last piece already belongs to the next
 * number ("four point eight four point oh eight").
 */
export function readAfterPoint(tokens: Tokens, at: number): Piece | null {
  const pieces: Piece[] = [];
  let to = at;
  for (;;) {
    const piece = pieces.length > 0 && !goesOn(tokens, to - 1) ? null : readPiece(tokens, to);
    if (!piece) break;
    pieces.push(piece);
    to = piece.to;
  }
  if (pieces.length > 1 && POINT_WORDS.has(wordAt(tokens, to)) && goesOn(tokens, to - 1)) pieces.pop();
  const last = pieces.at(-1);
  return last ? { digits: pieces.map((piece) => piece.digits).join(''), to: last.to } : null;
}
