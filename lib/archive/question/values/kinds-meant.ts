import { kindOf, type Quantity, readingKinds, unitOf } from '@/lib/readings';
import type { ReadingKindId, UnitId } from '@/shared/readings';

const asked = readingKinds.filter(({ id }) => id !== 'polarity-kick');
const partWords = /\b(?:pickups?|coils?|humbuckers?|pots?|neck|bridge|middle)\b/;
const bowWords = /\b(?:neck bow|bow in the neck|up ?bow)\b/;

/** Kinds of reading that the words of a question name: "action", "relief". */
export function kindsNamed(text: string): ReadingKindId[] {
  const named = asked.filter(({ words, label }) => words?.test(text) || text.includes(label.toLowerCase()));
  return [...named.map(({ id }) => id), ...(bowWords.test(text) ? (['relief'] as const) : [])];
}

export interface Meant {
  unit: UnitId;
  kindIds: ReadingKindId[];
}

/** What a number with a unit measures: kinds that the words name where the unit allows it, else all of the unit. */
export function meantByUnit(units: readonly UnitId[], named: readonly ReadingKindId[]): Meant | null {
  const quantitiesNamed = named.map((id) => quantityOf(id));
  const unit = units.find((id) => quantitiesNamed.includes(unitOf(id).quantity)) ?? units[0];
  if (!unit) return null;
  const fits = asked.filter(({ id }) => quantityOf(id) === unitOf(unit).quantity).map(({ id }) => id);
  const both = fits.filter((id) => named.includes(id));
  return { unit, kindIds: both.length > 0 ? both : fits };
}

/** The unit that a bare number has: by the kind that is named, or kΩ beside a pickup; null where none is plain. */
export function meantByWords(digits: string, named: readonly ReadingKindId[], text: string): Meant | null {
  const [first] = named;
  if (first) {
    const unit = usualUnit(digits, first);
    return { unit, kindIds: named.filter((id) => quantityOf(id) === unitOf(unit).quantity) };
  }
  const isCoil = /\d[.,]\d/.test(digits) && partWords.test(text);
  return isCoil ? { unit: 'kΩ', kindIds: ['resistance'] } : null;
}

/** ".010" of a length is inches, as feelers are marked, and "10" of relief thousandths; common practice, no source. */
function usualUnit(digits: string, kind: ReadingKindId): UnitId {
  const [usual = kindOf(kind).baseUnit] = kindOf(kind).units;
  if (quantityOf(kind) !== 'length') return usual;
  if (/^0?[.,]\d{3}$/.test(digits)) return 'in';
  return Number(digits) >= 4 && kindOf(kind).units.includes('thou') ? 'thou' : usual;
}

const quantityOf = (id: ReadingKindId): Quantity => unitOf(kindOf(id).baseUnit).quantity;
