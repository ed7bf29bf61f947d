import { isSureWord } from './dates';
import {
  addDays,
  type Day,
  dayFrom,
  easterOf,
  monthOf,
  monthSpan,
  type Span,
  weekdayOf,
  weekSpan,
  yearOf,
  yearSpan,
} from './days';
import { type Calendar, past, wordAt } from './period';
import { type Cycle, seasonCycle } from './seasons';
import { months, seasonNames, type UnitName, weekdays } from './time-words';
import type { Token } from './tokens';

export interface NamedCycle {
  cycle: Cycle;
  next: number;
  isSure: boolean;
  kind: 'month' | 'season' | 'feast' | 'weekday';
}

const feasts: ReadonlyMap<string, (year: number) => Span> = new Map([
  ['christmas', (year: number) => ({ from: dayFrom(year, 12, 24), to: dayFrom(year, 12, 26) })],
  ['xmas', (year: number) => ({ from: dayFrom(year, 12, 24), to: dayFrom(year, 12, 26) })],
  ['easter', (year: number) => ({ from: addDays(easterOf(year), -2), to: addDays(easterOf(year), 1) })],
  ['halloween', (year: number) => ({ from: dayFrom(year, 10, 31), to: dayFrom(year, 10, 31) })],
  ['newyear', (year: number) => ({ from: dayFrom(year - 1, 12, 31), to: dayFrom(year, 1, 1) })],
]);

/** A month, season, feast, weekday or weekend by its name, also in the plural ("two summers"). */
export function namedCycleAt(tokens: readonly Token[], at: number, calendar: Calendar): NamedCycle | null {
  const token = tokens[at];
  if (!token) return null;
  const next = at + 1;
  const near = yearOf(calendar.today);
  const name =
    token.word.length > 4 && token.word !== 'christmas' ? token.word.replace(/s$/, '') : token.word;
  // "springs" are parts, unless so many of them are told.
  const isSure = isSureWord(token) && name === token.word;
  const season = seasonNames.get(name);
  if (season) return { cycle: seasonCycle(season, calendar.hemisphere, near), next, isSure, kind: 'season' };
  const month = months.get(name);
  if (month) return { cycle: monthCycle(month, near), next, isSure, kind: 'month' };
  const weekday = weekdays.get(token.word) ?? weekdays.get(name);
  if (weekday !== undefined)
    return { cycle: weekdayCycle(weekday, 1, calendar.today), next, isSure, kind: 'weekday' };
  if (name === 'weekend')
    return { cycle: weekdayCycle(6, 2, calendar.today), next, isSure: false, kind: 'weekday' };
  return feastAt(tokens, at, near);
}

function feastAt(tokens: readonly Token[], at: number, near: number): NamedCycle | null {
  const isNewYear = wordAt(tokens, at) === 'new' && /^years?$/.test(wordAt(tokens, at + 1));
  const name = isNewYear ? 'newyear' : wordAt(tokens, at).replace(/^christmases$/, 'christmas');
  const feast = feasts.get(name);
  if (!feast) return null;
  const afterName = isNewYear ? at + 2 : at + 1;
  const next = past(tokens, afterName, "'", '’', 's', 'day', 'eve', 'time');
  return { cycle: { at: feast, near, isYearly: true }, next, isSure: true, kind: 'feast' };
}

function monthCycle(month: number, near: number): Cycle {
  return { at: (year) => monthSpan(year, month), near, isYearly: true };
}

/** Days that come every week, beginning with one weekday. */
function weekdayCycle(weekday: number, length: number, today: Day): Cycle {
  const newest = addDays(today, -((weekdayOf(today) - weekday + 7) % 7));
  const at = (index: number) => {
    const from = addDays(newest, index * 7);
    return { from, to: addDays(from, length - 1) };
  };
  return { at, near: 0, isYearly: false };
}

/** Days, weeks, months, quarters or years of the calendar, 0 for the one that holds today. */
export function unitCycle(unit: UnitName, { today, firstDayOfWeek }: Calendar): Cycle {
  const [year, month] = [yearOf(today), monthOf(today)];
  const quarter = month - ((month - 1) % 3);
  const day = (index: number) => ({ from: addDays(today, index), to: addDays(today, index) });
  const at: Record<UnitName, Cycle['at']> = {
    day,
    week: (index) => weekSpan(addDays(today, index * 7), firstDayOfWeek),
    month: (index) => monthSpan(year, month + index),
    quarter: (index) => monthSpan(year, quarter + index * 3, 3),
    year: (index) => yearSpan(year + index),
  };
  return { at: at[unit], near: 0, isYearly: false };
}
