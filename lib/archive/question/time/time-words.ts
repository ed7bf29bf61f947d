import type { SeasonName } from './seasons';

const monthNames = 'january february march april may june july august september october november december';

/** Months by name and by how they are shortened, 1 to 12. */
export const months: ReadonlyMap<string, number> = new Map([
  ...monthNames.split(' ').map((name, at) => [name, at + 1] as const),
  ...monthNames.split(' ').map((name, at) => [name.slice(0, 3), at + 1] as const),
  ['sept', 9],
]);

const weekdayNames = 'sunday monday tuesday wednesday thursday friday saturday';

/** 0 for Sunday. */
export const weekdays: ReadonlyMap<string, number> = new Map([
  ...weekdayNames.split(' ').map((name, at) => [name, at] as const),
  ...weekdayNames.split(' ').map((name, at) => [name.slice(0, 3), at] as const),
  ['tues', 2],
  ['weds', 3],
  ['thur', 4],
  ['thurs', 4],
]);

export const seasonNames: ReadonlyMap<string, SeasonName> = new Map([
  ['spring', 'spring'],
  ['springtime', 'spring'],
  ['summer', 'summer'],
  ['summertime', 'summer'],
  ['autumn', 'autumn'],
  ['fall', 'autumn'],
  ['winter', 'winter'],
  ['wintertime', 'winter'],
]);

/** Words that mean a time only where the words around them say so: "spring" is a part, "may" a verb. */
export const unsureWords: ReadonlySet<string> = new Set([
  ...['may', 'march', 'spring', 'fall'],
  ...monthNames.split(' ').map((name) => name.slice(0, 3)),
  ...weekdayNames.split(' ').map((name) => name.slice(0, 3)),
]);

/** What follows a spring that is a part. */
export const springParts: ReadonlySet<string> = new Set(
  'claw claws tank tanks reverb cavity block tension cover loaded screw screws steel hook box buzz rattle'.split(
    ' ',
  ),
);

/** Behind a year of make: "2015 bass". */
export const madeThings: ReadonlySet<string> = new Set(
  'model guitar bass amp amplifier combo reissue violin viola cello acoustic electric mandolin banjo ukulele pedal build'.split(
    ' ',
  ),
);

/** Before a year of make: "built in 2012". */
export const makingWords: ReadonlySet<string> = new Set(
  'made built dated born vintage circa manufactured serial model stamped labelled labeled'.split(' '),
);

export type UnitName = 'day' | 'week' | 'month' | 'quarter' | 'year';

export const unitNames: ReadonlyMap<string, UnitName> = new Map([
  ['day', 'day'],
  ['days', 'day'],
  ['week', 'week'],
  ['weeks', 'week'],
  ['wk', 'week'],
  ['wks', 'week'],
  ['month', 'month'],
  ['months', 'month'],
  ['quarter', 'quarter'],
  ['quarters', 'quarter'],
  ['year', 'year'],
  ['years', 'year'],
  ['yr', 'year'],
  ['yrs', 'year'],
]);

/** How many, the fewest and the most that people mean by it. */
export const amounts: ReadonlyMap<string, readonly [number, number]> = new Map([
  ['a', [1, 1]],
  ['an', [1, 1]],
  ['one', [1, 1]],
  ['couple', [1, 3]],
  ['few', [2, 5]],
  ['several', [3, 8]],
  ['two', [2, 2]],
  ['three', [3, 3]],
  ['four', [4, 4]],
  ['five', [5, 5]],
  ['six', [6, 6]],
  ['seven', [7, 7]],
  ['eight', [8, 8]],
  ['nine', [9, 9]],
  ['ten', [10, 10]],
  ['eleven', [11, 11]],
  ['twelve', [12, 12]],
  ['eighteen', [18, 18]],
  ['twenty', [20, 20]],
]);
