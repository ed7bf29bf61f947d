import { kindOf, sayBase, toBase, type Unit, unitOf, units } from '@/lib/readings';
import { DomainError } from '@/shared/problem';
import { digitsSchema, type ReadingKindId } from '@/shared/readings';

/** IEC 60062: the letter stands where the point would (4k7). */
const marking = /^(\d+)([RrKkMnpuµ])(\d+)$/;

export type TypedValue = { base: number | null } | { wrong: string };

/**
 * A value as it is typed, in the base unit of its kind: "7k" of a resistance is 7000. Without a unit it is in the
 * kind's usual one; an empty line is an open end.
 */
export function readTyped(text: string, kind: ReadingKindId): TypedValue {
  const line = text.trim().replace(marking, '$1.$3$2');
  if (line === '') return { base: null };
  const [, typed = '', word = ''] = /^([-+−]?[\d.,]+)\s*(.*)$/.exec(line) ?? [];
  const unit = unitNamed(word, kind);
  const digits = digitsSchema.safeParse(typed);
  if (!digits.success || !unit) return { wrong: `Write a number with its unit, such as ${example(kind)}.` };
  try {
    return { base: toBase(digits.data, unit.id) };
  } catch (error) {
    if (error instanceof DomainError) return { wrong: `${error.message} ${error.detail}` };
    throw error;
  }
}

function unitNamed(word: string, kind: ReadingKindId): Unit | undefined {
  const { baseUnit, units: usual } = kindOf(kind);
  if (word === '') return unitOf(usual[0] ?? baseUnit);
  const { quantity } = unitOf(baseUnit);
  return units.find(
    (unit) => unit.quantity === quantity && (unit.id === word || unit.words.includes(word.toLowerCase())),
  );
}

function example(kind: ReadingKindId): string {
  const { units: usual, baseUnit } = kindOf(kind);
  return usual
    .slice(0, 2)
    .map((id) => `“2.5 ${id}”`)
    .concat(usual.length === 0 ? [`“2.5 ${baseUnit}”`] : [])
    .join(' or ');
}

/** "Resistance, 7 kΩ to 9 kΩ", "Action at least 1.5 mm". */
export function sayRange(kind: ReadingKindId, low: number | undefined, high: number | undefined): string {
  const { label } = kindOf(kind);
  if (low !== undefined && high !== undefined)
    return `${label}, ${sayBase(low, kind)} to ${sayBase(high, kind)}`;
  if (low !== undefined) return `${label}, at least ${sayBase(low, kind)}`;
  return high === undefined ? label : `${label}, at most ${sayBase(high, kind)}`;
}
