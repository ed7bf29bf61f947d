import type {
  ListBlock,
  PairsBlock,
  SummaryBlock,
  SummaryContent,
  SummarySection,
  WordsBlock,
} from '../content';
import { ink, measure } from './ink';
import { linesOf } from './lines';
import { body, label, linePieces, type Making, morePieces, small } from './making';
import { styled } from './pen';
import { type Part, type Piece, plainTag } from './pieces';
import { drawingPieces } from './plan-drawing';
import { stillPieces } from './still-grid';
import { tablePieces } from './table';
import { ticketHead } from './ticket-head';

/** The whole summary in pieces, in reading order. */
export function piecesOf(content: SummaryContent, isCut: boolean, making: Making): Piece[] {
  const note: SummarySection[] = isCut
    ? [{ id: 'closing', title: null, blocks: [{ is: 'words', text: cutNote, small: true }] }]
    : [];
  return [
    ...ticketHead(content.head, making),
    ...[...content.sections, ...note].flatMap((section) => sectionPieces(section, making)),
  ];
}

const cutNote =
  'Some of this is shortened to keep it to three pages. The whole record is at the workshop: ask for what is missing.';

function sectionPieces({ title, blocks }: SummarySection, making: Making): Piece[] {
  const heading = title === null ? [] : headingPieces(title, making);
  return [...heading, ...blocks.flatMap((block) => blockPieces(block, making))];
}

function headingPieces(title: string, { type, widthPt }: Making): Piece[] {
  const style = styled(measure.heading, ink.verdigris, 'strong');
  const path = [plainTag('H2')];
  return linesOf(title, style, widthPt, type).map((line, at) => ({
    height: style.leading + 2,
    before: at === 0 ? 13 : 0,
    keepWithNext: true,
    parts: [{ path, draw: (pen, x, y) => pen.line(line, x, y, style) }],
    ornament: (pen, x, y) => pen.rule(x, y - 2, widthPt),
  }));
}

function blockPieces(block: SummaryBlock, making: Making): Piece[] {
  switch (block.is) {
    case 'words':
      return wordsPieces(block, making);
    case 'list':
      return listPieces(block, making);
    case 'pairs':
      return pairsPieces(block, making);
    case 'table':
      return tablePieces(block, making);
    case 'drawing':
      return drawingPieces(block, making);
    case 'stills':
      return stillPieces(block, making);
  }
}

function wordsPieces({ text, small: isSmall }: WordsBlock, { type, widthPt }: Making): Piece[] {
  const style = isSmall ? small : body;
  return text
    .split('\n')
    .filter((paragraph) => paragraph.trim() !== '')
    .flatMap((paragraph) =>
      linePieces(paragraph, [plainTag('P')], { style, indent: 0, before: 4, width: widthPt }, type),
    );
}

const marks: Readonly<Record<ListBlock['mark'], { sign: string; color: string }>> = {
  dot: { sign: '•', color: ink.brightBrass },
  tick: { sign: '✓', color: ink.verdigris },
  dash: { sign: '–', color: ink.brass },
  care: { sign: '!', color: ink.alarm },
};

function listPieces({ mark, items, more }: ListBlock, making: Making): Piece[] {
  const list = plainTag('L');
  const { sign, color } = marks[mark];
  const style = mark === 'care' ? styled(measure.small, ink.text) : body;
  const pieces = items.flatMap((item) => {
    const entry = plainTag('LI');
    const signed: Part = {
      path: [list, entry, plainTag('Lbl')],
      draw: (pen, x, y) => pen.line(sign, x + 2, y, { ...style, face: 'strong', color }),
    };
    const width = making.widthPt - 14;
    const before = mark === 'care' ? 1.5 : 2;
    const lines = linePieces(
      item,
      [list, entry, plainTag('LBody')],
      { style, indent: 14, before, width },
      making.type,
    );
    return lines.map((line, at) => (at === 0 ? { ...line, parts: [signed, ...line.parts] } : line));
  });
  return [...pieces, ...morePieces(more, making)];
}

/** Short facts in two columns, each under its name. */
function pairsPieces({ pairs }: PairsBlock, { type, widthPt }: Making): Piece[] {
  const width = (widthPt - 18) / 2;
  const list = plainTag('L');
  const cells = pairs.map((pair) => {
    const entry = plainTag('LI');
    const lines = linesOf(pair.value, body, width, type);
    const parts = (shift: number): Part[] => [
      {
        path: [list, entry, plainTag('Lbl')],
        draw: (pen, x, y) => pen.line(pair.label, x + shift, y, label),
      },
      {
        path: [list, entry, plainTag('LBody')],
        draw: (pen, x, y) =>
          lines.forEach((line, at) => {
            pen.line(line, x + shift, y + label.leading + at * body.leading, body);
          }),
      },
    ];
    return { height: label.leading + lines.length * body.leading, parts };
  });
  return Array.from({ length: Math.ceil(cells.length / 2) }, (_, row) => {
    const [left, right] = [cells[row * 2], cells[row * 2 + 1]];
    return {
      height: Math.max(left?.height ?? 0, right?.height ?? 0),
      before: 5,
      keepWithNext: false,
      parts: [...(left?.parts(0) ?? []), ...(right?.parts(width + 18) ?? [])],
    };
  });
}
