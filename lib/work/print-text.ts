/**
 * How wide words come out in print, near enough to plan a page: rough widths of the text face (measured), rounded up.
 * Where they are too small all the same, the style sheet holds a text to the lines that were planned for it.
 */
const widthsEm = [
  [/[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}\p{Extended_Pictographic}]/u, 1],
  [/[mMW%@—…]/u, 0.9],
  [/[ijlI.,:;'|!\s]/u, 0.25],
  [/[frt()[\]"/]/u, 0.4],
  [/[wæœ]|[^\u0020-\u024f]/u, 0.8],
  [/\p{Lu}/u, 0.6],
] as const;
const otherEm = 0.53;

/** Width of one character in parts of the font size. */
function widthOf(character: string): number {
  return widthsEm.find(([kind]) => kind.test(character))?.[1] ?? otherEm;
}

/** A text as it goes on the page, and the lines that are kept free for it. */
export interface PrintedText {
  text: string;
  lines: number;
}

/**
 * A text held to a number of lines: it breaks between words, and within a word that is longer than a line. What does
 * not fit is cut with "…". Empty lines and runs of spaces go.
 * @param widthEm width of a line in parts of the font size
 */
export function cutTo(text: string, widthEm: number, maxLines: number): PrintedText {
  const tidy = text
    .trim()
    .replace(/[^\S\n]+/gu, ' ')
    .replace(/ ?\n\s*/g, '\n');
  const lines = linesOf(tidy, widthEm, maxLines + 1);
  if (lines.length <= maxLines) return { text: tidy, lines: Math.max(1, lines.length) };
  const kept = lines.slice(0, maxLines);
  const last = kept.pop() ?? '';
  return { text: kept.join('') + shortened(last.trimEnd(), widthEm), lines: maxLines };
}

/** The line without its end, so that "…" fits behind it. */
function shortened(line: string, widthEm: number): string {
  const characters = [...line];
  let width = characters.reduce((sum, one) => sum + widthOf(one), widthOf('…'));
  while (width > widthEm && characters.length > 0) width -= widthOf(characters.pop() ?? '');
  return `${characters.join('').trimEnd()}…`;
}

/** The lines of a text with the spaces and breaks at their ends; no more than `enough`, for a text may be enormous. */
function linesOf(text: string, widthEm: number, enough: number): string[] {
  const lines: string[] = [];
  let line = '';
  let width = 0;
  for (const piece of piecesOf(text, widthEm)) {
    if (line !== '' && (line.endsWith('\n') || width + piece.width > widthEm)) {
      lines.push(line);
      if (lines.length === enough) return lines;
      line = '';
      width = 0;
    }
    line += piece.text;
    width += piece.width;
  }
  return line === '' ? lines : [...lines, line];
}

/** Words with the space or break behind them; a word wider than a line comes in pieces that fit. */
function* piecesOf(text: string, widthEm: number): Generator<{ text: string; width: number }> {
  for (const [word] of text.matchAll(/\S+\s?/gu)) {
    let piece = '';
    let width = 0;
    for (const character of word) {
      const more = widthOf(character);
      if (piece !== '' && width + more > widthEm && /\S/u.test(character)) {
        yield { text: piece, width };
        piece = '';
        width = 0;
      }
      piece += character;
      width += more;
    }
    yield { text: piece, width };
  }
}

/** Lines of several texts, one below the other. */
export function linesIn(texts: readonly (PrintedText | null | undefined)[]): number {
  return texts.reduce((sum, text) => sum + (text?.lines ?? 0), 0);
}
