import { units } from '@/lib/readings';
import type { UnitId } from '@/shared/readings';
import { needsNoSpace } from '../../lexicon/unit-words';

/** A number of a question with the unit behind it. */
export interface SaidNumber {
  digits: string;
  /** What its unit can mean, the likeliest first; empty where none was said. */
  units: UnitId[];
  start: number;
  end: number;
}

const marking = /(?<![\p{L}\d.,/])(\d+)([RrKkMnpuµ])(\d+)(?![\p{L}\d])/gu;
const number = /(?<![\p{L}\d.,/])-?(?:\d+(?:[.,]\d+)?|[.,]\d+)/gu;
const markingUnits: ReadonlyMap<string, UnitId> = new Map([
  ['r', 'Ω'],
  ['k', 'kΩ'],
  ['M', 'MΩ'],
  ['m', 'MΩ'],
  ['n', 'nF'],
  ['p', 'pF'],
  ['u', 'µF'],
  ['µ', 'µF'],
]);

/** Numbers with their units, in order; names such as 12AX7, 12th and 4-conductor are none. */
export function saidNumbers(text: string): SaidNumber[] {
  const marked = [...text.matchAll(marking)].map(asMarked);
  const isFree = (at: number) => !marked.some(({ start, end }) => at >= start && at < end);
  const plain = [...text.matchAll(number)]
    .filter(({ index }) => isFree(index))
    .flatMap((match) => asNumber(text, match));
  return [...marked, ...plain].sort((a, b) => a.start - b.start);
}

/** IEC 60062: the letter stands where the point would. */
function asMarked(match: RegExpMatchArray): SaidNumber {
  const [written, whole = '', letter = '', after = ''] = match;
  const unit = markingUnits.get(letter) ?? markingUnits.get(letter.toLowerCase());
  const start = match.index ?? 0;
  return { digits: `${whole}.${after}`, units: unit ? [unit] : [], start, end: start + written.length };
}

function asNumber(text: string, match: RegExpMatchArray): SaidNumber[] {
  const start = match.index ?? 0;
  const end = start + match[0].length;
  const digits = /^\d{1,3},\d{3}$/.test(match[0]) ? match[0].replace(',', '') : match[0].replace(',', '.');
  const unit = unitBehind(text.slice(end), digits);
  if (!unit && /^(?:[\p{L}\d/]|-\p{L})/u.test(text.slice(end))) return [];
  return [{ digits, units: unit?.ids ?? [], start, end: end + (unit?.length ?? 0) }];
}

const words = units
  .flatMap(({ id, words: said }) => [id, ...said].map((word) => ({ word: word.toLowerCase(), id })))
  .sort((a, b) => b.word.length - a.word.length);

function unitBehind(after: string, digits: string): { ids: UnitId[]; length: number } | null {
  const space = /^ ?/.exec(after)?.[0].length ?? 0;
  const tail = after.slice(space);
  if (space === 0 && /^M(?![\p{L}\d])/u.test(tail)) return { ids: ['MΩ'], length: 1 };
  const low = tail.toLowerCase();
  const fits = words.filter(
    ({ word }) =>
      low.startsWith(word) && !/^[\p{L}\d]/u.test(/[\p{L}\d]$/u.test(word) ? low.slice(word.length) : ''),
  );
  const longest = fits[0]?.word;
  if (!longest || (space > 0 && isNoUnit(longest, digits))) return null;
  const ids = [...new Set(fits.filter(({ word }) => word === longest).map(({ id }) => id))];
  return { ids, length: space + longest.length };
}

/** "2 in March" holds no inches, "0.010 in" does; "2 amps" may be two amplifiers. */
function isNoUnit(word: string, digits: string): boolean {
  return /^amps?$/.test(word) || (needsNoSpace.has(word) && !(word === 'in' && /[.]\d/.test(digits)));
}
