import * as fontkit from 'fontkit';
import { z } from 'zod';
import type { Size } from '../stills';

/** Words of a caption in one font. */
export const captionRunSchema = z.object({
  text: z.string(),
  /** Path of a TrueType or OpenType file that has all letters of the text. */
  font: z.string().min(1),
});
export type CaptionRun = z.infer<typeof captionRunSchema>;

/** Words at their place below the picture. `y`: the base line, in pixels from the upper edge of the strip. */
export interface PlacedRun extends CaptionRun {
  x: number;
  y: number;
}

export interface CaptionStrip {
  height: number;
  sizePx: number;
  runs: PlacedRun[];
}

/** The type against the shorter side of the picture, so that it is read on a telephone whichever way it is held. */
const sizeShare = 1 / 22;
const leastSizePx = 12;
const lineHeight = 1.35;
/** Space around the text, and from a line's upper edge to its base, against the size of the type. */
const marginShare = 0.7;
const ascentShare = 1;

/** Lays a caption below a picture: broken between words, or within a word that is wider than the strip. */
export function captionStrip(runs: readonly CaptionRun[], picture: Size): CaptionStrip {
  const sizePx = Math.max(leastSizePx, Math.round(Math.min(picture.width, picture.height) * sizeShare));
  const margin = Math.round(sizePx * marginShare);
  const measure = new Measure(sizePx);
  const lines = brokenLines(runs, picture.width - 2 * margin, measure);
  const placed = lines.flatMap((line, place) => {
    const y = Math.round(margin + (place * lineHeight + ascentShare) * sizePx);
    let x = margin;
    return line.map((run): PlacedRun => {
      const at = { ...run, x: Math.round(x), y };
      x += measure.widthOf(run);
      return at;
    });
  });
  const height = Math.ceil((lines.length * lineHeight * sizePx + 2 * margin) / 2) * 2;
  return { height, sizePx, runs: placed.filter(({ text }) => text.trim() !== '') };
}

class Measure {
  readonly #sizePx: number;
  readonly #fonts = new Map<string, fontkit.Font>();

  constructor(sizePx: number) {
    this.#sizePx = sizePx;
  }

  widthOf({ text, font }: CaptionRun): number {
    const { unitsPerEm } = this.#font(font);
    return (this.#font(font).layout(text).advanceWidth * this.#sizePx) / unitsPerEm;
  }

  #font(path: string): fontkit.Font {
    const known = this.#fonts.get(path);
    if (known) return known;
    const font = fontkit.openSync(path);
    if (!('layout' in font)) throw new Error(`${path} holds more than one font`);
    this.#fonts.set(path, font);
    return font;
  }
}

function brokenLines(runs: readonly CaptionRun[], width: number, measure: Measure): CaptionRun[][] {
  const lines: CaptionRun[][] = [[]];
  let usedPx = 0;
  for (const word of runs.flatMap((run) => wordsOf(run, width, measure))) {
    const seenPx = measure.widthOf({ ...word, text: word.text.trimEnd() });
    if (usedPx > 0 && usedPx + seenPx > width) {
      lines.push([]);
      usedPx = 0;
    }
    const line = lines.at(-1) ?? [];
    const last = line.at(-1);
    if (last?.font === word.font) line.splice(-1, 1, { ...last, text: last.text + word.text });
    else line.push(word);
    usedPx += measure.widthOf(word);
  }
  return lines;
}

/** Words with the spaces behind them; one that is wider than a line comes in parts that fit. */
function wordsOf({ text, font }: CaptionRun, width: number, measure: Measure): CaptionRun[] {
  const words = text.match(/\S+\s*|\s+/gu) ?? [];
  return words.flatMap((word) =>
    measure.widthOf({ text: word.trimEnd(), font }) <= width
      ? [{ text: word, font }]
      : partsOf(word, font, width, measure),
  );
}

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

function partsOf(word: string, font: string, width: number, measure: Measure): CaptionRun[] {
  const parts = [''];
  for (const { segment } of graphemes.segment(word)) {
    const longer = `${parts.at(-1)}${segment}`;
    if (parts.at(-1) === '' || measure.widthOf({ text: longer.trimEnd(), font }) <= width)
      parts.splice(-1, 1, longer);
    else parts.push(segment);
  }
  return parts.map((text) => ({ text, font }));
}
