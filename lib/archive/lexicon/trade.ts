import { linesOf, listOf } from './lines';
import { type Concept, conceptOf, type PhraseBook, phraseBook } from './phrase-book';
import { synonymLines } from './synonyms';
import { plainThings, troubleLines } from './troubles';

/** A word of the repairer's own, and what it means: "the twanger" means "single coil". */
export interface OwnSynonym {
  said: string;
  means: string;
}

/** The name of a concept that has none of its own: its words in one. */
export function joined(phrase: string): string {
  return phrase.toLowerCase().replace(/[^\p{L}\p{N}]/gu, '');
}

function readSynonyms(): Concept[] {
  return linesOf(synonymLines).map((line) => {
    const [names = '', said = ''] = line.split('=');
    const [word = '', broader = ''] = names.split('<').map((part) => part.trim());
    return { word, broader: listOf(broader), said: listOf(said) };
  });
}

interface Trouble {
  signs: string[];
  causes: string[];
  cures: string[];
}

function readTroubles(): Trouble[] {
  return linesOf(troubleLines).map((line) => {
    const [signs = [], causes = [], cures = []] = line.split('|').map(listOf);
    return { signs, causes, cures };
  });
}

const synonyms = readSynonyms();
const troubles = readTroubles();

/** Phrases that the troubles name and no group of synonyms holds. */
function namedByTroubles(): Concept[] {
  const known = phraseBook(synonyms);
  const phrases = new Set(troubles.flatMap(({ signs, causes, cures }) => [...signs, ...causes, ...cures]));
  return [...phrases]
    .filter((phrase) => phrase.includes(' ') && !conceptOf(known, phrase))
    .map((phrase) => ({ word: joined(phrase), broader: [], said: [phrase] }));
}

const tradeConcepts: readonly Concept[] = [...synonyms, ...namedByTroubles()];
/** The trade's own words, without a repairer's. */
export const tradeBook: PhraseBook = phraseBook(tradeConcepts);

const withOwn = new WeakMap<readonly OwnSynonym[], PhraseBook>();

/** The trade's words with the repairer's own, which come first. The same list gives the same book. */
export function bookWith(own: readonly OwnSynonym[]): PhraseBook {
  if (own.length === 0) return tradeBook;
  const made = withOwn.get(own) ?? phraseBook([...ownConcepts(own), ...tradeConcepts]);
  withOwn.set(own, made);
  return made;
}

function ownConcepts(own: readonly OwnSynonym[]): Concept[] {
  return own
    .filter(({ said, means }) => joined(said) !== '' && joined(means) !== '')
    .map(({ said, means }) => {
      const known = conceptOf(tradeBook, means);
      if (known) return { ...known, said: [said, means] };
      return { word: joined(means), broader: [], said: [said, means] };
    });
}

/** For each word, what goes with it in each trouble that it has a part in. */
const company = new Map<string, string[][]>();
const alone = new Set(listOf(plainThings).map(wordOf));
for (const trouble of troubles) relate(trouble);

function wordOf(phrase: string): string {
  return conceptOf(tradeBook, phrase)?.word ?? joined(phrase);
}

function relate({ signs, causes, cures }: Trouble): void {
  const [shows, because, helps] = [signs.map(wordOf), causes.map(wordOf), cures.map(wordOf)];
  for (const word of shows) addCompany(word, inTurn(because, helps));
  for (const word of because) if (!alone.has(word)) addCompany(word, inTurn(helps, shows));
  for (const word of helps) if (!alone.has(word)) addCompany(word, inTurn(because, shows));
}

function addCompany(word: string, others: readonly string[]): void {
  company.set(word, [...(company.get(word) ?? []), others.filter((other) => other !== word)]);
}

/** Signs, causes and cures that go with a concept, by their words: the first of each trouble, then the second. */
export function relatedTo(word: string): readonly string[] {
  return [...new Set(inTurn(...(company.get(word) ?? [])))];
}

/** The first of each list, then the second of each, and so on. */
function inTurn(...lists: readonly (readonly string[])[]): string[] {
  const longest = Math.max(0, ...lists.map(({ length }) => length));
  return Array.from({ length: longest }, (_, at) => lists.flatMap((list) => list[at] ?? [])).flat();
}

/** Every single word that the trade's lexicon is made of, for typing slips. */
export const lexiconWords: readonly string[] = [
  ...new Set(
    tradeConcepts
      .flatMap(({ said }) => said)
      .filter((phrase) => /^[a-z]+$/.test(phrase))
      .concat(
        tradeConcepts.flatMap(({ said }) => said.flatMap((phrase) => phrase.match(/[a-z]{5,}/g) ?? [])),
      ),
  ),
];
