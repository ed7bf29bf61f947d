import { GIVEN_NAMES, NAME_CUES, NAMES_THAT_ARE_WORDS, NEVER_A_NAME } from '../lexicon/names';
import { isUnitWord } from '../lexicon/unit-words';
import { stopAt, type Talk, wordAt } from '../rules/talk';
import { phraseBook } from '../words/phrases';
import { STOP, type TokenSpan } from '../words/token';
import { ClientName } from './client-name';

const CUES = phraseBook(NAME_CUES);
const TITLES = new Set([
  'mr',
  'mrs',
  'ms',
  'mister',
  'missus',
  'doctor',
  'dr',
  'professor',
  'sir',
  'lady',
  'reverend',
  'miss',
]);

export interface NameFound extends TokenSpan {
  readonly confidence: number;
}

/** A capital that is not there because a sentence begins. */
function isCapital(talk: Talk, at: number): boolean {
  const text = talk.tokens[at]?.text ?? '';
  const first =
    at === 0 || stopAt(talk, at - 1) >= STOP.full || talk.tokens[at - 1]?.line !== talk.tokens[at]?.line;
  return /^\p{Lu}\p{Ll}/u.test(text) && !first;
}

const mayBeName = (talk: Talk, at: number): boolean => {
  const word = wordAt(talk, at);
  return /^\p{L}[\p{L}']+$/u.test(word) && !NEVER_A_NAME.has(word) && !isUnitWord(word);
};

/** How sure a single word is a name, from the word itself; 0 when it is none. */
function byWord(talk: Talk, client: ClientName, at: number): number {
  const word = wordAt(talk, at);
  const asWord = NAMES_THAT_ARE_WORDS.has(word);
  if (client.isPart(word) && !asWord) return 0.95;
  if (asWord) return client.isPart(word) && isCapital(talk, at) ? 0.9 : 0;
  if (client.resembles(word)) return 0.85;
  if (GIVEN_NAMES.has(word) && !followsCounted(talk, at)) return 0.8;
  return 0;
}

/** "a joan": a given name right after an article is a thing of that name. */
const followsCounted = (talk: Talk, at: number): boolean => ['a', 'an'].includes(wordAt(talk, at - 1));

/** The client's name said in two words by a speech model that did not know it ("or rery"). */
function inTwoWords(talk: Talk, client: ClientName, at: number): boolean {
  const [first, second] = [wordAt(talk, at), wordAt(talk, at + 1)];
  if (first.length < 2 || second.length < 2 || stopAt(talk, at) >= STOP.soft) return false;
  return client.isPart(first + second);
}

/** A word after "belongs to", "a guy called", "Mrs". */
function afterCue(talk: Talk, at: number, cue: TokenSpan): number {
  if (!mayBeName(talk, at) || stopAt(talk, at - 1) >= STOP.full) return 0;
  const title = cue.to - cue.from === 1 && TITLES.has(wordAt(talk, cue.from));
  const capital = /^\p{Lu}/u.test(talk.tokens[at]?.text ?? '');
  if (title || capital) return 0.9;
  const strong = /^(?:called|named|of|'s|is|was|to|by)$/.test(wordAt(talk, at - 1));
  return strong || NAMES_THAT_ARE_WORDS.has(wordAt(talk, at)) ? 0.7 : 0;
}

/** Names written with capitals right behind a name belong to it ("Gareth Pole"), and the client's in any case. */
function endOfName(talk: Talk, client: ClientName, from: number): number {
  let to = from + 1;
  while (to < talk.tokens.length && stopAt(talk, to - 1) < STOP.soft) {
    const more = client.resembles(wordAt(talk, to)) || (isCapital(talk, to) && mayBeName(talk, to));
    if (!more && !inTwoWords(talk, client, to)) break;
    to += more ? 1 : 2;
  }
  return to;
}

/** Every mention of a person by name: the client on the ticket, common given names, names after a cue. */
export function findNames(talk: Talk): NameFound[] {
  const client = new ClientName(talk.context.clientName);
  const learned = new Set<string>();
  const found: NameFound[] = [];
  for (let at = 0; at < talk.tokens.length; at++) {
    const cue = CUES.matchAt(talk.tokens, at);
    const cued = cue ? afterCue(talk, cue.to, cue) : 0;
    const start = cue && cued > 0 && byWord(talk, client, at) === 0 ? cue.to : at;
    const confidence = start === at ? wordConfidence(talk, client, learned, at) : cued;
    if (confidence === 0) continue;
    const to = endOfName(talk, client, inTwoWords(talk, client, start) ? start + 1 : start);
    for (let part = start; part < to; part++) learnName(learned, wordAt(talk, part));
    found.push({ from: cue && TITLES.has(wordAt(talk, at)) ? at : start, to, confidence });
    at = to - 1;
  }
  return found;
}

function wordConfidence(talk: Talk, client: ClientName, learned: ReadonlySet<string>, at: number): number {
  if (learned.has(wordAt(talk, at))) return 0.8;
  return Math.max(byWord(talk, client, at), inTwoWords(talk, client, at) ? 0.8 : 0);
}

/** A name heard once is known for the rest of the talk. */
function learnName(learned: Set<string>, word: string): void {
  if (word.length >= 4 && !NAMES_THAT_ARE_WORDS.has(word) && !NEVER_A_NAME.has(word)) learned.add(word);
}
