import type { Face } from '@/lib/handover/fonts';
import { printable, type Type } from './type';

export interface TextStyle {
  face: Face;
  size: number;
  leading: number;
  color: string;
}

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** The lines of a text, each with the space that ended it; words longer than a line are broken. Never none. */
export function linesOf(text: string, style: TextStyle, widthPt: number, type: Type): string[] {
  const wide = (words: string) => type.width(words.trimEnd(), style.face, style.size);
  const lines = printable(text)
    .split('\n')
    .filter((paragraph) => paragraph.trim() !== '')
    .flatMap((paragraph) => linesOfParagraph(paragraph.trim(), widthPt, wide));
  return lines.length > 0 ? lines : [''];
}

function linesOfParagraph(text: string, widthPt: number, wide: (words: string) => number): string[] {
  const space = wide('| |') - wide('||');
  const lines: string[] = [];
  let line = '';
  let lineWidth = 0;
  for (const word of text.match(/\S+\s*/gu) ?? []) {
    for (const piece of wide(word) > widthPt ? broken(word, widthPt, wide) : [word]) {
      const width = wide(piece);
      if (line !== '' && lineWidth + width > widthPt) {
        lines.push(line);
        line = '';
        lineWidth = 0;
      }
      line += piece;
      lineWidth += width + (piece.endsWith(' ') ? space : 0);
    }
  }
  return [...lines, line];
}

/** A word longer than a line, in pieces that fit. */
function broken(word: string, widthPt: number, wide: (words: string) => number): string[] {
  const pieces: string[] = [];
  let piece = '';
  for (const { segment } of graphemes.segment(word)) {
    if (piece !== '' && wide(piece + segment) > widthPt) {
      pieces.push(piece);
      piece = '';
    }
    piece += segment;
  }
  return [...pieces, piece];
}
