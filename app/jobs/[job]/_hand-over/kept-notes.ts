import type { HandOverView } from '@/shared/hand-over';
import type { ComposedNote, KeptNote, KeptNotes, NoteSectionId } from '@/shared/notes';

type Notes = Pick<HandOverView['notes'], 'sections' | 'kept'>;

/** What a field shows of a text: ends are trimmed, as the field trims what is written. */
export function asShown(text: string): string {
  return text.trim();
}

/** The draft of today, as it can be read off what is shown of a section. Null where the record gives none. */
export function draftOf(note: ComposedNote, kept: KeptNotes): string | null {
  if (!note.edited) return note.text;
  if (note.difference) {
    const now = note.difference.filter(({ what }) => what !== 'removed').map(({ text }) => text);
    return now.length > 0 ? now.join('') : null;
  }
  // An edited section that is not behind was made from the draft of today.
  return kept.find(({ id }) => id === note.id)?.madeFrom ?? null;
}

/** The kept sections with one of them changed; one that comes new among them stands where it is shown. */
export function withSection(
  { sections, kept }: Notes,
  id: NoteSectionId,
  part: Partial<Omit<KeptNote, 'id'>>,
): KeptNotes {
  const own = kept.find((section) => section.id === id);
  if (own) return kept.map((section) => (section === own ? { ...section, ...part } : section));
  const shownAfter = sections.slice(sections.findIndex((section) => section.id === id) + 1);
  const next = kept.findIndex((section) => shownAfter.some((after) => after.id === section.id));
  return kept.toSpliced(next < 0 ? kept.length : next, 0, { ...untouched(id), ...part });
}

/** The kept sections after this text was written in one; the draft as it stands is no text of its own. */
export function withText(notes: Notes, id: NoteSectionId, text: string): KeptNotes {
  const { sections, kept } = notes;
  const note = sections.find((section) => section.id === id);
  const draft = note ? draftOf(note, kept) : null;
  if (draft !== null && text === asShown(draft))
    return withSection(notes, id, { text: null, madeFrom: null });
  const before = kept.find((section) => section.id === id);
  // Words that were written on an older draft stay behind the record until one of the two is chosen.
  const madeFrom = note?.behind && before ? before.madeFrom : draft;
  return withSection(notes, id, { text, madeFrom });
}

/** The order of the sections shown, one of them a place further up (−1) or down (1). */
export function withMoved({ sections, kept }: Notes, id: NoteSectionId, by: -1 | 1): KeptNotes {
  const order = sections.map((section) => section.id);
  const from = order.indexOf(id);
  const to = from + by;
  const other = order[to];
  if (from < 0 || other === undefined) return kept;
  order[from] = other;
  order[to] = id;
  const entryOf = (of: NoteSectionId): KeptNote => kept.find((section) => section.id === of) ?? untouched(of);
  // Those that have nothing to show today keep what was chosen for them.
  const others = kept.filter((section) => !order.includes(section.id));
  return [...order.map(entryOf), ...others];
}

/**
 * What the person saw when they began to write in a section. Where another window wrote there since, this is not what
 * is kept, and the server says so.
 */
export function asSeen(notes: Notes, id: NoteSectionId, seen: string): KeptNotes {
  const note = notes.sections.find((section) => section.id === id);
  if (!note || asShown(note.text) === seen) return notes.kept;
  return withSection(notes, id, { text: seen });
}

function untouched(id: NoteSectionId): KeptNote {
  return { id, on: true, text: null, madeFrom: null };
}
