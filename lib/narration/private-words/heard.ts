import { GIVEN_NAMES } from '../lexicon/names';
import { VAGUE_STREET_WORDS } from '../lexicon/places';
import { findNames, findPrivate } from '../private';
import { ClientName } from '../private/client-name';
import { listen, type Talk, wordAt, wordsIn } from '../rules/talk';
import type { TokenSpan } from '../words/token';
import { BENCH_WORDS } from './bench-words';
import { isWordToo } from './client';
import type { PrivateSpan } from './spans';
import { inSmallLetters, isTitleCase } from './title-case';

/**
 * The text as one line of talk. It lasts a millisecond a character, so that the time of each word is its place.
 * "o'clock" is the one word of which splitting shortens the line.
 */
function asTalk(text: string, clientName: string | null): Talk {
  const even = (isTitleCase(text) ? inSmallLetters(text) : text).replace(/\bo['’]clock\b/gi, 'o clock');
  const line = { startMs: 0, endMs: even.length, text: even };
  return listen([line], { instrumentType: '', clientName, slang: [] });
}

/** Before a name, and before much else. */
const isTitle = (word: string): boolean => /^(?:lady|sir|miss|doctor|dr|professor|reverend)$/.test(word);
/** Before a name only. */
const isAddress = (word: string): boolean => /^(?:mr|mrs|ms|mister|missus)$/.test(word);

/** What the rules for talk find in a written text, less what is only a manner of writing. */
export function findHeard(text: string, clientName: string | null): PrivateSpan[] {
  const talk = asTalk(text, clientName);
  const client = new ClientName(clientName);
  const names = findNames(talk).filter((name) => isSureName(talk, client, name));
  return findPrivate(talk, names).flatMap((draft) => {
    if (draft.type !== 'private' || isOfTheBench(talk, draft, draft.payload.reason)) return [];
    const [first, last] = [talk.tokens[draft.from], talk.tokens[draft.to - 1]];
    return first && last ? [{ from: first.startMs, to: last.endMs, reason: draft.payload.reason }] : [];
  });
}

const placesOf = ({ from, to }: TokenSpan): number[] =>
  Array.from({ length: to - from }, (_, step) => from + step);

/** In talk a small word after "belongs to" may be a name; written, a name has a capital. */
function isSureName(talk: Talk, client: ClientName, span: TokenSpan): boolean {
  if (/^douglas fir\b/i.test(wordsIn(talk, { from: span.from, to: span.to + 1 }))) return false;
  return placesOf(span).some((at) => {
    const word = wordAt(talk, at);
    if (isAddress(word) || GIVEN_NAMES.has(word)) return true;
    if (client.isPart(word)) return !isWordToo(word);
    if (client.isPart(word + wordAt(talk, at + 1))) return true;
    if (BENCH_WORDS.has(word) || isTitle(word)) return false;
    return client.resembles(word) || /^\p{Lu}/u.test(talk.tokens[at]?.text ?? '');
  });
}

function isOfTheBench(talk: Talk, span: TokenSpan, reason: PrivateSpan['reason']): boolean {
  if (reason === 'phone') return isMeasure(piecesOf(talk, span));
  return reason === 'address' && isRowOfParts(talk, span);
}

/** "2 slug row": a street may be called Green Lane, but no bench word in small letters makes a row a street. */
function isRowOfParts(talk: Talk, span: TokenSpan): boolean {
  if (!VAGUE_STREET_WORDS.has(wordAt(talk, span.to - 1))) return false;
  return placesOf(span).some(
    (at) => BENCH_WORDS.has(wordAt(talk, at)) && !/^\p{Lu}/u.test(talk.tokens[at]?.text ?? ''),
  );
}

const piecesOf = (talk: Talk, span: TokenSpan): string[] =>
  placesOf(span)
    .map((at) => wordAt(talk, at))
    .filter((word) => word !== '-');

/** A date with its time, or gauges from thin to thick: digits enough for a number to ring. */
function isMeasure(pieces: readonly string[]): boolean {
  const isDate = /^(?:19|20)\d\d (?:0[1-9]|1[0-2]) [0-3]\d\b/.test(pieces.join(' '));
  const rises = pieces.every((piece, at) => at === 0 || Number(piece) >= Number(pieces[at - 1]));
  const areGauges = pieces.length >= 4 && pieces.every((piece) => /^(?:[1-9]\d{0,2}|0\d\d)$/.test(piece));
  return isDate || (areGauges && rises);
}
