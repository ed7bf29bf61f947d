import { type Day, earliestDay, latestDay, type Span, yearOf, yearSpan } from './days';

const monthNames =
  'January February March April May June July August September October November December'.split(' ');

/** "3 March 2026". */
function sayDay(day: Day): string {
  return `${Number(day.slice(8))} ${monthNames[Number(day.slice(5, 7)) - 1]} ${day.slice(0, 4)}`;
}

/** "between 1 March and 31 May 2026", "since 1 June 2026", "on 3 March 2026". */
export function saySpan(span: Span): string {
  const { from, to } = span;
  if (from === to) return `on ${sayDay(from)}`;
  if (from === earliestDay) return `up to ${sayDay(to)}`;
  if (to === latestDay) return `since ${sayDay(from)}`;
  const year = yearSpan(yearOf(from));
  if (from === year.from && to === year.to) return `in ${yearOf(from)}`;
  const isOneYear = yearOf(from) === yearOf(to);
  return `between ${isOneYear ? sayDay(from).replace(/ \d{4}$/, '') : sayDay(from)} and ${sayDay(to)}`;
}
