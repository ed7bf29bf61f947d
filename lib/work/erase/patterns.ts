/** Scripts that put no space between words: a name there stands within a longer run of letters. */
const unspaced = /[\p{sc=Han}\p{sc=Hiragana}\p{sc=Katakana}\p{sc=Thai}\p{sc=Lao}\p{sc=Khmer}\p{sc=Myanmar}]/u;

export function escaped(text: string): string {
  return text.replace(/[\\^$.*+?()[\]{}|/]/g, '\\$&');
}

/** A pattern that does not begin or end in the middle of a run of `letters`. */
export function notWithin(source: string, letters: string): RegExp {
  return new RegExp(`(?<!${letters})(?:${source})(?!${letters})`, 'gu');
}

/** A whole word or phrase, whatever space lies between its words. */
export function exactly(phrase: string): RegExp {
  return wholeWords(phrase.trim().split(/\s+/).map(escaped).join('\\s+'), phrase);
}

/**
 * A pattern for whole words.
 * @param source what to look for
 * @param like a text of the kind that it finds, which tells whether its script has spaces
 */
export function wholeWords(source: string, like: string): RegExp {
  const before = isUnspaced(like.at(0)) ? '' : '(?<![\\p{L}\\p{N}])';
  const after = isUnspaced(like.at(-1)) ? '' : '(?![\\p{L}\\p{N}])';
  return new RegExp(`${before}(?:${source})${after}`, 'gu');
}

function isUnspaced(letter: string | undefined): boolean {
  return letter !== undefined && unspaced.test(letter);
}
