import { toBase } from '@/lib/readings';
import type { ReadingKindId } from '@/shared/readings';
import { prepareWords } from '../../words';
import type { MakePart } from '../part-ids';
import type { Finding, QuestionValue } from '../question';
import { lowered, type Rest, spend } from '../rest';
import { kindsNamed, type Meant, meantByUnit, meantByWords } from './kinds-meant';
import { type SaidNumber, saidNumbers } from './numbers';
import { sayRange, type ValueRange } from './say-value';

type Bound = 'under' | 'over' | 'near' | 'between';

const boundsBefore: readonly (readonly [Bound, RegExp])[] = [
  [
    'under',
    /(?:\b(?:under|below|beneath|less than|lower than|smaller than|not more than|no more than|at most|max(?:imum)?|up to)|[<≤])(?: about)?\s*$/,
  ],
  [
    'over',
    /(?:\b(?:over|above|more than|greater than|higher than|bigger than|not less than|at least|min(?:imum)?)|[>≥])(?: about)?\s*$/,
  ],
  [
    'near',
    /(?:\b(?:about|around|near(?:ly)?|roughly|approx(?:imately)?|approximately|close to|almost|circa|some)|~)\s*$/,
  ],
];
const boundsAfter: readonly (readonly [Bound, RegExp])[] = [
  ['under', /^\s*(?:or (?:less|lower|under|below)|and (?:below|under)|max)\b/],
  ['over', /^\s*(?:or (?:more|higher|over|above)|and (?:up|above|over)|plus\b|\+)/],
  ['near', /^\s*(?:or so|ish|-ish)\b/],
];
const joints = /^\s*(?:-|–|to|and)\s*$/;
const beforeRange = /\b(?:between|from)\s*$/;
/** Parts that are named by a value: an 8 ohm speaker need never have been measured. */
const namedByValue =
  /^\s*(?:speakers?|cab(?:inet)?s?|batter(?:y|ies)|pots?|potentiometers?|caps?|capacitors?|condensers?|resistors?|fuses?|adapt[eo]rs?|supply|supplies|loads?|taps?|valves?|tubes?|heaters?|transformers?|strings?|screws?|jacks?|plugs?)\b/;

interface FoundValue {
  bound: Bound;
  numbers: readonly [SaidNumber] | readonly [SaidNumber, SaidNumber];
  start: number;
  end: number;
}

/** Values that a question asks for, with the range they mean. What is found is spent, but for parts named by a value. */
export function valuesIn(rest: Rest, makePart: MakePart): Finding[] {
  const text = lowered(rest.left);
  const named = kindsNamed(text);
  return foundIn(rest.left, text).flatMap((found) => {
    const meant = meantBy(found, named, text);
    if (!meant) return [];
    const isName =
      found.bound === 'near' && found.numbers[0].units.length > 0 && namedByValue.test(text.slice(found.end));
    const said = isName ? rest.text.slice(found.start, found.end) : spend(rest, found.start, found.end);
    const range = rangeOf(found, meant);
    const part = makePart('value', said, sayRange(range, meant));
    return [{ part, value: asValue(part.id, range, meant, said, subjectBeside(text, found)) }];
  });
}

function meantBy(
  { numbers, bound }: FoundValue,
  named: readonly ReadingKindId[],
  text: string,
): Meant | null {
  const units = numbers.flatMap((each) => each.units);
  if (units.length > 0)
    return meantByUnit(numbers.at(-1)?.units.length ? (numbers.at(-1)?.units ?? []) : units, named);
  const isPlain = bound !== 'near' || /[.,]/.test(numbers[0].digits) || named.length > 0;
  return isPlain ? meantByWords(numbers[0].digits, named, text) : null;
}

function foundIn(written: string, text: string): FoundValue[] {
  const found: FoundValue[] = [];
  const numbers = saidNumbers(written).filter((each) => !isName(text, each));
  for (let at = 0; at < numbers.length; at++) {
    const [first, second] = [numbers[at], numbers[at + 1]];
    if (!first) break;
    const range = second ? rangeFrom(text, first, second) : null;
    found.push(range ?? single(text, first));
    if (range) at++;
  }
  return found;
}

/** "string 3", "12 string", "fret 5": the number names a thing. */
function isName(text: string, { units, start, end }: SaidNumber): boolean {
  if (units.length > 0) return false;
  const before = /\b(?:string|fret|position|channel|number|no|take|valve|job|v|q|r|c)\s*$/.test(
    text.slice(0, start),
  );
  return (
    before ||
    /^[\s-]*(?:strings?|frets?|way|pole|pin|wires?|cores?|conductors?|leads?|times|screws?|bolts?)\b/.test(
      text.slice(end),
    )
  );
}

function rangeFrom(text: string, first: SaidNumber, second: SaidNumber): FoundValue | null {
  const joint = joints.exec(text.slice(first.end, second.start))?.[0].trim();
  const before = beforeRange.exec(text.slice(0, first.start))?.[0];
  if (joint === undefined || (joint === 'and' && !before)) return null;
  const start = first.start - (before?.length ?? 0);
  return { bound: 'between', numbers: [first, second], start, end: second.end };
}

function single(text: string, number: SaidNumber): FoundValue {
  for (const [bound, pattern] of boundsBefore) {
    const before = pattern.exec(text.slice(0, number.start))?.[0];
    if (before !== undefined)
      return { bound, numbers: [number], start: number.start - before.length, end: number.end };
  }
  for (const [bound, pattern] of boundsAfter) {
    const after = pattern.exec(text.slice(number.end))?.[0];
    if (after !== undefined)
      return { bound, numbers: [number], start: number.start, end: number.end + after.length };
  }
  return { bound: 'near', numbers: [number], start: number.start, end: number.end };
}

function rangeOf({ bound, numbers }: FoundValue, { unit }: Meant): ValueRange {
  const [first, second] = numbers.map(({ digits }) => toBase(digits, unit));
  const value = first ?? null;
  if (bound === 'between' && value !== null && second !== undefined)
    return { low: Math.min(value, second), high: Math.max(value, second), near: null };
  return {
    low: bound === 'over' ? value : null,
    high: bound === 'under' ? value : null,
    near: bound === 'near' ? value : null,
  };
}

function asValue(
  id: string,
  range: ValueRange,
  { kindIds }: Meant,
  said: string,
  subject: string | null,
): QuestionValue {
  return { id, kindIds, ...range, subject, words: range.near === null ? [] : prepareWords(said).split(' ') };
}

const subjects =
  /\b(?:(?:neck|bridge|middle|volume|tone|bass|treble|low e|high e|[1-9]\d?(?:st|nd|rd|th)) (?:pickups?|coils?|pots?|strings?|frets?|sides?|position)|neck|bridge|middle|pickups?|coils?|humbuckers?|pots?|speakers?|strings?|transformers?|primary|secondary|plates?|nut|battery|cathode)\b/g;

/** What is said to be measured, nearest to the value. */
function subjectBeside(text: string, { start, end }: FoundValue): string | null {
  const distance = (at: number, length: number) =>
    Math.min(Math.abs(at - end), Math.abs(at + length - start));
  const [nearest] = [...text.matchAll(subjects)].sort(
    (a, b) => distance(a.index, a[0].length) - distance(b.index, b[0].length),
  );
  return nearest?.[0] ?? null;
}
