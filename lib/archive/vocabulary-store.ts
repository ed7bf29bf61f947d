import type { Database } from '@/db/open';
import { list } from './hits-store';
import { everywhere } from './narrow-store';
import { mostSlips, slipsBetween } from './rank/slips';

/** Candidates that are as near are told apart by how often they stand. */
const compared = 8;

/** The word of the archive that is nearest to one that stands nowhere; null where none is near. */
export function nearestWord(db: Database, word: string): string | null {
  const most = mostSlips(word);
  if (most === 0) return null;
  const letters = lettersOf(word);
  const near = db.$client
    .prepare('SELECT word FROM archive_vocabulary WHERE length(word) BETWEEN ? AND ?')
    .pluck()
    .all(word.length - most, word.length + most)
    .map(String)
    .filter((known) => lettersApart(letters, lettersOf(known)) <= 2 * most)
    .map((known) => ({ known, slips: slipsBetween(word, known, most) }))
    .filter(({ slips }) => slips <= most)
    .sort((a, b) => a.slips - b.slips || sameStart(word, b.known) - sameStart(word, a.known));
  const [first] = near;
  if (!first) return null;
  const level = near.filter(
    ({ known, slips }) => slips === first.slips && sameStart(word, known) === sameStart(word, first.known),
  );
  const often = level
    .slice(0, compared)
    .map(({ known }) => ({ known, times: timesOf(db, known) }))
    .sort((a, b) => b.times - a.times);
  return often[0]?.known ?? null;
}

function timesOf(db: Database, word: string): number {
  const { things, passages } = list(
    db,
    [word],
    { within: everywhere, tags: [], things: true, passages: true },
    200,
  );
  return things.length + passages.length;
}

/** People seldom mistype the first letter. */
function sameStart(a: string, b: string): number {
  return a.charAt(0) === b.charAt(0) ? 1 : 0;
}

const lettersCounted = 26;

/** Which letters a word is made of, as bits: to reckon slips for each of thousands of words takes too long. */
function lettersOf(word: string): number {
  let letters = 0;
  for (let at = 0; at < word.length; at++) {
    const nth = word.charCodeAt(at) - 'a'.charCodeAt(0);
    letters |= 1 << (nth >= 0 && nth < lettersCounted ? nth : lettersCounted);
  }
  return letters;
}

/** Letters that one has and the other has not. One slip changes two at most. */
function lettersApart(one: number, other: number): number {
  let count = 0;
  for (let left = one ^ other; left !== 0; left &= left - 1) count += 1;
  return count;
}
