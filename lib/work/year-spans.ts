/** The first and the last year that are meant, both included. */
export type YearSpan = readonly [from: number, to: number];

/** Years of fewer than four digits may lie in any of these centuries. */
const centuries = [1800, 1900, 2000] as const;
/** "About" leaves this many years to either side. *Common practice, no source.* */
const aboutYears = 2;
/** Parts of a decade as they are spoken of; they overlap. *Common practice, no source.* */
const partsOfDecade: Readonly<Record<string, YearSpan>> = {
  early: [0, 4],
  mid: [3, 7],
  middle: [3, 7],
  late: [6, 9],
};
const decadeWords = [
  'twenties',
  'thirties',
  'forties',
  'fifties',
  'sixties',
  'seventies',
  'eighties',
  'nineties',
];
const latest = 9999;

/**
 * The years that words such as "1978", "1978–80", "late 70s", "about 1978", "before 1980" or "1884 or 1984" can mean,
 * one span for each way to take them; null where no year is read from them.
 */
export function yearSpans(text: string): YearSpan[] | null {
  const plain = text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[\u2010-\u2015\u2212]/g, '-')
    .replace(/[?’'.()]/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
  const ways = plain.split(/ or (?!later|earlier|before|after)/);
  const spans = ways.map(spansOf);
  return spans.some((way) => way === null) ? null : spans.flatMap((way) => way ?? []);
}

function spansOf(text: string): YearSpan[] | null {
  return decade(text) ?? range(text) ?? oneSided(text) ?? about(text) ?? dated(text) ?? years(text);
}

/** "1978", "78" (of any century). */
function years(text: string): YearSpan[] | null {
  if (/^\d{4}$/.test(text)) return [[Number(text), Number(text)]];
  if (/^\d{2}$/.test(text))
    return centuries.map((century) => [century + Number(text), century + Number(text)]);
  return null;
}

/** "1970s", "late 70s", "early seventies". */
function decade(text: string): YearSpan[] | null {
  const [, part, digits, word] =
    /^(?:the )?(?:(early|mid|middle|late)[ -]+(?:of )?(?:the )?)?(?:(\d{4}|\d{2}) ?s|([a-z]+ties))$/.exec(
      text,
    ) ?? [];
  if (word && !decadeWords.includes(word)) return null;
  const start = word ? (decadeWords.indexOf(word) + 2) * 10 : Number(digits);
  if ((!digits && !word) || start % 10 !== 0) return null;
  const [from, to] = partsOfDecade[part ?? ''] ?? [0, 9];
  const starts = start >= 1000 ? [start] : centuries.map((century) => century + start);
  return starts.map((year) => [year + from, year + to]);
}

/** "1978-80", "1978 to 1980", "between 1976 and 1978", "1976/77". */
function range(text: string): YearSpan[] | null {
  const [, first, second] =
    /^(?:between |from )?(\d{4}) ?(?:-|\/|to|and|until|till) ?(\d{4}|\d{2})$/.exec(text) ?? [];
  if (!first || !second) return null;
  const from = Number(first);
  const to = second.length === 4 ? Number(second) : from - (from % 100) + Number(second);
  if (to >= from) return [[from, to]];
  if (second.length === 4) return null;
  // "1978-07" is a month of that year (ISO 8601); "1999-02" may be two years over the turn of the century as well.
  const month: YearSpan[] = Number(second) <= 12 ? [[from, from]] : [];
  const over: YearSpan[] = to + 100 - from <= 10 ? [[from, to + 100]] : [];
  return month.length + over.length > 0 ? [...month, ...over] : null;
}

/** "before 1980", "1975 or later". */
function oneSided(text: string): YearSpan[] | null {
  const [, word, year] =
    /^(before|pre|after|post|since|until|up to|not before|not after)[ -]?(\d{4})$/.exec(text) ?? [];
  if (word && year) {
    const at = Number(year);
    if (word === 'before' || word === 'pre') return [[0, at - 1]];
    if (word === 'after' || word === 'post') return [[at + 1, latest]];
    return word === 'since' || word === 'not before' ? [[at, latest]] : [[0, at]];
  }
  const [, from, side] = /^(\d{4}) (?:or|and) (later|after|earlier|before)$/.exec(text) ?? [];
  if (!from) return null;
  return side === 'later' || side === 'after' ? [[Number(from), latest]] : [[0, Number(from)]];
}

function about(text: string): YearSpan[] | null {
  const rest = /^(?:about|around|circa|ca|c|roughly|approximately|~) ?(.+)$/.exec(text)?.[1];
  const spans = rest === undefined ? null : (decade(rest) ?? range(rest) ?? years(rest));
  return spans?.map(([from, to]) => [from - aboutYears, to + aboutYears]) ?? null;
}

const besideAYear = new Set(
  'january february march april may june july august september october november december spring summer autumn winter week of in the early mid late year'.split(
    ' ',
  ),
);

/** "July 1978", "week 12 of 1978", "1978-07-12": one year of four digits beside what narrows it down. */
function dated(text: string): YearSpan[] | null {
  const words = text.split(/[ ,-]+/).filter(Boolean);
  const years = words.filter((word) => /^\d{4}$/.test(word)).map(Number);
  const others = words.filter((word) => !/^\d{4}$/.test(word));
  const isPlain = others.every((word) => besideAYear.has(word) || /^\d{1,2}$/.test(word));
  const [year] = years;
  return year !== undefined && years.length === 1 && isPlain ? [[year, year]] : null;
}
