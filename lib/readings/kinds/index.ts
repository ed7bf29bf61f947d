import { instrumentTypes } from '@/shared/instruments';
import type { ReadingKindId } from '@/shared/readings';
import { electricKinds } from './electric';
import type { PlausibleRange, ReadingKind } from './kind';
import { generalKinds, setUpKinds } from './set-up';

export type { PlausibleRange, ReadingKind } from './kind';

/** Every kind of reading. A new one is one entry in these lists, and its name in `shared/readings.ts`. */
export const readingKinds: readonly ReadingKind[] = [...electricKinds, ...setUpKinds, ...generalKinds];

const byId = new Map(readingKinds.map((kind) => [kind.id, kind]));

export function kindOf(id: ReadingKindId): ReadingKind {
  const kind = byId.get(id);
  if (!kind) throw new Error(`No kind of reading is called ${id}.`);
  return kind;
}

/** What a value is held against: what was measured, and on which instrument. */
export interface PlausibleContext {
  subject: string;
  instrumentType: string;
}

/** The range that a value of this kind is expected in; null where anything goes. Common practice, no source. */
export function plausibleRange(
  kind: ReadingKind,
  { subject, instrumentType }: PlausibleContext,
): PlausibleRange | null {
  const holds = (range: PlausibleRange) =>
    (range.subject?.test(subject) ?? true) && (range.instruments?.includes(instrumentType) ?? true);
  return kind.plausible.find(holds) ?? null;
}

/** Whether a kind is offered for an instrument; a workshop's own types are offered what "other" is. */
export function isOfferedFor({ appliesTo }: ReadingKind, instrumentType: string): boolean {
  const known: readonly string[] = instrumentTypes;
  return appliesTo?.includes(known.includes(instrumentType) ? instrumentType : 'other') ?? true;
}
