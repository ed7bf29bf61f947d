import { ink, measure } from './ink';
import { linesOf, type TextStyle } from './lines';
import { styled } from './pen';
import type { Picture } from './picture';
import { type Piece, plainTag, type Tag } from './pieces';
import type { Type } from './type';

/** What pieces are made with. */
export interface Making {
  type: Type;
  widthPt: number;
  stills: ReadonlyMap<string, Picture>;
  logo: Picture | null;
}

export const body = styled(measure.body);
export const bold = styled(measure.body, ink.text, 'strong');
export const small = styled(measure.small, ink.soft);
export const label = styled(measure.label, ink.brass, 'strong');

/** The lines of a text under one tag; the first two stay together. */
export function linePieces(
  text: string,
  path: readonly Tag[],
  { style, indent, before, width }: { style: TextStyle; indent: number; before: number; width: number },
  type: Type,
): Piece[] {
  const lines = linesOf(text, style, width, type);
  return lines.map((line, at) => ({
    height: style.leading,
    before: at === 0 ? before : 0,
    keepWithNext: at < lines.length - 1 && (at === 0 || at === lines.length - 2),
    parts: [{ path, draw: (pen, x, y) => pen.line(line, x + indent, y, style) }],
  }));
}

/** "and 7 more" */
export function morePieces(more: number, { type, widthPt }: Making): Piece[] {
  if (more === 0) return [];
  return linePieces(
    `and ${more} more`,
    [plainTag('P')],
    { style: small, indent: 14, before: 2, width: widthPt },
    type,
  );
}
