import { stemOf } from './lexicon/stem';

/** A piece of a text; words that matched are marked. */
export interface Piece {
  text: string;
  matched: boolean;
}

/** A stretch of a text with the words that stand for it in the index. */
interface Stretch {
  start: number;
  end: number;
  words: readonly string[];
}

/** Letters before the first match, and of the whole. */
const before = 70;
const longest = 220;

/**
 * The words around what matched, in pieces.
 * @param stretches of the text, prepared
 * @param stems of the question's prepared words
 */
export function snippet(text: string, stretches: readonly Stretch[], stems: ReadonlySet<string>): Piece[] {
  const marks = stretches.filter(({ words }) =>
    words.some((word) => stemsOf(word).some((stem) => stems.has(stem))),
  );
  const first = marks[0]?.start ?? 0;
  const from = text.length > longest ? wordStart(text, first - before) : 0;
  const to = text.length > from + longest ? wordEnd(text, from + longest) : text.length;
  const pieces: Piece[] = from > 0 ? [{ text: '… ', matched: false }] : [];
  let at = from;
  const pushTo = (end: number, matched: boolean) => {
    if (end > at) pieces.push({ text: text.slice(at, end), matched });
    at = Math.max(at, end);
  };
  for (const { start, end } of marks) {
    if (start < at || end > to) continue;
    pushTo(start, false);
    pushTo(end, true);
  }
  pushTo(to, false);
  return to < text.length ? [...pieces, { text: ' …', matched: false }] : pieces;
}

/** Stems of a prepared word, as the index parts it. */
export function stemsOf(word: string): string[] {
  return (word.match(/[\p{L}\p{N}]+/gu) ?? []).map(stemOf);
}

function wordStart(text: string, at: number): number {
  return at <= 0 ? 0 : text.indexOf(' ', at) + 1;
}

function wordEnd(text: string, at: number): number {
  const end = text.lastIndexOf(' ', at);
  return end <= 0 ? at : end;
}
