import { diffWordsWithSpace } from 'diff';
import type { DifferencePiece } from '@/shared/notes';

/** Beyond so many changed words the two have little in common, and finding it would take long. */
const mostChanges = 1500;

/** The difference between two texts, word by word. */
export function differenceOf(before: string, now: string): DifferencePiece[] {
  const changes = diffWordsWithSpace(before, now, { maxEditLength: mostChanges });
  if (!changes) {
    return [
      { what: 'removed', text: before },
      { what: 'added', text: now },
    ];
  }
  return changes.map(({ value, added, removed }) => ({
    what: added ? 'added' : removed ? 'removed' : 'same',
    text: value,
  }));
}
