import type { UnitId } from '@/shared/readings';
import { units } from '../units';

export interface FoundUnit {
  /** What the typed word can mean, the likeliest first. */
  ids: UnitId[];
  /** Characters, with the space before it. */
  length: number;
  /** "mohm" can be meant either way: it is asked. */
  unsure?: boolean;
}

const words = units.flatMap(({ id, words: typed }) => typed.map((word) => ({ word, id })));
const measuring = units.filter(({ id }) => id !== 'kick');

/** The unit that stands right behind a number; null where there is none. */
export function unitAt(after: string): FoundUnit | null {
  const space = /^\s*/.exec(after)?.[0].length ?? 0;
  const tail = after.slice(space);
  return megohms(tail, space) ?? named(tail, space);
}

/** Only the capital tells mega from milli: "2 mohm" could be either. */
function megohms(tail: string, space: number): FoundUnit | null {
  const mega = /^M(?:Ω|[Oo]hms?)?(?![\wΩ])/.exec(tail)?.[0];
  if (mega) return { ids: ['MΩ'], length: space + mega.length };
  const either = /^m(?:Ω|[Oo]hms?)(?!\w)/.exec(tail)?.[0];
  return either ? { ids: ['MΩ'], length: space + either.length, unsure: true } : null;
}

function named(tail: string, space: number): FoundUnit | null {
  const low = tail.toLowerCase();
  const spelled = [
    ...measuring.filter(({ id }) => tail.startsWith(id)).map(({ id }) => ({ word: id, id })),
    ...words.filter(({ word }) => low.startsWith(word)),
  ].filter(({ word }) => endsHere(low, word.length));
  const length = Math.max(0, ...spelled.map(({ word }) => word.length));
  if (length === 0 || (space > 0 && isNoteName(tail, length))) return null;
  const ids = spelled.filter(({ word }) => word.length === length).map(({ id }) => id);
  return { ids: [...new Set(ids)], length: space + length };
}

/** In "12 A string" the letter is a string, not amperes. */
function isNoteName(tail: string, length: number): boolean {
  return /^[acfg]$/i.test(tail.slice(0, length)) && /^\s+\w/.test(tail.slice(length));
}

/** "8 k" ends a unit; "8 key" does not. */
function endsHere(text: string, length: number): boolean {
  return !/[\wµω°]/.test(text.charAt(length - 1)) || !/^[\wµω]/.test(text.slice(length));
}
