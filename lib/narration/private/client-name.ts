import { GIVEN_NAMES, NAMES_THAT_ARE_WORDS, NEVER_A_NAME } from '../lexicon/names';
import { isUnitWord } from '../lexicon/unit-words';
import { editDistance, soundKey } from './sounds';

interface NamePart {
  readonly word: string;
  readonly sound: string;
}

const LETTERS = /[^\p{L}']+/u;
const TITLES = new Set(['mr', 'mrs', 'ms', 'miss', 'dr', 'sir', 'the', 'van', 'von', 'de', 'la', 'and']);

/** The client's name on the ticket, made ready to be recognised in talk: in parts, shortened, or misheard. */
export class ClientName {
  readonly #parts: readonly NamePart[];
  readonly #known = new Map<string, boolean>();

  constructor(name: string | null) {
    this.#parts = (name ?? '')
      .toLowerCase()
      .split(LETTERS)
      .filter((word) => word.length >= 2 && !TITLES.has(word))
      .map((word) => ({ word, sound: soundKey(word) }));
  }

  get known(): boolean {
    return this.#parts.length > 0;
  }

  /** The word is a part of the name as it is written. */
  isPart(word: string): boolean {
    return this.#parts.some((part) => part.word === word);
  }

  /** The word is a part of the name, a short form of it ("Bart") or sounds like it. */
  resembles(word: string): boolean {
    const known = this.#known.get(word);
    if (known !== undefined) return known;
    const found = this.#parts.some(
      (part) => part.word === word || isShortForm(word, part) || isMisheard(word, part),
    );
    this.#known.set(word, found);
    return found;
  }
}

const isOrdinary = (word: string): boolean =>
  NEVER_A_NAME.has(word) || NAMES_THAT_ARE_WORDS.has(word) || isUnitWord(word) || ORDINARY.has(word);

/** Words of the bench that are near some names by sound. */
const ORDINARY: ReadonlySet<string> = new Set(
  `tape taper taps tone tones time times turn turns tight tune tuned tension sander sand sanding silver slow slot slots slightly alone along salt shield shielding cover copper
  order other orange original chris-cross crisp crystal market marker marked harp hearing rough roof ruffle person perfect perhaps perpetual part parts party bar bars barrel barely start
  thank thanks that thought third hand handy heads heard hard happy hum humming humbucker corner corners correct common carve curve current clean cleaner clear cheap check
  wood wooden would could should winder window wind winding will willing felt fill filled filing file files four form forward front from finger fine fit fitting first fast
  ash maple mahogany march marsh match matching mile mid middle made make makes making mate mostly most must lot lots late later lap left level light line lined long loose low lower`.split(
    /\s+/,
  ),
);

/** "Bart" for Bartholomew: at least three letters from its beginning, and no word of the bench. */
function isShortForm(word: string, part: NamePart): boolean {
  if (word.length < 3 || word.length >= part.word.length || isOrdinary(word)) return false;
  return (
    part.word.length >= 5 &&
    (part.word.startsWith(word) ||
      (/[yie]$/.test(word) && word.length >= 4 && part.word.startsWith(word.replace(/(?:ie|y|i|e)$/, ''))))
  );
}

function isMisheard(word: string, part: NamePart): boolean {
  if (word.length < 4 || part.word.length < 4 || isOrdinary(word)) return false;
  if (GIVEN_NAMES.has(word) && editDistance(word, part.word, 2) > 1) return false;
  const most = part.word.length >= 8 ? 2 : part.word.length >= 5 ? 1 : 0;
  const near = editDistance(word, part.word, most) <= most && word[0] === part.word[0];
  const sound = soundKey(word);
  const alike =
    part.sound.length >= 3 && sound === part.sound && Math.abs(word.length - part.word.length) <= 3;
  return near || alike;
}
