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

/** Lower case without accents, so that what is typed finds what was meant. */
export function folded(text: string): string {
  return text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();
}

/** Whether every word of the question stands somewhere in the text; both already folded. */
export function holdsEveryWord(text: string, question: string): boolean {
  return question.split(/\s+/).every((word) => text.includes(word));
}
