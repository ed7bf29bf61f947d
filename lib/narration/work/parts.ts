import { WORK_PARTS } from '../lexicon/work-cues';
import type { Talk } from '../rules/talk';
import { STOP, type Token, type TokenSpan } from '../words/token';

const PLACE_BEFORE = new Set(['in', 'on', 'by', 'at']);
const NO_ADJECTIVE = new Set([
  'the',
  'that',
  'this',
  'these',
  'those',
  'his',
  'her',
  'its',
  'and',
  'was',
  'were',
  'new',
  'one',
  'some',
  'had',
  'has',
  'have',
  'for',
  'with',
  'from',
  'your',
  'also',
  'are',
]);

/** The first (or last) part named in a span, with the word before it where that belongs to it. */
export function partIn(tokens: readonly Token[], from: number, to: number, last: boolean): TokenSpan | null {
  const wordAt = (at: number): string => tokens[at]?.word ?? '';
  const places: number[] = [];
  for (let at = from; at < to; at++)
    if (WORK_PARTS.has(wordAt(at)) && !PLACE_BEFORE.has(wordAt(at - 1))) places.push(at);
  const at = last ? places.at(-1) : places[0];
  if (at === undefined) return null;
  const pair = WORK_PARTS.has(wordAt(at + 1)) && at + 1 < to;
  const adjective =
    /^\p{L}{3,}$/u.test(wordAt(at - 1)) &&
    !NO_ADJECTIVE.has(wordAt(at - 1)) &&
    (tokens[at - 1]?.stop ?? STOP.full) === STOP.none;
  return { from: adjective ? at - 1 : at, to: pair ? at + 2 : at + 1 };
}

/** Names of people become one word, so that cues need to know only "client". */
export function withoutNames(talk: Talk, names: readonly TokenSpan[]): Token[] {
  const tokens = [...talk.tokens];
  for (const name of names)
    for (let at = name.from; at < name.to; at++) {
      const token = tokens[at];
      if (token) tokens[at] = { ...token, word: 'client', text: 'client' };
    }
  return tokens;
}

const SMALL_TALK = new Set(['know', 'hear', 'see', 'say', 'it', 'to', 'that', 'how', 'what', 'be', 'me']);
const MONEY = new Set(['quid', 'pounds', 'dollars', 'euros', 'bucks']);
const ONLY_LOOKING = /^(?:to )?(?:find out|see (?:if|what|why)|have a (?:look|listen))/;

/** Prices, looking and small talk are asked for as well, and are no work. */
export const isNoWork = (words: readonly string[]): boolean =>
  words.some((word) => MONEY.has(word)) ||
  ONLY_LOOKING.test(words.join(' ')) ||
  words.every((word) => SMALL_TALK.has(word));
