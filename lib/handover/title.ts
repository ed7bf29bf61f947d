import { oneLine } from '@/lib/film';

// One language for all, so that the same list comes out on every machine.
const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });
const words = new Intl.Segmenter('en', { granularity: 'word' });

/**
 * Cuts a title at a word and puts … there, so that it has at most `length` UTF-16 units, the strictest of the
 * usual ways to count characters. Letters with their accents, and joined emoji, stay whole.
 */
export function shortTitle(title: string, length: number): string {
  if (title.length <= length) return title;
  const kept = leading(title, length - 1);
  const atWord = /\s/.test(title.charAt(kept.length)) ? kept : kept.replace(/\s\S*$/, '');
  // A word that fills half of the title is cut rather than lost.
  const chosen = atWord.length >= length / 2 ? atWord : kept;
  return `${chosen.replace(/[\s.,;:·–-]+$/, '')}…`;
}

/** Whether nothing of it can be seen: empty, spaces, or only letters without a shape. */
export function isBlank(title: string): boolean {
  return !/[^\s\p{Control}\p{Separator}\p{Default_Ignorable_Code_Point}]/u.test(title);
}

/** Of two titles the one with more words; then the one with more letters and figures; then the first. */
export function moreTelling(first: string, second: string): string {
  const byWords = wordCount(second) - wordCount(first);
  return (byWords || letterCount(second) - letterCount(first)) > 0 ? second : first;
}

/** Escapes for text in XML (XML 1.0, section 2.4) and WebVTT (W3C WebVTT, section 4.2.2). */
export function markupText(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}

/** A title inside a sentence, short enough to read over. */
export function quoted(title: string): string {
  return `“${isBlank(title) ? '(no title)' : shortTitle(oneLine(title), 60)}”`;
}

function leading(title: string, length: number): string {
  let kept = '';
  for (const { segment } of graphemes.segment(title)) {
    if (kept.length + segment.length > length) break;
    kept += segment;
  }
  return kept;
}

function wordCount(title: string): number {
  return [...words.segment(title)].filter((part) => part.isWordLike).length;
}

function letterCount(title: string): number {
  return title.match(/[\p{Letter}\p{Number}]/gu)?.length ?? 0;
}
