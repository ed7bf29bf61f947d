import { z } from 'zod';
import { claimIdSchema, instrumentIdSchema, jobIdSchema, readingIdSchema } from './ids';
import { momentSchema } from './moments';
import { basisSchema } from './readings';

export const claimKinds = ['year', 'factory', 'original part', 'other'] as const;
export const claimKindSchema = z.enum(claimKinds);
export type ClaimKind = z.infer<typeof claimKindSchema>;

export const sureness = ['certain', 'likely', 'doubtful'] as const;

/** Something that is said to be so about an instrument, with how it is known and how sure it is. */
export const claimSchema = z.object({
  id: claimIdSchema,
  instrumentId: instrumentIdSchema,
  /** The job in which it came up. */
  jobId: jobIdSchema.nullable(),
  kind: claimKindSchema,
  /** Which part, or what it is about where the kind does not say. */
  subject: z.string().nullable(),
  value: z.string(),
  basis: basisSchema,
  /** The words that it rests on. */
  evidence: z.string().nullable(),
  /** The still of this moment is evidence too. */
  moment: momentSchema.nullable(),
  readingId: readingIdSchema.nullable(),
  sure: z.enum(sureness),
});
export type Claim = z.infer<typeof claimSchema>;

const fields = {
  jobId: jobIdSchema.nullable(),
  kind: claimKindSchema,
  subject: z.string().trim().max(120).nullable(),
  value: z.string().trim().min(1).max(300),
  basis: basisSchema,
  evidence: z.string().trim().max(2000).nullable(),
  moment: momentSchema.nullable(),
  readingId: readingIdSchema.nullable(),
  sure: z.enum(sureness),
};

export const newClaimSchema = z.strictObject({
  ...fields,
  jobId: fields.jobId.default(null),
  subject: fields.subject.default(null),
  basis: fields.basis.default('stated'),
  evidence: fields.evidence.default(null),
  moment: fields.moment.default(null),
  readingId: fields.readingId.default(null),
  sure: fields.sure.default('likely'),
});
export type NewClaim = z.input<typeof newClaimSchema>;

const { jobId: _, ...changeable } = fields;
const patchFields = z.strictObject(changeable).partial();
export const claimPatchSchema = patchFields.extend({ was: patchFields.optional() });
export type ClaimPatch = z.infer<typeof claimPatchSchema>;

/** A serial pattern of the repairer's own: what its letters and digits mean, in words, from left to right. */
export const serialPatternSchema = z.strictObject({
  name: z.string().trim().min(1).max(80),
  /** "two letters factory, two digits year, two digits month, the rest number" */
  words: z.string().trim().min(1).max(300),
});
export type SerialPattern = z.infer<typeof serialPatternSchema>;
export const serialPatternsSchema = z.strictObject({ patterns: z.array(serialPatternSchema).max(100) });

/** What one pattern makes of a serial. */
export const serialReadingSchema = z.object({
  pattern: z.string(),
  /** Whole years where two digits name one; more than one where the century is open. */
  years: z.array(z.int()),
  month: z.int().nullable(),
  factory: z.string().nullable(),
  /** One sentence: "84 is the year, 07 the month." */
  sentence: z.string(),
});
export type SerialReading = z.infer<typeof serialReadingSchema>;
