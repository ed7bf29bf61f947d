import { readCode } from './serial-codes';
import {
  holds,
  isDateField,
  mostDigits,
  plainSigns,
  type SerialField,
  type SerialLayout,
  type SerialPiece,
  type SerialRun,
} from './serial-layout';
import { isPiece, notUnderstood, readPiece, SerialPatternError } from './serial-piece';

/**
 * Reads the plain words of a serial pattern: pieces from left to right, with commas between them. A piece is so many
 * digits, letters or characters and what they mean ("two digits year", "the rest number", "one letter ignored"), or
 * signs that stand there as they are ("a dash", "the letters AB"). Codes may follow a colon: "one letter factory: N
 * north works, S south works".
 * @throws SerialPatternError which names the piece that was not understood
 */
export function parsePattern(words: string): SerialLayout {
  const layout: SerialPiece[] = [];
  let open: OpenRun | null = null;
  for (const text of splitPieces(words)) {
    if (open && isCode(open, text)) {
      addCode(open, text);
      continue;
    }
    const [head, code] = splitAtColon(text);
    const piece = readPiece(head);
    open = piece.kind === 'run' && code !== null ? openRun(piece, head) : null;
    if (open && code !== null) addCode(open, code);
    else if (code !== null) throw notUnderstood(text);
    layout.push(open ?? piece);
  }
  checkWhole(layout, words);
  return layout;
}

/** Pieces stand between commas, semicolons, line ends or "then"; what stands in quotes is kept whole. */
function splitPieces(words: string): string[] {
  const parted = words
    .split(/(["“][^"“”]*["”])/)
    .map((part, index) => (index % 2 === 1 ? part : part.replace(/\b(?:and )?then\b|\bfollowed by\b/gi, ',')))
    .join('');
  const pieces = parted.match(/(?:["“][^"“”]*["”]|[^,;\n])+/g) ?? [];
  return pieces.map((piece) => piece.trim().replace(/\s+/g, ' ')).filter(Boolean);
}

function splitAtColon(text: string): [string, string | null] {
  const [, head, code] = /^((?:["“][^"“”]*["”]|[^:"“])+):\s*(.+)$/.exec(text) ?? [];
  if (head === undefined || code === undefined) return [text, null];
  // "two digits: the year" has no codes; the colon only parts its words.
  const asOne = `${head} ${code}`;
  return isPiece(asOne) ? [asOne, null] : [head.trim(), code];
}

interface OpenRun extends SerialRun {
  count: number;
  codes: Map<string, string>;
}

function openRun(run: SerialRun, text: string): OpenRun {
  if (run.count === null || run.field === 'skip')
    throw new SerialPatternError(
      `“${text}” cannot have codes.`,
      'Codes stand behind a counted piece that means something: “one letter factory: N north works”.',
      text,
    );
  return { ...run, count: run.count, codes: new Map() };
}

/** "S south works" or "S = south works": the code, then what it means. */
function splitCode(run: OpenRun, text: string): { code: string; value: string; plainly: boolean } | null {
  const { first = '', link, value = '' } = codeWords.exec(text)?.groups ?? {};
  const signs = [...plainSigns(first)];
  const fits = signs.length === run.count && signs.every((sign) => holds(run.of, sign));
  return fits
    ? { code: signs.join('').toUpperCase(), value: value.trim(), plainly: link !== undefined }
    : null;
}

const codeWords = /^(?<first>[^\s=]+)(?:\s*(?<link>=|\s(?:is|means)\s)\s*|\s+)(?<value>.+)$/i;

function isCode(run: OpenRun, text: string): boolean {
  const found = splitCode(run, text);
  return found !== null && (found.plainly || !isPiece(splitAtColon(text)[0]));
}

function addCode(run: OpenRun, text: string): void {
  const found = splitCode(run, text);
  const value = found && readCode(run.field, found.value);
  if (!found || value === null)
    throw new SerialPatternError(
      `The code “${text}” was not understood.`,
      'Write the code, then what it means: “N north works”. A year has four digits, a month its name or number.',
      text,
    );
  if (run.codes.has(found.code))
    throw new SerialPatternError(
      `The code ${found.code} stands there twice.`,
      'Take one of them out: a code means one thing.',
      text,
    );
  run.codes.set(found.code, value);
}

function checkWhole(layout: SerialLayout, words: string): void {
  const runs = layout.filter((piece) => piece.kind === 'run');
  if (runs.every(({ field }) => field === 'skip'))
    throw new SerialPatternError(
      'The pattern does not say what anything means.',
      'Write it from left to right: “two digits year, two digits month, the rest number”.',
      words,
    );
  const behindRest = layout.findIndex((piece) => piece.kind === 'run' && piece.count === null) + 1;
  if (behindRest > 0 && behindRest < layout.length)
    throw new SerialPatternError('Nothing can stand behind the rest.', 'Put “the rest” last.', 'the rest');
  for (const field of new Set(runs.map((run) => run.field)))
    checkField(
      field,
      runs.filter((run) => run.field === field),
    );
}

function checkField(field: SerialField, runs: readonly SerialRun[]): void {
  const coded = runs.some(({ codes }) => codes !== null);
  if (coded && runs.length > 1)
    throw new SerialPatternError(
      `The ${field} stands there twice, once with codes.`,
      'What is coded stands in one piece.',
      field,
    );
  if (!isDateField(field) || coded) return;
  if (runs.some(({ of }) => of !== 'digits'))
    throw new SerialPatternError(
      `The ${field} is not in digits.`,
      `Write how many digits it has, or what each code means: “one letter ${field}: ${codeExamples[field]}”.`,
      field,
    );
  const digits = runs.reduce((sum, { count }) => sum + (count ?? 0), 0);
  const most = mostDigits[field];
  if (digits > most)
    throw new SerialPatternError(
      `The ${field} has ${digits} digits.`,
      `It has ${most} at most: mark what means something else as “ignored” or “number”.`,
      field,
    );
}

const codeExamples = {
  year: 'A 1981, B 1982',
  month: 'A January, B February',
  week: 'A 1, B 2',
  day: 'A 1, B 2',
} as const;
