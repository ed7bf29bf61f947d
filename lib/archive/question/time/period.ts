import type { Day, Span } from './days';
import type { Cycle, Hemisphere } from './seasons';
import type { Token } from './tokens';

export interface Calendar {
  today: Day;
  hemisphere: Hemisphere;
  /** 0 for Sunday. */
  firstDayOfWeek: number;
}

/** A stretch of the calendar that words name. */
export interface Period {
  span: Span;
  /** The token after it. */
  next: number;
  /** Whether the words alone say that a time is meant. */
  isSure: boolean;
  /** Where no year was said: what comes again, for "between March and May 2025". */
  yearless?: Cycle;
  /** A day that a year has once, such as Christmas: "before" it means the weeks before. */
  isFeast?: boolean;
  /** "last year", "2024": a month or season may follow that lies in it. */
  isYear?: boolean;
  /** "last week": a weekday may follow that lies in it. */
  isWeek?: boolean;
}

export type Reader = (tokens: readonly Token[], at: number, calendar: Calendar) => Period | null;

export const wordAt = (tokens: readonly Token[], at: number): string => tokens[at]?.word ?? '';

/** The first place from `at` on whose word is none of these. */
export function past(tokens: readonly Token[], at: number, ...words: string[]): number {
  let next = at;
  while (words.includes(wordAt(tokens, next))) next++;
  return next;
}

/** What the first reader that understands the words makes of them. */
export function firstOf(...readers: readonly Reader[]): Reader {
  return (tokens, at, calendar) => {
    for (const reader of readers) {
      const period = reader(tokens, at, calendar);
      if (period) return period;
    }
    return null;
  };
}
