import { DomainError } from '@/shared/problem';
import {
  isDateField,
  plainSigns,
  type SerialClass,
  type SerialField,
  type SerialPiece,
  type SerialRun,
} from './serial-layout';

/** Says which piece of a pattern was not understood. */
export class SerialPatternError extends DomainError {
  constructor(title: string, detail: string, piece: string) {
    super('invalid', title, detail, { piece });
  }
}

const counts = 'one two three four five six seven eight nine ten eleven twelve'.split(' ');
const mostSigns = 40;

const classes: Readonly<Record<string, SerialClass>> = {
  digit: 'digits',
  digits: 'digits',
  figure: 'digits',
  figures: 'digits',
  letter: 'letters',
  letters: 'letters',
  character: 'characters',
  characters: 'characters',
  sign: 'characters',
  signs: 'characters',
  anything: 'characters',
};

const fields: Readonly<Record<string, SerialField>> = {
  year: 'year',
  month: 'month',
  week: 'week',
  day: 'day',
  factory: 'factory',
  works: 'factory',
  plant: 'factory',
  number: 'number',
  serial: 'number',
  count: 'number',
  counter: 'number',
  skip: 'skip',
  skipped: 'skip',
  ignore: 'skip',
  ignored: 'skip',
  nothing: 'skip',
};

const smallWords = new Set(
  'the of for in is are as and that which it its means mean being code running production'.split(' '),
);

const signs: Readonly<Record<string, string>> = {
  dash: '-',
  hyphen: '-',
  space: ' ',
  blank: ' ',
  slash: '/',
  dot: '.',
  point: '.',
  'full stop': '.',
  underscore: '_',
};

/**
 * "two digits year", "the rest number", "a dash".
 * @throws SerialPatternError
 */
export function readPiece(text: string): SerialPiece {
  const sign = readSign(text);
  return sign === null ? readRun(text) : { kind: 'sign', text: sign };
}

/** "a dash", a lone sign, "the letters AB" or signs in quotes; null where it is none of these. */
function readSign(text: string): string | null {
  const named = /^(?:an? |one |the )?([a-z ]+)$/i.exec(text)?.[1]?.toLowerCase();
  if (named !== undefined && Object.hasOwn(signs, named)) return signs[named] ?? null;
  const quoted = /^(?:the )?(?:letters?|digits?|characters?|signs?)? ?["“](.+)["”]$/i.exec(text)?.[1];
  const plain = /^the (?:letters?|digits?|characters?|signs?) ([A-Z0-9]+)$/.exec(text)?.[1];
  const alone = /^[^\p{L}\p{N}\s]$/u.exec(text)?.[0];
  const found = quoted ?? plain ?? alone;
  return found === undefined ? null : plainSigns(found);
}

function readRun(text: string): SerialRun {
  const told = sortWords(text);
  const field = fieldOf(told.fields, text);
  // “Anything” without a count takes all that is left.
  const isAnything = told.counts.length === 0 && /\banything\b/i.test(text);
  if (told.rest || isAnything) return restOf(told, field, text);
  const [of] = told.classes;
  const [count] = told.counts;
  if (count === undefined)
    throw new SerialPatternError(
      `“${text}” does not say how many.`,
      `Write the count first, such as “two digits year”; “the rest” takes all that is left.`,
      text,
    );
  if (of === undefined)
    throw new SerialPatternError(
      `“${text}” does not say of what.`,
      'Write digits, letters or characters behind the count.',
      text,
    );
  if (field === null)
    throw new SerialPatternError(
      `“${text}” does not say what it means.`,
      'Write year, month, week, day, factory or number behind it, or ignored where it means nothing.',
      text,
    );
  return { kind: 'run', count, of, field, codes: null };
}

interface Sorted {
  rest: boolean;
  counts: number[];
  classes: SerialClass[];
  fields: SerialField[];
}

/** Sorts the words of a piece by what they tell; a word that tells nothing is not passed over. */
function sortWords(text: string): Sorted {
  const plain = text.toLowerCase().replace(/\b(day|week) of (?:the )?(?:year|month)\b/g, '$1');
  const sorted: Sorted = { rest: false, counts: [], classes: [], fields: [] };
  for (const word of plain.match(/[\p{L}\p{N}]+|[^\p{L}\p{N}\s]/gu) ?? []) {
    const count = countOf(word);
    const of = Object.hasOwn(classes, word) ? classes[word] : undefined;
    const field = Object.hasOwn(fields, word) ? fields[word] : undefined;
    if (word === 'rest' || word === 'remaining') sorted.rest = true;
    else if (count !== null) sorted.counts.push(count);
    else if (of) sorted.classes.push(of);
    else if (field) sorted.fields.push(field);
    else if (!smallWords.has(word)) throw notUnderstood(text, word);
  }
  if (sorted.counts.length > 1 || sorted.classes.length > 1) throw twoThings(text);
  return sorted;
}

function countOf(word: string): number | null {
  if (word === 'a' || word === 'an') return 1;
  const count = /^\d{1,3}$/.test(word) ? Number(word) : counts.indexOf(word) + 1;
  return count >= 1 && count <= mostSigns ? count : null;
}

/** One meaning a piece. "Week number" and "factory number" are the week and the factory. */
function fieldOf(told: readonly SerialField[], text: string): SerialField | null {
  const all = [...new Set(told)];
  const named = all.length > 1 ? all.filter((field) => field !== 'number') : all;
  if (named.length > 1) throw twoThings(text);
  return named[0] ?? null;
}

/** What is left: of any sign, and ignored where it says no more. */
function restOf(
  { classes: [of = 'characters'], counts }: Sorted,
  field: SerialField | null,
  text: string,
): SerialRun {
  if (counts.length > 0) throw twoThings(text);
  if (field !== null && isDateField(field))
    throw new SerialPatternError(
      `“${text}” does not say how many digits the ${field} has.`,
      `Write the count, such as “two digits ${field}”.`,
      text,
    );
  return { kind: 'run', count: null, of, field: field ?? 'skip', codes: null };
}

export function isPiece(text: string): boolean {
  try {
    readPiece(text);
    return true;
  } catch (error) {
    if (error instanceof SerialPatternError) return false;
    throw error;
  }
}

export function notUnderstood(text: string, word?: string): SerialPatternError {
  return new SerialPatternError(
    word === undefined || word === text
      ? `“${text}” was not understood.`
      : `“${word}” in “${text}” was not understood.`,
    'A piece is a count, digits or letters, and what they mean: “two digits year”. Commas part the pieces.',
    text,
  );
}

function twoThings(text: string): SerialPatternError {
  return new SerialPatternError(
    `“${text}” says more than one thing.`,
    'Part it by a comma: each piece has one count and one meaning.',
    text,
  );
}
