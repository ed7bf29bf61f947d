export type SerialClass = 'digits' | 'letters' | 'characters';
export type SerialField = 'year' | 'month' | 'week' | 'day' | 'factory' | 'number' | 'skip';

/** A run of signs that means one thing. */
export interface SerialRun {
  kind: 'run';
  /** How many signs; null for all that are left. */
  count: number | null;
  of: SerialClass;
  field: SerialField;
  /** What each code means, by the code in capitals; null where the signs speak for themselves. */
  codes: ReadonlyMap<string, string> | null;
}

/** Signs that stand there as they are. */
export interface SerialSign {
  kind: 'sign';
  text: string;
}

export type SerialPiece = SerialRun | SerialSign;
/** What a serial is made of, from left to right. */
export type SerialLayout = readonly SerialPiece[];

/** The most digits that a part of a date has; factory and number may have any. */
export const mostDigits = { year: 4, month: 2, week: 2, day: 3 } as const;
type DateField = keyof typeof mostDigits;

export function isDateField(field: SerialField): field is DateField {
  return field in mostDigits;
}

/** No serial is read as older than this. *Common practice, no source.* */
export const earliestYear = 1850;

/** Dashes are one sign, however they were typed; look-alike letters and digits become plain ones (Unicode NFKC). */
export function plainSigns(text: string): string {
  return text
    .normalize('NFKC')
    .replace(/[\u2010-\u2015\u2212]/g, '-')
    .replace(/\s+/g, ' ');
}

export function holds(of: SerialClass, sign: string): boolean {
  if (of === 'digits') return /^[0-9]$/.test(sign);
  return of === 'letters' ? /^\p{L}$/u.test(sign) : true;
}

const countWords = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];
const signNames: Readonly<Record<string, string>> = { '-': 'a dash', ' ': 'a space' };

/** What was understood, a line for each piece: "two digits: the year". */
export function sayLayout(layout: SerialLayout): string[] {
  return layout.map((piece) => {
    if (piece.kind === 'sign') return `${signNames[piece.text] ?? `“${piece.text}”`}, as it is`;
    const codes = piece.codes && [...piece.codes].map(([code, value]) => `${code} is ${value}`).join(', ');
    return `${sayRun(piece)}: ${codes ? `${sayField(piece)} (${codes})` : sayField(piece)}`;
  });
}

function sayRun({ count, of }: SerialRun): string {
  if (count === null) return of === 'characters' ? 'the rest' : `the rest, ${of}`;
  return `${countWords[count - 1] ?? count} ${count === 1 ? of.slice(0, -1) : of}`;
}

/** "the year"; three digits of a day count through the year. */
export function sayField({ field, count }: Pick<SerialRun, 'field' | 'count'>): string {
  if (field === 'skip') return 'ignored';
  return field === 'day' && count === 3 ? 'the day of the year' : `the ${field}`;
}
