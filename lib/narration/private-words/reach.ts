import { NAMES_THAT_ARE_WORDS, NEVER_A_NAME } from '../lexicon/names';
import { ADDRESS_CUES, PHONE_CUES, STREET_WORDS } from '../lexicon/places';
import { isUnitWord } from '../lexicon/unit-words';
import { numberFinder } from './digits';
import { fold } from './folded';
import { everySpan, type Finder, runOfWords, type WordReason } from './spans';

/** An e-mail address as it is written. */
export const EMAIL = /(?<![\p{L}\p{N}._%+-])[\p{L}\p{N}._%+-]+@[\p{L}\p{N}-]+(?:\.[\p{L}\p{N}-]+)+/gu;
const HANDLE = /(?<![\p{L}\p{N}])@[\p{L}\p{N}._-]{3,}/gu;
const NUMBER = /\+?\d(?:[\s().–/-]{0,3}\d){4,}/gu;
const SHORTEST_PHONE = 6;
const SHORTEST_WORD = 4;
const APART = '[^\\p{L}\\p{N}]{1,3}';

/** Words beside a number or an address that tell nothing of the client. */
const EVERYDAY: ReadonlySet<string> = new Set(
  'home work evening evenings morning mornings weekend weekends afternoon afternoons office mail email fax neighbour only best please leave answering machine website'.split(
    ' ',
  ),
);

/** "Flat 3" is in many houses. */
const WITHIN_A_HOUSE = /^(?:flat|unit|room|floor|apartment|apt|suite|box|level)$/i;

/** What the lines about reaching the client hold, wherever it stands in the text and however it is grouped. */
export function reachFinder(reach: string | null): Finder {
  const finders = (reach ?? '').split(/[\n;|]+/).flatMap(findersOf);
  return (text) => finders.flatMap((find) => find(text));
}

function findersOf(line: string): Finder[] {
  const plain = fold(line).text;
  const handles = plain.replace(EMAIL, ' ').match(HANDLE) ?? [];
  const numbers = plain.match(NUMBER) ?? [];
  const words = line.normalize('NFC').replace(EMAIL, ',').replace(HANDLE, ',');
  return [
    ...handles.map((handle) => wordFinder([handle.slice(1)], 'name')),
    ...numbers.map((number) => numberFinder(number, reasonOf(number))),
    ...placesIn(words).map((place) => wordFinder(place, 'address')),
  ];
}

function wordFinder(words: readonly string[], reason: WordReason): Finder {
  const pattern = runOfWords(words, APART);
  return (text) => everySpan(text, pattern, reason);
}

/** Five digits by themselves are the postcode of an address. */
function reasonOf(number: string): 'phone' | 'address' {
  return number.replace(/\D/g, '').length >= SHORTEST_PHONE ? 'phone' : 'address';
}

/** Streets, places and postcodes of a line, as words: with the house number and without it. */
function placesIn(line: string): string[][] {
  const told = line.replace(/^[^:,]{0,20}:/, '');
  return told.split(',').flatMap((piece) => {
    const written = piece.match(/[\p{L}\p{N}\p{M}]+/gu) ?? [];
    const named = written.findIndex((word) => /\p{L}{2}/u.test(word));
    const street = named > 0 ? [written.slice(named)] : [];
    return [written, ...street]
      .filter(isPlace)
      .map((words) => words.map((word) => fold(word).text).filter((word) => word !== ''));
  });
}

/** Capitals or digits, or a word for a street: "call after six" is no place. Scripts without capitals count as capital. */
function isPlace(words: readonly string[]): boolean {
  const [first, ...more] = words;
  if (first === undefined || !words.some((word) => /\p{L}/u.test(word))) return false;
  if (more.length === 0) return isPlaceName(first);
  if (more.length === 1 && WITHIN_A_HOUSE.test(first)) return false;
  const isNamed = more.some((word) => !/^\p{Ll}/u.test(word));
  return isNamed || /\p{Nd}/u.test(first) || STREET_WORDS.has(more.at(-1)?.toLowerCase() ?? '');
}

function isPlaceName(word: string): boolean {
  const plain = word.toLowerCase();
  if (/\p{Nd}/u.test(word)) return word.length > SHORTEST_WORD;
  const isOrdinary = [EVERYDAY, PHONE_CUES, ADDRESS_CUES, NEVER_A_NAME, NAMES_THAT_ARE_WORDS].some((words) =>
    words.has(plain),
  );
  return !/^\p{Ll}/u.test(word) && word.length >= SHORTEST_WORD && !isOrdinary && !isUnitWord(plain);
}
