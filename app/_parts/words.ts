export { folded } from '@/lib/work';

/** "0012": as it is stamped on the ticket. */
export function ticketNumber(number: number): string {
  return String(number).padStart(4, '0');
}

/** "1 take", "3 takes". */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count.toLocaleString('en-GB')} ${count === 1 ? one : many}`;
}

const sizeUnits = ['bytes', 'kB', 'MB', 'GB', 'TB'] as const;

/** "1.4 GB": decimal prefixes (SI), three figures at most. */
export function sizeInWords(bytes: number): string {
  if (bytes === 1) return '1 byte';
  const step = bytes < 1 ? 0 : Math.min(sizeUnits.length - 1, Math.floor(Math.log10(bytes) / 3));
  const value = bytes / 1000 ** step;
  return `${value.toFixed(step > 0 && value < 100 ? 1 : 0)} ${sizeUnits[step]}`;
}

const day = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', year: 'numeric' });
const clock = new Intl.DateTimeFormat('en-GB', { hour: '2-digit', minute: '2-digit' });

/** "3 Mar 2026, 14:05", by the clock of the machine that asks. */
export function dayAndTime(epochMs: number): string {
  return `${day.format(epochMs)}, ${clock.format(epochMs)}`;
}

/** "today 14:05", "yesterday 14:05" or "3 Mar 2026". */
export function lastTouched(epochMs: number, nowMs: number): string {
  const yesterday = new Date(nowMs);
  yesterday.setDate(yesterday.getDate() - 1);
  if (day.format(epochMs) === day.format(nowMs)) return `today ${clock.format(epochMs)}`;
  if (day.format(epochMs) === day.format(yesterday)) return `yesterday ${clock.format(epochMs)}`;
  return day.format(epochMs);
}

/** Whether every word of the question stands somewhere in the text; both already folded. */
export function holdsEveryWord(text: string, question: string): boolean {
  return question.split(/\s+/).every((word) => text.includes(word));
}

// Days are ISO 8601 (2026-11-25), both the day told and the workshop’s today.
const weekdays = ['Sunday', 'Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday'] as const;
// A browser may shorten months otherwise than the bench machine does, and the page would not agree with itself.
const months = 'Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec'.split(' ');
const dayMs = 86_400_000;

/** "today", "tomorrow", "yesterday", "Friday" within the coming week, "3 Mar", or "3 Mar 2027" in another year. */
export function dayInWords(isoDay: string, today: string): string {
  return namedDay(isoDay, today) ?? dateInWords(isoDay, today);
}

/** "promised for Friday"; a date tells how far it is too: "promised for 22 Nov, 3 days ago". */
export function promiseInWords(isoDay: string, today: string): string {
  const named = namedDay(isoDay, today);
  return `promised for ${named ?? `${dateInWords(isoDay, today)}, ${daysAway(isoDay, today)}`}`;
}

/** "in 5 days", "1 day ago"; "today" where it is none away. */
export function daysAway(isoDay: string, today: string): string {
  const away = daysUntil(isoDay, today);
  if (away === 0) return 'today';
  return away > 0 ? `in ${counted(away, 'day')}` : `${counted(-away, 'day')} ago`;
}

/** The day by its name; null where only its date says which day is meant. */
function namedDay(isoDay: string, today: string): string | null {
  const away = daysUntil(isoDay, today);
  if (away < -1 || away > 6) return null;
  const near = ['yesterday', 'today', 'tomorrow'][away + 1];
  return near ?? weekdays[new Date(isoDay).getUTCDay()] ?? null;
}

function dateInWords(isoDay: string, today: string): string {
  const at = new Date(isoDay);
  const date = `${at.getUTCDate()} ${months[at.getUTCMonth()]}`;
  const year = isoDay.slice(0, 4);
  return year === today.slice(0, 4) ? date : `${date} ${year}`;
}

/** Whole days from today to a day; below 0 where it has gone by. */
function daysUntil(isoDay: string, today: string): number {
  return Math.round((Date.parse(isoDay) - Date.parse(today)) / dayMs);
}
