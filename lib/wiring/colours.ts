import { DomainError } from '@/shared/problem';

/** IEC 60757:2021, table 1, in its order, which is also the order of letters in a two-colour code. */
export const colours = [
  { name: 'black', code: 'BK', also: [] },
  { name: 'brown', code: 'BN', also: [] },
  { name: 'red', code: 'RD', also: [] },
  { name: 'orange', code: 'OG', also: [] },
  { name: 'yellow', code: 'YE', also: [] },
  { name: 'green', code: 'GN', also: [] },
  { name: 'blue', code: 'BU', also: [] },
  { name: 'violet', code: 'VT', also: ['purple'] },
  { name: 'grey', code: 'GY', also: ['gray'] },
  { name: 'white', code: 'WH', also: [] },
  { name: 'pink', code: 'PK', also: [] },
  { name: 'gold', code: 'GD', also: ['golden'] },
  { name: 'turquoise', code: 'TQ', also: [] },
  { name: 'silver', code: 'SR', also: [] },
] as const;

export type ColourName = (typeof colours)[number]['name'];

/** An insulated conductor. Two of one colour in a cable are told apart by a number: "black 2". */
export type ConductorColour = {
  /** "red", "white/red" (ground colour first), "black 2". */
  name: string;
  /** "RD", "RDWH", "BK2". */
  code: string;
  colours: ColourName[];
};

/** A colour that is not in IEC 60757, or is written in a way that cannot be read. */
export class UnknownColour extends DomainError {
  constructor(text: string) {
    super(
      'invalid',
      `"${text}" is not a conductor colour.`,
      `Use ${colours.map((colour) => colour.name).join(', ')}, two of them as "white/red", a letter code such as RD or GNYE, or add a number when a colour comes twice ("black 2").`,
      { field: 'conductor', value: text },
    );
  }
}

const byWord = new Map<string, (typeof colours)[number]>(
  colours.flatMap((colour) =>
    [colour.name, colour.code.toLowerCase(), ...colour.also].map((word) => [word, colour] as const),
  ),
);

/**
 * Green-and-yellow is always written GNYE (clause 5.1). The standard keeps green and yellow out of every
 * other pair; signal leads do not follow that, so such pairs are written like the rest.
 */
const twoColourCodes = new Map([['YEGN', 'GNYE']]);

/**
 * Reads one conductor: a name, a letter code in either case, or two colours in any of the usual
 * spellings ("white/red", "white-red", "white with red stripe", "WHRD").
 * @throws UnknownColour
 */
export function readConductor(text: string): ConductorColour {
  const match = /^(.*?)\s*(\d{1,2})?$/.exec(text.trim().toLowerCase());
  const words = colourWords(match?.[1] ?? '');
  const found = words.map((word) => byWord.get(word));
  const [first, second] = found;
  if (!first || found.length > 2 || (found.length === 2 && (!second || second === first))) {
    throw new UnknownColour(text);
  }
  const pair = second ? [first, second] : [first];
  const inTableOrder = colours.filter((colour) => pair.includes(colour));
  const letters = inTableOrder.map((colour) => colour.code).join('');
  const number = match?.[2] ?? '';
  return {
    name: pair.map((colour) => colour.name).join('/') + (number ? ` ${number}` : ''),
    code: (twoColourCodes.get(letters) ?? letters) + number,
    colours: pair.map((colour) => colour.name),
  };
}

function colourWords(text: string): string[] {
  const words = text
    .split(/[\s/+&-]+/)
    .filter((word) => !['', 'and', 'with', 'stripe', 'striped'].includes(word));
  const [only] = words;
  const isTwoCodes = words.length === 1 && only !== undefined && only.length === 4 && !byWord.has(only);
  return isTwoCodes ? [only.slice(0, 2), only.slice(2)] : words;
}

/**
 * The letter code of a conductor (IEC 60757, clause 5.1: letters in table order).
 * @throws UnknownColour
 */
export function letterCode(text: string): string {
  return readConductor(text).code;
}

/** True when the text reads as a conductor colour. */
export function isConductorColour(text: string): boolean {
  try {
    readConductor(text);
    return true;
  } catch (error) {
    if (error instanceof UnknownColour) return false;
    throw error;
  }
}

const metalWords = new Map<string, 'shield' | 'frame'>([
  ['shield', 'shield'],
  ['bare', 'shield'],
  ['bare wire', 'shield'],
  ['braid', 'shield'],
  ['screen', 'shield'],
  ['drain', 'shield'],
  ['frame', 'frame'],
  ['cover', 'frame'],
  ['baseplate', 'frame'],
  ['base plate', 'frame'],
]);

/** `shield` or `frame` when the word means one of these, else null. */
export function readMetal(text: string): 'shield' | 'frame' | null {
  return metalWords.get(text.trim().toLowerCase()) ?? null;
}
