import type { StillsBlock } from '../content';
import { ink } from './ink';
import { linesOf } from './lines';
import { type Making, morePieces, small } from './making';
import { type Part, type Piece, plainTag } from './pieces';

const gap = 12;
/** Four stand in one row: so many are usual. */
const acrossOf = (count: number): number => (count === 4 ? 4 : 3);

/** Stills side by side, each over its caption. One whose picture is not at hand is left out. */
export function stillPieces({ stills, more }: StillsBlock, making: Making): Piece[] {
  const pictures = stills.flatMap(({ key, caption }) => {
    const picture = making.stills.get(key);
    return picture ? [{ picture, caption }] : [];
  });
  const across = acrossOf(pictures.length);
  const width = (making.widthPt - gap * (across - 1)) / across;
  const frame = { width, height: width * 0.5625 };
  const shown = pictures.map((still) => ({
    ...still,
    lines: linesOf(still.caption, small, width, making.type),
  }));
  const rows = Array.from({ length: Math.ceil(shown.length / across) }, (_, row) =>
    shown.slice(row * across, (row + 1) * across),
  );
  const pieces = rows.map((row): Piece => {
    const lineCount = Math.max(...row.map(({ lines }) => lines.length));
    return {
      height: frame.height + 4 + lineCount * small.leading,
      before: 7,
      keepWithNext: false,
      parts: row.map(({ picture, caption, lines }, at): Part => {
        const left = at * (width + gap);
        return {
          path: [plainTag('Figure', { alt: `Picture from the film: ${caption}`, placement: 'Block' })],
          box: { x: left, y: 0, width, height: frame.height + 4 + lines.length * small.leading },
          draw: (pen, x, y) => {
            pen.doc.rect(x + left, y, frame.width, frame.height).fill(ink.text);
            const fitted = placeIn(picture, frame);
            pen.picture(picture, x + left + fitted.x, y + fitted.y, fitted.width, fitted.height);
            lines.forEach((line, lineAt) => {
              pen.line(line, x + left, y + frame.height + 4 + lineAt * small.leading, small);
            });
          },
        };
      }),
    };
  });
  return [...pieces, ...morePieces(more, making)];
}

type Size = { width: number; height: number };

/** The largest place of its shape in a frame, in the middle. */
function placeIn({ width, height }: Size, frame: Size): Size & { x: number; y: number } {
  const scale = Math.min(frame.width / width, frame.height / height);
  const fitted = { width: width * scale, height: height * scale };
  return { ...fitted, x: (frame.width - fitted.width) / 2, y: (frame.height - fitted.height) / 2 };
}
