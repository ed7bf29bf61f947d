import type { FindableKind } from '@/shared/archive';
import type { MarkerKind } from '@/shared/markers';
import type { Basis } from '@/shared/readings';

/** Something found that a word of the question, or several, stand in. */
export interface Hit {
  /** Its number in the index; lines and things are numbered apart. */
  id: number;
  kind: FindableKind;
  markerKind: MarkerKind | null;
  /** How it is known, where that is noted. */
  basis: Basis | null;
  /** Null for narration, which is found by its place. */
  recordId: string | null;
  /** Null for what has no moment. */
  place: { takeId: string; ms: number } | null;
  /** How well it meets each word or value of the question, 0 to 1, by their places in it. */
  met: ReadonlyMap<number, number>;
}
