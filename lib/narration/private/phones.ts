import { DIGIT_WORDS, TEEN_WORDS, TENS_WORDS } from '../lexicon/number-words';
import { PHONE_CUES, SERIAL_CUES } from '../lexicon/places';
import { isUnitWord } from '../lexicon/unit-words';
import { type Talk, wordAt } from '../rules/talk';
import type { TokenSpan } from '../words/token';

const LONG_NUMBER = 9;
const SHORT_NUMBER = 6;
const CUE_WORDS = 12;

/** The digits that one spoken piece stands for, and how many words it took; null when it is no digit. */
function digitsAt(talk: Talk, at: number): { digits: string; to: number } | null {
  const word = wordAt(talk, at);
  if (/^\d+$/.test(word)) return { digits: word, to: at + 1 };
  const times = word === 'double' ? 2 : word === 'triple' || word === 'treble' ? 3 : 0;
  const repeated =
    DIGIT_WORDS[wordAt(talk, at + 1)] ??
    (/^\d$/.test(wordAt(talk, at + 1)) ? Number(wordAt(talk, at + 1)) : undefined);
  if (times > 0 && repeated !== undefined) return { digits: String(repeated).repeat(times), to: at + 2 };
  const value = DIGIT_WORDS[word] ?? TEEN_WORDS[word] ?? TENS_WORDS[word];
  if (value !== undefined) return { digits: String(value), to: at + 1 };
  if (word === 'hundred' && at > 0) return { digits: '00', to: at + 1 };
  return null;
}

function runAt(talk: Talk, from: number): { to: number; digits: string } {
  let at = from;
  let digits = '';
  for (;;) {
    const piece = digitsAt(talk, at) ?? (wordAt(talk, at) === '-' ? { digits: '', to: at + 1 } : null);
    if (!piece) return { to: at, digits };
    digits += piece.digits;
    at = piece.to;
  }
}

function said(talk: Talk, from: number, words: ReadonlySet<string>): boolean {
  return talk.tokens.slice(Math.max(0, from - CUE_WORDS), from).some(({ word }) => words.has(word));
}

const isCounting = (digits: string): boolean => '12345678910111213'.startsWith(digits);

/** Telephone numbers as they are said, digit by digit or in pairs, or as they are written. */
export function findPhones(talk: Talk): TokenSpan[] {
  const found: TokenSpan[] = [];
  for (let at = 0; at < talk.tokens.length; at++) {
    const { to, digits } = runAt(talk, at);
    if (digits === '') continue;
    const measured = isUnitWord(wordAt(talk, to)) || wordAt(talk, to) === 'point';
    const least = said(talk, at, PHONE_CUES) ? SHORT_NUMBER : LONG_NUMBER;
    const plus = wordAt(talk, at - 1) === 'plus' || wordAt(talk, at - 1) === '+';
    if (digits.length >= least && !measured && !said(talk, at, SERIAL_CUES) && !isCounting(digits))
      found.push({ from: plus ? at - 1 : at, to });
    at = Math.max(at, to - 1);
  }
  return found;
}
