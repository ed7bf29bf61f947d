import { isConductorColour, letterCode, readConductor, readMetal } from '@/lib/wiring';

/** Words for terminals that are no conductors of a cable. */
const otherTerminals = new Set(['hot', 'ground', 'earth', 'tip', 'sleeve', 'ring', 'lug', 'wiper', 'input', 'output', 'core']);

export interface FoundTerminals {
  pair: [string, string];
  /** What was read as the pair, and the rest of the line. */
  text: string;
  rest: string;
}

/**
 * Finds two terminals in a line: "red-white", "red to white", "RD/WH", "green and bare", "tip sleeve".
 * With the conductors of the job known, a two-colour name ("white/red") is one of them; otherwise a stroke
 * between two colours parts them.
 */
export function findPair(line: string, conductors: readonly string[]): FoundTerminals | null {
  const words = [...line.matchAll(/[^\s,;:]+/g)].map((match) => ({ text: match[0], start: match.index }));
  for (let from = 0; from < words.length; from++) {
    for (let to = Math.min(words.length, from + 6); to > from; to--) {
      const first = words[from];
      const last = words[to - 1];
      if (!first || !last) continue;
      const text = line.slice(first.start, last.start + last.text.length);
      const pair = asPair(text, conductors);
      if (pair) return { pair, text, rest: `${line.slice(0, first.start)} ${line.slice(last.start + last.text.length)}` };
    }
  }
  return null;
}

function asPair(text: string, conductors: readonly string[]): [string, string] | null {
  for (const divider of [/\s+(?:to|and)\s+/, /\s*[-–—]\s*/, /\s*\/\s*/, /\s+/]) {
    const parts = text.split(divider);
    if (parts.length !== 2) continue;
    const [first, second] = parts.map((part) => terminal(part, conductors));
    if (first && second && first !== second) return [first, second];
  }
  return null;
}

/** One terminal in its usual spelling; null where the words are none. */
export function terminal(words: string, conductors: readonly string[]): string | null {
  const text = words.trim().toLowerCase();
  // A sign beside a colour is the way a needle went, not a part of the name.
  if (!/^[a-z](.*[a-z0-9])?$/.test(text)) return null;
  if (otherTerminals.has(text)) return text === 'earth' ? 'ground' : text;
  const metal = readMetal(text);
  if (metal) return metal;
  if (!isConductorColour(text)) return null;
  const { name, colours } = readConductor(text);
  // Two colours in one are a conductor only where the job knows such a one.
  const known = conductors.some((conductor) => isConductorColour(conductor) && letterCode(conductor) === letterCode(name));
  return colours.length === 1 || known ? name : null;
}
