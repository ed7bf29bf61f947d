import { type NamedCycle, namedCycleAt, unitCycle } from './cycles';
import { yearAt } from './dates';
import { addDays, type Day, earlierOf, earliestDay, monthOf, monthSpan, type Span, yearOf } from './days';
import { type Calendar, firstOf, type Period, past, type Reader, wordAt } from './period';
import { type Cycle, firstToCome, lastBegun, lastEnded, thisOne } from './seasons';
import { amounts, springParts, unitNames } from './time-words';
import type { Token } from './tokens';

const lastWords = new Set(['last', 'previous']);

/** today, yesterday, last night, the day before yesterday, this morning. */
const nearDay: Reader = (tokens, at, { today }) => {
  const words = (count: number) =>
    Array.from({ length: count }, (_, step) => wordAt(tokens, at + step)).join(' ');
  const day = (back: number, count: number): Period => ({
    span: { from: addDays(today, -back), to: addDays(today, -back) },
    next: at + count,
    isSure: true,
  });
  if (words(4) === 'the day before yesterday') return day(2, 4);
  if (words(3) === 'day before yesterday') return day(2, 3);
  if (words(2) === 'last night') return day(1, 2);
  if (/^this (morning|afternoon|evening)$/.test(words(2))) return day(0, 2);
  if (/^yesterday$/.test(words(1)))
    return day(1, /^(morning|afternoon|evening)$/.test(wordAt(tokens, at + 1)) ? 2 : 1);
  return /^(today|tonight)$/.test(words(1)) ? day(0, 1) : null;
};

/** recently, lately: a quarter of a year; the other day, the other week: two and six weeks. Our own measure. */
const vague: Reader = (tokens, at, { today }) => {
  const rolling = (days: number, next: number): Period => ({
    span: { from: addDays(today, -days), to: today },
    next,
    isSure: true,
  });
  if (/^(recently|lately)$/.test(wordAt(tokens, at))) return rolling(92, at + 1);
  const other = past(tokens, at, 'the');
  if (other === at || wordAt(tokens, other) !== 'other') return null;
  if (wordAt(tokens, other + 1) === 'day') return rolling(14, other + 2);
  return wordAt(tokens, other + 1) === 'week' ? rolling(42, other + 2) : null;
};

interface Amount {
  low: number;
  high: number;
  next: number;
}

/** From so many on a number is a round one: one either way. */
const roundFrom = 5;

/** "two", "a couple of", "about 6". */
function amountAt(tokens: readonly Token[], from: number): Amount | null {
  const at = past(
    tokens,
    from,
    'about',
    'around',
    'roughly',
    'some',
    'maybe',
    'nearly',
    'almost',
    'over',
    'like',
  );
  const word = wordAt(tokens, at);
  const isArticle = word === 'a' || word === 'the';
  const after = isArticle ? wordAt(tokens, at + 1) : '';
  const place = /^(couple|few|good)$/.test(after) ? at + 1 : at;
  const said = amounts.get(wordAt(tokens, place));
  const count = /^\d{1,3}$/.test(wordAt(tokens, place)) ? Number(wordAt(tokens, place)) : null;
  const [low, high] = said ?? (count === null ? [] : [count, count]);
  if (low === undefined || high === undefined) return null;
  const isVague = low === high && (at > from || low >= roundFrom);
  const slack = isVague ? 1 : 0;
  return { low: Math.max(low - slack, 0), high: high + slack, next: past(tokens, place + 1, 'of', 'good') };
}

/** two years ago, a couple of months back, three summers ago, a fortnight ago. */
const ago: Reader = (tokens, at, calendar) => {
  const half = halfYear(tokens, at, calendar);
  if (half) return half;
  const amount = amountAt(tokens, at);
  if (!amount) return null;
  const isFortnight = /^fortnights?$/.test(wordAt(tokens, amount.next));
  const unit = isFortnight ? 'week' : unitNames.get(wordAt(tokens, amount.next));
  const named = unit ? null : namedCycleAt(tokens, amount.next, calendar);
  const after = named?.next ?? amount.next + 1;
  if (!/^(ago|back)$/.test(wordAt(tokens, after)) || !(unit ?? named)) return null;
  const scale = isFortnight ? 2 : 1;
  const cycle = unit ? unitCycle(unit, calendar) : named?.cycle;
  if (!cycle) return null;
  const newest = unit ? 0 : lastEnded(cycle, calendar.today) + 1;
  return {
    span: {
      from: cycle.at(newest - amount.high * scale).from,
      to: cycle.at(newest - amount.low * scale).to,
    },
    next: after + 1,
    isSure: true,
    ...(unit === 'year' && amount.low === amount.high ? { isYear: true } : {}),
    ...(unit === 'week' ? { isWeek: true } : {}),
  };
};

