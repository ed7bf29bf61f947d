import type { NarrationContext, NarrationLine } from '@/shared/narration';
import { findNumbers, type SpokenNumber } from '../numbers';
import { STOP, type Token, type TokenSpan } from '../words/token';
import { tokenise } from '../words/tokenise';

/** The talk made ready for the rules: timed words, numbers, sentences. */
export interface Talk {
  readonly tokens: readonly Token[];
  readonly numbers: readonly SpokenNumber[];
  /** Where each word was said. */
  readonly places: ReadonlyMap<string, readonly number[]>;
  /** Numbers by the token they begin at, and by the one behind their last. */
  readonly numberFrom: ReadonlyMap<number, SpokenNumber>;
  readonly numberTo: ReadonlyMap<number, SpokenNumber>;
  /** For each token, where its sentence begins and ends. */
  readonly sentenceOf: readonly TokenSpan[];
  readonly sentences: readonly TokenSpan[];
  readonly context: NarrationContext;
}

/** A sentence of unpunctuated talk is cut after this many words, at a line end. */
const LONGEST_SENTENCE = 40;

function findSentences(tokens: readonly Token[]): TokenSpan[] {
  const sentences: TokenSpan[] = [];
  let from = 0;
  tokens.forEach((token, at) => {
    const long = at - from > LONGEST_SENTENCE && token.stop >= STOP.clause;
    if (token.stop < STOP.full && !long) return;
    sentences.push({ from, to: at + 1 });
    from = at + 1;
  });
  if (from < tokens.length) sentences.push({ from, to: tokens.length });
  return sentences;
}

function placesOf(tokens: readonly Token[]): Map<string, number[]> {
  const places = new Map<string, number[]>();
  tokens.forEach(({ word }, at) => {
    const known = places.get(word);
    if (known) known.push(at);
    else places.set(word, [at]);
  });
  return places;
}

export function listen(lines: readonly NarrationLine[], context: NarrationContext): Talk {
  const tokens = tokenise(lines, context.slang);
  const sentences = findSentences(tokens);
  const sentenceOf = sentences.flatMap((sentence) => Array(sentence.to - sentence.from).fill(sentence));
  const numbers = findNumbers(tokens);
  const numberFrom = new Map(numbers.map((number) => [number.from, number]));
  const numberTo = new Map(numbers.map((number) => [number.to, number]));
  return { tokens, places: placesOf(tokens), numbers, numberFrom, numberTo, sentenceOf, sentences, context };
}

export const wordAt = (talk: Talk, at: number): string => talk.tokens[at]?.word ?? '';
export const stopAt = (talk: Talk, at: number): number => talk.tokens[at]?.stop ?? STOP.full;

/** The words of a span as they were said, without punctuation. */
export function wordsIn(talk: Talk, span: TokenSpan): string {
  return talk.tokens
    .slice(span.from, span.to)
    .map((token) => token.text)
    .join(' ')
    .replaceAll(" 's", "'s");
}

export function timesOf(talk: Talk, span: TokenSpan): { startMs: number; endMs: number } {
  const first = talk.tokens[span.from];
  const last = talk.tokens[Math.max(span.from, span.to - 1)];
  return { startMs: first?.startMs ?? 0, endMs: Math.max(first?.startMs ?? 0, last?.endMs ?? 0) };
}

/** Milliseconds between the end of one token and the start of another. */
export function gapMs(talk: Talk, before: number, after: number): number {
  return (talk.tokens[after]?.startMs ?? 0) - (talk.tokens[before]?.endMs ?? 0);
}
