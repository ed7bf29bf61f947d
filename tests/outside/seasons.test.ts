import { spawnSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { addDays, easterOf, isoWeekSpan, weekdayOf, weekSpan } from '@/lib/archive/question/time/days';
import { timesIn } from '@/lib/archive/question/time/phrases';

type Hemisphere = 'north' | 'south';
const asked = (question: string, today: string, hemisphere: Hemisphere = 'north', firstDayOfWeek = 1) =>
  timesIn(question, { today, hemisphere, firstDayOfWeek }).map(({ span }) => [span.from, span.to]);

/**
 * Meteorological seasons, three whole months each, as the World Meteorological Organization's members keep them:
 * in the north spring is March to May, in the south September to November (from memory). Each line was worked out
 * by hand on a printed calendar: the newest season that is over on the day of asking.
 */
describe('“last” seasons against hand-worked calendars', () => {
  it.each<[string, Hemisphere, string, string, string]>([
    ['last spring', 'north', '2026-11-25', '2026-03-01', '2026-05-31'],
    ['last spring', 'north', '2026-04-10', '2025-03-01', '2025-05-31'],
    ['last spring', 'north', '2026-05-31', '2025-03-01', '2025-05-31'],
    ['last spring', 'north', '2026-06-01', '2026-03-01', '2026-05-31'],
    ['last spring', 'north', '2026-01-15', '2025-03-01', '2025-05-31'],
    ['last summer', 'north', '2026-11-25', '2026-06-01', '2026-08-31'],
    ['last summer', 'north', '2026-07-01', '2025-06-01', '2025-08-31'],
    ['last autumn', 'north', '2026-11-25', '2025-09-01', '2025-11-30'],
    ['last fall', 'north', '2026-12-01', '2026-09-01', '2026-11-30'],
    ['last winter', 'north', '2026-11-25', '2025-12-01', '2026-02-28'],
    ['last winter', 'north', '2026-01-15', '2024-12-01', '2025-02-28'],
    ['last winter', 'north', '2024-03-01', '2023-12-01', '2024-02-29'],
    ['last spring', 'south', '2026-11-25', '2025-09-01', '2025-11-30'],
    ['last spring', 'south', '2026-12-01', '2026-09-01', '2026-11-30'],
    ['last spring', 'south', '2026-04-10', '2025-09-01', '2025-11-30'],
    ['last summer', 'south', '2026-11-25', '2025-12-01', '2026-02-28'],
    ['last summer', 'south', '2026-01-15', '2024-12-01', '2025-02-28'],
    ['last autumn', 'south', '2026-11-25', '2026-03-01', '2026-05-31'],
    ['last winter', 'south', '2026-11-25', '2026-06-01', '2026-08-31'],
    ['last winter', 'south', '2026-07-01', '2025-06-01', '2025-08-31'],
  ])('%s (%s) asked on %s', (question, hemisphere, today, from, to) => {
    expect(asked(`how did I do it ${question}`, today, hemisphere)).toEqual([[from, to]]);
  });
});

describe('“this”, named and counted seasons against hand-worked calendars', () => {
  it.each<[string, Hemisphere, string, string, string]>([
    ['this spring', 'north', '2026-01-15', '2026-03-01', '2026-05-31'],
    ['this spring', 'north', '2026-04-10', '2026-03-01', '2026-05-31'],
    ['this summer', 'north', '2026-11-25', '2026-06-01', '2026-08-31'],
    ['this winter', 'north', '2026-01-15', '2025-12-01', '2026-02-28'],
    ['this winter', 'north', '2026-11-25', '2026-12-01', '2027-02-28'],
    ['this winter', 'north', '2026-03-05', '2025-12-01', '2026-02-28'],
    ['this summer', 'south', '2026-01-15', '2025-12-01', '2026-02-28'],
    ['this winter', 'south', '2026-11-25', '2026-06-01', '2026-08-31'],
    ['in the spring', 'north', '2026-11-25', '2026-03-01', '2026-05-31'],
    ['in the spring', 'north', '2026-04-10', '2026-03-01', '2026-05-31'],
    ['in the spring', 'south', '2026-04-10', '2025-09-01', '2025-11-30'],
    ['spring 2025', 'north', '2026-11-25', '2025-03-01', '2025-05-31'],
    ['spring 2025', 'south', '2026-11-25', '2025-09-01', '2025-11-30'],
    ['winter 2025', 'north', '2026-11-25', '2024-12-01', '2025-02-28'],
    ['winter 2025/26', 'north', '2026-11-25', '2025-12-01', '2026-02-28'],
    ['summer 2025-26', 'south', '2026-11-25', '2025-12-01', '2026-02-28'],
    ['two summers ago', 'north', '2026-11-25', '2025-06-01', '2025-08-31'],
    ['spring last year', 'north', '2026-11-25', '2025-03-01', '2025-05-31'],
    ['the spring before last', 'north', '2026-11-25', '2025-03-01', '2025-05-31'],
    ['early last summer', 'north', '2026-11-25', '2026-06-01', '2026-06-30'],
    ['since last spring', 'north', '2026-11-25', '2026-03-01', '2199-12-31'],
    ['before last summer', 'north', '2026-11-25', '1900-01-01', '2026-05-31'],
  ])('%s (%s) asked on %s', (question, hemisphere, today, from, to) => {
    expect(asked(question, today, hemisphere)).toEqual([[from, to]]);
  });
});

/** Worked out by hand: 25 November 2026 is a Wednesday, 1 January 2027 a Friday. */
describe('weeks, months and years against hand-worked calendars', () => {
  it.each<[string, string, number, string, string]>([
    ['last week', '2026-11-25', 1, '2026-11-16', '2026-11-22'],
    ['last week', '2026-11-25', 0, '2026-11-15', '2026-11-21'],
    ['last week', '2026-11-25', 6, '2026-11-14', '2026-11-20'],
    ['last week', '2026-11-22', 1, '2026-11-09', '2026-11-15'],
    ['last week', '2026-11-22', 0, '2026-11-15', '2026-11-21'],
    ['this week', '2027-01-01', 1, '2026-12-28', '2027-01-03'],
    ['the week before last', '2026-11-25', 1, '2026-11-09', '2026-11-15'],
    ['two weeks ago', '2027-01-01', 1, '2026-12-14', '2026-12-20'],
    ['yesterday', '2027-01-01', 1, '2026-12-31', '2026-12-31'],
    ['yesterday', '2024-03-01', 1, '2024-02-29', '2024-02-29'],
    ['last Tuesday', '2026-11-25', 1, '2026-11-24', '2026-11-24'],
    ['last Wednesday', '2026-11-25', 1, '2026-11-18', '2026-11-18'],
    ['on Wednesday', '2026-11-25', 1, '2026-11-25', '2026-11-25'],
    ['Tuesday last week', '2026-11-25', 1, '2026-11-17', '2026-11-17'],
    ['last weekend', '2026-11-25', 1, '2026-11-21', '2026-11-22'],
    ['in March', '2026-11-25', 1, '2026-03-01', '2026-03-31'],
    ['in December', '2026-11-25', 1, '2025-12-01', '2025-12-31'],
    ['last March', '2026-03-10', 1, '2025-03-01', '2025-03-31'],
    ['last month', '2027-01-01', 1, '2026-12-01', '2026-12-31'],
    ['February 2024', '2026-11-25', 1, '2024-02-01', '2024-02-29'],
    ['two years ago', '2026-11-25', 1, '2024-01-01', '2024-12-31'],
    ['more than two years ago', '2026-11-25', 1, '1900-01-01', '2024-11-24'],
    ['more than a month ago', '2026-03-31', 1, '1900-01-01', '2026-02-27'],
    ['over a week ago', '2026-11-25', 1, '1900-01-01', '2026-11-17'],
    ['2024', '2026-11-25', 1, '2024-01-01', '2024-12-31'],
    ['early last year', '2026-11-25', 1, '2025-01-01', '2025-04-30'],
    ['a couple of months ago', '2026-11-25', 1, '2026-08-01', '2026-10-31'],
    ['a couple of months ago', '2027-01-31', 1, '2026-10-01', '2026-12-31'],
    ['between March and May', '2026-11-25', 1, '2026-03-01', '2026-05-31'],
    ['between March and May', '2026-04-10', 1, '2025-03-01', '2025-05-31'],
    ['between November and February', '2026-11-25', 1, '2025-11-01', '2026-02-28'],
    ['between March and May 2025', '2026-11-25', 1, '2025-03-01', '2025-05-31'],
    ['since June', '2026-11-25', 1, '2026-06-01', '2199-12-31'],
    ['since June', '2026-04-10', 1, '2025-06-01', '2199-12-31'],
    ['before Christmas', '2026-11-25', 1, '2025-10-30', '2025-12-24'],
    ['before Christmas', '2026-12-28', 1, '2026-10-30', '2026-12-24'],
    ['3 March 2026', '2026-11-25', 1, '2026-03-03', '2026-03-03'],
    ['on March 3rd', '2026-11-25', 1, '2026-03-03', '2026-03-03'],
    ['on 12 December', '2026-11-25', 1, '2025-12-12', '2025-12-12'],
    ['on 29 February', '2026-11-25', 1, '2024-02-29', '2024-02-29'],
  ])('%s asked on %s, weeks from %d', (question, today, firstDay, from, to) => {
    expect(asked(question, today, 'north', firstDay)).toEqual([[from, to]]);
  });
});

const python = spawnSync('python3', ['--version']).status === 0;

/** Python's own datetime module as an independent program. */
function fromPython(program: string): string[] {
  const { stdout, status, stderr } = spawnSync('python3', ['-c', program], { encoding: 'utf8' });
  if (status !== 0) throw new Error(stderr);
  return stdout.trim().split('\n');
}

describe.skipIf(!python)('weeks and days against Python’s datetime', () => {
  it('ISO 8601 weeks of all years from 2000 to 2100', () => {
    const lines = fromPython(
      'import datetime as d\nfor y in range(2000,2101):\n for w in (1,2,26,51,52): print(y,w,d.date.fromisocalendar(y,w,1),d.date.fromisocalendar(y,w,7))',
    );
    const ours = lines.map((line) => {
      const [year, week] = line.split(' ').map(Number);
      const { from, to } = isoWeekSpan(year ?? 0, week ?? 0);
      return `${year} ${week} ${from} ${to}`;
    });
    expect(lines.length).toBe(505);
    expect(ours).toEqual(lines);
  });

  it('weekdays, and days 1000 later', () => {
    const lines = fromPython(
      'import datetime as d\nfor n in range(0,60000,37):\n x=d.date(1950,1,1)+d.timedelta(n)\n print(x,x.isoweekday()%7,x+d.timedelta(1000))',
    );
    const ours = lines.map((line) => {
      const day = line.slice(0, 10);
      return `${day} ${weekdayOf(day)} ${addDays(day, 1000)}`;
    });
    expect(ours).toEqual(lines);
  });

  it('the week that holds a day, from Sunday and from Monday', () => {
    const lines = fromPython(
      'import datetime as d\nfor n in range(0,9000,13):\n x=d.date(2010,1,1)+d.timedelta(n)\n print(x,x-d.timedelta(x.isoweekday()%7),x-d.timedelta(x.weekday()))',
    );
    const ours = lines.map((line) => {
      const day = line.slice(0, 10);
      return `${day} ${weekSpan(day, 0).from} ${weekSpan(day, 1).from}`;
    });
    expect(ours).toEqual(lines);
  });
});

/** Easter Sundays as printed in church calendars (from memory). */
describe('Easter', () => {
  it.each([
    '2000-04-23',
    '2008-03-23',
    '2011-04-24',
    '2019-04-21',
    '2020-04-12',
    '2021-04-04',
    '2022-04-17',
    '2023-04-09',
    '2024-03-31',
    '2025-04-20',
    '2026-04-05',
    '2027-03-28',
    '2038-04-25',
  ])('%s', (day) => {
    expect(easterOf(Number(day.slice(0, 4)))).toBe(day);
    expect(weekdayOf(day)).toBe(0);
  });
});
