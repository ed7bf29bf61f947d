import { dayExists, dayFrom, isoWeekSpan, monthSpan, yearOf, yearSpan } from './days';
import { firstOf, type Period, past, type Reader, wordAt } from './period';
import { lastBegun } from './seasons';
import { madeThings, makingWords, months, unsureWords } from './time-words';
import type { Token } from './tokens';

/** A year of four figures, or of two behind an apostrophe. */
export function yearAt(tokens: readonly Token[], at: number): number | null {
  const [, short] = /^['’](\d\d)$/.exec(wordAt(tokens, at)) ?? [];
  if (short) return 2000 + Number(short);
  const [, long] = /^((?:19|20|21)\d\d)$/.exec(wordAt(tokens, at)) ?? [];
  return long ? Number(long) : null;
}

/** 2026-03-03, 2026-03, 2026-W12. */
const isoDate: Reader = (tokens, at) => {
  const [, year, month, day] = /^(\d{4})[-/](\d{2})(?:-(\d{2}))?$/.exec(wordAt(tokens, at)) ?? [];
  const [, weekYear, week] = /^(\d{4})-w(\d{1,2})$/.exec(wordAt(tokens, at)) ?? [];
  if (weekYear && Number(week) >= 1 && Number(week) <= 53)
    return { span: isoWeekSpan(Number(weekYear), Number(week)), next: at + 1, isSure: true };
  if (!dayExists(Number(year), Number(month), Number(day ?? 1))) return null;
  return day
    ? oneDay(Number(year), Number(month), Number(day), at + 1)
    : { span: monthSpan(Number(year), Number(month)), next: at + 1, isSure: true };
};

/** 3/3/2026, 24.12.25: the day first, unless only the month can be. */
const figures: Reader = (tokens, at) => {
  const [, first, second, last] = /^(\d{1,2})[./](\d{1,2})[./](\d{2,4})$/.exec(wordAt(tokens, at)) ?? [];
  const year = Number(last) + (last?.length === 2 ? 2000 : 0);
  const [a, b] = [Number(first), Number(second)];
  if (dayExists(year, b, a)) return oneDay(year, b, a, at + 1);
  return dayExists(year, a, b) ? oneDay(year, a, b, at + 1) : null;
};

/** 3 March, the 3rd of March 2026. */
const dayMonth: Reader = (tokens, at, calendar) => {
  const day = dayNumberAt(tokens, at);
  const month = months.get(wordAt(tokens, past(tokens, at + 1, 'of')));
  if (day === null || month === undefined) return null;
  return dayOfMonth(month, day, tokens, past(tokens, at + 1, 'of') + 1, calendar.today);
};

/** March 3, March 3rd, 2026. */
const monthDay: Reader = (tokens, at, calendar) => {
  const month = months.get(wordAt(tokens, at));
  const place = past(tokens, at + 1, 'the');
  const day = dayNumberAt(tokens, place);
  if (day === null || month === undefined) return null;
  return dayOfMonth(month, day, tokens, place + 1, calendar.today);
};

function dayNumberAt(tokens: readonly Token[], at: number): number | null {
  const [, day] = /^(\d{1,2})(?:st|nd|rd|th)?$/.exec(wordAt(tokens, at)) ?? [];
  return day && Number(day) >= 1 && Number(day) <= 31 ? Number(day) : null;
}

function dayOfMonth(
  month: number,
  day: number,
  tokens: readonly Token[],
  at: number,
  today: string,
): Period | null {
  const place = past(tokens, at, ',', 'of');
  const said = yearAt(tokens, place);
  if (said !== null) return dayExists(said, month, day) ? oneDay(said, month, day, place + 1) : null;
  // 29 February is looked for in the years that have it.
  const near = yearOf(today);
  const cycle = {
    at: (year: number) => ({ from: dayFrom(year, month, day), to: dayFrom(year, month, day) }),
    near,
    isYearly: true,
  };
  const newest = lastBegun(cycle, today);
  const year = [0, 1, 2, 3, 4, 5, 6, 7, 8]
    .map((back) => newest - back)
    .find((each) => dayExists(each, month, day));
  return year === undefined ? null : { ...oneDay(year, month, day, at), yearless: cycle };
}

function oneDay(year: number, month: number, day: number, next: number): Period {
  const only = dayFrom(year, month, day);
  return { span: { from: only, to: only }, next, isSure: true };
}

/** "week 12", "week 12 of 2026": as ISO 8601 counts them. */
const numberedWeek: Reader = (tokens, at, { today }) => {
  const week = Number(/^\d{1,2}$/.exec(wordAt(tokens, at + 1))?.[0]);
  if (wordAt(tokens, at) !== 'week' || !(week >= 1 && week <= 53)) return null;
  const place = past(tokens, at + 2, 'of', ',');
  const said = yearAt(tokens, place);
  const cycle = { at: (year: number) => isoWeekSpan(year, week), near: yearOf(today), isYearly: true };
  return said === null
    ? { span: cycle.at(lastBegun(cycle, today)), next: at + 2, isSure: true }
    : { span: cycle.at(said), next: place + 1, isSure: true };
};

/** Films are of our days; an older year, or one before an instrument, is when something was made. */
const oldestFilms = 1990;
const oldestBareYear = 2005;

const plainYear: Reader = (tokens, at, { today }) => {
  const year = yearAt(tokens, at);
  if (year === null || year < oldestFilms || year > yearOf(today) + 1) return null;
  const before = [1, 2, 3].map((back) => wordAt(tokens, at - back));
  if (before.some((word) => makingWords.has(word))) return null;
  const isBeforeThing = madeThings.has(wordAt(tokens, at + 1));
  const isApostrophe = !/^\d/.test(wordAt(tokens, at));
  const isSure = year >= oldestBareYear && !isBeforeThing && !isApostrophe;
  return { span: yearSpan(year), next: at + 1, isSure, isYear: true };
};

export const dateAt: Reader = firstOf(isoDate, figures, dayMonth, monthDay, numberedWeek, plainYear);

/** Whether a word that may mean something else was written as a name of the calendar. */
export function isSureWord({ word, isCapital }: Token): boolean {
  return !unsureWords.has(word) || isCapital;
}
