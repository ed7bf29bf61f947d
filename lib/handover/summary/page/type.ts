import * as fontkit from 'fontkit';
import { type Face, type FontName, fontBytes, fontNames, fontsOf } from '@/lib/handover/fonts';

/** Words of one line in one font. */
export interface Run {
  font: FontName;
  text: string;
}

/** What stands for letters that no font has. */
export const substitute = '[?]';

/** Says which font has which letter, and how wide words come out; keeps what it could not print. */
export interface Type {
  runs(text: string, face: Face): Run[];
  width(text: string, face: Face, size: number): number;
  /** Letters that no font has, in the order in which they came up since `forgetMissing`. */
  missing(): string[];
  forgetMissing(): void;
}

/** @param widthOf width of a run in points, as the writer of the file will set it */
export function openType(widthOf: (run: Run, size: number) => number): Type {
  const letters = new Map(fontNames.map((name) => [name, lettersOf(name)]));
  const missing = new Set<string>();
  const has = (font: FontName, word: string) =>
    [...word].every((sign) => letters.get(font)?.has(sign.codePointAt(0) ?? 0));
  const fontFor = (word: string, face: Face) => fontsOf[face].find((font) => has(font, word));
  const ofWord = (word: string, face: Face): Run[] => {
    const font = fontFor(word, face);
    return font ? [{ font, text: word }] : signs(word, face);
  };
  const signs = (word: string, face: Face): Run[] =>
    [...graphemes.segment(word)].map(({ segment }): Run => {
      const font = fontFor(segment, face);
      if (font) return { font, text: segment };
      missing.add(segment);
      return { font: fontsOf[face][0] ?? 'Sofia', text: substitute };
    });
  const runs = (text: string, face: Face): Run[] =>
    joined(wordsOf(text).flatMap((word) => ofWord(word, face)));
  // The same words are measured again for each limit that is tried.
  const widths = new Map<string, number>();
  return {
    runs,
    width: (text, face, size) => {
      const key = `${face} ${size} ${text}`;
      const width = widths.get(key) ?? runs(text, face).reduce((sum, run) => sum + widthOf(run, size), 0);
      widths.set(key, width);
      return width;
    },
    missing: () => [...missing],
    forgetMissing: () => missing.clear(),
  };
}

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

/**
 * Composed letters where Unicode has them, one kind of space, and nothing that has no shape (joiners, direction
 * marks, control characters).
 */
export function printable(text: string): string {
  return text
    .normalize('NFC')
    .replace(/\r\n?/g, '\n')
    .replace(/[^\S\n]+/gu, ' ')
    .replace(/(?!\n)[\p{Control}\p{Default_Ignorable_Code_Point}\p{Surrogate}]/gu, '');
}

/** Words with the spaces behind them: a word is set in one font if there is one that has all of it. */
function wordsOf(text: string): string[] {
  return text.match(/\S+\s*|\s+/gu) ?? [];
}

/** Neighbours in one font are one run; letters that cannot be printed are said once, not one by one. */
function joined(runs: readonly Run[]): Run[] {
  const result: Run[] = [];
  for (const run of runs) {
    const last = result.at(-1);
    if (run.text === substitute && last?.text.endsWith(substitute)) continue;
    if (last && last.font === run.font) result[result.length - 1] = { ...last, text: last.text + run.text };
    else result.push(run);
  }
  return result;
}

const known = new Map<FontName, ReadonlySet<number>>();

function lettersOf(name: FontName): ReadonlySet<number> {
  const before = known.get(name);
  if (before) return before;
  const font = fontkit.create(Buffer.from(fontBytes(name)));
  if (!('characterSet' in font))
    throw new Error(`The font ${name} is a collection; it must be a single face.`);
  const letters = new Set(font.characterSet);
  known.set(name, letters);
  return letters;
}