/** more than two years ago, over a month ago: up to so far back from today. */
const longAgo: Reader = (tokens, at, { today }) => {
  const isMore = wordAt(tokens, at) === 'more' && wordAt(tokens, at + 1) === 'than';
  if (!isMore && wordAt(tokens, at) !== 'over') return null;
  const amount = amountAt(tokens, at + (isMore ? 2 : 1));
  const unit = amount && unitNames.get(wordAt(tokens, amount.next));
  if (!amount || !unit || !/^(ago|back)$/.test(wordAt(tokens, amount.next + 1))) return null;
  const to = addDays(sameDayBack(today, unit, amount.low), -1);
  return { span: { from: earliestDay, to }, next: amount.next + 2, isSure: true };
};

/** half a year ago, a year and a half ago. */
function halfYear(tokens: readonly Token[], at: number, calendar: Calendar): Period | null {
  const said = [0, 1, 2, 3, 4, 5].map((step) => wordAt(tokens, at + step)).join(' ');
  const months = unitCycle('month', calendar);
  const between = (most: number, fewest: number, count: number): Period => ({
    span: { from: months.at(-most).from, to: months.at(-fewest).to },
    next: at + count,
    isSure: true,
  });
  if (said.startsWith('half a year ago')) return between(7, 5, 4);
  return said === 'a year and a half ago' ? between(20, 16, 6) : null;
}

/** last week, this year, the month before last, last spring, this Monday, next summer. */
const relative: Reader = (tokens, from, calendar) => {
  const at = past(tokens, from, 'the', 'earlier', 'later');
  const word = wordAt(tokens, at);
  const isOne = lastWords.has(word) || word === 'this' || word === 'next' || word === 'past';
  const found = isOne ? ofWord(word, tokens, at, calendar) : beforeLast(tokens, at, calendar);
  const isEarlier = at > from && tokens.slice(from, at).some((token) => token.word === 'earlier');
  return found && isEarlier ? upToToday(found, calendar.today) : found;
};

/** "earlier this year": what of it is over. */
function upToToday({ span, next }: Period, today: Day): Period {
  return { span: { from: span.from, to: earlierOf(span.to, today) }, next, isSure: true };
}

function ofWord(word: string, tokens: readonly Token[], at: number, calendar: Calendar): Period | null {
  const rolling = rollingAt(tokens, at, calendar);
  if (rolling) return rolling;
  if (word === 'past') return null;
  const unit = unitNames.get(wordAt(tokens, at + 1));
  if (unit && unit !== 'day') return unitPeriod(unit, word, at, calendar);
  const named = namedCycleAt(tokens, at + 1, calendar);
  if (!named || isSpringPart(tokens, named)) return null;
  const { cycle, next } = named;
  const butOne = `${wordAt(tokens, next)} ${wordAt(tokens, next + 1)}` === 'but one' && lastWords.has(word);
  const index = chosen(word, cycle, calendar.today) - (butOne ? 1 : 0);
  // "this may be it"
  const isSure = named.isSure || word !== 'this' || wordAt(tokens, at + 1) !== 'may';
  return { ...periodOf(named, cycle.at(index), butOne ? next + 2 : next), isSure };
}

function unitPeriod(
  unit: 'week' | 'month' | 'quarter' | 'year',
  word: string,
  at: number,
  calendar: Calendar,
): Period {
  const cycle = unitCycle(unit, calendar);
  return {
    span: cycle.at(chosen(word, cycle, calendar.today)),
    next: at + 2,
    isSure: true,
    ...(unit === 'year' ? { isYear: true } : {}),
    ...(unit === 'week' ? { isWeek: true } : {}),
  };
}

function chosen(word: string, cycle: Cycle, today: string): number {
  if (lastWords.has(word)) return lastEnded(cycle, today);
  return word === 'next' ? firstToCome(cycle, today) : thisOne(cycle, today);
}

/** the last two weeks, the past year, the last few months, last fortnight: up to today. */
function rollingAt(tokens: readonly Token[], at: number, { today }: Calendar): Period | null {
  const word = wordAt(tokens, at);
  if (!(lastWords.has(word) || word === 'past')) return null;
  const isFortnight = wordAt(tokens, at + 1) === 'fortnight';
  if (isFortnight) return { span: { from: addDays(today, -14), to: today }, next: at + 2, isSure: true };
  const isOver = /^(over|within|during|in)$/.test(wordAt(tokens, at - 2)) && wordAt(tokens, at - 1) === 'the';
  const amount = amountAt(tokens, at + 1);
  const place = amount?.next ?? at + 1;
  const unit = unitNames.get(wordAt(tokens, place));
  if (!unit || !(amount ?? (word === 'past' || isOver))) return null;
  const count = amount?.high ?? 1;
  return { span: { from: backFrom(today, unit, count), to: today }, next: place + 1, isSure: true };
}

/** The same day of the month so many back, or the last of it where it has no such day. */
function sameDayBack(today: string, unit: keyof typeof daysIn, count: number): string {
  const months = { day: 0, week: 0, month: 1, quarter: 3, year: 12 }[unit] * count;
  if (months === 0) return backFrom(today, unit, count);
  const { to } = monthSpan(yearOf(today), monthOf(today) - months);
  return earlierOf(`${to.slice(0, 8)}${today.slice(8)}`, to);
}

