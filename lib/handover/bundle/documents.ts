import type { KeptNotes } from '@/shared/notes';
import { chapterFormats } from '../chapter-list';
import type { HandoverFacts } from '../facts';
import { composeNotes, noteSections, notesMetaOf, writeNotes } from '../notes';

interface KeptForNotes {
  readonly sections: KeptNotes;
  readonly videoAddress: string | null;
}

/** The documents of a job that are texts, as they stand now, by file name. */
export function documentsOf(
  facts: HandoverFacts,
  { sections, videoAddress }: KeptForNotes,
): Map<string, string> {
  const notes = composeNotes(noteSections(facts, { videoAddress }), sections);
  return new Map([
    ...Object.values(chapterFormats).map(({ extension, write }): [string, string] => [
      `chapters.${extension}`,
      write(facts.chapters),
    ]),
    ['episode-notes.md', writeNotes(notes, 'markdown', notesMetaOf(facts))],
  ]);
}
