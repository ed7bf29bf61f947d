/** A list on the page: heights of its rows in millimetres, and how many rows it takes at each turn after the first. */
export interface ListToFit {
  rowsMm: readonly number[];
  turns: number;
}

/** What a line such as "and 7 more" takes. */
export const moreLineMm = 4.4;

/**
 * How many rows of each list go on the page: all where there is room, otherwise turn by turn, so that a long list does
 * not push a short one off. Rows keep their order, and each list keeps room for the line that says what was cut.
 */
export function fitLists(lists: readonly ListToFit[], roomMm: number): number[] {
  if (sum(lists.flatMap(({ rowsMm }) => rowsMm)) <= roomMm) return lists.map(({ rowsMm }) => rowsMm.length);
  const counts = lists.map(() => 0);
  let left = roomMm - moreLineMm * lists.filter(({ rowsMm }) => rowsMm.length > 0).length;
  const takeRow = (at: number) => {
    const heightMm = lists[at]?.rowsMm[counts[at] ?? 0] ?? Number.POSITIVE_INFINITY;
    if (heightMm > left) return;
    counts[at] = (counts[at] ?? 0) + 1;
    left -= heightMm;
  };
  for (const at of lists.keys()) takeRow(at);
  const turns = lists.flatMap((list, at) => Array.from({ length: list.turns }, () => at));
  for (let before = Number.NaN; before !== left; ) {
    before = left;
    for (const at of turns) takeRow(at);
  }
  return counts;
}

function sum(values: readonly number[]): number {
  return values.reduce((total, one) => total + one, 0);
}
