export const DIGIT_WORDS: Readonly<Record<string, number>> = {
  zero: 0,
  nought: 0,
  naught: 0,
  oh: 0,
  o: 0,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
};

export const TEEN_WORDS: Readonly<Record<string, number>> = {
  ten: 10,
  eleven: 11,
  twelve: 12,
  thirteen: 13,
  fourteen: 14,
  fifteen: 15,
  sixteen: 16,
  seventeen: 17,
  eighteen: 18,
  nineteen: 19,
};

export const TENS_WORDS: Readonly<Record<string, number>> = {
  twenty: 20,
  thirty: 30,
  forty: 40,
  fourty: 40,
  fifty: 50,
  sixty: 60,
  seventy: 70,
  eighty: 80,
  ninety: 90,
};

export const SCALE_WORDS: Readonly<Record<string, number>> = {
  thousand: 1000,
  million: 1_000_000,
  billion: 1_000_000_000,
};

/** What a speech model writes for a digit after "point". */
export const MISHEARD_DIGITS: Readonly<Record<string, number>> = {
  to: 2,
  too: 2,
  for: 4,
  fore: 4,
  ate: 8,
  won: 1,
  owe: 0,
  tree: 3,
  sex: 6,
};

/** "three quarters", "seven eighths": the part that one of them is. */
export const FRACTION_WORDS: Readonly<Record<string, number>> = {
  half: 2,
  halves: 2,
  third: 3,
  thirds: 3,
  quarter: 4,
  quarters: 4,
  fourths: 4,
  eighth: 8,
  eighths: 8,
  tenth: 10,
  tenths: 10,
  sixteenth: 16,
  sixteenths: 16,
  '16ths': 16,
  '8ths': 8,
  '32nds': 32,
};

/** "this one", "the other one": no number. */
export const BEFORE_PRONOUN_ONE: ReadonlySet<string> = new Set([
  'this',
  'that',
  'the',
  'other',
  'first',
  'second',
  'third',
  'last',
  'next',
  'each',
  'every',
  'any',
  'which',
  'another',
  'new',
  'old',
  'same',
  'right',
  'wrong',
  'white',
  'black',
  'red',
  'green',
  'blue',
  'bare',
  'top',
  'bottom',
  'no',
  'big',
  'little',
  'whole',
  'bad',
  'good',
  'only',
  'and',
]);

/** "fret twelve", "string three": the number names the thing, and ends there. */
export const LABEL_NOUNS: ReadonlySet<string> = new Set([
  'fret',
  'string',
  'pin',
  'position',
  'number',
  'q',
  'take',
  'lug',
  'valve',
  'tube',
  'channel',
  'terminal',
  'stage',
  'switch',
  'step',
  'part',
  'volume',
  'r',
  'c',
  'v',
]);

export const POINT_WORDS: ReadonlySet<string> = new Set(['point', 'dot', 'decimal', '.']);
export const MINUS_WORDS: ReadonlySet<string> = new Set(['minus', 'negative', '-']);
