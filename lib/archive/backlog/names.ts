import type { InstrumentType } from '@/shared/backlog';
import { instrumentsSaid } from '../lexicon/instruments-said';
import { withoutDates } from './name-dates';
import { monthsWritten, plainWords } from './plain-words';

const months = new Set<string>(monthsWritten.flat());
/**
 * Numbers that cameras give: C0001, take2; and the folders of their cards, three digits and five letters (JEITA CP-3461,
 * Design rule for Camera File system, *from memory*).
 */
const counter = /^(\p{L}{0,4}\d+\p{L}?|\d{3}[A-Z0-9]{5})$/u;

/** The words of a name that are its own: no dates, numbers, camera names or words for where recordings lie. */
export function ownWords(name: string): string[] {
  return piecesOf(withoutDates(name.normalize('NFC'))).filter((word) => {
    const plain = word.toLowerCase();
    return (
      word.length > 1 &&
      /\p{L}/u.test(word) &&
      !counter.test(word) &&
      !plainWords.has(plain) &&
      !months.has(plain)
    );
  });
}

/** A name as a title: without dates, with spaces; empty where no word of its own is in it. */
export function titleFrom(name: string): string {
  if (ownWords(name).length === 0) return '';
  const words = withoutDates(name.normalize('NFC'))
    .replace(/[_\s]+/g, ' ')
    .replace(/(^|\s)[-–—.,;+]+(?=\s|$)/g, ' ')
    .replace(/\s+/g, ' ')
    .replace(/^[\s\-.,;]+|[\s\-.,;]+$/g, '');
  return words.charAt(0).toUpperCase() + words.slice(1, 200);
}

/** The words that all names have in common, in the order of the first. */
export function sharedTitle(stems: readonly string[]): string {
  const [first = '', ...rest] = stems;
  const others = rest.map((stem) => new Set(ownWords(stem).map((word) => word.toLowerCase())));
  const words = ownWords(first).filter((word) => others.every((other) => other.has(word.toLowerCase())));
  const [head = '', ...tail] = words;
  return [head.charAt(0).toUpperCase() + head.slice(1), ...tail].join(' ').slice(0, 200);
}

/** An instrument type that names say plainly. */
export interface TypeSaid {
  type: InstrumentType;
  /** The words that say it. */
  words: string;
}

/**
 * The instrument type that names say; null where they say none, more than one, or one that may be two ("amp").
 * @param names nearest to the recordings first; the first that says any type decides
 */
export function typeSaid(names: readonly string[]): TypeSaid | null {
  for (const name of names) {
    const said = typesIn(piecesOf(name).join(' ').toLowerCase());
    const types = new Set(said.flatMap(({ types }) => types));
    const [first] = said;
    const [type] = types;
    if (first && type) return types.size === 1 ? { type, words: first.words } : null;
  }
  return null;
}

/** What was read is taken out, so that the longer way of saying wins: "double bass" is no bass. */
function typesIn(text: string) {
  let left = text;
  return instrumentsSaid.flatMap(({ says, types }) => {
    const words = says.exec(left)?.[0];
    if (words === undefined) return [];
    left = left.replace(says, ' , ');
    return [{ types, words: words.trim() }];
  });
}

/** "JazzBox_neck-pickup" in pieces, as they are spoken. */
function piecesOf(name: string): string[] {
  return name
    .replace(/(\p{Ll})(\p{Lu})/gu, '$1 $2')
    .split(/[^\p{L}\p{M}\p{N}']+/u)
    .filter(Boolean);
}
