import { monthsWritten } from './plain-words';

/** A date that a name tells, by the clock on the wall. */
export interface NameDate {
  /** ISO 8601 day. */
  day: string;
  /** Milliseconds of the wall clock since 1970-01-01T00:00; null where the name tells no time. */
  wallMs: number | null;
}

const dayMs = 86_400_000;
/** The oldest digital film that a workshop may have; what claims to be older is a number. */
const oldestYear = 1990;

type Written = readonly (string | undefined)[];

/** Ways of writing a whole date that cannot be mistaken, each with how it is read. */
const ways: readonly { says: RegExp; read: (written: Written) => NameDate | null }[] = [
  // Year, month and day in this order, closed up or parted; a time may follow: 20190314_101502, 2019-3-14 10.15.
  {
    says: /(?<!\d)(\d{4})(?:(\d{2})(\d{2})|([-_. ])(\d{1,2})\4(\d{1,2}))(?!\d)(?:[-_.T ]+(?:at )?(\d{2})[-_.:hH]?(\d{2})(?:[-_.:mM]?(\d{2}))?(?!\d))?/gi,
    read: ([year, month, day, , partedMonth, partedDay, ...time]) =>
      dateOf(year, month ?? partedMonth, day ?? partedDay, time),
  },
  // 14 March 2019, 14-mar-2019.
  {
    says: /(?<![\da-z])(\d{1,2})(?:st|nd|rd|th)?[-_. ]+([a-z]{3,9})[-_., ]+(\d{4})(?!\d)/gi,
    read: ([day, month, year]) => dateOf(year, monthOf(month), day),
  },
  // March 14, 2019.
  {
    says: /(?<![a-z])([a-z]{3,9})[-_. ]+(\d{1,2})(?:st|nd|rd|th)?[-_., ]+(\d{4})(?!\d)/gi,
    read: ([month, day, year]) => dateOf(year, monthOf(month), day),
  },
];

/**
 * The first whole date in a name. Only orders that cannot be mistaken are read: the year first, or the month in
 * letters; 03-04-2019 is left alone, for it may be March or April.
 * @param latestDay nothing later is believed
 */
export function dateInName(name: string, latestDay: string): NameDate | null {
  const found = ways.flatMap(({ says, read }) =>
    [...name.normalize('NFKC').matchAll(says)].map(([, ...written]) => read(written)),
  );
  return found.find((date) => date !== null && date.day <= latestDay) ?? null;
}

/** Takes every date out of a name, so that what is left are its words. */
export function withoutDates(name: string): string {
  return ways.reduce(
    (text, { says, read }) =>
      text.replace(says, (whole: string, ...written: string[]) => (read(written) ? ' ' : whole)),
    name,
  );
}

function monthOf(word: string | undefined): string | undefined {
  const index = monthsWritten.findIndex((ways) => ways.some((way) => way === word?.toLowerCase()));
  return index < 0 ? undefined : String(index + 1);
}

function dateOf(
  year: string | undefined,
  month: string | undefined,
  day: string | undefined,
  [hour, minute, second]: Written = [],
): NameDate | null {
  const [y, m, d] = [Number(year), Number(month), Number(day)];
  const midnight = Date.UTC(y, m - 1, d);
  const at = new Date(midnight);
  // A day that does not exist comes back as another one.
  if (!(y >= oldestYear) || at.getUTCMonth() !== m - 1 || at.getUTCDate() !== d) return null;
  const [h, min, s] = [Number(hour), Number(minute), Number(second ?? 0)];
  const isTime = h < 24 && min < 60 && s < 61;
  return { day: wallDay(midnight), wallMs: isTime ? midnight + ((h * 60 + min) * 60 + s) * 1000 : null };
}

/** The ISO 8601 day of a time by the clock on the wall. */
export function wallDay(wallMs: number): string {
  return new Date(wallMs).toISOString().slice(0, 10);
}

/** Whole days between two ISO 8601 days, never below 0. */
export function daysApart(one: string, other: string): number {
  return Math.abs(Date.parse(one) - Date.parse(other)) / dayMs;
}
