import { earliestYear, type SerialField } from './serial-layout';

const months = 'january february march april may june july august september october november december'.split(
  ' ',
);

/** What a code stands for, as digits where it is part of a date; null where it is not understood. */
export function readCode(field: SerialField, value: string): string | null {
  if (field === 'year') return /^\d{4}$/.test(value) && Number(value) >= earliestYear ? value : null;
  if (field === 'month') return monthOf(value);
  if (field === 'week') return within(value, 53);
  if (field === 'day') return within(value, 31);
  return value === '' ? null : value;
}

/** "3", "March" or "Mar". */
function monthOf(value: string): string | null {
  const word = value.toLowerCase().replace(/\.$/, '');
  const at = word.length < 3 ? -1 : months.findIndex((month) => month.startsWith(word));
  return at >= 0 ? String(at + 1) : within(value, 12);
}

function within(value: string, most: number): string | null {
  const number = /^\d{1,2}$/.test(value) ? Number(value) : 0;
  return number >= 1 && number <= most ? String(number) : null;
}

/** "July": for the words of a reading. */
export function monthName(month: number): string {
  const name = months[month - 1] ?? '';
  return name.charAt(0).toUpperCase() + name.slice(1);
}
