import { TOP_DOMAINS } from '../lexicon/places';
import { type Talk, wordAt } from '../rules/talk';
import type { TokenSpan } from '../words/token';

const JOINS = new Set(['dot', 'underscore', 'dash', 'hyphen', '_', '-', 'point']);
const LONGEST_DOMAIN = 9;

/** Where the domain that begins at `at` ends, or -1: words, then "dot" and a top domain. */
function domainEnd(talk: Talk, at: number): number {
  let end = -1;
  for (let step = at + 1; step < at + LONGEST_DOMAIN; step++) {
    const dot = wordAt(talk, step) === 'dot';
    if (['at', '@'].includes(wordAt(talk, step))) return -1;
    if (dot && TOP_DOMAINS.has(wordAt(talk, step + 1))) end = step + 2;
    else if (dot && end < 0 && step - at > 4) return -1;
    if (end > 0 && step >= end && !dot) break;
  }
  return end;
}

/** Where the part before "at" begins: a word, with what is joined to it by dots and dashes, and digits. */
function localStart(talk: Talk, at: number): number {
  let from = at - 1;
  while (from > 0) {
    if (JOINS.has(wordAt(talk, from - 1))) from -= 2;
    else if (/^\d+$/.test(wordAt(talk, from)) || isSpokenDigit(wordAt(talk, from))) from -= 1;
    else break;
  }
  return Math.max(0, from);
}

const isSpokenDigit = (word: string): boolean =>
  /^(?:one|two|three|four|five|six|seven|eight|nine|zero)$/.test(word);

/** E-mail addresses, said ("… at … dot com") or written. */
export function findEmails(talk: Talk): TokenSpan[] {
  const found: TokenSpan[] = [];
  talk.tokens.forEach(({ word }, at) => {
    if (word !== 'at' && word !== '@') return;
    const to = at > 0 ? domainEnd(talk, at + 1) : -1;
    if (to > 0) found.push({ from: localStart(talk, at), to });
  });
  return found;
}
