import { fold } from './folded';
import { everySpan, type Finder, runOfWords } from './spans';

/** Shorter ones are found on too many things to tell whose they are. */
const SHORTEST = 4;
/** From this length on, groups with spaces between them are the serial still, and no chance. */
const SHORTEST_IN_GROUPS = 6;

const plain = (text: string): string => text.replace(/[^\p{L}\p{N}]/gu, '');
const mayBeSerial = (text: string): boolean => text.length >= SHORTEST && /\p{N}/u.test(text);

/** The serial whole, and its longest part with a digit where words stand beside it ("no. 40417283"). */
function formsOf(serial: string): Set<string> {
  const { text } = fold(serial);
  const [longest = ''] = (text.match(/[\p{L}\p{N}]+/gu) ?? [])
    .filter((part) => /\p{N}/u.test(part))
    .sort((a, b) => b.length - a.length);
  return new Set([plain(text), longest].filter(mayBeSerial));
}

/** The full serial number, also where it is grouped or dashed otherwise. */
export function serialFinder(serial: string | null): Finder {
  const patterns = [...formsOf(serial ?? '')].map((form) => {
    const between = form.length >= SHORTEST_IN_GROUPS ? '[\\s_./–-]{0,2}' : '[_/–-]?';
    return runOfWords([...form], between);
  });
  return (text) => patterns.flatMap((pattern) => everySpan(text, pattern, 'serial'));
}
