/**
 * M. F. Porter, “An algorithm for suffix stripping” (1980), as SQLite's FTS5 runs it over what is indexed: phrases
 * of the lexicon meet the same word forms as the index does.
 * @param word in small letters, without accents
 */
export function stemOf(word: string): string {
  if (word.length <= 2 || !/^[a-z]+$/.test(word)) return word;
  return withoutLastLetter(suffixGone(suffixSwapped(yAsI(pastAndGerund(plural(word))), steps2and3)));
}

const consonant = '(?:[^aeiouy]|(?<![^aeiouy])y|^y)';
const vowel = '(?:[aeiou]|(?<=[^aeiouy])y)';
const measureOver0 = new RegExp(`${vowel}${consonant}`);
const measureOver1 = new RegExp(`${vowel}${consonant}.*${vowel}${consonant}`);
const measureIs1 = new RegExp(`^${consonant}*${vowel}+${consonant}+${vowel}*$`);
const hasVowel = new RegExp(vowel);
const doubled = /([^aeiouylsz])\1$/;
const shortEnd = new RegExp(`${consonant}${vowel}[^aeiouywx]$`);

function plural(word: string): string {
  if (/sses$|ies$/.test(word) && word.length > 3) return word.slice(0, -2);
  return /[^s]s$/.test(word) ? word.slice(0, -1) : word;
}

function pastAndGerund(word: string): string {
  if (word.endsWith('eed')) return measureOver0.test(word.slice(0, -3)) ? word.slice(0, -1) : word;
  const stem = /^(.+)(?:ed|ing)$/.exec(word)?.[1];
  if (stem === undefined || !hasVowel.test(stem)) return word;
  if (/(?:at|bl|iz)$/.test(stem)) return `${stem}e`;
  if (doubled.test(stem)) return stem.slice(0, -1);
  return measureIs1.test(stem) && shortEnd.test(stem) ? `${stem}e` : stem;
}

function yAsI(word: string): string {
  const stem = word.slice(0, -1);
  return word.endsWith('y') && hasVowel.test(stem) ? `${stem}i` : word;
}

type Swaps = readonly (readonly [string, string])[];

const step2: Swaps = [
  ['ational', 'ate'],
  ['tional', 'tion'],
  ['enci', 'ence'],
  ['anci', 'ance'],
  ['izer', 'ize'],
  ['logi', 'log'],
  ['bli', 'ble'],
  ['alli', 'al'],
  ['entli', 'ent'],
  ['eli', 'e'],
  ['ousli', 'ous'],
  ['ization', 'ize'],
  ['ation', 'ate'],
  ['ator', 'ate'],
  ['alism', 'al'],
  ['iveness', 'ive'],
  ['fulness', 'ful'],
  ['ousness', 'ous'],
  ['aliti', 'al'],
  ['iviti', 'ive'],
  ['biliti', 'ble'],
];
const step3: Swaps = [
  ['icate', 'ic'],
  ['ative', ''],
  ['alize', 'al'],
  ['iciti', 'ic'],
  ['ical', 'ic'],
  ['ful', ''],
  ['ness', ''],
];
const steps2and3 = [step2, step3];

function suffixSwapped(word: string, steps: readonly Swaps[]): string {
  return steps.reduce((now, swaps) => {
    const [from, to] = swaps.find(([suffix]) => now.endsWith(suffix)) ?? [];
    if (from === undefined || to === undefined) return now;
    const stem = now.slice(0, -from.length);
    return measureOver0.test(stem) ? stem + to : now;
  }, word);
}

const step4 = /(?:al|ance|ence|er|ic|able|ible|ant|ement|ment|ent|(?<=[st])ion|ou|ism|ate|iti|ous|ive|ize)$/;

function suffixGone(word: string): string {
  const suffix = step4.exec(word)?.[0] ?? '';
  const stem = word.slice(0, word.length - suffix.length);
  return measureOver1.test(stem) ? stem : word;
}

function withoutLastLetter(word: string): string {
  const stem = word.slice(0, -1);
  const bare =
    word.endsWith('e') && (measureOver1.test(stem) || (measureIs1.test(stem) && !shortEnd.test(stem)))
      ? stem
      : word;
  return bare.endsWith('ll') && measureOver1.test(bare) ? bare.slice(0, -1) : bare;
}
