import { type Folded, foldedWithPlaces } from './fold';
import { type Person, type Sought, soughtFor, type Whereabouts } from './person';

export interface Scrubber {
  /** The text with the client's public words in place of the person; itself where it does not tell of them. */
  scrub(text: string, where: Whereabouts): string;
  tells(text: string, where: Whereabouts): boolean;
}

interface Span {
  from: number;
  to: number;
  isName: boolean;
  isPossessive: boolean;
}

const title = /(?<![\p{L}\p{N}])(?:mr|mrs|ms|miss|mx|mister|missus|dr|doctor|sir|prof|professor)\.?\s+$/iu;
const article = /(?<![\p{L}\p{N}])(?:an?|the)\s+$/iu;
/** What may stand between two words of one name. */
const withinName = /^(?:[ \u00a0_-]|, | \p{L}\.? )$/u;
const day = /^\d{4}-\d\d-\d\d$/;

/** Finds a person in texts, by name and by the ways to reach them, and puts "a client" in their place. */
export function scrubberFor(person: Person): Scrubber {
  const sought = soughtFor(person);
  const scrub = (text: string, where: Whereabouts) => {
    if (day.test(text)) return text;
    const spans = spansIn(text, sought[where]);
    return spans.reduceRight((before, span) => replaced(before, span), text);
  };
  return { scrub, tells: (text, where) => scrub(text, where) !== text };
}

/** Where the person is told of, in the order of the text, none over another. */
function spansIn(text: string, { ways, names, capitalNames }: Sought): Span[] {
  const folded = foldedWithPlaces(text);
  const capital = (span: Span) => /^\p{Lu}/u.test(text.slice(span.from));
  const found = [
    ...matches(folded, ways, false),
    ...matches(folded, names, true),
    ...matches(folded, capitalNames, true).filter(capital),
  ].sort((a, b) => a.from - b.from || b.to - a.to);
  const spans: Span[] = [];
  for (const next of found) {
    const last = spans.at(-1);
    if (last && joins(text, last, next)) spans.splice(-1, 1, joined(last, next));
    else spans.push(next);
  }
  return spans;
}

function joined(last: Span, next: Span): Span {
  return {
    from: last.from,
    to: Math.max(last.to, next.to),
    isName: last.isName && next.isName,
    isPossessive: (next.to >= last.to ? next : last).isPossessive,
  };
}

function matches(folded: Folded, patterns: readonly RegExp[], isName: boolean): Span[] {
  return patterns.flatMap((pattern) =>
    Array.from(folded.plain.matchAll(pattern), (match) => ({
      ...folded.written(match.index, match.index + match[0].length),
      isName,
      isPossessive: match.groups?.own !== undefined,
    })),
  );
}

function joins(text: string, last: Span, next: Span): boolean {
  if (next.from < last.to) return true;
  return last.isName && next.isName && withinName.test(text.slice(last.to, next.from));
}

/** Puts the public words in, so that the sentence still reads: "Mrs Plainly’s bass" is "a client’s bass". */
function replaced(text: string, { from, to, isName, isPossessive }: Span): string {
  const before = text.slice(0, from);
  const called = isName ? before.replace(title, '') : before;
  const said = isName ? called.replace(article, '') : called;
  const dropped = called.slice(said.length);
  const first = text.slice(said.length).charAt(0);
  const word = /^the/i.test(dropped) ? 'the client' : 'a client';
  const cased =
    beginsSentence(said) && /\p{Lu}/u.test(first) ? `${word[0]?.toUpperCase()}${word.slice(1)}` : word;
  return `${said}${cased}${isPossessive ? '’s' : ''}${text.slice(to)}`;
}

function beginsSentence(before: string): boolean {
  return /(?:^|[.!?]["”'’)\]]*\s+|\n\s*)["“‘'([]*$/u.test(before);
}
