import { type Finder, spanIn, type WordReason } from './spans';

/** As many last digits of a number are the number: the code of a country or a town may be left out. */
const ENOUGH = 6;
const RUN = /\d(?:[\s().+/–-]{0,3}\d)*/gu;

interface Group {
  readonly digits: string;
  readonly from: number;
  readonly to: number;
}

/** A number of the client's in other grouping, with or without the code in front. */
export function numberFinder(number: string, reason: WordReason): Finder {
  const wanted = number.replace(/\D/g, '');
  return (text) =>
    [...text.text.matchAll(RUN)].flatMap((run) => {
      const groups = groupsOf(run[0], run.index);
      return groups.flatMap((first, at) => {
        const last = lastGroupOf(groups, at, wanted);
        return last ? spanIn(text, first.from, last.to, reason) : [];
      });
    });
}

function groupsOf(run: string, start: number): Group[] {
  return [...run.matchAll(/\d+/gu)].map(({ 0: digits, index }) => ({
    digits,
    from: start + index,
    to: start + index + digits.length,
  }));
}

/** The last of the groups that, from the one at `at` on, together make the number. */
function lastGroupOf(groups: readonly Group[], at: number, wanted: string): Group | null {
  let digits = '';
  let found: Group | null = null;
  for (let next = at; next < groups.length && digits.length <= wanted.length + ENOUGH; next++) {
    const group = groups[next];
    digits += group?.digits ?? '';
    if (group && isSameNumber(digits, wanted)) found = group;
  }
  return found;
}

function isSameNumber(a: string, b: string): boolean {
  const [one, other] = [a, b].map((digits) => digits.replace(/^0+/, ''));
  if (a === b || one === undefined || other === undefined) return a === b;
  const [short, long] = one.length < other.length ? [one, other] : [other, one];
  return short.length >= ENOUGH && long.endsWith(short);
}
