/** A part of a file, both ends included, as HTTP counts them. */
export interface ByteRange {
  first: number;
  last: number;
}

export type RangeAnswer = { kind: 'whole' } | { kind: 'part'; range: ByteRange } | { kind: 'unsatisfiable' };

const rangeSet = /^bytes=\s*(\d*)-(\d*)\s*$/i;

/**
 * Reads a Range field by RFC 9110, section 14. What is not one well-formed byte range is passed over, as
 * section 14.2 allows: the answer is then the whole.
 * @param sizeBytes length of the file
 */
export function readRange(field: string | undefined, sizeBytes: number): RangeAnswer {
  const match = field === undefined ? null : rangeSet.exec(field);
  if (!match) return { kind: 'whole' };
  const [, first = '', last = ''] = match;
  if (first === '' && last === '') return { kind: 'whole' };
  if (first === '') return suffix(Number(last), sizeBytes);
  const from = Number(first);
  const to = last === '' ? sizeBytes - 1 : Number(last);
  if (last !== '' && to < from) return { kind: 'whole' };
  if (from >= sizeBytes) return { kind: 'unsatisfiable' };
  return { kind: 'part', range: { first: from, last: Math.min(to, sizeBytes - 1) } };
}

/** "bytes=-500": the last 500 bytes (RFC 9110, section 14.1.2). */
function suffix(length: number, sizeBytes: number): RangeAnswer {
  if (length === 0 || sizeBytes === 0) return { kind: 'unsatisfiable' };
  return { kind: 'part', range: { first: Math.max(0, sizeBytes - length), last: sizeBytes - 1 } };
}

/**
 * Whether an If-Range field lets the range stand (RFC 9110, section 13.1.5): a strong entity tag that is the
 * same, or the very date of the last change.
 */
export function ifRangeHolds(field: string | undefined, entityTag: string, lastModified: string): boolean {
  if (field === undefined) return true;
  return field.startsWith('"') ? field === entityTag : field === lastModified;
}
