/** The papers that a ticket is printed on (ISO 216; US Letter, ANSI/ASME Y14.1 size A). */
export const papers = {
  a4: { name: 'A4', widthMm: 210, heightMm: 297 },
  letter: { name: 'Letter', widthMm: 215.9, heightMm: 279.4 },
} as const;
export type Paper = keyof typeof papers;

/** The paper that was asked for; A4 where none was, or one that is not held. */
export function paperOf(asked: unknown): Paper {
  return asked === 'letter' ? 'letter' : 'a4';
}

/** Measures of the printed ticket in millimetres. `print.module.css` draws what is planned with them. */
export const layout = {
  margin: 10,
  head: 38,
  days: 14,
  /** Height of a line, and the size of its letters. */
  line: 4.4,
  letter: 3.35,
  smallLine: 3.5,
  smallLetter: 2.8,
  strongLetter: 3.8,
  titleLetter: 5.4,
  /** Heading of a section, with the space before it. */
  heading: 7,
  /** Column heads of a table. */
  columns: 4,
  /** Space and rule between the rows of a list that is ticked by hand. */
  rowGap: 1.6,
  columnGap: 6,
  /** Space behind a cell of a table. */
  cellGap: 2,
  /** The code, beside the title. */
  code: 44,
  place: 54,
  /** "Serial" and the like, before what is known. */
  label: 14,
  /** Columns of the tables beside the one that takes what is left. */
  outcome: 47,
  origin: 16,
  price: 38,
  deed: 44,
  doubt: 62,
  /** At least this much stays free to write on. */
  notes: 20,
} as const;

/** The width that is written on. */
export function widthOf(paper: Paper): number {
  return papers[paper].widthMm - 2 * layout.margin;
}

/** The height that is written on. */
export function heightOf(paper: Paper): number {
  return papers[paper].heightMm - 2 * layout.margin;
}
