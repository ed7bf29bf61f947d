import { everydayWords, nameParticles } from './everyday-words';
import { folded } from './fold';
import { escaped, exactly, wholeWords } from './patterns';
import { waysIn } from './ways';

/** All by which someone is known in the record. */
export interface Person {
  name: string;
  /** Names that the entry bore before, or that went into it. */
  otherNames: readonly string[];
  /** What they are called in public. */
  aliases: readonly string[];
  /** Ways to be reached, as they were written. */
  reach: readonly string[];
}

/** Where a text stands: in the client's own jobs and instruments, elsewhere, or in how another person is reached. */
export type Whereabouts = 'own' | 'elsewhere' | 'reach of another';

/** What to look for in folded texts. */
export interface Sought {
  /** Numbers and addresses. */
  ways: readonly RegExp[];
  names: readonly RegExp[];
  /** Only where it begins with a capital. */
  capitalNames: readonly RegExp[];
}

/** What to look for in the client's own texts, and in all others. */
export function soughtFor({ name, otherNames, aliases, reach }: Person): Record<Whereabouts, Sought> {
  const words = nameWords(name);
  const others = otherNames.map(nameWords).filter((other) => other.join(' ') !== words.join(' '));
  const fullNames = [words, ...others.filter((other) => other.length > 1)].filter(isPerson).map(fullName);
  const telling = aliases.filter((alias) => words.some((word) => singleWord(word).test(folded(alias))));
  const ways = reach.map(waysIn);
  const single = words.filter(isTelling);
  const everyday = single.filter((word) => everydayWords.has(word));
  const plain = single.filter((word) => !everydayWords.has(word));
  const initials = words.map((word) => /^\p{L}/u.exec(word)?.[0] ?? '').join('');
  const oneEverydayWord = words.length === 1 && everyday.length === 1;
  const elsewhere: Sought = {
    ways: ways.flatMap(({ everywhere }) => everywhere),
    names: [...(oneEverydayWord ? [] : fullNames), ...telling.map((alias) => exactly(folded(alias)))],
    capitalNames: oneEverydayWord ? fullNames : [],
  };
  // A former name may be "unknown" or "walk-in": of its words only those count that are written like a name.
  const former = others.flat().filter((word) => isTelling(word) && !plain.includes(word));
  return {
    own: {
      ways: [...elsewhere.ways, ...ways.flatMap(({ own }) => own)],
      names: [...elsewhere.names, ...plain.map((word) => singleWord(word, initials))],
      capitalNames: [...everyday, ...former].map((word) => singleWord(word, initials)),
    },
    elsewhere,
    'reach of another': { ...elsewhere, ways: [] },
  };
}

/** Whether another name holds all of this one, in its order: "Mark Tenpenny" holds "Mark". */
export function bearsName(other: string, name: string): boolean {
  const words = nameWords(name);
  return isPerson(words) && fullName(words).test(folded(other));
}

export function sameName(one: string, other: string): boolean {
  return nameWords(one).join(' ') === nameWords(other).join(' ');
}

/** The words of a name, folded: letters and digits, with the apostrophe in them. */
function nameWords(name: string): string[] {
  return folded(name).match(/[\p{L}\p{N}]+(?:'[\p{L}\p{N}]+)*/gu) ?? [];
}

const isTelling = (word: string) => word.length > 1 && !nameParticles.has(word);
const isPerson = (words: readonly string[]) => words.some((word) => word.length > 1);

/** "Ada Plainly", "ada-plainly", "AdaPlainly", "Plainly, Ada"; with the possessive. */
function fullName(words: readonly string[]): RegExp {
  // Everyday words run together make other words: "rosewood".
  const between = words.every((word) => everydayWords.has(word))
    ? '[^\\p{L}\\p{N}]{1,3}'
    : '[^\\p{L}\\p{N}]{0,3}';
  const inOrder = words.map(spelled).join(between);
  const [last, rest] = [words.slice(-1), words.slice(0, -1)];
  const turned = rest.length === 0 ? [] : [[...last, ...rest].map(spelled).join('[\\s,]{1,3}')];
  const ending = possessiveOf(words.at(-1) ?? '');
  return wholeWords(`(?:${[inOrder, ...turned].join('|')})${ending}`, words.join(' '));
}

/** "Plainly", and "A. Plainly" with the initials of the same name. */
function singleWord(word: string, initials = ''): RegExp {
  const before = initials === '' ? '' : `(?:[${initials}]\\.\\s?){0,3}`;
  return wholeWords(`${before}${spelled(word)}${possessiveOf(word)}`, word);
}

/** The apostrophe within a name is often left out. */
function spelled(word: string): string {
  return escaped(word).replaceAll("'", "'?");
}

/** Also without its apostrophe, as it is often heard; but "Bas" is no "bass", and "caps" are no caller's. */
function possessiveOf(word: string): string {
  if (word.endsWith('s')) return "(?<own>'s|'(?=\\s+\\p{L}))?";
  return word.length < 3 || everydayWords.has(word) ? "(?<own>'s)?" : "(?<own>s'(?=\\s+\\p{L})|'?s)?";
}
