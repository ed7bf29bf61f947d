import { z } from 'zod';
import { cutViewSchema } from './cut';
import { changeIdSchema, markerIdSchema } from './ids';
import { momentSchema } from './moments';
import { composedNoteSchema, keptNotesSchema, videoAddressSchema } from './notes';
import { keptSummarySchema, stillKeySchema } from './summary';

const chapterSchema = z.object({ startMs: z.int(), endMs: z.int(), title: z.string() });

/** The chapters of the published film, what became of markers in cut parts, and where hosts would refuse them. */
export const chapterViewSchema = z.object({
  chapters: z.array(chapterSchema),
  /** Markers that moved or dropped out, told in a sentence. */
  notes: z.array(
    z.object({ markerId: markerIdSchema, what: z.enum(['moved', 'dropped']), sentence: z.string() }),
  ),
});

export const notesViewSchema = z.object({
  sections: z.array(composedNoteSchema),
  /** What was chosen and written by hand, in order. */
  kept: keptNotesSchema,
  videoAddress: videoAddressSchema.nullable(),
});

export const summaryViewSchema = z.object({
  kept: keptSummarySchema,
  /** Moments that can be shown, with their captions; the ones usually shown come marked. */
  stills: z.array(
    z.object({ key: stillKeySchema, caption: z.string(), moment: momentSchema, usual: z.boolean() }),
  ),
  /** What is usual to look after, as it stands while nothing was typed. */
  usualAftercare: z.string(),
});

/** The four documents of a job, as they stand. */
export const handOverViewSchema = z.object({
  chapters: chapterViewSchema,
  notes: notesViewSchema,
  summary: summaryViewSchema,
  cut: cutViewSchema,
});
export type HandOverView = z.infer<typeof handOverViewSchema>;

/** Sections in their order, whole, and where the video will be seen. `was`: what stood there when it was changed. */
const notesFields = z
  .strictObject({ sections: keptNotesSchema, videoAddress: videoAddressSchema.nullable() })
  .partial();
export const notesPatchSchema = notesFields.extend({ was: notesFields.optional() });
export type NotesPatch = z.infer<typeof notesPatchSchema>;

const { paper, greeting, closing, aftercare, stills } = keptSummarySchema.shape;
/** Without the defaults: they would fill in what was not sent, and write over what stands there. */
const summaryFields = z
  .strictObject({
    paper: paper.unwrap(),
    greeting: greeting.unwrap(),
    closing: closing.unwrap(),
    aftercare: aftercare.unwrap(),
    stills: stills.unwrap(),
  })
  .partial();
export const summaryPatchSchema = summaryFields.extend({ was: summaryFields.optional() });
export type SummaryPatch = z.infer<typeof summaryPatchSchema>;

export const handOverChangedSchema = z.object({ change: changeIdSchema, handOver: handOverViewSchema });
