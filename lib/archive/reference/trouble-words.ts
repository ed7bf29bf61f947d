import { linesOf, listOf } from '../lexicon/lines';
import { conceptOf, stretchesOf } from '../lexicon/phrase-book';
import { simpleWords } from '../lexicon/simple-words';
import { stemOf } from '../lexicon/stem';
import { bookWith, joined, type OwnSynonym, tradeBook, tradeConcepts } from '../lexicon/trade';
import { plainThings, troubleLines } from '../lexicon/troubles';
import { memoryByWords } from '../memory';

/** A word of the trade in a text, with the way it was written there. */
export interface WordSaid {
  word: string;
  said: string;
}

interface Trouble {
  faults: ReadonlySet<string>;
  cures: ReadonlySet<string>;
}

/** What is asked for and is no fault, though the list tells what goes with it. */
const wishes = new Set(
  listOf('trace, pinout, fourconductor, colourcode, coilsplit, treblebleed, rehair, endpin, frog').map(
    wordOf,
  ),
);

const lines = linesOf(troubleLines)
  .map((line) => line.split('|').map((part) => listOf(part).map(wordOf)))
  .filter(([signs = []]) => !signs.every((sign) => wishes.has(sign)));
const troubles: readonly Trouble[] = lines.map(([signs = [], causes = [], cures = []]) => ({
  faults: new Set([...signs, ...causes]),
  cures: new Set(cures),
}));
const signWords = new Set(lines.flatMap(([signs = []]) => signs));
const plainWords = new Set(listOf(plainThings).map(wordOf));
const cureWords = new Set(troubles.flatMap(({ cures }) => [...cures]));
const faultWords = new Set(
  troubles
    .flatMap(({ faults }) => [...faults])
    // A part is no fault, and what both causes and cures ("shielding") is mostly said of the cure.
    .filter((word) => signWords.has(word) || !(plainWords.has(word) || cureWords.has(word))),
);

function wordOf(phrase: string): string {
  return conceptOf(tradeBook, phrase)?.word ?? joined(phrase);
}

/** Whether the archive's list of troubles knows a word as something that shows or that is behind it. */
export const isFault = (word: string): boolean => faultWords.has(word);
/** Whether the list knows it as something that cures. */
export const isCure = (word: string): boolean => cureWords.has(word);

/** Whether two faults stand in one line of the list: the one shows, the other is behind it. */
export function shareTrouble(one: string, other: string): boolean {
  return troubles.some(({ faults }) => faults.has(one) && faults.has(other));
}

/** Whether a line of the list names the one as what is wrong and the other as what cures it. */
export function goTogether(fault: string, cure: string): boolean {
  return troubles.some(({ faults, cures }) => faults.has(fault) && cures.has(cure));
}

const names = new Map(tradeConcepts.map(({ word, said }) => [word, nameOf(word, said)]));

/** A word that only the archive writes ("loosebrace") goes by the first of its ways; null for one that people say. */
function nameOf(word: string, said: readonly string[]): string | null {
  const isSaid = said.some((phrase) => phrase.split(' ').some((each) => stemOf(each) === stemOf(word)));
  return isSaid ? null : (said[0] ?? null);
}

/** What a fault or a cure is called however it was written; null where the shop's own way of writing serves best. */
export const calledAs = (word: string): string | null => names.get(word) ?? null;

/** Texts say the same again and again. */
const memoryOf = memoryByWords<readonly WordSaid[]>(50_000);

/**
 * The words of the trade in a text, each once.
 * @param own the repairer's own words: always the same list while it is not changed
 */
export function tradeWordsOf(text: string, own: readonly OwnSynonym[]): readonly WordSaid[] {
  return memoryOf(own).of(text, () => readWords(text, own));
}

function readWords(text: string, own: readonly OwnSynonym[]): WordSaid[] {
  const found = new Map<string, WordSaid>();
  for (const { concept, words } of stretchesOf(bookWith(own), simpleWords(text))) {
    const word = concept?.word ?? (words.length === 1 ? words[0]?.word : undefined);
    if (word === undefined || found.has(word)) continue;
    found.set(word, { word, said: text.slice(words[0]?.start, words.at(-1)?.end).toLowerCase() });
  }
  return [...found.values()];
}
