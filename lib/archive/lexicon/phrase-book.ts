import { isSmall, type SimpleWord, simpleWords } from './simple-words';
import { fillerWords } from './small-words';
import { stemOf } from './stem';

/** What several ways of saying it mean. */
export interface Concept {
  /** The one word that stands for it in the index. */
  word: string;
  /** Words of what it is a kind of, kept beside it. */
  broader: string[];
  /** As it is said, the readable names first. */
  said: string[];
  /** Whether its words mean it on one sort of instrument only: what was said is kept beside it. */
  isLocal?: true;
}

interface Node {
  next: Map<string, Node>;
  concept: Concept | null;
}

/** Phrases by the stems of their words; small words are passed over, in phrases as in texts. */
export interface PhraseBook {
  /** What earlier ones know, they know better. */
  roots: readonly Node[];
  /** The same phrases by what their words mean: "scratchy pot" holds for "scratchy potentiometer". */
  meanings: readonly Node[];
  /** Every word that the phrases are made of. */
  words: ReadonlySet<string>;
}

/** A stretch of a text that means a concept, or one word that is none. */
export interface Stretch {
  concept: Concept | null;
  words: SimpleWord[];
  /** What each of its words, or each phrase in it, means by itself. */
  parts: Concept[];
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
  const phrases = concepts.flatMap((concept) =>
    [concept.word, ...concept.said].map((phrase) => ({ concept, keys: keysOf(phrase) })),
  );
  for (const { concept, keys } of phrases) hold(root, keys, concept);
  const meanings = newNode();
  for (const { concept, keys } of phrases) {
    const meant = keys.map((key) => meaningOf(root, key));
    if (meant.length > 1) hold(meanings, meant, concept);
    // "The jack is loose" says what "loose jack" does.
    if (meant.length === 2 && !keys.some((key) => fillerWords.has(key)))
      hold(meanings, [...meant].reverse(), concept);
  }
  const written = concepts.flatMap(({ word, said }) => [word, ...said]);
  return {
    roots: [root],
    meanings: [meanings],
    words: new Set(written.flatMap((phrase) => simpleWords(phrase).map(({ word }) => word))),
  };
}

function hold(root: Node, keys: readonly string[], concept: Concept): void {
  const end = nodeAt(root, keys);
  if (end !== root) end.concept ??= concept;
}

/** Told from every stem by its sign. */
const keyOfConcept = ({ word }: Concept): string => `=${word}`;

