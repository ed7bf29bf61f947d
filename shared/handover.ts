import { z } from 'zod';

const msSchema = z.int().nonnegative();

/** A chapter on the published clock. Milliseconds; the end is the first moment that no longer belongs to it. */
const chapterSchema = z
  .strictObject({ startMs: msSchema, endMs: msSchema, title: z.string() })
  .refine(({ startMs, endMs }) => endMs > startMs, 'a chapter ends after it begins');

/** The chapter list as JSON: rising, each chapter ending where the next begins. */
export const chapterListSchema = z.strictObject({
  /** Raised when a field changes its meaning. */
  version: z.literal(1),
  chapters: z.array(chapterSchema),
});
export type ChapterListFile = z.infer<typeof chapterListSchema>;
