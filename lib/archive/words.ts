import type { Concept, Stretch } from './lexicon/phrase-book';
import { stretchesOf } from './lexicon/phrase-book';
import { numberAlone, simpleWords } from './lexicon/simple-words';
import { bookWith, type OwnSynonym } from './lexicon/trade';

export type { OwnSynonym } from './lexicon/trade';

/** Words that stand in the index for a stretch of a text. */
export interface PreparedStretch {
  /** Where it stands in the text as it was written. */
  start: number;
  end: number;
  words: string[];
}

/**
 * What the index keeps of a text, and what a question is asked with: words in small letters without accents,
 * small words gone; numbers and units as words ("8.1k" is "8p1kohm 8p1"); what the trade calls by several names
 * brought to one word, with the words that were said beside it. Word forms are left to the stemmer of the index.
 * @param instrument its type, where it is known: a post in a violin is its soundpost
 * @returns words parted by spaces; empty for a text without any
 */
export function prepareWords(text: string, own: readonly OwnSynonym[] = [], instrument?: string): string {
  return preparedStretches(text, own, instrument)
    .flatMap(({ words }) => words)
    .join(' ');
}

/** The same with the place of each in the text: for marking what matched. */
export function preparedStretches(
  text: string,
  own: readonly OwnSynonym[] = [],
  instrument?: string,
): PreparedStretch[] {
  return stretchesOf(bookWith(own, instrument), simpleWords(text)).map(asPrepared);
}

function asPrepared({ concept, words, parts }: Stretch): PreparedStretch {
  const said = words.map(({ word }) => word);
  return {
    start: words[0]?.start ?? 0,
    end: words.at(-1)?.end ?? 0,
    words: concept
      ? keptFor(concept, parts, said)
      : said.flatMap((word) => [word, numberAlone(word) ?? []].flat()),
  };
}

/** A word with another name is only renamed; the words of a phrase, and a code such as 12ax7, stay to be found. */
function keptFor(
  { word, broader, isLocal }: Concept,
  parts: readonly Concept[],
  said: readonly string[],
): string[] {
  const isCode = said.some((each) => /[a-z]/.test(each) && /\d/.test(each));
  const isKept = said.length > 1 || isCode || isLocal;
  return [...new Set([word, ...broader, ...parts.map((part) => part.word), ...(isKept ? said : [])])];
}
