import { type PrivateWords, privateWordsFor } from '@/lib/narration';
import type { JobRecord } from '@/shared/jobs';

/** Takes private words of other people out of the record's texts and remembers what it took. */
export interface HoldBack {
  /** The text without them. */
  out(text: string): string;
  /** What was taken out so far. */
  taken(): string[];
  /** The private words of other people in a text, which is left as it is. */
  find(text: string): string[];
}

/**
 * The paper goes to the client: the client's own name, number and serial may stand on it, those of anybody else
 * may not.
 */
export function holdBackFor({ client, instrument }: Pick<JobRecord, 'client' | 'instrument'>): HoldBack {
  const known = {
    clientName: client?.name ?? null,
    reach: client?.reach ?? null,
    serial: instrument.serial,
  };
  const findAll = privateWordsFor(known);
  const own = ownWords([known.clientName, client?.alias, known.reach, known.serial]);
  const others = (text: string) => findAll(text).filter((found) => !isOwn(found, own));
  const taken = new Set<string>();
  return {
    out: (text) =>
      others(text).reduceRight((rest, { from, to, words }) => {
        taken.add(words);
        return `${rest.slice(0, from)}(held back)${rest.slice(to)}`;
      }, text),
    taken: () => [...taken],
    find: (text) => others(text).map(({ words }) => words),
  };
}

interface OwnWords {
  words: ReadonlySet<string>;
  digits: string[];
}

function ownWords(texts: readonly (string | null | undefined)[]): OwnWords {
  const known = texts.filter((text) => text != null);
  return { words: new Set(known.flatMap(wordsIn)), digits: known.map(digitsIn).filter(Boolean) };
}

/** Whether each word of it stands on the ticket, or its figures do, however they are grouped. */
function isOwn({ words, reason }: PrivateWords, own: OwnWords): boolean {
  if (wordsIn(words).every((word) => own.words.has(word))) return true;
  const digits = digitsIn(words);
  const byFigures = reason === 'phone' || reason === 'serial';
  return byFigures && digits.length > 3 && own.digits.some((known) => known.includes(digits));
}

/** Folded words; the ending of a genitive is no part of a name. */
function wordsIn(text: string): string[] {
  const plain = text.normalize('NFKD').replace(/\p{M}/gu, '').toLocaleLowerCase('en');
  return plain.replace(/['’]s\b/g, '').match(/[\p{L}\p{N}]+/gu) ?? [];
}

function digitsIn(text: string): string {
  return text.replace(/\D/g, '');
}
