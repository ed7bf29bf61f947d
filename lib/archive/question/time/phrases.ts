import { dateAt } from './dates';
import {
  addDays,
  type Day,
  dayFrom,
  daysBetween,
  earliestDay,
  laterOf,
  latestDay,
  monthOf,
  monthSpan,
  type Span,
  yearOf,
} from './days';
import { type Calendar, firstOf, type Period, past, type Reader, wordAt } from './period';
import { relativeAt } from './relative';
import { lastBegun, lastEnded } from './seasons';
import { type Token, timeTokens } from './tokens';

/** A time that a question names: where it is said, and the days it means. */
export interface SaidTime {
  start: number;
  end: number;
  span: Span;
}

/**
 * Times in a question, by these rules, all of them ours:
 *
 * - "last X" is the newest X that is wholly over: asked in November, last spring is this year's; asked in April,
 *   with spring running, it is the one before. "This X" is the running one, else that of the calendar year of
 *   asking, be it over or to come. A bare "in X" is the newest that has begun.
 * - Seasons are the meteorological ones, by hemisphere; a season across the new year bears the year of its January.
 * - "N Xs ago" is the whole X of the calendar that lies so many before the present one: two years ago is a
 *   calendar year. From five on a number is a round one, one either way; a couple is one to three, a few two to five.
 * - "Since" goes to the end of time and "before" to its beginning; before and after a feast mean eight weeks.
 * - Early, mid and late are thirds.
 */
export function timesIn(text: string, calendar: Calendar): SaidTime[] {
  const tokens = timeTokens(text);
  const found: SaidTime[] = [];
  for (let at = 0; at < tokens.length; ) {
    const period = phraseAt(tokens, at, calendar);
    const first = tokens[at];
    const last = tokens[(period?.next ?? 0) - 1];
    if (period?.isSure && first && last) found.push({ start: first.start, end: last.end, span: period.span });
    at = period?.isSure ? period.next : at + 1;
  }
  return found;
}

const wholeOrPart: Reader = (tokens, at, calendar) =>
  partAt(tokens, at, calendar) ?? periodAt(tokens, at, calendar);
const periodAt: Reader = firstOf(relativeYearFirst, dateAt, relativeAt);

/** "2025 spring" before the bare year. */
function relativeYearFirst(tokens: readonly Token[], at: number, calendar: Calendar): Period | null {
  return /^\d{4}$/.test(wordAt(tokens, at)) ? relativeAt(tokens, at, calendar) : null;
}

const thirds: ReadonlyMap<string, 0 | 1 | 2> = new Map([
  ['early', 0],
  ['beginning', 0],
  ['start', 0],
  ['mid', 1],
  ['middle', 1],
  ['late', 2],
  ['end', 2],
]);

/** early last year, mid-June, the end of March. */
function partAt(tokens: readonly Token[], from: number, calendar: Calendar): Period | null {
  const at = past(tokens, from, 'the');
  const half = halfAt(tokens, at, calendar);
  if (half) return half;
  const word = wordAt(tokens, at);
  const third = thirds.get(word);
  if (third === undefined) return null;
  const needsOf = /^(beginning|start|middle|end)$/.test(word);
  if (needsOf && wordAt(tokens, at + 1) !== 'of') return null;
  const place = past(tokens, at + 1, 'of', 'in', '-', 'the');
  const isThisYear = wordAt(tokens, place) === 'year';
  const whole = isThisYear ? thisYear(calendar, place) : periodAt(tokens, place, calendar);
  return whole ? { span: thirdOf(whole.span, third), next: whole.next, isSure: true } : null;
}

/** the first half of 2025 */
function halfAt(tokens: readonly Token[], at: number, calendar: Calendar): Period | null {
  const isFirst = wordAt(tokens, at) === 'first';
  if (!(isFirst || wordAt(tokens, at) === 'second') || wordAt(tokens, at + 1) !== 'half') return null;
  const whole = periodAt(tokens, past(tokens, at + 2, 'of', 'the'), calendar);
  if (!whole?.isYear) return null;
  const year = yearOf(whole.span.from);
  return { span: monthSpan(year, isFirst ? 1 : 7, 6), next: whole.next, isSure: true };
}

/** "the start of the year" */
function thisYear({ today }: Calendar, at: number): Period {
  return { span: monthSpan(yearOf(today), 1, 12), next: at + 1, isSure: true, isYear: true };
}

function thirdOf({ from, to }: Span, third: 0 | 1 | 2): Span {
  const months = (yearOf(to) - yearOf(from)) * 12 + monthOf(to) - monthOf(from) + 1;
  if (months % 3 === 0) return monthSpan(yearOf(from), monthOf(from) + (third * months) / 3, months / 3);
  const length = Math.floor((daysBetween(from, to) + 1) / 3);
  const start = addDays(from, third * length);
  return { from: start, to: third === 2 ? to : addDays(start, length - 1) };
}

/** Words before a time; "in" and its like only make sure that one is meant. */
const phraseAt: Reader = (tokens, at, calendar) => {
  const word = wordAt(tokens, at);
  const place = past(tokens, at + 1, 'the', 'just', 'back', 'around');
  switch (word) {
    case 'between':
    case 'from':
      return rangeAt(tokens, place, calendar) ?? (word === 'from' ? fromAt(tokens, place, calendar) : null);
    case 'since':
      return openFrom(wholeOrPart(tokens, place, calendar), calendar);
    case 'after':
      return afterAt(wholeOrPart(tokens, place, calendar), calendar);
    case 'before':
      return beforeAt(wholeOrPart(tokens, place, calendar), calendar);
    case 'until':
    case 'till':
      return untilAt(wholeOrPart(tokens, place, calendar));
    default:
      return plainAt(tokens, at, calendar);
  }
};

