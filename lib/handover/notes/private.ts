import type { PrivateWords } from '@/lib/narration';
import type { ComposedNote, NoteSectionId } from '@/shared/notes';
import { type PrivateRecord, privateLeftFor } from '../public-words';
import { publicMarkdown } from './markdown';
import { plainText } from './plain';

export interface PrivateInNote extends Pick<PrivateWords, 'reason' | 'words'> {
  section: NoteSectionId;
}

/**
 * Private words in the sections that are on and were written by hand: in what is read ("Ann" where "A&#110;n" was written) as well as in what
 * is written (the address behind a link). The same words are told once a section.
 */
export function privateInNotes(notes: readonly ComposedNote[], record: PrivateRecord): PrivateInNote[] {
  const find = privateLeftFor(record);
  return notes
    .filter(({ on, edited }) => on && edited)
    .flatMap((note) => {
      const found = [plainText(publicMarkdown(note)), note.text].flatMap(find);
      const once = new Map(found.map((finding) => [finding.words.toLowerCase(), finding]));
      return [...once.values()].map(({ reason, words }) => ({ section: note.id, reason, words }));
    });
}
