/** A number stays one; text is made safe; null is an empty field. */
export type Cell = string | number | boolean | null;

/**
 * A table by RFC 4180: a header line, commas, CRLF at the end of every line, quotation marks doubled. It begins with
 * a byte order mark, by which spreadsheet programs know UTF-8 (common practice, no source).
 */
export function writeCsv(columns: readonly string[], rows: readonly (readonly Cell[])[]): string {
  return `\ufeff${[columns, ...rows].map(csvLine).join('')}`;
}

/** One line of such a table, with its end: for a table that is written bit by bit. */
export function csvLine(cells: readonly Cell[]): string {
  return `${cells.map(field).join(',')}\r\n`;
}

/**
 * A spreadsheet takes text that begins with one of these for a formula (OWASP, CSV Injection; the wide forms too).
 * With an apostrophe before it, it is text.
 */
const formula = /^[=+\-@\t\r\n＝＋－＠]/;
const plainNumber = /^[+-]?\d+(\.\d+)?$/;

function field(cell: Cell): string {
  if (cell === null) return '';
  if (typeof cell === 'boolean') return cell ? 'yes' : 'no';
  if (typeof cell === 'number') return String(cell);
  const safe = formula.test(cell) && !plainNumber.test(cell) ? `'${cell}` : cell;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
