const dayWords = new Intl.DateTimeFormat('en-GB', {
  day: 'numeric',
  month: 'long',
  year: 'numeric',
  timeZone: 'UTC',
});

/** "25 November 2026", of a day as 2026-11-25 (ISO 8601). */
export function dayInWords(day: string): string {
  return dayWords.format(Date.parse(day));
}
