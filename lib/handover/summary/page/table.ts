import type { TableBlock, TableColumn } from '../content';
import { ink, measure } from './ink';
import { linesOf, type TextStyle } from './lines';
import { body, bold, label, type Making, morePieces } from './making';
import { styled } from './pen';
import { type Part, type Piece, plainTag, type Tag } from './pieces';

const gap = 10;
const shortTable = 4;
const room = { above: 2.5, below: 3 };
const figures = styled({ ...measure.body, size: 9 }, ink.text, 'figures');

interface Column extends TableColumn {
  x: number;
  width: number;
}

/** Rows are never torn; where the table goes on, its heads stand again. */
export function tablePieces(block: TableBlock, making: Making): Piece[] {
  const columns = columnsOf(block, making.widthPt);
  const table = plainTag('Table');
  const heads = block.columns.map(({ head }) => head);
  const head: Piece = {
    ...rowPiece(heads, { columns, table, making, styleOf: () => label, kind: 'head' }),
    before: 5,
    keepWithNext: true,
  };
  const row = (cells: string[], isFoot: boolean): Piece => ({
    ...rowPiece(cells, {
      columns,
      table,
      making,
      styleOf: (column) => (column.figures ? figures : isFoot ? bold : body),
      kind: isFoot ? 'foot' : 'row',
    }),
    head,
  });
  const rows = [
    ...block.rows.map((cells) => row(cells, false)),
    ...block.foot.map((cells) => row(cells, true)),
  ];
  return [head, ...rows.map(keptTogether), ...morePieces(block.more, making)];
}

/** A short table is not torn; of a long one no row stands alone on its page. */
function keptTogether(row: Piece, at: number, rows: readonly Piece[]): Piece {
  const isBeforeLast = at === rows.length - 2;
  const isTied = rows.length <= shortTable ? at < rows.length - 1 : at === 0 || isBeforeLast;
  return { ...row, keepWithNext: isTied };
}

function columnsOf({ columns }: TableBlock, widthPt: number): Column[] {
  const free = widthPt - gap * (columns.length - 1);
  let x = 0;
  return columns.map((column) => {
    const placed = { ...column, x, width: free * column.share };
    x += placed.width + gap;
    return placed;
  });
}

interface RowMaking {
  columns: readonly Column[];
  table: Tag;
  making: Making;
  styleOf(column: Column): TextStyle;
  kind: 'head' | 'row' | 'foot';
}

function rowPiece(cells: readonly string[], { columns, table, making, styleOf, kind }: RowMaking): Piece {
  const row = plainTag('TR');
  const laid = columns.map((column, at) => {
    const style = styleOf(column);
    return { column, style, lines: linesOf(cells[at] ?? '', style, column.width, making.type) };
  });
  const height = Math.max(...laid.map(({ style, lines }) => style.leading * lines.length));
  const parts = laid.map(({ column, style, lines }, at): Part => {
    const tag =
      kind === 'head'
        ? plainTag('TH', { scope: 'Column' })
        : at === 0
          ? plainTag('TH', { scope: 'Row' })
          : plainTag('TD');
    return {
      path: [table, row, tag],
      draw: (pen, x, y) =>
        lines.forEach((line, lineAt) => {
          const top = y + room.above + lineAt * style.leading;
          if (column.figures) pen.lineToRight(line, x + column.x + column.width, top, style);
          else pen.line(line, x + column.x, top, style);
        }),
    };
  });
  const whole = room.above + height + room.below;
  return {
    height: whole,
    before: 0,
    keepWithNext: false,
    parts,
    ornament: (pen, x, y) => {
      if (kind === 'foot') pen.rule(x, y, making.widthPt, ink.text, 0.9);
      else if (kind === 'head') pen.rule(x, y + whole, making.widthPt, ink.brightBrass, 1);
      else pen.rule(x, y + whole, making.widthPt, ink.rule, 0.4);
    },
  };
}
