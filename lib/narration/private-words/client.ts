import { NAMES_THAT_ARE_WORDS, NEVER_A_NAME } from '../lexicon/names';
import { isUnitWord } from '../lexicon/unit-words';
import { BENCH_WORDS } from './bench-words';
import { type FoldedText, fold } from './folded';
import { type PrivateSpan, spanIn } from './spans';
import { isTitleCase } from './title-case';

const TITLES = new Set('mr mrs ms miss dr sir the van von de la der den del di da and und'.split(' '));
/** What a person does: before one of these, a word is the name of a person. */
const DOES = new Set(
  'wants wanted asks asked says said told brought brings plays played rang called calls collects collected came comes needs likes liked'.split(
    ' ',
  ),
);
const FOR_WHOM = new Set('for by from with to hi hello thanks dear and'.split(' '));
/** Written without spaces: a name stands among other letters. */
const UNSPACED = /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}\p{Script=Thai}]/u;
/** Short words ("and", "for", "of") and endings are written together with the name. */
const CLINGING = /[\p{Script=Arabic}\p{Script=Hebrew}]/u;
const MOST_CLINGING = 2;
/** Names take endings by case. */
const DECLINED = /[\p{Script=Cyrillic}\p{Script=Greek}]/u;
const SHORTEST_STEM = 3;
const LONGEST_ENDING = 3;

interface Word {
  readonly word: string;
  readonly at: number;
  readonly end: number;
  readonly capital: boolean;
}

function wordsOf(folded: FoldedText, original: string): Word[] {
  return [...folded.text.matchAll(/\p{L}+/gu)].map((match) => ({
    word: match[0],
    at: match.index,
    end: match.index + match[0].length,
    capital: /\p{Lu}/u.test(original.charAt(folded.from[match.index] ?? 0)),
  }));
}

/** The parts of a name by which somebody is known. */
function partsOf(name: string | null): string[] {
  const parts = fold(name ?? '').text.match(/\p{L}+/gu) ?? [];
  return [...new Set(parts)].filter((part) => part.length >= 2 && !TITLES.has(part));
}

/** The client's name as it is written on the ticket: whole, in parts, with an ending, in any script. */
export function clientFinder(name: string | null): (original: string, folded: FoldedText) => PrivateSpan[] {
  const parts = partsOf(name);
  return (original, folded) => {
    const words = wordsOf(folded, original);
    const found = words.flatMap((word, at) => {
      const place = placeIn(word.word, parts);
      return place ? [{ at, word, place }] : [];
    });
    const capitalsTell = found.length > 0 && !isTitleCase(original);
    return found.flatMap(({ at, word, place }) => {
      const isWord = place.part === word.word && isWordToo(word.word);
      if (isWord && !isMeant(folded.text, words, at, parts, capitalsTell)) return [];
      return spanIn(folded, word.at + place.from, word.at + place.to, 'name');
    });
  };
}

/** A part of a name that is an ordinary word as well: what stands around it tells which. */
export const isWordToo = (word: string): boolean =>
  [NAMES_THAT_ARE_WORDS, NEVER_A_NAME, BENCH_WORDS].some((words) => words.has(word)) || isUnitWord(word);

/** Where in a word a part of the name stands; null where it does not. */
function placeIn(word: string, parts: readonly string[]): { part: string; from: number; to: number } | null {
  for (const part of parts) {
    const whole = { part, from: 0, to: word.length };
    if (word === part || isDeclined(word, part)) return whole;
    const at = word.indexOf(part);
    if (at < 0) continue;
    if (UNSPACED.test(part)) return { part, from: at, to: at + part.length };
    const rest = word.length - part.length - at;
    if (CLINGING.test(part) && part.length > 2 && at <= MOST_CLINGING && rest <= MOST_CLINGING) return whole;
  }
  return null;
}

function isDeclined(word: string, part: string): boolean {
  if (!DECLINED.test(part)) return false;
  const stem = part.replace(/[аеиоуыэюяйьαειουωησν]{1,2}$/u, '');
  if (stem.length < SHORTEST_STEM || !word.startsWith(stem)) return false;
  return word.length - stem.length <= LONGEST_ENDING;
}

/** Whether a name that is a word as well ("Rose", "Mark") is meant as a name here. */
function isMeant(
  text: string,
  words: readonly Word[],
  at: number,
  parts: readonly string[],
  capitalsTell: boolean,
): boolean {
  const [before, word, after] = [words[at - 1], words[at], words[at + 1]];
  if (!word) return false;
  const isPartBeside = (other: Word | undefined, gap: string): boolean => {
    if (other === undefined || other.word === word.word || gap.length > 2) return false;
    const isTold = word.capital || other.capital || !isWordToo(other.word);
    return isTold && parts.includes(other.word);
  };
  const gapBefore = text.slice(before?.end ?? 0, word.at);
  const gapAfter = text.slice(word.end, after?.at ?? text.length);
  if (isPartBeside(before, gapBefore) || isPartBeside(after, gapAfter)) return true;
  if (!word.capital) return false;
  const isOwner =
    /^'/.test(gapAfter) && (after === undefined || after.word === 's' || word.word.endsWith('s'));
  const isDoing = gapAfter === ' ' && after !== undefined && DOES.has(after.word);
  const isEnd = gapAfter.trim() !== '' || after === undefined;
  const isForWhom = before !== undefined && FOR_WHOM.has(before.word) && isEnd;
  const isWithin = before !== undefined && /^[\s,'"“(-]*$/.test(gapBefore) && capitalsTell;
  return isOwner || isDoing || isForWhom || isWithin;
}
