import type { SimpleWord } from '../lexicon/simple-words';
import { lexiconWords } from '../lexicon/trade';
import type { QuestionContext } from './question';

const shortest = 5;
/** From this length on two letters may be wrong. */
const longWord = 8;

/** The word that was meant where this one occurs nowhere: one of the trade's, or one of the archive's. */
export function meantWord({ word, isNumber }: SimpleWord, { knows, near }: QuestionContext): string | null {
  if (isNumber || /\d/.test(word) || word.length < 3 || knows(word)) return null;
  const meant = nearestOfTrade(word) ?? near(word);
  return meant === word ? null : meant;
}

function nearestOfTrade(word: string): string | null {
  if (word.length < shortest) return null;
  const most = word.length >= longWord ? 2 : 1;
  const near = lexiconWords
    .filter((other) => Math.abs(other.length - word.length) <= most && other.charAt(0) === word.charAt(0))
    .map((other) => ({ other, distance: slipsBetween(word, other) }))
    .filter(({ distance }) => distance <= most)
    .sort((a, b) => a.distance - b.distance);
  return near[0]?.other ?? null;
}

/** Letters put in, left out, changed or swapped with their neighbour (optimal string alignment). */
export function slipsBetween(a: string, b: string): number {
  let before: number[] = [];
  let above = Array.from({ length: b.length + 1 }, (_, at) => at);
  for (let row = 1; row <= a.length; row++) {
    const now = [row];
    for (let column = 1; column <= b.length; column++) {
      const isSame = a[row - 1] === b[column - 1];
      const isSwap = row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1];
      now.push(
        Math.min(
          (above[column] ?? 0) + 1,
          (now[column - 1] ?? 0) + 1,
          (above[column - 1] ?? 0) + (isSame ? 0 : 1),
          isSwap ? (before[column - 2] ?? 0) + 1 : Number.POSITIVE_INFINITY,
        ),
      );
    }
    before = above;
    above = now;
  }
  return above[b.length] ?? 0;
}
