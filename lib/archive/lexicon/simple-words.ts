import { ones, ordinals, teens, tens } from './number-words';
import { smallWords } from './small-words';
import { unitApart, unitJoined } from './unit-words';
import { wordForms } from './word-forms';

/** One word of a text, folded; where it stands in the text as it was written. */
export interface SimpleWord {
  word: string;
  start: number;
  end: number;
  isNumber: boolean;
}

const written =
  /\d+\/\d+|(?:\d+(?:[.,]\d+)*|(?<![\p{L}\p{N}])[.,]\d+)[\p{L}\p{M}\p{N}]*|[\p{L}\p{M}\p{N}][\p{L}\p{M}\p{N}]*(?:['’][\p{L}\p{M}]+)*/gu;

/** The words of a text in small letters without accents, numbers and their units as words of their own. */
export function simpleWords(text: string): SimpleWord[] {
  const found: SimpleWord[] = [];
  for (const match of text.matchAll(written)) {
    const start = match.index;
    const end = start + match[0].length;
    for (const { word, isNumber } of remembered(match[0])) found.push({ word, isNumber, start, end });
  }
  return numbersRead(found);
}

const longestMemory = 20_000;
const memory = new Map<string, Part[]>();

/** Texts say the same words again and again. */
function remembered(written: string): Part[] {
  const known = memory.get(written);
  if (known) return known;
  if (memory.size >= longestMemory) memory.clear();
  const parts = partsOf(folded(written));
  memory.set(written, parts);
  return parts;
}

/** Small letters, compatibility forms and accents gone. */
export function folded(text: string): string {
  return text
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[\u0300-\u036f]/g, '')
    .replace(/ω/g, 'Ω')
    .replace(/μ/g, 'µ')
    .replace(/[\u2019]/g, "'");
}

type Part = Pick<SimpleWord, 'word' | 'isNumber'>;
/** Signs that stand within a word, or that a letter such as ⑴ is made of. */
const signs = /[^\p{L}\p{M}\p{N}]/gu;
const letters = (word: string): Part => ({ word, isNumber: false });
const digits = (word: string): Part => ({ word, isNumber: true });

function partsOf(word: string): Part[] {
  if (/^\d|^[.,]\d/.test(word)) return numberParts(word);
  if (word.endsWith("n't") || word === 'cannot' || word === 'cant' || word === 'wont')
    return [letters('not')];
  const bare = word
    .replace(/'s$/, '')
    .replace(/'(?:m|re|ve|ll|d)$/, '')
    .replaceAll(signs, '');
  return bare === '' ? [] : [letters(bare)];
}

function numberParts(word: string): Part[] {
  const over = /^(\d+)[/⁄](\d+)$/.exec(word);
  if (over) return [digits(`${Number(over[1])}of${Number(over[2])}`)];
  const marking = /^(\d+)([rkmnpuµ])(\d+)$/.exec(word);
  const unitOfMarking = marking ? unitJoined(marking[2] ?? '') : null;
  if (marking && unitOfMarking) return [digits(plainNumber(`${marking[1]}.${marking[3]}`) + unitOfMarking)];
  const [, number = '', after = ''] = /^([\d.,]*\d)(.*)$/su.exec(word) ?? [];
  if (after === '') return [digits(plainNumber(number))];
  const unit = unitJoined(after);
  return unit ? [digits(plainNumber(number) + unit)] : [letters(word.replaceAll(signs, ''))];
}

/** A number as one word: 8.10 and 8,1 are "8p1", .010 is "0p01", 1,000 is "1000". */
export function plainNumber(text: string): string {
  if (/^[1-9]\d{0,2}(,\d{3})+$/.test(text)) return text.replaceAll(',', '');
  const [whole = '', ...after] = text.split(/[.,]/);
  const fraction = after.join('').replace(/0+$/, '');
  const plain = whole.replace(/^0+(?=\d)/, '') || '0';
  return fraction === '' ? plain : `${plain}p${fraction}`;
}

/** Number words become digits, and a number takes its unit into its word: "eight point one k" is "8p1kohm". */
function numbersRead(words: readonly SimpleWord[]): SimpleWord[] {
  const read: SimpleWord[] = [];
  for (let at = 0; at < words.length; ) {
    const number = numberFrom(words, at);
    const first = words[at];
    const last = words[(number?.next ?? at + 1) - 1];
    if (!first || !last) break;
    if (number) read.push({ word: number.word, start: first.start, end: last.end, isNumber: true });
    else if (!takeUnit(read, first)) read.push(withBaseForm(first));
    at = number?.next ?? at + 1;
  }
  return read;
}

/** Gives the number before it its unit. "8.1 k ohms" says one unit in two words. */
function takeUnit(read: SimpleWord[], { word, end }: SimpleWord): boolean {
  const number = read.at(-1);
  if (!number?.isNumber) return false;
  const isSecondHalf = /^ohms?$/.test(word) && /(kohm|megohm)$/.test(number.word);
  const unit = /^\d+(?:p\d+|of\d+)?$/.test(number.word) ? unitApart(word) : null;
  if (!unit && !isSecondHalf) return false;
  read[read.length - 1] = { ...number, word: number.word + (unit ?? ''), end };
  return true;
}

/** The number of "8p1kohm" alone; null for whole numbers, which are too common to look for without their unit. */
export function numberAlone(word: string): string | null {
  return /^(\d+p\d+)[a-z]+$/.exec(word)?.[1] ?? null;
}

function withBaseForm(word: SimpleWord): SimpleWord {
  if (word.isNumber) return word;
  const form = ordinals.get(word.word) ?? wordForms.get(word.word);
  if (form) return { ...word, word: form };
  // One spelling of -ise and -ize.
  return word.word.includes('iz')
    ? { ...word, word: word.word.replace(/^(.{3,})iz(e|ed|es|ing|er|ers|ation)$/, '$1is$2') }
    : word;
}

interface ReadNumber {
  word: string;
  next: number;
}

function numberFrom(words: readonly SimpleWord[], at: number): ReadNumber | null {
  const whole = wholeFrom(words, at);
  const isPoint = words[whole?.next ?? at]?.word === 'point';
  const after = isPoint ? digitsFrom(words, (whole?.next ?? at) + 1) : null;
  if (after && after.word !== '')
    return { word: plainNumber(`${whole?.value ?? 0}.${after.word}`), next: after.next };
  if (!whole) return null;
  // "that one": no number, unless a unit or a thing that is counted makes it one.
  const isLoneOne = whole.next === at + 1 && words[at]?.word === 'one';
  if (isLoneOne && !unitApart(words[at + 1]?.word ?? '')) return null;
  return { word: String(whole.value), next: whole.next };
}

interface Whole {
  value: number;
  next: number;
}

function wholeFrom(words: readonly SimpleWord[], at: number): Whole | null {
  const start = underHundred(words, at);
  if (!start) return null;
  const follows = words[start.next]?.word;
  if (follows === 'hundred' || follows === 'thousand') {
    const scale = follows === 'hundred' ? 100 : 1000;
    const joined = words[start.next + 1]?.word === 'and' ? start.next + 2 : start.next + 1;
    const rest = (scale === 1000 ? wholeFrom(words, joined) : null) ?? underHundred(words, joined);
    const value = start.value * scale + (rest?.value ?? 0);
    return { value, next: rest?.next ?? start.next + 1 };
  }
  // "four thirty two volts"
  const more = start.value > 0 && start.value < 10 ? underHundred(words, start.next) : null;
  return more && more.value >= 10 ? { value: start.value * 100 + more.value, next: more.next } : start;
}

function underHundred(words: readonly SimpleWord[], at: number): Whole | null {
  const word = words[at]?.word ?? '';
  const plain = ones.get(word) ?? teens.get(word);
  if (plain !== undefined) return { value: plain, next: at + 1 };
  const ten = tens.get(word);
  if (ten === undefined) return null;
  const one = ones.get(words[at + 1]?.word ?? '');
  return one ? { value: ten + one, next: at + 2 } : { value: ten, next: at + 1 };
}

function digitsFrom(words: readonly SimpleWord[], at: number): ReadNumber {
  let word = '';
  let next = at;
  for (; next < words.length; next++) {
    const said = words[next]?.word ?? '';
    const digit = said === 'oh' || said === 'o' ? 0 : (ones.get(said) ?? (teens.get(said) || tens.get(said)));
    if (digit === undefined && !/^\d+$/.test(said)) break;
    word += digit ?? said;
  }
  return { word, next };
}

/** Whether a word is passed over: it is neither indexed nor looked for. */
export function isSmall({ word }: SimpleWord): boolean {
  return smallWords.has(word);
}
