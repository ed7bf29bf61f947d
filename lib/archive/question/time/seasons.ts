import { type Day, daysBetween, isIn, monthSpan, type Span } from './days';

export const hemispheres = ['north', 'south'] as const;
export type Hemisphere = (typeof hemispheres)[number];
export type SeasonName = 'spring' | 'summer' | 'autumn' | 'winter';

/** Meteorological seasons, three whole months each, by their first month. */
const firstMonths: Readonly<Record<Hemisphere, Record<SeasonName, number>>> = {
  north: { spring: 3, summer: 6, autumn: 9, winter: 12 },
  south: { spring: 9, summer: 12, autumn: 3, winter: 6 },
};

/**
 * Something that comes again and again. Index 0 may be any of them; a higher one is later. The index of what
 * comes once a year is that year.
 */
export interface Cycle {
  at(index: number): Span;
  /** An index near today. */
  near: number;
  /** Whether the index is a year. */
  isYearly: boolean;
}

/** A season that crosses the new year bears the year of its January, as climate records have it (from memory). */
export function seasonCycle(season: SeasonName, hemisphere: Hemisphere, near: number): Cycle {
  const first = firstMonths[hemisphere][season];
  return { at: (year) => monthSpan(first === 12 ? year - 1 : year, first, 3), near, isYearly: true };
}

/** Indexes around today, the earliest first. */
const around = ({ near }: Cycle) => [-3, -2, -1, 0, 1, 2, 3].map((step) => near + step);

/** The newest that is wholly over. */
export function lastEnded(cycle: Cycle, today: Day): number {
  return around(cycle).findLast((index) => cycle.at(index).to < today) ?? cycle.near - 1;
}

/** The newest that has begun, running or over. */
export function lastBegun(cycle: Cycle, today: Day): number {
  return around(cycle).findLast((index) => cycle.at(index).from <= today) ?? cycle.near;
}

export function firstToCome(cycle: Cycle, today: Day): number {
  return around(cycle).find((index) => cycle.at(index).from > today) ?? cycle.near + 1;
}

/**
 * "This spring": the running one; else the one within the calendar year of asking, be it over or to come; and for
 * one that crosses the new year the nearest, the past one where both are as near.
 */
export function thisOne(cycle: Cycle, today: Day): number {
  const indexes = around(cycle);
  const running = indexes.find((index) => isIn(cycle.at(index), today));
  if (running !== undefined) return running;
  const inYear = indexes.find((index) => isWithinYear(cycle.at(index), today.slice(0, 4)));
  if (cycle.isYearly && inYear !== undefined) return inYear;
  const past = lastEnded(cycle, today);
  const coming = firstToCome(cycle, today);
  const sincePast = daysBetween(cycle.at(past).to, today);
  return daysBetween(today, cycle.at(coming).from) < sincePast ? coming : past;
}

function isWithinYear({ from, to }: Span, year: string): boolean {
  return from.startsWith(year) && to.startsWith(year);
}
