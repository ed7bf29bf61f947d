import { STOP, type Stop } from './token';

/** A word of a line with the place of its characters, from which its time is worked out. */
export interface SplitWord {
  readonly text: string;
  readonly word: string;
  readonly at: number;
  readonly end: number;
  readonly stop: Stop;
}

/** A number, a word (with inner apostrophes), a `'s`, or a sign that means something in measurements. */
const PIECE =
  /\d+(?:,\d{3})+(?:\.\d+)?|\d+\/\d+|\d*\.\d+|\d+|let's\b|\p{L}+(?:'(?!s\b)\p{L}+)*|'s\b|[½¼¾⅛⅜⅝⅞%°"@Ω+_]|[-−–](?=\.?\d)|[.,?!;:…]+/giu;

const FULL = /[.?!;:…]/;
const GLYPHS: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '−': '-',
  '–': '-',
};

function normalise(text: string): string {
  const lower = text.toLowerCase();
  return GLYPHS[lower] ?? (/^\d[\d,]*,\d{3}/.test(lower) ? lower.replaceAll(',', '') : lower);
}

/** Cuts one line into words. Punctuation becomes the stop after the word before it. */
export function splitWords(line: string): SplitWord[] {
  const words: SplitWord[] = [];
  const straight = line
    .replace(/[’‘`´]/g, "'")
    .replace(/[“”]/g, '"')
    .replace(/\bo'clock\b/gi, 'oclock');
  for (const match of straight.matchAll(PIECE)) {
    const text = match[0];
    const last = words.at(-1);
    const inside =
      text === '.' &&
      /\p{L}/u.test(straight.charAt(match.index - 1)) &&
      /\p{L}/u.test(straight.charAt(match.index + 1));
    if (inside)
      words.push({ text, word: 'dot', at: match.index, end: match.index + text.length, stop: STOP.none });
    else if (!/^[.,?!;:…]+$/.test(text))
      words.push({
        text,
        word: normalise(text),
        at: match.index,
        end: match.index + text.length,
        stop: STOP.none,
      });
    else if (last) {
      const stop = FULL.test(text) ? STOP.full : STOP.soft;
      words[words.length - 1] = { ...last, stop: Math.max(stop, last.stop) };
    }
  }
  return words;
}