const daysIn = { day: 1, week: 7, month: 30.5, quarter: 91.5, year: 365.25 } as const;

function backFrom(today: string, unit: keyof typeof daysIn, count: number): string {
  return addDays(today, -Math.round(daysIn[unit] * count));
}

/** the week before last, the spring before last. */
function beforeLast(tokens: readonly Token[], at: number, calendar: Calendar): Period | null {
  const unit = unitNames.get(wordAt(tokens, at));
  const named = unit ? null : namedCycleAt(tokens, at, calendar);
  const after = named?.next ?? at + 1;
  if (wordAt(tokens, after) !== 'before' || wordAt(tokens, after + 1) !== 'last') return null;
  // "the week before last spring": that is the spring.
  if (unitNames.has(wordAt(tokens, after + 2)) || namedCycleAt(tokens, after + 2, calendar)) return null;
  const cycle = unit ? unitCycle(unit, calendar) : named?.cycle;
  if (!cycle) return null;
  const span = cycle.at(lastEnded(cycle, calendar.today) - 1);
  const flags = {
    ...(unit === 'year' ? { isYear: true } : {}),
    ...(unit === 'week' ? { isWeek: true } : {}),
  };
  return { span, next: after + 2, isSure: true, ...flags };
}

/** March, March 2025, spring of last year, Tuesday last week; and last year in March. */
const named: Reader = (tokens, at, calendar) => {
  const found = namedCycleAt(tokens, at, calendar);
  if (!found || isSpringPart(tokens, found)) return null;
  const { cycle, next } = found;
  const place = past(tokens, next, 'of', 'in', ',', 'the');
  if (found.kind === 'weekday') return weekdayIn(found, tokens, place, calendar);
  const crossing = /^(20\d\d)[-/](\d\d)$/.exec(wordAt(tokens, place));
  if (crossing) return { ...periodOf(found, cycle.at(Number(crossing[1]) + 1), place + 1), isSure: true };
  const year = yearPeriodAt(tokens, place, calendar);
  if (year) return { ...periodOf(found, cycle.at(year.year), year.next), isSure: true };
  return { ...periodOf(found, cycle.at(lastBegun(cycle, calendar.today)), next), yearless: cycle };
};

function weekdayIn(found: NamedCycle, tokens: readonly Token[], place: number, calendar: Calendar): Period {
  const week = firstOf(ago, relative)(tokens, place, calendar);
  const newest = found.cycle.at(lastBegun(found.cycle, calendar.today));
  if (!week?.isWeek) return periodOf(found, newest, found.next);
  return { ...periodOf(found, dayWithin(found.cycle, week.span) ?? newest, week.next), isSure: true };
}

function dayWithin(cycle: Cycle, week: Span): Span | undefined {
  const indexes = Array.from({ length: 120 }, (_, back) => 1 - back);
  return indexes.map((index) => cycle.at(index)).find(({ from }) => from >= week.from && from <= week.to);
}

function periodOf({ isSure, kind }: NamedCycle, span: Span, next: number): Period {
  return { span, next, isSure, ...(kind === 'feast' ? { isFeast: true } : {}) };
}

/** A year that a month or season lies in: 2025, last year, two years ago. */
function yearPeriodAt(tokens: readonly Token[], at: number, calendar: Calendar) {
  const said = yearAt(tokens, at);
  if (said !== null) return { year: said, next: at + 1 };
  const period = firstOf(ago, relative)(tokens, at, calendar);
  return period?.isYear ? { year: yearOf(period.span.from), next: period.next } : null;
}

/** last year in March, 2024 spring, last week on Tuesday. */
const within: Reader = (tokens, at, calendar) => {
  const said = yearAt(tokens, at);
  const outer = firstOf(ago, relative)(tokens, at, calendar);
  if (said === null && !outer?.isYear && !outer?.isWeek) return null;
  const next = said === null ? (outer?.next ?? at) : at + 1;
  const found = namedCycleAt(tokens, past(tokens, next, 'in', 'on', ',', 's', "'", '’', 'the'), calendar);
  if (!found || isSpringPart(tokens, found)) return null;
  if (found.kind === 'weekday') {
    const day = outer?.isWeek ? dayWithin(found.cycle, outer.span) : undefined;
    return day ? { span: day, next: found.next, isSure: true } : null;
  }
  const year = said ?? (outer?.isYear ? yearOf(outer.span.from) : null);
  return year === null ? null : { ...periodOf(found, found.cycle.at(year), found.next), isSure: true };
};

/** "last spring claw": the spring is a part. */
function isSpringPart(tokens: readonly Token[], { kind, next }: NamedCycle): boolean {
  return kind === 'season' && springParts.has(wordAt(tokens, next));
}

export const relativeAt: Reader = firstOf(nearDay, vague, longAgo, within, ago, relative, named);
