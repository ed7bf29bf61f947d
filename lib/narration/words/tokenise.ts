import type { NarrationLine, Slang } from '@/shared/narration';
import { CLAUSE_OPENERS, FILLERS } from '../lexicon/small-words';
import { type SplitWord, splitWords } from './split-words';
import { STOP, type Stop, type Token } from './token';

/** A silence this long between two lines ends a sentence, whatever the punctuation. */
const SENTENCE_PAUSE_MS = 1200;
/** From this share of lines with a full stop on, line ends alone mean nothing. */
const PUNCTUATED_SHARE = 0.3;

interface Phrase {
  readonly said: readonly string[];
  readonly means: readonly SplitWord[];
}

/** The repairer's own phrases, longest first, so that "big grommet" goes before "grommet". */
function slangPhrases(slang: readonly Slang[]): Phrase[] {
  return slang
    .map((entry) => ({
      said: splitWords(entry.said).map((piece) => piece.word),
      means: splitWords(entry.means),
    }))
    .filter((entry) => entry.said.length > 0)
    .sort((a, b) => b.said.length - a.said.length);
}

/** Puts the trade's words in place of the repairer's own; all of them stand where the phrase stood. */
function withoutSlang(words: readonly SplitWord[], phrases: readonly Phrase[]): SplitWord[] {
  const spoken: SplitWord[] = [];
  for (let at = 0; at < words.length; ) {
    const phrase = phrases.find(({ said }) => said.every((word, step) => words[at + step]?.word === word));
    const first = words[at];
    const last = words[at + (phrase?.said.length ?? 1) - 1];
    if (!first || !last) break;
    if (!phrase) spoken.push(first);
    phrase?.means.forEach((piece, step) => {
      const stop = step === phrase.means.length - 1 ? last.stop : STOP.none;
      spoken.push({ ...piece, at: first.at, end: last.end, stop });
    });
    at += phrase?.said.length ?? 1;
  }
  return spoken;
}

/** Takes out "um" and "er"; a full stop after one moves to the word before. */
function withoutFillers(words: readonly SplitWord[]): SplitWord[] {
  const kept: SplitWord[] = [];
  for (const word of words) {
    const last = kept.at(-1);
    if (!FILLERS.has(word.word)) kept.push(word);
    else if (last && word.stop > STOP.soft) kept[kept.length - 1] = { ...last, stop: word.stop };
  }
  return kept;
}

function wordsOfLine(line: NarrationLine, phrases: readonly Phrase[]): SplitWord[] {
  const words = withoutFillers(splitWords(line.text));
  return phrases.length > 0 ? withoutSlang(words, phrases) : words;
}

function lineEndStop(stop: Stop, endMs: number, next: NextLine | null, punctuated: boolean): Stop {
  if (!next || next.startMs - endMs >= SENTENCE_PAUSE_MS) return STOP.full;
  if (stop > STOP.none) return stop;
  if (punctuated) return STOP.none;
  return CLAUSE_OPENERS.has(next.word) ? STOP.clause : STOP.soft;
}

interface NextLine {
  readonly word: string;
  readonly startMs: number;
}

/** All the talk as one run of timed words, over line breaks. Times are interpolated within each line. */
export function tokenise(lines: readonly NarrationLine[], slang: readonly Slang[]): Token[] {
  const phrases = slangPhrases(slang);
  const stopped = lines.filter((line) => /[.?!]["')\]]*\s*$/.test(line.text)).length;
  const punctuated = stopped > PUNCTUATED_SHARE * lines.length;
  const words = lines.map((line) => wordsOfLine(line, phrases));
  const tokens: Token[] = [];
  let next: NextLine | null = null;
  for (let line = lines.length - 1; line >= 0; line--) {
    const spoken = lines[line];
    if (!spoken) continue;
    const perCharacter = (spoken.endMs - spoken.startMs) / Math.max(spoken.text.length, 1);
    const at = (place: number): number => Math.round(spoken.startMs + perCharacter * place);
    for (const word of words[line]?.toReversed() ?? []) {
      const endMs = at(word.end);
      const last = next === null || tokens.at(-1)?.line !== line;
      const stop = last ? lineEndStop(word.stop, endMs, next, punctuated) : word.stop;
      tokens.push({ word: word.word, text: word.text, startMs: at(word.at), endMs, line, stop });
      next = { word: word.word, startMs: at(word.at) };
    }
  }
  return tokens.reverse();
}
