import type { Pen } from './pen';

declare global {
  namespace PDFKit.Mixins {
    /** The writer takes these too; its types do not name them. */
    interface StructureElementOptions {
      scope?: 'Row' | 'Column';
      bbox?: [number, number, number, number];
      placement?: 'Block' | 'Inline';
    }
  }
}

/** An element of the structure tree (ISO 32000-1, 14.8.4). Parts that follow each other under one object share it. */
export interface Tag {
  type: string;
  options: PDFKit.Mixins.StructureElementOptions;
}

export function plainTag(type: string, options: Tag['options'] = {}): Tag {
  return { type, options };
}

/** Something with a meaning, at its place in the structure. x and y: the top left corner of its piece. */
export interface Part {
  path: readonly Tag[];
  /** A figure says where it lies, from the corner of its piece. */
  box?: { x: number; y: number; width: number; height: number };
  draw(pen: Pen, x: number, y: number): void;
}

/** What is never torn apart: a line, a row of a table, a picture. Heights in points. */
export interface Piece {
  height: number;
  /** Free space above it, unless it begins a page. */
  before: number;
  keepWithNext: boolean;
  parts: readonly Part[];
  /** Rules and the like, which mean nothing. */
  ornament?: (pen: Pen, x: number, y: number) => void;
  /** Printed again where the piece begins a page: the heads of its table. */
  head?: Piece;
}

export interface Placed {
  piece: Piece;
  page: number;
  y: number;
  /** A head that is printed again has its meaning elsewhere. */
  again: boolean;
}

export interface Flow {
  placed: Placed[];
  pages: number;
  /** Whether everything lies within its page. */
  fits: boolean;
}

/** Puts pieces one under another on as many pages as it takes. */
export function flow(pieces: readonly Piece[], top: number, bottom: number): Flow {
  const placed: Placed[] = [];
  let page = 0;
  let y = top;
  let fits = true;
  pieces.forEach((piece, at) => {
    const before = y === top ? 0 : piece.before;
    if (y > top && y + before + heightKept(pieces, at) > bottom) {
      page += 1;
      y = top;
      if (piece.head) {
        placed.push({ piece: piece.head, page, y, again: true });
        y += piece.head.height;
      }
    } else y += before;
    placed.push({ piece, page, y, again: false });
    y += piece.height;
    if (y > bottom) fits = false;
  });
  return { placed, pages: page + 1, fits };
}

/** The height of a piece and of all that must not part from it. */
function heightKept(pieces: readonly Piece[], at: number): number {
  const piece = pieces[at];
  if (!piece) return 0;
  if (!piece.keepWithNext) return piece.height;
  return piece.height + (pieces[at + 1]?.before ?? 0) + heightKept(pieces, at + 1);
}
