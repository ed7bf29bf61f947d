import { z } from 'zod';

/** Sections of the episode notes, in their usual order. */
export const noteSectionIds = [
  'came in',
  'found',
  'measured',
  'wiring',
  'done',
  'not done',
  'parts',
  'tools',
  'cautions',
  'chapters',
] as const;
export const noteSectionIdSchema = z.enum(noteSectionIds);
export type NoteSectionId = z.infer<typeof noteSectionIdSchema>;

const noteText = z.string().max(500_000);

/** What the repairer made of a section. */
export const keptNoteSchema = z
  .strictObject({
    id: noteSectionIdSchema,
    on: z.boolean(),
    /** Markdown, where it was edited; null where the draft stands. */
    text: noteText.nullable(),
    /** The draft that was edited; null where there was none. */
    madeFrom: noteText.nullable(),
  })
  .refine(({ text, madeFrom }) => text !== null || madeFrom === null, {
    path: ['madeFrom'],
    message: 'only an edited section was made from a draft',
  });
export type KeptNote = z.infer<typeof keptNoteSchema>;

/** The sections in the repairer's order. */
export const keptNotesSchema = z
  .array(keptNoteSchema)
  .max(noteSectionIds.length)
  .refine((kept) => new Set(kept.map(({ id }) => id)).size === kept.length, 'a section stands once');
export type KeptNotes = z.infer<typeof keptNotesSchema>;

/**
 * Where the video will be seen. Times link to `{address}#t=245` (W3C Media Fragments URI 1.0, section 4.2.1); an
 * address with `{seconds}` in it says where its host wants them instead.
 */
export const videoAddressSchema = z
  .string()
  .trim()
  .max(2000)
  .refine(isWebAddress, 'an address that begins with https:// or http://');

function isWebAddress(text: string): boolean {
  return /^https?:\/\//i.test(text) && !/[\s<>"\\]/.test(text) && URL.canParse(text);
}

/** A piece of the word-level difference between two drafts. */
export const differencePieceSchema = z.object({
  what: z.enum(['same', 'added', 'removed']),
  text: z.string(),
});
export type DifferencePiece = z.infer<typeof differencePieceSchema>;

/** A drawing of a section: as it stands in the Markdown, and the same as a picture. */
export const noteDrawingSchema = z.object({ text: z.string(), svg: z.string() });
export type NoteDrawing = z.infer<typeof noteDrawingSchema>;

/** A section as it will be published. */
export const composedNoteSchema = z.object({
  id: noteSectionIdSchema,
  heading: z.string(),
  on: z.boolean(),
  /** Markdown. */
  text: z.string(),
  edited: z.boolean(),
  /** The record has changed since it was edited. */
  behind: z.boolean(),
  /** From the draft that was edited to the draft now; null where it is not behind. */
  difference: z.array(differencePieceSchema).nullable(),
  drawings: z.array(noteDrawingSchema),
});
export type ComposedNote = z.infer<typeof composedNoteSchema>;
