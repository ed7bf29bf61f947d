import { colours, isConductorColour, readConductor, readMetal } from '@/lib/wiring';
import type { ColoursAsked } from '@/shared/reference';

/** What single letters are taken for where several colours begin with them: the usual one. Common practice, no source. */
const usualLetters: Readonly<Record<string, string>> = { b: 'black', g: 'green', p: 'pink', s: 'shield' };
const smallWords = new Set([
  'and',
  'plus',
  'a',
  'the',
  'wire',
  'wires',
  'lead',
  'leads',
  'conductor',
  'conductors',
]);
const mostConductors = 12;

/**
 * The colours of a cable as a person types them who holds it: names, IEC 60757 letter codes or single letters, in any
 * order, parted by spaces or commas; "bare" and its like are the shield. The second of one colour gets a number.
 */
export function readColoursAsked(text: string): ColoursAsked {
  const asked: ColoursAsked = { conductors: [], shield: false, taken: [], unknown: [] };
  for (const said of wordsOf(text)) {
    const means = meaningOf(said);
    if (means === null) asked.unknown.push(said);
    else if (readMetal(means) === 'shield') asked.shield = true;
    else if (asked.conductors.length < mostConductors) addConductor(asked, means);
    if (means !== null && usualLetters[said]) asked.taken.push({ said, means });
  }
  return asked;
}

/** "white with red stripe" is one conductor, "black 2" too; a dash or a stroke between two colours joins them. */
function wordsOf(text: string): string[] {
  return text
    .toLowerCase()
    .replace(/\b(\p{L}+)\s+with\s+(?:an?\s+)?(\p{L}+)(?:\s+stripes?)?\b/gu, '$1/$2')
    .replace(/\s*\/\s*/g, '/')
    .replace(/\bbare wire\b/g, 'bare')
    .replace(/(\p{L})\s+(\d{1,2})\b/gu, '$1_$2')
    .split(/[\s,;:.()]+/)
    .map((word) => word.replace('_', ' '))
    .filter((word) => word !== '' && !smallWords.has(word));
}

function meaningOf(said: string): string | null {
  if (readMetal(said) === 'shield' || isConductorColour(said)) return said;
  const [, letter, number = ''] = /^([a-z])( \d{1,2})?$/.exec(said) ?? [];
  const name = letter === undefined ? undefined : (usualLetters[letter] ?? onlyColourOf(letter));
  return name === undefined ? null : name + number;
}

function onlyColourOf(letter: string): string | undefined {
  const [only, ...others] = colours.filter(({ name }) => name.startsWith(letter));
  return others.length === 0 ? only?.name : undefined;
}

function addConductor({ conductors }: ColoursAsked, means: string): void {
  const { name, code } = readConductor(means);
  const alike = conductors.filter((one) => one.code === code || one.code.replace(/\d+$/, '') === code).length;
  conductors.push(
    alike === 0 ? { name, code } : { name: `${name} ${alike + 1}`, code: `${code}${alike + 1}` },
  );
}
