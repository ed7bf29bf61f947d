import type { UnitId } from '@/shared/readings';
import { units } from '../units';

export interface FoundValue {
  open: boolean;
  /** Digits as typed; null when open. */
  digits: string | null;
  /** Units that the typed word can mean; empty where none was typed. */
  units: UnitId[];
  text: string;
  rest: string;
}

const openWords = /(?<![\w-])(open|ol|o\.l\.?|over ?range|no reading|infinite|infinity|∞)(?![\w-])/i;
const sixtyFourths = /([-+−]?\d+(?:[.,]\d+)?)\s*\/\s*64(?:ths?)?\s*(?:"|″|in(?:ch(?:es)?)?)?/i;
/** IEC 60062, clause 3: the letter stands where the point would (4k7, 2R2, 22n, 4n7, 1M5). */
const marking = /(?<![\w.,])(\d+)([RrKkMnpuµ])(\d+)?(?![\w])/;
const number = /(?<![\w.,/])([-+−]?(?:\d+(?:[.,]\d+)?|[.,]\d+))\s*(.*)$/;
const markingUnits: Readonly<Record<string, UnitId>> = { R: 'Ω', r: 'Ω', K: 'kΩ', k: 'kΩ', M: 'MΩ', n: 'nF', p: 'pF', u: 'µF', µ: 'µF' };

const wordsByLength = units
  .flatMap((unit) => unit.words.map((word) => ({ word, id: unit.id })))
  .sort((a, b) => b.word.length - a.word.length);

/** Finds the value in a line. Null where there is none. */
export function findValue(line: string): FoundValue | null {
  return fraction(line) ?? marked(line) ?? plain(line) ?? open(line);
}

function open(line: string): FoundValue | null {
  const match = openWords.exec(line);
  return match ? { open: true, digits: null, units: [], text: match[0], rest: without(line, match) } : null;
}

function fraction(line: string): FoundValue | null {
  const match = sixtyFourths.exec(line);
  return match ? { open: false, digits: match[1] ?? '', units: ['64ths'], text: match[0], rest: without(line, match) } : null;
}

function marked(line: string): FoundValue | null {
  const match = marking.exec(line);
  const [text, whole = '', letter = '', part] = match ?? [];
  const unit = markingUnits[letter];
  if (!match || !text || !unit) return null;
  return { open: false, digits: part === undefined ? whole : `${whole}.${part}`, units: [unit], text, rest: without(line, match) };
}

/** The last number in the line, with its unit: earlier ones name a fret or a string. */
function plain(line: string): FoundValue | null {
  const all = [...line.matchAll(/(?<![\w.,/])[-+−]?(?:\d+(?:[.,]\d+)?|[.,]\d+)(?!\s*(?:st|nd|rd|th)\b)/gi)];
  const withUnit = all.map((match) => ({ match, unit: unitAt(line.slice(match.index + match[0].length), match[0]) }));
  const best = withUnit.filter(({ unit }) => unit).at(-1) ?? withUnit.at(-1);
  if (!best || !number.test(line.slice(best.match.index))) return null;
  const digits = best.match[0];
  const end = best.match.index + digits.length + (best.unit?.length ?? 0);
  return {
    open: false,
    digits,
    units: best.unit?.ids ?? [],
    text: line.slice(best.match.index, end).trim(),
    rest: `${line.slice(0, best.match.index)} ${line.slice(end)}`,
  };
}

/** A unit right behind a number: how long it is with the space before it, and what it can mean. */
function unitAt(after: string, _digits: string): { ids: UnitId[]; length: number } | null {
  const space = /^\s*/.exec(after)?.[0].length ?? 0;
  const tail = after.slice(space);
  const megohm = /^M(?![\w])/.exec(tail);
  if (megohm) return { ids: ['MΩ'], length: space + 1 };
  const exact = units.find((unit) => tail.startsWith(unit.id) && endsHere(tail, unit.id));
  if (exact && exact.id !== 'kick') return { ids: [exact.id], length: space + exact.id.length };
  const low = tail.toLowerCase();
  const found = wordsByLength.find(({ word }) => low.startsWith(word) && endsHere(low, word));
  if (!found) return null;
  const ids = wordsByLength.filter(({ word }) => word === found.word).map(({ id }) => id);
  return { ids, length: space + found.word.length };
}

/** "8 k" ends a unit; "8 key" does not. */
function endsHere(text: string, word: string): boolean {
  return !/[\wµΩ°]$/.test(word) || !/^[\wµΩ]/.test(text.slice(word.length));
}

function without(line: string, match: RegExpExecArray): string {
  return `${line.slice(0, match.index)} ${line.slice(match.index + match[0].length)}`;
}
