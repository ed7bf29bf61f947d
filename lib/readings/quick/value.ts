import type { UnitId } from '@/shared/readings';
import { unitAt } from './unit-at';

export interface FoundValue {
  open: boolean;
  /** Digits as typed; null when open. */
  digits: string | null;
  /** Units that the typed word can mean; empty where none was typed. */
  units: UnitId[];
  text: string;
  rest: string;
  /** What the same characters can stand for: "1,000" is 1.000 or 1000. */
  other?: { digits: string; rest: string };
  /** What was typed can be meant in another way. */
  unsure?: boolean;
}

export type ValueSearch =
  | { found: 'none' }
  | { found: 'one'; value: FoundValue }
  /** The line holds more than one value: which was read is asked. */
  | { found: 'several'; values: FoundValue[] }
  /** There is something that cannot be kept as it stands. */
  | { found: 'unclear'; missing: string };

interface Token {
  start: number;
  end: number;
  digits: string;
  units: UnitId[];
  /** The digits with groups of three taken for thousands, and where they begin. */
  grouped?: { digits: string; start: number };
  unsure?: boolean;
}

const openWords =
  /(?<![\w-])(open|ol|0l|o\.l\.?|over ?range|overload|no reading|infinite|infinity|∞)(?![\w-])/i;
const fraction =
  /(?<![\w.,/])(?:(\d{1,3})\s+)?((?<!\w)[-+])?(\d+(?:[.,]\d+)?)\s*\/\s*(\d+)(?:ths?)?(?!\w)\s*(?:"|in(?:ch(?:es)?)?(?!\w))?(?:\s*\([\d.]+ mm\))?/gi;
/** IEC 60062: the letter stands where the point would (4k7, 2R2, 4n7, 1M5). A letter in front (R47) may be the name of a part. */
const marking = /(?<![\w.,/])(\d+)([RrKkMnpuµ])(\d+)(?!\w)/g;
const markingUnits: Readonly<Record<string, UnitId>> = {
  R: 'Ω',
  r: 'Ω',
  K: 'kΩ',
  k: 'kΩ',
  M: 'MΩ',
  n: 'nF',
  p: 'pF',
  u: 'µF',
  µ: 'µF',
};
const number = /(?<![\w.,/])(?:(?<!\w)[-+])?(?:\d+(?:[.,]\d+)?|[.,]\d+)/g;
/** Numbers that name a fret or a string. */
const names =
  /(?<![\w.,])(?:fret\s+\d{1,2}(?![\w.,]\w|\s*\/)|\d{1,2}(?:st|nd|rd|th)?\s+(?:fret|strings?)\b|\d{1,2}(?:st|nd|rd|th)\b|string\s+\d{1,2}(?![\w.,]\w|\s*\/))/gi;
const thousands = /^[-+]?[1-9]\d{0,2},\d{3}$/;

/** Finds the value in a line whose signs are plain (see `plainLine`). */
export function findValue(line: string): ValueSearch {
  const masked = maskNames(line);
  const fractions = [...masked.matchAll(fraction)];
  const withUnit = [...fractions.flatMap(sixtyFourths), ...[...masked.matchAll(marking)].map(marked)];
  const free = blank(masked, [
    ...withUnit,
    ...fractions.map((match) => ({ start: match.index, end: match.index + match[0].length })),
  ]);
  const numbers = [...free.matchAll(number)].flatMap((match) => numberToken(free, match) ?? []);
  withUnit.push(...numbers.filter(({ units }) => units.length > 0));
  const bare = numbers.filter(({ units }) => units.length === 0).at(-1);
  const open = openWords.exec(masked);
  if (withUnit.length > 0) return chosen(line, masked, withUnit, open);
  const odd = fractions[0];
  if (odd && !open) return { found: 'unclear', missing: inSixtyFourths(odd) };
  if (open && bare && /[.,]/.test(bare.digits)) return chosen(line, masked, [bare], open);
  if (open) return { found: 'one', value: openValue(line, open) };
  return bare ? chosen(line, masked, [bare], null) : { found: 'none' };
}

function chosen(
  line: string,
  masked: string,
  tokens: readonly Token[],
  open: RegExpExecArray | null,
): ValueSearch {
  const range = tokens.find(({ start }) => /\d\s*-\s*$/.test(masked.slice(0, start)));
  if (range)
    return {
      found: 'unclear',
      missing: 'That reads like a range. A reading is one value: the digits that the meter showed.',
    };
  // An open string has a pitch; an open coil has no resistance beside it.
  const isOhms = tokens.some(({ units }) => units.length === 0 || units.some((unit) => unit.endsWith('Ω')));
  const openBeside = open && isOhms ? [{ start: open.index, end: open.index + open[0].length }] : [];
  const values = tokens.map((token) => asValue(blank(line, openBeside), token));
  if (open && isOhms) values.push(openValue(blank(line, tokens), open));
  const [only, ...others] = values;
  if (!only) return { found: 'none' };
  return others.length === 0 ? { found: 'one', value: only } : { found: 'several', values };
}

function asValue(line: string, { start, end, digits, units, grouped: group, unsure }: Token): FoundValue {
  const restFrom = (from: number) => `${line.slice(0, from)} ${line.slice(end)}`;
  return {
    open: false,
    digits,
    units,
    text: line.slice(start, end).trim(),
    rest: restFrom(start),
    ...(group ? { other: { digits: group.digits, rest: restFrom(group.start) } } : {}),
    ...(unsure ? { unsure } : {}),
  };
}

function openValue(line: string, match: RegExpExecArray): FoundValue {
  const { index } = match;
  return {
    open: true,
    digits: null,
    units: [],
    text: match[0],
    rest: `${line.slice(0, index)} ${line.slice(index + match[0].length)}`,
  };
}

function numberToken(line: string, match: RegExpExecArray): Token | null {
  const [digits] = match;
  const { index: start } = match;
  const end = start + digits.length;
  const after = line.slice(end);
  const isTolerance = /(?:±|\+\/-)\s*$/.test(line.slice(0, start));
  if (isTolerance || /^(?:[.,]\d|\s*\/)/.test(after)) return null;
  const unit = unitAt(after);
  // "12AX7" and "7.9x" hold no value.
  if (!unit && /^\w/.test(after)) return null;
  const token = {
    start,
    end: end + (unit?.length ?? 0),
    digits,
    units: unit?.ids ?? [],
    ...(unit?.unsure ? { unsure: true } : {}),
  };
  return { ...token, ...grouped(line, start, digits) };
}

/** Groups of three digits are thousands in some hands: "1,000" and "1 000". */
function grouped(line: string, start: number, digits: string): Pick<Token, 'grouped'> {
  if (thousands.test(digits)) return { grouped: { digits: digits.replace(',', ''), start } };
  const before = /(?<![\w.,])(\d{1,3}) $/.exec(line.slice(0, start))?.[1];
  if (!before || !/^\d{3}(?:[.,]\d+)?$/.test(digits)) return {};
  return { grouped: { digits: before + digits, start: start - before.length - 1 } };
}

function sixtyFourths(match: RegExpExecArray): Token[] {
  const [text, whole, sign = '', part = '', parts] = match;
  if (whole !== undefined || parts !== '64') return [];
  return [{ start: match.index, end: match.index + text.length, digits: sign + part, units: ['64ths'] }];
}

function marked(match: RegExpExecArray): Token {
  const [text, whole, letter = '', part] = match;
  const unit = markingUnits[letter];
  return {
    start: match.index,
    end: match.index + text.length,
    digits: `${whole}.${part}`,
    units: unit ? [unit] : [],
  };
}

function inSixtyFourths([text, whole, sign = '', part = '', parts = '']: RegExpExecArray): string {
  const scale = 64 / Number(parts);
  const said = text.trim();
  if (!Number.isInteger(scale) || /[.,]/.test(part))
    return `Write “${said}” in 64ths of an inch, such as 6/64, or as a decimal.`;
  const top = `${sign}${Number(whole ?? 0) * 64 + Number(part) * scale}/64`;
  return whole === undefined
    ? `Write “${said}” as ${top}.`
    : `Write “${said}” as ${top}; or ${whole}th, if ${whole} is the fret.`;
}

/** The same line with the numbers that name frets and strings out of sight. */
function maskNames(line: string): string {
  return line.replace(names, (text, at: number) => {
    const isValue = /^string\s/i.test(text) && unitAt(line.slice(at + text.length)) !== null;
    return isValue ? text : ' '.repeat(text.length);
  });
}

function blank(line: string, spans: readonly { start: number; end: number }[]): string {
  return spans.reduce(
    (text, { start, end }) => text.slice(0, start) + ' '.repeat(end - start) + text.slice(end),
    line,
  );
}
