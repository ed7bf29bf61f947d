import { readingKindIds } from '@/shared/readings';
import type { Question } from '../question';
import { prepareWords } from '../words';

type AskedValue = Question['values'][number];

/** A reading is near an asked value up to this far from it, in parts of it. */
const widest = 0.2;

/** Kinds and bounds that readings are looked for in. */
export function valueBounds({ kindIds, low, high, near }: AskedValue) {
  const reach = Math.abs(near ?? 0) * widest;
  return {
    kinds: kindIds ?? readingKindIds,
    near,
    low: Math.min(
      low ?? (near === null ? -Number.MAX_VALUE : near),
      near === null ? Number.MAX_VALUE : near - reach,
    ),
    high: Math.max(
      high ?? (near === null ? Number.MAX_VALUE : near),
      near === null ? -Number.MAX_VALUE : near + reach,
    ),
  };
}

/** A reading as it stands against an asked value. */
export interface ReadValue {
  value: number;
  /** What it is of, with what kind of reading it is. */
  of: string;
  /** Read between two conductors: a part of the pickup, not the whole of it. */
  isPart: boolean;
}

/** How well a reading answers for a value, 0 to 1. */
export function closeness(asked: AskedValue, { value, of, isPart }: ReadValue): number {
  const words = preparedOf(asked.subject ?? '');
  // "Neck pickup" is the neck one.
  const subjects = words.length > 1 ? words.filter((word) => word !== 'pickup') : words;
  const there = preparedOf(of.replace(places, ''));
  const named = subjects.filter((word) => there.includes(word)).length;
  const share = isOtherPart(words, there) ? 0 : named / Math.max(1, subjects.length);
  const about = subjects.length === 0 ? 1 : otherSubject + (1 - otherSubject) * share;
  return nearness(asked, value) * about * (isPart ? partFactor : 1);
}

/** Where the leads were held says not what was measured. */
const places = /,? \bat the .*$/;

const mostSubjects = 5000;
const subjectsRead = new Map<string, string[]>();

/** Hundreds of readings are of a few things: each is read once. */
function preparedOf(text: string): string[] {
  const known = subjectsRead.get(text);
  if (known) return known;
  if (subjectsRead.size >= mostSubjects) subjectsRead.clear();
  const words = prepareWords(text).split(' ').filter(Boolean);
  subjectsRead.set(text, words);
  return words;
}

/** Parts that stand in the same places: a bridge pickup is not the pot of the bridge pickup. */
const parts: ReadonlySet<string> = new Set([
  ...['pickup', 'pot', 'volumepot', 'tonepot', 'jack', 'switch', 'capacitor', 'resistor', 'speaker'],
  ...['transformer', 'battery', 'string', 'nutslot', 'fret', 'saddle', 'screw'],
]);

function isOtherPart(asked: readonly string[], there: readonly string[]): boolean {
  const isIn = (words: readonly string[]) => words.filter((word) => parts.has(word));
  const [wanted, found] = [isIn(asked), isIn(there)];
  return wanted.length > 0 && found.length > 0 && !wanted.some((part) => found.includes(part));
}

/** The right value of another thing. */
const otherSubject = 0.25;
const partFactor = 0.9;

/** A range is met or not; a value that is looked for, the better the nearer. */
function nearness({ low, high, near }: AskedValue, value: number): number {
  if (near === null) return 1;
  const away = near === 0 ? Math.abs(value) : Math.abs(value - near) / Math.abs(near);
  const isInside = value >= (low ?? near) && value <= (high ?? near);
  return isInside ? 1 - Math.min(1, away) / 10 : Math.max(0, 1 - away / widest);
}
