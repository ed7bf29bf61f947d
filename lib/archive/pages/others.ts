import { heldBack } from '@/lib/handover';
import { folded } from '@/lib/work';

/** What is known of all clients and instruments of the shop. */
export interface KnownInShop {
  /** As they are written on the cards. */
  names: readonly string[];
  serials: readonly string[];
}

interface Word {
  from: number;
  to: number;
  word: string;
}

/** A serial of fewer letters and figures, or without a figure, may be any word. */
const shortestSerial = 5;

/** Takes what is known of others out of a text; `own` names and serials stay. */
export type WithoutOthers = (text: string, own?: readonly string[]) => string;

/**
 * Holds back whole names of clients and serials of instruments that belong to other jobs: a job may tell of a
 * neighbour on the rack, and what its own ticket knows says nothing of that. A name of one word is left: it may be
 * any word.
 */
export function withoutOthers({ names, serials }: KnownInShop): WithoutOthers {
  const byFirst = namesByFirstWord(names);
  const known = new Set(
    serials.map(plainSerial).filter((serial) => serial.length >= shortestSerial && /\d/.test(serial)),
  );
  return (text, own = []) => {
    const ownWords = new Set(
      own.flatMap((each) => [plainSerial(each), ...wordsIn(each).map(({ word }) => word)]),
    );
    const words = wordsIn(text);
    const isNamed = (at: number, rest: readonly string[]) =>
      rest.every((each, n) => words[at + 1 + n]?.word === each);
    const spans = words.flatMap(({ from, word }, at) => {
      const rest = byFirst.get(word)?.find((each) => isNamed(at, each));
      const last = rest && words[at + rest.length];
      const isOwn = rest && [word, ...rest].every((each) => ownWords.has(each));
      return last && !isOwn ? [{ from, to: last.to }] : [];
    });
    return heldBackIn(text, [...spans, ...serialsIn(text, known, ownWords)]);
  };
}

function namesByFirstWord(names: readonly string[]): Map<string, string[][]> {
  const byFirst = new Map<string, string[][]>();
  const add = ([first, ...rest]: readonly string[]) => {
    if (first !== undefined && rest.length > 0) byFirst.set(first, [...(byFirst.get(first) ?? []), rest]);
  };
  for (const name of new Set(names)) {
    const words = wordsIn(name).map(({ word }) => word);
    add(words);
    // "Quillfeather, Marla" in one place is "Marla Quillfeather" in another.
    if (words.length === 2) add(words.toReversed());
  }
  return byFirst;
}

/** Folding may change how long a text is, so each word is folded by itself. An owner's ending is no part of a name. */
function wordsIn(text: string): Word[] {
  return [...text.matchAll(/[\p{L}\p{M}\p{N}]+(?:['’-](?!s(?![\p{L}\p{N}]))[\p{L}\p{M}]+)*/giu)].map(
    (match) => ({
      from: match.index,
      to: match.index + match[0].length,
      word: folded(match[0]),
    }),
  );
}

const plainSerial = (serial: string) => folded(serial).replaceAll(/[^\p{L}\p{N}]/gu, '');

function serialsIn(text: string, known: ReadonlySet<string>, own: ReadonlySet<string>) {
  return [...text.matchAll(/[\p{L}\p{N}]+(?:[-/.][\p{L}\p{N}]+)*/gu)]
    .filter(([word]) => known.has(plainSerial(word)) && !own.has(plainSerial(word)))
    .map(({ 0: word, index }) => ({ from: index, to: index + word.length }));
}

function heldBackIn(text: string, spans: readonly { from: number; to: number }[]): string {
  let [told, at] = ['', 0];
  for (const { from, to } of spans.toSorted((a, b) => a.from - b.from)) {
    if (from < at) continue;
    told += text.slice(at, from) + heldBack;
    at = to;
  }
  return told + text.slice(at);
}
