const counted = (words: string, from: number, step = 1) =>
  words.split(' ').map((word, at) => [word, from + at * step] as const);

export const ones: ReadonlyMap<string, number> = new Map([
  ...counted('zero one two three four five six seven eight nine', 0),
  ['nought', 0],
]);
export const teens: ReadonlyMap<string, number> = new Map(
  counted('ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen', 10),
);
export const tens: ReadonlyMap<string, number> = new Map(
  counted('twenty thirty forty fifty sixty seventy eighty ninety', 20, 10),
);

export const ordinals: ReadonlyMap<string, string> = new Map(
  [
    'first 1st',
    'second 2nd',
    'third 3rd',
    'fourth 4th',
    'fifth 5th',
    'sixth 6th',
    'seventh 7th',
    'eighth 8th',
    'ninth 9th',
    'tenth 10th',
    'eleventh 11th',
    'twelfth 12th',
    'fourteenth 14th',
    'fifteenth 15th',
    'seventeenth 17th',
    'nineteenth 19th',
    'twentieth 20th',
  ].map((pair) => {
    const [word = '', short = ''] = pair.split(' ');
    return [word, short] as const;
  }),
);