const leads = new Set([
  'in',
  'on',
  'at',
  'during',
  'over',
  'around',
  'about',
  'by',
  'of',
  'for',
  'back',
  'sometime',
]);

function plainAt(tokens: readonly Token[], at: number, calendar: Calendar): Period | null {
  if (`${wordAt(tokens, at)} ${wordAt(tokens, at + 1)}` === 'up to')
    return untilAt(wholeOrPart(tokens, past(tokens, at + 2, 'the'), calendar));
  const direct = rangeAt(tokens, at, calendar) ?? wholeOrPart(tokens, at, calendar);
  if (direct?.isSure || !leads.has(wordAt(tokens, at))) return direct;
  const place = past(tokens, at, ...leads, 'the', 'early', 'that');
  const led = rangeAt(tokens, place, calendar) ?? wholeOrPart(tokens, place, calendar);
  return led ? { ...led, isSure: led.isSure || isNoVerb(tokens, at, place) } : null;
}

/** "about may", "for spring", "by march" are no times for sure; "in may", "on sat" are. */
function isNoVerb(tokens: readonly Token[], at: number, place: number): boolean {
  const last = wordAt(tokens, place - 1) === 'the' ? wordAt(tokens, place - 2) : wordAt(tokens, place - 1);
  return place > at && /^(in|on|at|during|over|around|early)$/.test(last);
}

/** between March and May, from June to August 2025, March–May, between 2020 and 2022. */
function rangeAt(tokens: readonly Token[], at: number, calendar: Calendar): Period | null {
  const first = wholeOrPart(tokens, at, calendar);
  const joint = first ? wordAt(tokens, first.next) : '';
  if (!first || !/^(and|to|until|till|through|or|-|–|—)$/.test(joint)) return null;
  const second = wholeOrPart(tokens, past(tokens, first.next + 1, 'the'), calendar);
  if (!second || (joint === 'and' && !isAfterBetween(tokens, at))) return null;
  const span = rangeOf(first, second, calendar.today);
  return span ? { span, next: second.next, isSure: true } : null;
}

function isAfterBetween(tokens: readonly Token[], at: number): boolean {
  return [1, 2, 3].some((back) => wordAt(tokens, at - back) === 'between');
}

/** The first takes the year of the second where it has none of its own, and lies before it. */
function rangeOf(first: Period, second: Period, today: Day): Span | null {
  const end = second.yearless ? second.yearless.at(lastBegun(second.yearless, today)) : second.span;
  if (!first.yearless) return inOrder(first.span, endAfter(first.span, second, end));
  const year = yearOf(end.to);
  const starts = [year + 1, year, year - 1].map((each) => first.yearless?.at(each) ?? first.span);
  const start = starts.find(({ from }) => from <= end.from);
  return start ? inOrder(start, end) : null;
}

/** "from March 2025 to June": the end's year is the first that comes after the start. */
function endAfter(start: Span, { yearless }: Period, end: Span): Span {
  if (!yearless) return end;
  const year = yearOf(start.from);
  return [year, year + 1].map((each) => yearless.at(each)).find(({ to }) => to >= start.from) ?? end;
}

function inOrder(first: Span, second: Span): Span {
  return first.from <= second.from
    ? { from: first.from, to: laterOf(first.to, second.to) }
    : { from: second.from, to: first.to };
}

/** "from June on" is open; "the one from June" lies in June. */
function fromAt(tokens: readonly Token[], at: number, calendar: Calendar): Period | null {
  const period = wholeOrPart(tokens, at, calendar);
  if (!period) return null;
  const isOpen = /^(on|onward|onwards)$/.test(wordAt(tokens, period.next));
  return isOpen
    ? { ...period, span: { from: period.span.from, to: latestDay }, next: period.next + 1, isSure: true }
    : period;
}

function openFrom(period: Period | null, { today }: Calendar): Period | null {
  if (!period) return null;
  const { span, yearless, next } = period;
  const start = yearless ? yearless.at(lastBegun(yearless, today)) : span;
  return { span: { from: start.from, to: latestDay }, next, isSure: true };
}

const feastDays = 56;

function beforeAt(period: Period | null, { today }: Calendar): Period | null {
  if (!period) return null;
  const { span, yearless, next, isFeast } = period;
  const feast = isFeast && yearless ? yearless.at(lastEnded(yearless, today)) : span;
  const to = addDays(isFeast ? eveOf(feast) : span.from, -1);
  return { span: { from: isFeast ? addDays(to, 1 - feastDays) : earliestDay, to }, next, isSure: true };
}

/** Christmas Eve is still before Christmas. */
function eveOf({ from }: Span): Day {
  return from.endsWith('-12-24') ? dayFrom(yearOf(from), 12, 25) : from;
}

function afterAt(period: Period | null, { today }: Calendar): Period | null {
  if (!period) return null;
  const { span, yearless, next, isFeast } = period;
  const over = yearless ? yearless.at(lastEnded(yearless, today)) : span;
  const from = addDays(over.to, 1);
  return { span: { from, to: isFeast ? addDays(from, feastDays - 1) : latestDay }, next, isSure: true };
}

function untilAt(period: Period | null): Period | null {
  return period && { span: { from: earliestDay, to: period.span.to }, next: period.next, isSure: true };
}
