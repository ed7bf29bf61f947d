import { NEVER_A_NAME } from '../lexicon/names';
import { DIGIT_WORDS } from '../lexicon/number-words';
import { ADDRESS_CUES, LIVES_CUES, NOT_PLACES, STREET_WORDS, VAGUE_STREET_WORDS } from '../lexicon/places';
import { stopAt, type Talk, wordAt } from '../rules/talk';
import { phraseBook } from '../words/phrases';
import { STOP, type TokenSpan } from '../words/token';

const LIVES = phraseBook(LIVES_CUES);
const CUE_WORDS = 8;
const MOST_STREET_WORDS = 3;

const isCapital = (talk: Talk, at: number): boolean => /^\p{Lu}/u.test(talk.tokens[at]?.text ?? '');
const isPlainWord = (talk: Talk, at: number): boolean =>
  /^\p{L}/u.test(wordAt(talk, at)) && !NEVER_A_NAME.has(wordAt(talk, at));

function cued(talk: Talk, from: number): boolean {
  return talk.tokens.slice(Math.max(0, from - CUE_WORDS), from).some(({ word }) => ADDRESS_CUES.has(word));
}

/** The name of a street that ends with the word at `at`: one to three words before it. */
function streetStart(talk: Talk, at: number): number {
  let from = at;
  while (at - from < MOST_STREET_WORDS && stopAt(talk, from - 1) < STOP.soft) {
    if (wordAt(talk, from - 1) === "'s") from--;
    if (!isPlainWord(talk, from - 1) || talk.numberTo.has(from)) break;
    from--;
  }
  return from;
}

/** "forty-two Larkspur Road", "number nine, Tanner's Yard", "Larkspur Road". */
function streetAt(talk: Talk, at: number): TokenSpan | null {
  const vague = VAGUE_STREET_WORDS.has(wordAt(talk, at));
  if (!vague && !STREET_WORDS.has(wordAt(talk, at))) return null;
  const from = streetStart(talk, at);
  if (from === at) return null;
  const before = talk.numberTo.get(from);
  const house = before?.shape === 'decimal' ? undefined : before;
  const capitals = isCapital(talk, at) && isCapital(talk, at - 1);
  const said = cued(talk, house?.from ?? from);
  const enough = vague
    ? (said && (house !== undefined || capitals)) || (capitals && house !== undefined)
    : house !== undefined || capitals || said;
  return enough ? { from: house?.from ?? from, to: at + 1 } : null;
}

/** "lives over in Penhallow": the place behind the cue. */
function livesAt(talk: Talk, at: number): TokenSpan | null {
  const cue = LIVES.matchAt(talk.tokens, at);
  if (!cue || !isPlainWord(talk, cue.to) || NOT_PLACES.has(wordAt(talk, cue.to))) return null;
  if (wordAt(talk, cue.from).startsWith('dr') || /^(?:c[oa]me|trav)/.test(wordAt(talk, cue.from)))
    return null;
  let to = cue.to + 1;
  while (stopAt(talk, to - 1) < STOP.soft && isCapital(talk, to)) to++;
  return { from: cue.to, to };
}

const isLetter = (word: string): boolean => /^[a-z]$/.test(word);
const isDigit = (word: string): boolean =>
  /^\d$/.test(word) || (DIGIT_WORDS[word] !== undefined && word.length > 1);

/** A British postcode said letter by letter or written: "B A two three X Y", "BA2 3XY". */
function postcodeAt(talk: Talk, at: number): TokenSpan | null {
  const first = /^[a-z]{1,2}$/.test(wordAt(talk, at)) && /^[A-Z]{1,2}$/.test(talk.tokens[at]?.text ?? '');
  if (!first && !isLetter(wordAt(talk, at))) return null;
  let to = at + 1;
  if (isLetter(wordAt(talk, at)) && isLetter(wordAt(talk, to))) to++;
  const numbersFrom = to;
  while (to - numbersFrom < 3 && (isDigit(wordAt(talk, to)) || /^\d{2}$/.test(wordAt(talk, to)))) to++;
  if (to - numbersFrom < 2) return null;
  if (/^[a-z]{2}$/.test(wordAt(talk, to)) && /^[A-Z]{2}$/.test(talk.tokens[to]?.text ?? ''))
    return { from: at, to: to + 1 };
  return isLetter(wordAt(talk, to)) && isLetter(wordAt(talk, to + 1)) ? { from: at, to: to + 2 } : null;
}

/** Streets with or without a number, places somebody lives in, postcodes. */
export function findAddresses(talk: Talk): TokenSpan[] {
  const found: TokenSpan[] = [];
  for (let at = 0; at < talk.tokens.length; at++) {
    const span = streetAt(talk, at) ?? livesAt(talk, at) ?? postcodeAt(talk, at);
    const last = found.at(-1);
    if (!span) continue;
    if (last && span.from < last.to + 2)
      found[found.length - 1] = { from: Math.min(last.from, span.from), to: Math.max(last.to, span.to) };
    else found.push(span);
  }
  return found;
}
