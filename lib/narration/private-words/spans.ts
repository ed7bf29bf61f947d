import type { FoldedText } from './folded';

/** In the order in which they go before each other where two lie on the same words. */
export const wordReasons = ['serial', 'email', 'phone', 'address', 'name'] as const;
export type WordReason = (typeof wordReasons)[number];

/** Characters of a text (UTF-16 units) from `from` up to, not including, `to`. */
export interface PrivateSpan {
  readonly from: number;
  readonly to: number;
  readonly reason: WordReason;
}

/** Characters of a folded text, as they stand in the original. */
export function spanIn(
  { from, to }: FoldedText,
  first: number,
  end: number,
  reason: WordReason,
): PrivateSpan[] {
  const [start, stop] = [from[first], to[end - 1]];
  return start === undefined || stop === undefined || end <= first ? [] : [{ from: start, to: stop, reason }];
}

const outranks = (a: WordReason, b: WordReason): boolean => wordReasons.indexOf(a) < wordReasons.indexOf(b);

/** Spans in order, none on another; parts of one name or number that only a space keeps apart are one. */
export function settle(text: string, spans: readonly PrivateSpan[]): PrivateSpan[] {
  const settled: PrivateSpan[] = [];
  for (const span of [...spans].sort((a, b) => a.from - b.from || b.to - a.to)) {
    const last = settled.at(-1);
    const overlaps = last !== undefined && span.from < last.to;
    const isNext = last?.reason === span.reason && /^[\s.-]{0,2}$/.test(text.slice(last.to, span.from));
    if (!last || !(overlaps || isNext)) settled.push(span);
    else {
      const reason = outranks(span.reason, last.reason) ? span.reason : last.reason;
      settled[settled.length - 1] = { from: last.from, to: Math.max(last.to, span.to), reason };
    }
  }
  return settled;
}

/** A run of words as it may be written: any few signs and spaces between them, no letter or digit beside them. */
export function runOfWords(words: readonly string[], between: string): RegExp {
  const plain = words.map((word) => word.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'));
  return new RegExp(`(?<![\\p{L}\\p{N}])${plain.join(between)}(?![\\p{L}\\p{N}])`, 'gu');
}

/** Finds its words in any folded text. */
export type Finder = (text: FoldedText) => PrivateSpan[];

export function everySpan(folded: FoldedText, pattern: RegExp, reason: WordReason): PrivateSpan[] {
  return [...folded.text.matchAll(pattern)].flatMap((match) =>
    spanIn(folded, match.index, match.index + match[0].length, reason),
  );
}
