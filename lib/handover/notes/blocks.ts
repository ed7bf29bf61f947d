import type { BlockContent, ListItem, PhrasingContent, TableCell, TableRow } from 'mdast';

/** Pieces of a section, in the terms of mdast, so that no word of the record can turn into Markdown. */
export type Block = BlockContent;
export type Inline = PhrasingContent;

export const words = (value: string): Inline => ({ type: 'text', value });

export function paragraph(...children: Inline[]): Block {
  return { type: 'paragraph', children };
}

export function subheading(text: string): Block {
  return { type: 'heading', depth: 3, children: [words(text)] };
}

/** Set out as it stands, each letter of one width. */
export function setOut(value: string): Block {
  return { type: 'code', value };
}

export function bullets(items: readonly Inline[][]): Block {
  return {
    type: 'list',
    ordered: false,
    spread: false,
    children: items.map(
      (children): ListItem => ({
        type: 'listItem',
        spread: false,
        children: [{ type: 'paragraph', children }],
      }),
    ),
  };
}

/** A sentence that ends in a colon, and what it tells of; nothing where there is nothing to tell. */
export function told(sentence: string, items: readonly Inline[][]): Block[] {
  return items.length === 0 ? [] : [paragraph(words(sentence)), bullets(items)];
}

export function table(head: readonly string[], rows: readonly Inline[][][]): Block {
  const cell = (children: Inline[]): TableCell => ({ type: 'tableCell', children });
  const row = (cells: readonly Inline[][]): TableRow => ({ type: 'tableRow', children: cells.map(cell) });
  return { type: 'table', children: [row(head.map((text) => [words(text)])), ...rows.map(row)] };
}
