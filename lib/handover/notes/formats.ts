import { oneLine } from '@/lib/film';
import type { ComposedNote } from '@/shared/notes';
import type { HandoverFacts } from '../facts';
import { publicWords } from '../public-words';
import { words } from './blocks';
import { publicMarkdown, writeMarkdown } from './markdown';
import { notesPage } from './page';
import { plainText } from './plain';
import { withoutPrices } from './prices';

/** What stands over the notes. */
export interface NotesMeta {
  readonly title: string;
}

/** One way of writing the notes. */
export interface NoteFormat {
  /** For the page. */
  label: string;
  contentType: string;
  extension: string;
  /** @param notes only those that are on, in their order */
  write(notes: readonly ComposedNote[], meta: NotesMeta): string;
}

/** Add a format here; the page and the route offer whatever stands in this table. */
export const noteFormats = {
  markdown: {
    label: 'Markdown',
    contentType: 'text/markdown; charset=utf-8',
    extension: 'md',
    write: (notes, { title }) =>
      [
        heading(1, title),
        ...notes.map((note) => `${heading(2, note.heading)}\n${publicMarkdown(note)}`),
      ].join('\n'),
  },
  text: {
    label: 'Plain text',
    contentType: 'text/plain; charset=utf-8',
    extension: 'txt',
    write: (notes, { title }) =>
      [underlined(title, '='), ...notes.flatMap(plainSection)].join('\n\n').concat('\n'),
  },
  html: {
    label: 'Web page',
    contentType: 'text/html; charset=utf-8',
    extension: 'html',
    write: (notes, { title }) => notesPage(notes, title),
  },
} satisfies Record<string, NoteFormat>;

export type NoteFormatName = keyof typeof noteFormats;

/** The notes as one document. Sections that are switched off are left out. */
export function writeNotes(notes: readonly ComposedNote[], format: NoteFormatName, meta: NotesMeta): string {
  return noteFormats[format].write(
    notes.filter(({ on }) => on),
    { title: oneLine(meta.title) },
  );
}

/** The title of a job's notes, as it may go public. */
export function notesMetaOf({ record }: HandoverFacts): NotesMeta {
  return { title: publicWords(withoutPrices(oneLine(record.job.title)), record) };
}

function heading(depth: 1 | 2, text: string): string {
  return writeMarkdown([{ type: 'heading', depth, children: [words(text)] }]);
}

function plainSection(note: ComposedNote): string[] {
  return [underlined(note.heading, '-'), plainText(publicMarkdown(note))];
}

function underlined(title: string, sign: string): string {
  return `${title}\n${sign.repeat(Math.max(3, [...title].length))}`;
}
