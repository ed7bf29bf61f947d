import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addressOf, addressOfMoment } from '@/app/_parts/places';
import { dayInWords, daysAway, promiseInWords } from '@/app/_parts/words';
import { isOverdue, rackGroups } from '@/lib/work';
import { jobIdSchema, takeIdSchema, traceIdSchema } from '@/shared/ids';
import { jobStates } from '@/shared/jobs';

const today = '2026-11-25';

const day = fc
  .integer({ min: -400, max: 400 })
  .map((away) => new Date(Date.parse(today) + away * 86_400_000).toISOString().slice(0, 10));
const ticket = fc.record({
  number: fc.integer({ min: 1, max: 9999 }),
  state: fc.constantFrom(...jobStates),
  promisedOn: fc.option(day),
  receivedOn: day,
  updatedAt: fc.integer({ min: 0, max: 5 }),
});
type Hanging = Parameters<typeof isOverdue>[0] & { number: number; receivedOn: string; updatedAt: number };

let number = 0;
function hang(
  state: Hanging['state'],
  promisedOn: string | null = null,
  more: Partial<Hanging> = {},
): Hanging {
  number += 1;
  return { number, state, promisedOn, receivedOn: '2026-11-01', updatedAt: 0, ...more };
}
const numbersOf = (tickets: readonly Hanging[]) =>
  rackGroups(tickets, today).map(({ name, tickets: here }) => [name, here.map((one) => one.number)]);

describe('the groups of the rack', () => {
  it('go from the bench over what is due and what is ready to what has gone', () => {
    const gone = hang('collected', null, { updatedAt: 1 });
    const undone = hang('returned undone', null, { updatedAt: 2 });
    const ready = hang('ready');
    const due = hang('booked in');
    const bench = hang('on the bench');
    expect(numbersOf([gone, undone, ready, due, bench])).toEqual([
      ['bench', [bench.number]],
      ['due', [due.number]],
      ['ready', [ready.number]],
      ['gone', [undone.number, gone.number]],
    ]);
  });

  it('leave out what holds no ticket', () => {
    expect(rackGroups([], today)).toEqual([]);
    expect(rackGroups([hang('ready')], today).map(({ name }) => name)).toEqual(['ready']);
  });

  it('hang what is due by its promised day, and without one by the day it came in', () => {
    const late = hang('booked in', '2026-11-20');
    const soon = hang('booked in', '2026-11-27');
    const soonToo = hang('booked in', '2026-11-27', { receivedOn: '2026-10-01' });
    const old = hang('booked in', null, { receivedOn: '2026-09-01' });
    const fresh = hang('booked in', null, { receivedOn: '2026-11-24', updatedAt: 9 });
    expect(numbersOf([fresh, soon, old, soonToo, late])).toEqual([
      ['due', [late, soonToo, soon, old, fresh].map((one) => one.number)],
    ]);
  });

  it('hang the one touched last first in every other group, whatever it is promised for', () => {
    const before = hang('on the bench', '2026-11-20', { updatedAt: 1 });
    const now = hang('on the bench', null, { updatedAt: 2 });
    expect(numbersOf([before, now])).toEqual([['bench', [now.number, before.number]]]);
  });

  it('count as overdue what is still in hand past its day', () => {
    const [bench, due, ready, gone] = [
      hang('on the bench', '2026-11-24'),
      hang('booked in', today),
      hang('ready', '2026-11-24'),
      hang('collected', '2026-11-24'),
    ];
    expect(rackGroups([bench, due, ready, gone], today).map(({ overdue }) => overdue)).toEqual([1, 0, 0, 0]);
  });

  it('hold every ticket once, in the same order however they came', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(ticket, { selector: (one) => one.number }),
        fc.infiniteStream(fc.nat()),
        (all, keys) => {
          const shuffled = all.map((one) => ({ one, key: keys.next().value })).sort((a, b) => a.key - b.key);
          const inOrder = rackGroups(all, today).flatMap((group) => group.tickets);
          expect(
            rackGroups(
              shuffled.map(({ one }) => one),
              today,
            ).flatMap((group) => group.tickets),
          ).toEqual(inOrder);
          expect(new Set(inOrder)).toEqual(new Set(all));
          const due = rackGroups(all, today).find(({ name }) => name === 'due');
          expect(due?.tickets.slice(0, due.overdue).every((one) => isOverdue(one, today)) ?? true).toBe(true);
        },
      ),
    );
  });
});

describe('a day in words', () => {
  it.each([
    ['2026-11-25', 'today'],
    ['2026-11-26', 'tomorrow'],
    ['2026-11-24', 'yesterday'],
    // 2026-11-25 is a Wednesday by Python’s datetime.
    ['2026-11-27', 'Friday'],
    ['2026-12-01', 'Tuesday'],
    ['2026-12-02', '2 Dec'],
    ['2026-11-23', '23 Nov'],
    ['2027-03-03', '3 Mar 2027'],
    ['2025-11-25', '25 Nov 2025'],
  ])('%s is %s', (isoDay, words) => {
    expect(dayInWords(isoDay, today)).toBe(words);
  });

  it.each([
    ['2026-11-30', 'in 5 days'],
    ['2026-11-26', 'in 1 day'],
    ['2026-11-25', 'today'],
    ['2026-11-22', '3 days ago'],
  ])('%s is %s', (isoDay, words) => {
    expect(daysAway(isoDay, today)).toBe(words);
  });

  it.each([
    ['2026-11-27', 'promised for Friday'],
    ['2026-11-24', 'promised for yesterday'],
    ['2026-11-22', 'promised for 22 Nov, 3 days ago'],
    ['2026-12-05', 'promised for 5 Dec, in 10 days'],
  ])('a promise for %s is “%s”', (isoDay, words) => {
    expect(promiseInWords(isoDay, today)).toBe(words);
  });

  it('names the weekday that the calendar of the JavaScript engine names (ECMA-402)', () => {
    const weekday = new Intl.DateTimeFormat('en-GB', { weekday: 'long', timeZone: 'UTC' });
    fc.assert(
      fc.property(day, fc.integer({ min: 2, max: 6 }), (from, away) => {
        const then = Date.parse(from) + away * 86_400_000;
        expect(dayInWords(new Date(then).toISOString().slice(0, 10), from)).toBe(weekday.format(then));
      }),
    );
  });
});

describe('where a loose end is tied up', () => {
  const job = jobIdSchema.parse('j'.repeat(20));
  const takeId = takeIdSchema.parse('t'.repeat(20));
  const traceId = traceIdSchema.parse('w'.repeat(20));
  const at = `/jobs/${job}`;
  it.each([
    [{ on: 'ticket', anchor: 'promisedOn' }, `${at}/ticket#promisedOn`],
    [{ on: 'trace', traceId }, `${at}/trace/${traceId}`],
    [{ on: 'jack' }, `${at}/jack`],
    [{ on: 'film', moment: { takeId, ms: 1500 } }, `${at}?take=${takeId}&ms=1500`],
    [{ on: 'sheet', line: 'm'.repeat(20) }, `${at}?line=${'m'.repeat(20)}`],
    [{ on: 'proposals' }, `${at}?go=proposals`],
  ] as const)('%o is at %s', (place, address) => {
    expect(addressOf(job, place)).toBe(address);
  });

  it('a moment is at its take and its milliseconds', () => {
    expect(addressOfMoment(job, { takeId, ms: 0 })).toBe(`${at}?take=${takeId}&ms=0`);
  });
});
