/** A day of the calendar as YYYY-MM-DD (ISO 8601). */
export type Day = string;

/** Days from the first to the last, both in it. */
export interface Span {
  from: Day;
  to: Day;
}

/** The ends of an open span: before and after every film. */
export const earliestDay: Day = '1900-01-01';
export const latestDay: Day = '2199-12-31';

const msPerDay = 86_400_000;
/** The days since 1 January 1970 that `earliestDay` and `latestDay` are. */
const firstNumber = Date.parse(earliestDay) / msPerDay;
const lastNumber = Date.parse(latestDay) / msPerDay;

function dayOf(number: number): Day {
  const within = Math.min(Math.max(number, firstNumber), lastNumber);
  return new Date(within * msPerDay).toISOString().slice(0, 10);
}

function numberOf(day: Day): number {
  return Date.parse(day) / msPerDay;
}

export function addDays(day: Day, count: number): Day {
  return dayOf(numberOf(day) + count);
}

/** 0 for Sunday, as JavaScript counts. */
export function weekdayOf(day: Day): number {
  return new Date(day).getUTCDay();
}

export function yearOf(day: Day): number {
  return Number(day.slice(0, 4));
}

/** 1 to 12. */
export function monthOf(day: Day): number {
  return Number(day.slice(5, 7));
}

/** Whether such a day is in the calendar: 2026-02-29 is not. */
export function dayExists(year: number, month: number, day: number): boolean {
  const date = new Date(Date.UTC(year, month - 1, day));
  return date.getUTCMonth() === month - 1 && date.getUTCDate() === day && year >= 1900 && year <= 2199;
}

/** The day of a year, month (which may run over the year's ends) and day of the month. */
export function dayFrom(year: number, month: number, day = 1): Day {
  return dayOf(Date.UTC(year, month - 1, day) / msPerDay);
}

/** Months after each other as one span; the month may run over the year's ends. */
export function monthSpan(year: number, month: number, count = 1): Span {
  return { from: dayFrom(year, month), to: addDays(dayFrom(year, month + count), -1) };
}

export function yearSpan(year: number): Span {
  return { from: dayFrom(year, 1), to: dayFrom(year, 12, 31) };
}

/** The week that holds a day. @param firstDay 0 for Sunday */
export function weekSpan(day: Day, firstDay: number): Span {
  const from = addDays(day, -((weekdayOf(day) - firstDay + 7) % 7));
  return { from, to: addDays(from, 6) };
}

/** ISO 8601: weeks begin on Monday, and week 1 holds the first Thursday of the year. */
export function isoWeekSpan(year: number, week: number): Span {
  const from = addDays(weekSpan(dayFrom(year, 1, 4), 1).from, (week - 1) * 7);
  return { from, to: addDays(from, 6) };
}

export function isIn({ from, to }: Span, day: Day): boolean {
  return from <= day && day <= to;
}

export function laterOf(a: Day, b: Day): Day {
  return a < b ? b : a;
}

export function earlierOf(a: Day, b: Day): Day {
  return a < b ? a : b;
}

export function daysBetween(from: Day, to: Day): number {
  return numberOf(to) - numberOf(from);
}

/**
 * Easter Sunday, by the Gregorian rule as Oudin (1940) put it into whole numbers, from memory; checked in
 * `tests/outside/seasons.test.ts`.
 */
export function easterOf(year: number): Day {
  const golden = year % 19;
  const century = Math.floor(year / 100);
  const epact =
    (century - Math.floor(century / 4) - Math.floor((8 * century + 13) / 25) + 19 * golden + 15) % 30;
  const moon =
    epact - Math.floor(epact / 28) * (1 - Math.floor(29 / (epact + 1)) * Math.floor((21 - golden) / 11));
  const weekday = (year + Math.floor(year / 4) + moon + 2 - century + Math.floor(century / 4)) % 7;
  return dayFrom(year, 3, 28 + moon - weekday);
}
