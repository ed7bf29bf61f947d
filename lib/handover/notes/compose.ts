import { type ComposedNote, type KeptNote, type NoteSectionId, noteSectionIds } from '@/shared/notes';
import { differenceOf } from './difference';
import { headingOf, type NoteSection } from './sections';

/**
 * The notes as they will be published: the drafts of today under what the repairer has switched, put in another
 * order and written. An edited section stays as it was written; where its draft is another one now it is behind.
 * A section with neither a draft nor words of its own is left out.
 */
export function composeNotes(drafted: readonly NoteSection[], kept: readonly KeptNote[]): ComposedNote[] {
  return orderOf(kept).flatMap((id) => {
    const draft = drafted.find((section) => section.id === id) ?? null;
    const own = kept.find((section) => section.id === id) ?? null;
    return composed(id, draft, own) ?? [];
  });
}

/** Sections that the repairer has not placed stand after the one that they usually follow. */
function orderOf(kept: readonly KeptNote[]): NoteSectionId[] {
  const order = [...new Set(kept.map(({ id }) => id))];
  noteSectionIds.forEach((id, at) => {
    if (order.includes(id)) return;
    const before = noteSectionIds.slice(0, at).findLast((other) => order.includes(other));
    order.splice(before === undefined ? 0 : order.indexOf(before) + 1, 0, id);
  });
  return order;
}

function composed(id: NoteSectionId, draft: NoteSection | null, own: KeptNote | null): ComposedNote | null {
  const base = { id, heading: headingOf(id), on: own?.on ?? true, drawings: [...(draft?.drawings ?? [])] };
  if (own === null || own.text === null) {
    return draft && { ...base, text: draft.markdown, edited: false, behind: false, difference: null };
  }
  const [before, now] = [own.madeFrom, draft?.markdown ?? null];
  const behind = before !== now;
  const difference = behind ? differenceOf(before ?? '', now ?? '') : null;
  return { ...base, text: own.text, edited: true, behind, difference };
}
