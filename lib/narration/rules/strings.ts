import { ORDINALS, STRING_LETTERS } from '../lexicon/subjects';
import { STOP, type TokenSpan } from '../words/token';
import { stopAt, type Talk, wordAt } from './talk';

/** A string or a fret as it is named in the talk. */
export interface StringMention extends TokenSpan {
  readonly name: string;
  readonly sort: 'string' | 'fret';
}

const REGISTER: Readonly<Record<string, string>> = {
  low: 'low',
  high: 'high',
  top: 'high',
  bottom: 'low',
  bass: 'low',
  treble: 'high',
};
const STRING_NOUNS = new Set(['string', 'strings', 'course', 'courses']);
const AFTER_LETTER = new Set([
  'it',
  'i',
  'is',
  "'s",
  'at',
  'reads',
  'on',
  'and',
  'was',
  'has',
  'measures',
  'comes',
  "it's",
  'now',
  'just',
  'got',
  'slot',
  'intonates',
  'gives',
  'sits',
  'still',
]);

const isLetter = (word: string): boolean => STRING_LETTERS.has(word);
const shown = (letter: string): string => letter.toUpperCase();

/** "low E", "top E string", "bass G". */
function registered(talk: Talk, at: number): StringMention | null {
  const register = REGISTER[wordAt(talk, at)];
  const letter = wordAt(talk, at + 1);
  if (register === undefined) return null;
  if (STRING_NOUNS.has(letter)) return { from: at, to: at + 2, name: `${register} string`, sort: 'string' };
  if (!isLetter(letter)) return null;
  const to = STRING_NOUNS.has(wordAt(talk, at + 2)) ? at + 3 : at + 2;
  return { from: at, to, name: `${register} ${shown(letter)}`, sort: 'string' };
}

/** "the G", "D string", "A course", and a letter at the beginning of a sentence ("G is five point six"). */
function plainLetter(talk: Talk, at: number): StringMention | null {
  const letter = wordAt(talk, at);
  if (!isLetter(letter)) return null;
  const next = wordAt(talk, at + 1);
  const capital = talk.tokens[at]?.text === shown(letter);
  const noun = STRING_NOUNS.has(next) && (letter !== 'a' || capital || wordAt(talk, at - 1) === 'the');
  const article = ['the', 'your', 'my'].includes(wordAt(talk, at - 1));
  const ends =
    stopAt(talk, at) > STOP.none || AFTER_LETTER.has(next) || startsNumber(talk, at + 1) || next === '';
  const first = at === 0 || stopAt(talk, at - 1) >= STOP.soft;
  const named = article && (ends || STRING_NOUNS.has(next) || letter !== 'a');
  const joined =
    (wordAt(talk, at - 1) === 'and' || first) &&
    (letter !== 'a' || capital) &&
    (AFTER_LETTER.has(next) || startsNumber(talk, at + 1));
  if (!noun && !named && !joined) return null;
  return { from: at, to: STRING_NOUNS.has(next) ? at + 2 : at + 1, name: shown(letter), sort: 'string' };
}

const startsNumber = (talk: Talk, at: number): boolean => talk.numberFrom.has(at);

function ordinalAt(talk: Talk, at: number): { value: number; to: number } | null {
  const value = ORDINALS[wordAt(talk, at)];
  if (value !== undefined) return { value, to: at + 1 };
  const digits = wordAt(talk, at);
  const suffix = ['st', 'nd', 'rd', 'th'].includes(wordAt(talk, at + 1));
  return /^\d{1,2}$/.test(digits) && suffix ? { value: Number(digits), to: at + 2 } : null;
}

const SUFFIX: Readonly<Record<number, string>> = {
  1: '1st',
  2: '2nd',
  3: '3rd',
  21: '21st',
  22: '22nd',
  23: '23rd',
};
const fretName = (value: number): string => `${SUFFIX[value] ?? `${value}th`} fret`;
const STRING_NAMES = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth'];

/** "twelfth fret", "at the 12th", "third string", "five on the fourth". */
function ordinal(talk: Talk, at: number): StringMention | null {
  const found = ordinalAt(talk, at);
  if (!found) return fretByNumber(talk, at);
  const { value, to } = found;
  const next = wordAt(talk, to);
  if (next === 'fret') return { from: at, to: to + 1, name: fretName(value), sort: 'fret' };
  const string = STRING_NAMES[value - 1];
  if (STRING_NOUNS.has(next) && string)
    return { from: at, to: to + 1, name: `${string} string`, sort: 'string' };
  if (wordAt(talk, at - 1) !== 'the') return null;
  const place = wordAt(talk, at - 2);
  if (place === 'at' || place === 'over') return { from: at, to, name: fretName(value), sort: 'fret' };
  const capo = [3, 4].some((back) => wordAt(talk, at - back) === 'capo');
  if (place === 'on' && !capo && string && (stopAt(talk, to - 1) > STOP.none || AFTER_LETTER.has(next)))
    return { from: at, to, name: `${string} string`, sort: 'string' };
  return null;
}

/** "fret twelve". */
function fretByNumber(talk: Talk, at: number): StringMention | null {
  if (wordAt(talk, at) !== 'fret') return null;
  const number = talk.numberFrom.get(at + 1);
  if (number?.shape !== 'integer' || number.value > 24) return null;
  return { from: at, to: number.to, name: fretName(number.value), sort: 'fret' };
}

/** Every string and fret named in the talk, in order. */
export function findStrings(talk: Talk): StringMention[] {
  const found: StringMention[] = [];
  for (let at = 0; at < talk.tokens.length; at++) {
    const mention = registered(talk, at) ?? plainLetter(talk, at) ?? ordinal(talk, at);
    if (!mention) continue;
    found.push(mention);
    at = mention.to - 1;
  }
  return found;
}
