import { bisectLeft, bisectRight, quantileSorted } from 'd3-array';
import type { Spread, Standing } from '@/shared/reference';

/** Fewer than these are shown one by one: they are too few to judge by. */
export const enough = 5;

/**
 * The spread of measured values. Quartiles are type 7 of Hyndman and Fan, "Sample Quantiles in Statistical Packages",
 * The American Statistician 50 (1996), as d3-array reckons them.
 * @param sorted smallest first, in the base unit
 */
export function spreadOf(sorted: readonly number[], beside: Pick<Spread, 'open' | 'notMeasured'>): Spread {
  const isFew = sorted.length < enough;
  return {
    n: sorted.length,
    min: sorted[0] ?? null,
    quartiles: isFew
      ? null
      : { lower: quantile(sorted, 0.25), median: quantile(sorted, 0.5), upper: quantile(sorted, 0.75) },
    max: sorted.at(-1) ?? null,
    few: isFew ? [...sorted] : [],
    ...beside,
  };
}

/** @param sorted not empty, smallest first */
export function quantile(sorted: readonly number[], part: number): number {
  const value = quantileSorted([...sorted], part);
  if (value === undefined) throw new RangeError('There is no quantile of nothing.');
  return value;
}

/**
 * Where a value stands among earlier ones: "lower than 93 % of the 14 neck pickups measured here".
 * @param sorted earlier values, smallest first, in the unit of `value`
 * @param what so many of what was measured, as the sentence names them: "readings of the neck pickup"
 */
export function standingOf(value: number, sorted: readonly number[], what: (n: number) => string): Standing {
  const n = sorted.length;
  const below = bisectLeft(sorted, value);
  const above = n - bisectRight(sorted, value);
  const counts = { value, n, below, equal: n - below - above, above };
  const isEnough = n >= enough;
  return { ...counts, isEnough, sentence: isEnough ? judged(counts, what(n)) : tooFew(counts, what(n)) };
}

type Counts = Omit<Standing, 'sentence' | 'isEnough'>;

function judged({ n, below, above }: Counts, what: string): string {
  const [way, beaten] = above >= below ? ['Lower', above] : ['Higher', below];
  if (beaten === 0) return `The same as all ${n} ${what} measured here.`;
  if (beaten === n) return `${way} than all ${n} ${what} measured here.`;
  // Rounded down, so that it never says more than there is.
  return `${way} than ${Math.floor((100 * beaten) / n)} % of the ${n} ${what} measured here.`;
}

function tooFew({ n, below, equal, above }: Counts, what: string): string {
  if (n === 0) return `No ${what} measured here yet: nothing to judge by.`;
  return `Only ${n} ${what} measured here (${below} lower, ${equal} the same, ${above} higher): too few to judge.`;
}
