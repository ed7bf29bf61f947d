import { linesOf, listOf } from './lines';
import { localLines } from './local-words';
import { type Concept, conceptOf, type PhraseBook, phraseBook, together } from './phrase-book';
import { synonymLines } from './synonyms';
import { commonThings, plainThings, troubleLines } from './troubles';
import { electricLines } from './ways-electric';
import { everydayLines } from './ways-everyday';
import { keysLines } from './ways-keys';
import { misheardLines } from './ways-misheard';
import { shopLines } from './ways-shop';
import { soundLines } from './ways-sound';
import { stringsLines } from './ways-strings';
import { talkLines } from './ways-talk';
import { windLines } from './ways-wind';
import { woodLines } from './ways-wood';

/** A word of the repairer's own, and what it means: "the twanger" means "single coil". */
export interface OwnSynonym {
  said: string;
  means: string;
}

/** The name of a concept that has none of its own: its words in one. */
export function joined(phrase: string): string {
  return phrase.toLowerCase().replace(/[^\p{L}\p{N}]/gu, '');
}

/** All groups of words that mean the same; what several files say of one word goes together. */
export const synonymGroups = [
  synonymLines,
  electricLines,
  woodLines,
  talkLines,
  stringsLines,
  windLines,
  keysLines,
  soundLines,
  shopLines,
  misheardLines,
  everydayLines,
];

function readSynonyms(): Concept[] {
  const groups = new Map<string, Concept>();
  for (const line of synonymGroups.flatMap(linesOf)) {
    const [names = '', said = ''] = line.split('=');
    const [word = '', broader = ''] = names.split('<').map((part) => part.trim());
    const known = groups.get(word) ?? { word, broader: [], said: [] };
    groups.set(word, {
      word,
      broader: [...known.broader, ...listOf(broader)],
      said: [...known.said, ...listOf(said)],
    });
  }
  return [...groups.values()];
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

export const tradeConcepts: readonly Concept[] = [...synonyms, ...namedByTroubles()];
/** The trade's own words, without a repairer's. */
export const tradeBook: PhraseBook = phraseBook(tradeConcepts);

/** What words mean on one sort of instrument only, by its type. */
const local: ReadonlyMap<string, Concept[]> = readLocal();

function readLocal(): Map<string, Concept[]> {
  const byType = new Map<string, Concept[]>();
  for (const line of linesOf(localLines)) {
    const [types = '', group = ''] = line.split(':');
    const [means = '', said = ''] = group.split('=').map((part) => part.trim());
    const known = conceptOf(tradeBook, means);
    const concept: Concept = {
      ...(known ?? { word: joined(means), broader: [] }),
      said: listOf(said),
      isLocal: true,
    };
    for (const type of listOf(types)) byType.set(type, [...(byType.get(type) ?? []), concept]);
  }
  return byType;
}

const noOwn: readonly OwnSynonym[] = [];
const withOwn = new WeakMap<readonly OwnSynonym[], Map<string, PhraseBook>>();

/**
 * The trade's words with the repairer's own, which come first, and with what words mean on an instrument of a type.
 * The same list gives the same book.
 */
export function bookWith(own: readonly OwnSynonym[], instrument = ''): PhraseBook {
  const ofType = local.get(instrument.toLowerCase()) ?? [];
  if (own.length + ofType.length === 0) return tradeBook;
  const list = own.length === 0 ? noOwn : own;
  const books = withOwn.get(list) ?? new Map<string, PhraseBook>();
  withOwn.set(list, books);
  const key = ofType.length === 0 ? '' : instrument.toLowerCase();
  const made = books.get(key) ?? together(phraseBook([...ownConcepts(own), ...ofType]), tradeBook);
  books.set(key, made);
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
const common = new Set(listOf(commonThings).map(wordOf));
for (const trouble of troubles) relate(trouble);

/** Whether who asks for it, by its concept's word, asks for nothing that goes with it. */
export function isPlainThing(word: string): boolean {
  return alone.has(word);
}

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
  company.set(word, [
    ...(company.get(word) ?? []),
    others.filter((other) => other !== word && !common.has(other)),
  ]);
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
