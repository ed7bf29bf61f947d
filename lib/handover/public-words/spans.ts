/** Characters of a text from `from` up to, not including, `to` (UTF-16 units). */
export type Span = { readonly from: number; readonly to: number };

/** A span, and what comes in its place. */
export type Replacement = Span & { readonly with: string };

/** A text, and the parts of it that were put in. */
export interface Draft {
  readonly text: string;
  readonly given: readonly Span[];
}

export const overlap = (a: Span, b: Span): boolean => a.from < b.to && b.from < a.to;
export const holds = (outer: Span, inner: Span): boolean => outer.from <= inner.from && inner.to <= outer.to;

/** Wherever the words stand, in capitals or not. */
export function everywhere(text: string, words: string): Span[] {
  if (words === '') return [];
  const pattern = new RegExp(words.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'), 'giu');
  return [...text.matchAll(pattern)].map((match) => ({
    from: match.index,
    to: match.index + match[0].length,
  }));
}

/** Replacements in order, none on another. A part that was put in before goes with what touches it. */
export function replaced(draft: Draft, replacements: readonly Replacement[]): Draft {
  const whole = replacements.map((replacement) => withTouched(replacement, draft.given));
  let text = '';
  let at = 0;
  const given: Span[] = [];
  const goOnTo = (end: number) => {
    const by = text.length - at;
    const kept = draft.given.filter((span) => holds({ from: at, to: end }, span));
    given.push(...kept.map(({ from, to }) => ({ from: from + by, to: to + by })));
    text += draft.text.slice(at, end);
  };
  for (const replacement of whole) {
    goOnTo(Math.max(at, replacement.from));
    given.push({ from: text.length, to: text.length + replacement.with.length });
    text += replacement.with;
    at = Math.max(at, replacement.to);
  }
  goOnTo(draft.text.length);
  return { text, given };
}

function withTouched(replacement: Replacement, given: readonly Span[]): Replacement {
  const touched = given.filter((span) => overlap(span, replacement));
  return {
    from: Math.min(replacement.from, ...touched.map(({ from }) => from)),
    to: Math.max(replacement.to, ...touched.map(({ to }) => to)),
    with: replacement.with,
  };
}
