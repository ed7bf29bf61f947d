import { namedInstruments } from '../lexicon/instruments-said';
import { type Concept, type PhraseBook, type Stretch, stretchesOf } from '../lexicon/phrase-book';
import { numberAlone, type SimpleWord, simpleWords } from '../lexicon/simple-words';
import { fillerWords, smallWords, weakWords } from '../lexicon/small-words';
import { bookWith, isPlainThing, relatedTo } from '../lexicon/trade';
import type { MakePart } from './part-ids';
import type { Finding, QuestionContext, QuestionTerm } from './question';
import type { Rest } from './rest';
import { meantTogether } from './signs';
import { meantWord } from './slips';

/** More words than these a question cannot mean. */
const mostTerms = 24;
const mostWords = 14;
const weights = { instrument: 2.2, phrase: 1.2, word: 1, number: 0.7, weak: 0.4 } as const;

interface AskedWord extends SimpleWord {
  /** As it was typed, where another word is taken for it. */
  isSlip: boolean;
}

/** What is left of a question, as words to be looked for; fillers are gone, slips are mended. */
export function termsIn(
  rest: Rest,
  context: QuestionContext,
  instruments: readonly string[],
  makePart: MakePart,
): Finding[] {
  const book = bookWith(context.ownSynonyms, instruments[0]);
  const words = simpleWords(rest.left).map((word) => mended(word, book, context));
  const stretches = stretchesOf(
    book,
    words.filter((_, at) => !isRuledOut(words, at)),
  ).filter(saysSomething);
  const meant = meantTogether(stretches);
  const findings: Finding[] = [];
  for (const [at, stretch] of stretches.entries()) {
    const finding = withMeant(termOf(stretch, words, rest, makePart), meant[at] ?? []);
    const isKnown = findings.some(({ term }) => term?.any[0] === finding.term?.any[0]);
    if (!isKnown) findings.push(finding);
    if (findings.length === mostTerms) break;
  }
  return findings;
}

/** "Without replacing it": what is asked for is the other way. */
function isRuledOut(words: readonly AskedWord[], at: number): boolean {
  return (
    words[at - 1]?.word === 'without' || (words[at - 2]?.word === 'instead' && words[at - 1]?.word === 'of')
  );
}

function mended(word: SimpleWord, book: PhraseBook, context: QuestionContext): AskedWord {
  if (smallWords.has(word.word) || fillerWords.has(word.word) || isOfBook(word, book))
    return { ...word, isSlip: false };
  const meant = meantWord(word, context);
  return meant === null ? { ...word, isSlip: false } : { ...word, word: meant, isSlip: true };
}

/** Whether a word begins or is a name of the lexicon: then it is no slip. */
function isOfBook(word: SimpleWord, book: PhraseBook): boolean {
  return book.words.has(word.word) || stretchesOf(book, [word])[0]?.concept != null;
}

function saysSomething({ concept, words }: Stretch): boolean {
  const only = words[0];
  if (concept || !only) return concept !== null;
  return !fillerWords.has(only.word) && (only.isNumber || only.word.length > 1 || !/^[a-z]$/.test(only.word));
}

function termOf(stretch: Stretch, asked: readonly AskedWord[], rest: Rest, makePart: MakePart): Finding {
  const [first] = stretch.words;
  const start = first?.start ?? 0;
  const end = stretch.words.at(-1)?.end ?? start;
  const said = rest.text.slice(start, end);
  const isSlip = asked.some((word) => word.isSlip && word.start >= start && word.end <= end);
  const { any, close } = stretch.concept
    ? wordsFor(stretch.concept, stretch.parts)
    : plainWord(first?.word ?? '');
  const part = makePart(isSlip ? 'slip' : 'words', said, sayMeaning(stretch, said, isSlip));
  const exact = stretch.words.length > 1 ? stretch.words.map(({ word }) => word) : [];
  const term: QuestionTerm = { id: part.id, said, any, close, exact, weight: weightOf(stretch), isSlip };
  return { part, term };
}

/** What it means together with other words of the question goes with it. */
function withMeant(finding: Finding, meant: readonly string[]): Finding {
  const { term } = finding;
  if (!term || meant.length === 0) return finding;
  const same = [...new Set([...term.any.slice(0, term.close), ...meant])];
  const any = [...new Set([...same, ...term.any])].slice(0, mostWords);
  return { ...finding, term: { ...term, any, close: Math.min(same.length, mostWords) } };
}

/** The concept's own word, then what it is a kind of and what it is said with, then what goes with it. */
function wordsFor({ word, broader }: Concept, parts: readonly Concept[]): { any: string[]; close: number } {
  if (namedInstruments.has(word)) return { any: [word], close: 1 };
  const within = isPlainThing(word)
    ? []
    : parts.map((part) => part.word).filter((part) => !weakWords.has(part));
  return {
    any: [...new Set([word, ...broader, ...within, ...relatedTo(word)])].slice(0, mostWords),
    close: 1,
  };
}

function plainWord(word: string): { any: string[]; close: number } {
  const alone = numberAlone(word);
  const any = alone === null ? [word] : [word, alone];
  return { any, close: any.length };
}

function weightOf({ concept, words }: Stretch): number {
  const [first] = words;
  if (concept && namedInstruments.has(concept.word)) return weights.instrument;
  if (words.length > 1) return weights.phrase;
  if (weakWords.has(concept?.word ?? '') || (first && weakWords.has(first.word))) return weights.weak;
  return first?.isNumber && !concept ? weights.number : weights.word;
}

const mostNames = 3;

/** “scratchy pot”, also as: crackle, crackly, crackling. */
function sayMeaning({ concept, words }: Stretch, said: string, isSlip: boolean): string {
  const taken = words.map(({ word }) => word).join(' ');
  const start = isSlip ? `“${said}” taken as “${taken}”` : `“${said}”`;
  const names = (concept?.said ?? [])
    .filter((name) => name !== taken && name !== said.toLowerCase())
    .slice(0, mostNames);
  return names.length === 0 ? start : `${start}, also as: ${names.join(', ')}`;
}
