import { readingKindIds } from '@/shared/readings';
import type { Question } from '../question';

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
  const words = (asked.subject ?? '').toLowerCase().split(/\s+/).filter(Boolean);
  // "Neck pickup" is the neck one.
  const subjects = words.length > 1 ? words.filter((word) => word !== 'pickup') : words;
  const named = subjects.filter((word) => of.toLowerCase().includes(word)).length;
  const about = subjects.length === 0 ? 1 : otherSubject + (1 - otherSubject) * (named / subjects.length);
  return nearness(asked, value) * about * (isPart ? partFactor : 1);
}

/** The right value of another thing. */
const otherSubject = 0.25;
const partFactor = 0.95;

/** A range is met or not; a value that is looked for, the better the nearer. */
function nearness({ low, high, near }: AskedValue, value: number): number {
  if (near === null) return 1;
  const away = near === 0 ? Math.abs(value) : Math.abs(value - near) / Math.abs(near);
  const isInside = value >= (low ?? near) && value <= (high ?? near);
  return isInside ? 1 - Math.min(1, away) / 10 : Math.max(0, 1 - away / widest);
}