function meaningOf(root: Node, key: string): string {
  const concept = root.next.get(key)?.concept;
  return concept ? keyOfConcept(concept) : key;
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
export function conceptOf({ roots }: PhraseBook, phrase: string): Concept | null {
  const keys = keysOf(phrase);
  for (const root of roots) {
    let node: Node | undefined = root;
    for (const key of keys) node = node?.next.get(key);
    if (node?.concept) return node.concept;
  }
  return null;
}

/** One book of two: what the first knows, it knows better. */
export function together(first: PhraseBook, second: PhraseBook): PhraseBook {
  return {
    roots: [...first.roots, ...second.roots],
    meanings: [...first.meanings, ...second.meanings],
    words: new Set([...first.words, ...second.words]),
  };
}

function wordIn(roots: readonly Node[], key: string): Concept | null {
  for (const root of roots) {
    const concept = root.next.get(key)?.concept;
    if (concept) return concept;
  }
  return null;
}

/**
 * Parts the words of a text into the longest phrases that mean something, then those that do so by what their words
 * mean; small words are gone.
 */
export function stretchesOf(book: PhraseBook, words: readonly SimpleWord[]): Stretch[] {
  const kept = words.filter((word) => !isSmall(word));
  const keys = kept.map(keyOf);
  const stretches: Stretch[] = [];
  for (let at = 0; at < kept.length; ) {
    const { concept, length } = longestAt(book.roots, keys, at);
    const parts =
      length === 1 ? [] : keys.slice(at, at + length).flatMap((key) => wordIn(book.roots, key) ?? []);
    if (concept) stretches.push({ concept, words: kept.slice(at, at + length), parts });
    else stretches.push(plainStretch(book.roots, kept[at], keys[at]));
    at += length;
  }
  return byMeaning(book.meanings, stretches, firstsAfterJoint(words));
}

const noWords: ReadonlySet<SimpleWord> = new Set();
const joints: ReadonlySet<string> = new Set(['or', 'and', 'but', 'because', 'so', 'then']);

/** Words before which another thought begins: "weak or no sound" names no third thing. */
function firstsAfterJoint(words: readonly SimpleWord[]): ReadonlySet<SimpleWord> {
  if (!words.some(({ word }) => joints.has(word))) return noWords;
  const firsts = new Set<SimpleWord>();
  let isAfter = false;
  for (const word of words) {
    if (joints.has(word.word)) isAfter = true;
    else if (!isSmall(word)) {
      if (isAfter) firsts.add(word);
      isAfter = false;
    }
  }
  return firsts;
}

/** Words that only look as if "re" said "again". */
const notAgain: ReadonlySet<string> = new Set([
  'record',
  'refus',
  'react',
  'relief',
  'remain',
  'recess',
  'rest',
]);

/** One word that begins no phrase here. "Refitted" means what "fitted" does. */
function plainStretch(roots: readonly Node[], word: SimpleWord | undefined, key = ''): Stretch {
  const words = word ? [word] : [];
  if (!key.startsWith('re') || key.length < 6 || notAgain.has(key))
    return { concept: null, words, parts: [] };
  return { concept: wordIn(roots, key.slice(2)), words, parts: [] };
}

function byMeaning(
  meanings: readonly Node[],
  stretches: readonly Stretch[],
  firsts: ReadonlySet<SimpleWord>,
): Stretch[] {
  const keys = stretches.map(({ concept, words: [word] }) =>
    concept ? keyOfConcept(concept) : word ? keyOf(word) : '',
  );
  const isApart = (at: number) => stretches[at]?.words.some((word) => firsts.has(word)) ?? false;
  const isPassedOver = (at: number) => {
    const { concept = null, words = [] } = stretches[at] ?? {};
    return concept === null && fillerWords.has(words[0]?.word ?? '');
  };
  const joined: Stretch[] = [];
  for (let at = 0; at < stretches.length; ) {
    const { concept, length } = longestAt(meanings, keys, at, { isPassedOver, isApart });
    const within = stretches.slice(at, at + length);
    const parts = within.flatMap((each) => [each.concept ?? [], each.parts].flat());
    // What one of the words means by itself is no more with the others: then they are told apart.
    const saysMore = concept !== null && length > 1 && !parts.some(({ word }) => word === concept.word);
    joined.push(...(saysMore ? [{ concept, words: within.flatMap(({ words }) => words), parts }] : within));
    at += length;
  }
  return joined;
}

interface Between {
  /** Whether a word may stand between two words of a phrase: "the jack is a bit loose". */
  isPassedOver(at: number): boolean;
  /** Whether a phrase ends before it. */
  isApart(at: number): boolean;
}
const adjoining: Between = { isPassedOver: () => false, isApart: () => false };

interface Longest {
  concept: Concept | null;
  length: number;
}

const none: Longest = { concept: null, length: 1 };

function longestAt(
  roots: readonly Node[],
  keys: readonly string[],
  at: number,
  between: Between = adjoining,
): Longest {
  let best = none;
  for (const root of roots) {
    const found = longestIn(root, keys, at, between);
    if (found.concept && (!best.concept || found.length > best.length)) best = found;
  }
  return best;
}

function longestIn(
  root: Node,
  keys: readonly string[],
  at: number,
  { isPassedOver, isApart }: Between,
): Longest {
  let found = none;
  let node: Node = root;
  for (let length = 1; at + length <= keys.length; length++) {
    if (length > 1 && isApart(at + length - 1)) break;
    const next = node.next.get(keys[at + length - 1] ?? '');
    if (!next && (length === 1 || !isPassedOver(at + length - 1))) break;
    node = next ?? node;
    if (next?.concept) found = { concept: next.concept, length };
  }
  return found;
}
