/** A word, number or sign of a question; words in small letters. */
export interface Token {
  word: string;
  start: number;
  end: number;
  /** Written with a capital, not at the very start. */
  isCapital: boolean;
}

const written =
  /\d{4}-\d{2}-\d{2}(?!\d)|\d{4}-w\d{1,2}(?!\d)|\d{4}[-/]\d{2}(?![\d/-])|\d{1,2}[./]\d{1,2}[./](?:\d{4}|\d{2})(?![\d./\p{L}])|\d+(?:st|nd|rd|th)?(?![\p{L}\d.])|\p{L}+|['’]\d\d(?!\d)|[-–—,]|\S/giu;

export function timeTokens(text: string): Token[] {
  return [...text.matchAll(written)].map((match) => ({
    word: match[0].toLowerCase(),
    start: match.index,
    end: match.index + match[0].length,
    isCapital: match.index > 0 && /^\p{Lu}/u.test(match[0]),
  }));
}
