import { isSmall, type SimpleWord, simpleWords } from './simple-words';
import { stemOf } from './stem';

/** What several ways of saying it mean. */
export interface Concept {
  /** The one word that stands for it in the index. */
  word: string;
  /** Words of what it is a kind of, kept beside it. */
  broader: string[];
  /** As it is said, the readable names first. */
  said: string[];
}

interface Node {
  next: Map<string, Node>;
  concept: Concept | null;
}

/** Phrases by the stems of their words; small words are passed over, in phrases as in texts. */
export interface PhraseBook {
  root: Node;
  /** Every word that the phrases are made of. */
  words: ReadonlySet<string>;
}

/** A stretch of a text that means a concept, or one word that is none. */
export interface Stretch {
  concept: Concept | null;
  words: SimpleWord[];
}

const newNode = (): Node => ({ next: new Map(), concept: null });
const longestMemory = 20_000;
const stems = new Map<string, string>();

/** The stem of a word, remembered: texts say the same words again and again. */
function keyOf({ word, isNumber }: SimpleWord): string {
  if (isNumber) return word;
  const known = stems.get(word);
  if (known !== undefined) return known;
  if (stems.size >= longestMemory) stems.clear();
  const stem = stemOf(word);
  stems.set(word, stem);
  return stem;
}

/** The keys that a phrase is known by. */
export function keysOf(phrase: string): string[] {
  return simpleWords(phrase)
    .filter((word) => !isSmall(word))
    .map(keyOf);
}

/** Earlier concepts hold a phrase that later ones claim too. */
export function phraseBook(concepts: readonly Concept[]): PhraseBook {
  const root = newNode();
  for (const concept of concepts) {
    for (const phrase of [concept.word, ...concept.said]) {
      const end = nodeAt(root, keysOf(phrase));
      if (end !== root) end.concept ??= concept;
    }
  }
  const phrases = concepts.flatMap(({ word, said }) => [word, ...said]);
  return { root, words: new Set(phrases.flatMap((phrase) => simpleWords(phrase).map(({ word }) => word))) };
}

function nodeAt(root: Node, keys: readonly string[]): Node {
  let node = root;
  for (const key of keys) {
    const next = node.next.get(key) ?? newNode();
    node.next.set(key, next);
    node = next;
  }
  return node;
}

/** The concept that a whole phrase means; null where it means none. */
export function conceptOf(book: PhraseBook, phrase: string): Concept | null {
  let node: Node | undefined = book.root;
  for (const key of keysOf(phrase)) node = node?.next.get(key);
  return node?.concept ?? null;
}

/** Parts the words of a text into the longest phrases that mean something; small words are gone. */
export function stretchesOf(book: PhraseBook, words: readonly SimpleWord[]): Stretch[] {
  const kept = words.filter((word) => !isSmall(word));
  const stretches: Stretch[] = [];
  for (let at = 0; at < kept.length; ) {
    const { concept, length } = longestAt(book.root, kept, at);
    stretches.push({ concept, words: kept.slice(at, at + length) });
    at += length;
  }
  return stretches;
}

function longestAt(root: Node, words: readonly SimpleWord[], at: number) {
  let found: { concept: Concept | null; length: number } = { concept: null, length: 1 };
  let node: Node | undefined = root;
  for (let length = 1; at + length <= words.length; length++) {
    const word = words[at + length - 1];
    node = word ? node.next.get(keyOf(word)) : undefined;
    if (!node) break;
    if (node.concept) found = { concept: node.concept, length };
  }
  return found;
}
