/** A text made plain for finding, with the way back to the places in the text as it was written. */
export interface Folded {
  readonly plain: string;
  /** Where the letters `from` to `to` of the plain text stand in the written one. */
  written(from: number, to: number): { from: number; to: number };
}

/** Letters that carry no accent by Unicode's rules, but are written without their stroke or knot all the same. */
const plainer: Readonly<Record<string, string>> = {
  ł: 'l',
  ø: 'o',
  đ: 'd',
  ð: 'd',
  ħ: 'h',
  ı: 'i',
  ß: 'ss',
  æ: 'ae',
  œ: 'oe',
  þ: 'th',
  ς: 'σ',
  '’': "'",
  ʼ: "'",
  '`': "'",
};

/** Lower case, no accents, one kind of apostrophe. */
export function folded(text: string): string {
  return Array.from(text, foldedLetter).join('');
}

/** As `folded`, and remembers where each letter came from. */
export function foldedWithPlaces(text: string): Folded {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: all of ASCII folds letter by letter.
  if (/^[\x00-\x5f\x61-\x7f]*$/.test(text))
    return { plain: text.toLowerCase(), written: (from, to) => ({ from, to }) };
  const starts: number[] = [];
  const ends: number[] = [];
  let plain = '';
  let at = 0;
  for (const letter of text) {
    const folded = foldedLetter(letter);
    for (let unit = 0; unit < folded.length; unit++) {
      starts.push(at);
      ends.push(at + letter.length);
    }
    at += letter.length;
    // An accent of its own belongs to the letter before it.
    if (folded === '' && ends.length > 0) ends[ends.length - 1] = at;
    plain += folded;
  }
  return {
    plain,
    written: (from, to) => ({ from: starts[from] ?? text.length, to: ends[to - 1] ?? 0 }),
  };
}

const kept = new Map<string, string>();

function foldedLetter(letter: string): string {
  const known = kept.get(letter);
  if (known !== undefined) return known;
  const bare = (text: string) => text.normalize('NFKD').replace(/\p{M}/gu, '');
  const folded = Array.from(bare(bare(letter).toLowerCase()), (each) => plainer[each] ?? each).join('');
  if (kept.size < 10_000) kept.set(letter, folded);
  return folded;
}
