import { isConductorColour, letterCode, readConductor, readMetal } from '@/lib/wiring';

/** Words for terminals that are no conductors of a cable. */
const otherTerminals = new Set([
  'hot',
  'ground',
  'earth',
  'tip',
  'sleeve',
  'ring',
  'lug',
  'wiper',
  'input',
  'output',
  'core',
]);
const longestPair = 7;
const dividers = [/\s+(?:to|and)\s+/, /\s*-\s*/, /\s*\/\s*/, /\s+/];

export interface FoundTerminals {
  pair: [string, string];
  /** What was read as the pair, and the rest of the line. */
  text: string;
  rest: string;
  /** A third colour stands right beside the pair: which two are meant is not said. */
  crowded?: boolean;
}

/**
 * Finds two terminals in a line: "red-white", "red to white", "RD/WH", "green and bare", "tip sleeve". With the
 * conductors of the job known, a two-colour name ("white/red") is one of them; otherwise a stroke between two
 * colours parts them. The two can be the same: the line says so.
 */
export function findPair(line: string, conductors: readonly string[]): FoundTerminals | null {
  const words = [...line.matchAll(/[^\s,;:]+/g)].map((match) => ({ text: match[0], start: match.index }));
  for (let from = 0; from < words.length; from++) {
    for (let to = Math.min(words.length, from + longestPair); to > from; to--) {
      const first = words[from];
      const last = words[to - 1];
      if (!first || !last) continue;
      const end = last.start + last.text.length;
      const text = line.slice(first.start, end);
      const pair = asPair(text, conductors);
      if (!pair) continue;
      const crowded = [words[from - 1], words[to]].some((word) => word !== undefined && isColour(word.text));
      return {
        pair,
        text,
        rest: `${line.slice(0, first.start)} ${line.slice(end)}`,
        ...(crowded ? { crowded } : {}),
      };
    }
  }
  return null;
}

/** "white/red-green": three colours, of which it is not known which two are one conductor. */
export function hasThreeColours(line: string): boolean {
  return [...line.matchAll(/[a-z]+(?:\s*[-/]\s*[a-z]+){2,}/gi)].some(([text]) =>
    text.split(/\s*[-/]\s*/).every(isColour),
  );
}

/** A word beside a colour that is no terminal: "mauve" in "red-mauve". */
export function strangerBesideColour(line: string): string | null {
  for (const [, first = '', second = ''] of line.matchAll(
    /(?<![\w/-])([a-z]{3,})[-/]([a-z]{3,})(?![\w/-])/gi,
  )) {
    if (isColour(first) && !isColour(second)) return second;
    if (isColour(second) && !isColour(first)) return first;
  }
  return null;
}

/** The one conductor that a subject ends in: "red" in "neck pickup red". */
export function loneConductor(subject: string): string | null {
  const last = subject.split(' ').at(-1) ?? '';
  return last.length > 2 && isColour(last) ? last : null;
}

/** Whether both ends are insulated conductors of a cable. */
export function areConductors(pair: readonly [string, string]): boolean {
  return pair.every((end) => isConductorColour(end));
}

function isColour(word: string): boolean {
  return isConductorColour(word) && readConductor(word).colours.length === 1;
}

function asPair(text: string, conductors: readonly string[]): [string, string] | null {
  for (const divider of dividers) {
    const parts = text.toLowerCase().split(divider);
    if (parts.length !== 2) continue;
    const [first, second] = parts.map((part) => terminal(part, conductors));
    if (first && second) return [first, second];
  }
  return null;
}

/** One terminal in its usual spelling; null where the words are none. */
export function terminal(words: string, conductors: readonly string[]): string | null {
  const text = words.trim().toLowerCase();
  // A sign beside a colour is the way a needle went, not a part of the name.
  if (!/^[a-z](?:.*[a-z0-9])?$/.test(text)) return null;
  if (otherTerminals.has(text)) return text === 'earth' ? 'ground' : text;
  const metal = readMetal(text);
  if (metal) return metal;
  if (!isConductorColour(text)) return null;
  const { name, code, colours } = readConductor(text);
  const known = conductors.some(
    (conductor) => isConductorColour(conductor) && letterCode(conductor) === code,
  );
  // Two colours in one, and a number behind a colour, are a conductor only where the job knows such a one;
  // the letter code of two colours and a stripe can mean nothing else.
  const isPlain = colours.length === 1 && !/\d/.test(name);
  const isCertain = /^[a-z]{4}$/.test(text) || /\bstriped?\b/.test(text);
  return isPlain || known || isCertain ? name : null;
}
