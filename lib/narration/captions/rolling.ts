import type { NarrationLine } from '@/shared/narration';

/** Share of cues that must begin with the end of the one before, for a file to count as rolling. */
const ROLLING_SHARE = 0.3;
const LEAST_REPEATS = 3;
/** Cues further apart than this do not scroll into each other. */
const LARGEST_GAP_MS = 1500;
const LONGEST_REPEAT = 40;

const wordsOf = (text: string): readonly string[] => text.toLowerCase().split(' ');

/** How many words at the start of `words` repeat the end of `before`. */
function repeatedWords(before: readonly string[], words: readonly string[]): number {
  const most = Math.min(before.length, words.length, LONGEST_REPEAT);
  for (let count = most; count > 0; count--) {
    const from = before.length - count;
    if (words.slice(0, count).every((word, at) => word === before[from + at])) return count;
  }
  return 0;
}

function repeats(lines: readonly NarrationLine[]): readonly number[] {
  const words = lines.map((line) => wordsOf(line.text));
  return lines.map((line, at) => {
    const before = lines[at - 1];
    if (!before || line.startMs - before.endMs > LARGEST_GAP_MS || line.voice !== before.voice) return 0;
    const count = repeatedWords(words[at - 1] ?? [], words[at] ?? []);
    const wholeLine = count === words[at]?.length || count === words[at - 1]?.length;
    return count >= 3 || wholeLine ? count : 0;
  });
}

function strip(lines: readonly NarrationLine[], counts: readonly number[]): NarrationLine[] {
  return lines.flatMap((line, at) => {
    const rest = line.text.split(' ').slice(counts[at]).join(' ');
    return rest === '' ? [] : [{ ...line, text: rest }];
  });
}

/**
 * Takes the repeats out of rolling captions, where each line is shown again above the next one. Ordinary
 * captions, in which somebody just says a word twice, come back as they are.
 */
export function unroll(lines: readonly NarrationLine[]): NarrationLine[] {
  const counts = repeats(lines);
  const repeated = counts.filter((count) => count > 0).length;
  if (repeated < LEAST_REPEATS || repeated < ROLLING_SHARE * lines.length) return [...lines];
  return unroll(strip(lines, counts));
}
