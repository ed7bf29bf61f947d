import type { ReadingKindId } from '@/shared/readings';
import { electricKinds } from './electric';
import type { PlausibleRange, ReadingKind } from './kind';
import { generalKinds, setUpKinds } from './set-up';

export type { ReadingKind } from './kind';

/** Every kind of reading. A new one is one entry in these lists, and its name in `shared/readings.ts`. */
export const readingKinds: readonly ReadingKind[] = [...electricKinds, ...setUpKinds, ...generalKinds];

const byId = new Map(readingKinds.map((kind) => [kind.id, kind]));

export function kindOf(id: ReadingKindId): ReadingKind {
  const kind = byId.get(id);
  if (!kind) throw new Error(`No kind of reading is called ${id}.`);
  return kind;
}

/** The range that a value of this kind is expected in; null where anything goes. Common practice, no source. */
export function plausibleRange(kind: ReadingKind, subject: string): PlausibleRange | null {
  return kind.plausible.find((range) => range.subject?.test(subject) ?? true) ?? null;
}
