import { z } from 'zod';

export const summaryPapers = ['a4', 'letter'] as const;
export const summaryPaperSchema = z.enum(summaryPapers);
export type SummaryPaper = z.infer<typeof summaryPaperSchema>;

/** What a still shows: a marker, a reading or a joint of the record, by its id. */
export const stillKeySchema = z
  .string()
  .regex(/^(marker|reading|joint):[0-9a-z]{20}$/, 'a still is named by what it shows, such as marker:…');
export type StillKey = z.infer<typeof stillKeySchema>;

export const mostStills = 6;
const words = z.string().trim().max(4000);

/** What a person chose and typed for the client summary; everything else comes from the record. */
export const keptSummarySchema = z.strictObject({
  paper: summaryPaperSchema.default('a4'),
  /** Before the facts and after all else; empty for none. */
  greeting: words.default(''),
  closing: words.default(''),
  /** What to look after, a line for each thing; null for what is usual after the work that was done. */
  aftercare: words.nullable().default(null),
  /** Null for the moments that are usually shown; empty for none. */
  stills: z.array(stillKeySchema).max(mostStills).nullable().default(null),
});
export type KeptSummary = z.infer<typeof keptSummarySchema>;
export type NewKeptSummary = z.input<typeof keptSummarySchema>;
