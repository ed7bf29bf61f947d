import { z } from 'zod';
import { changeIdSchema, jobIdSchema, narrationLineIdSchema, proposalIdSchema, takeIdSchema } from './ids';
import { takeMsSchema } from './markers';
import { captionFormatSchema, heardProposalSchema, proposalTypes, slangSchema } from './narration';

/** A spoken line as it is kept, in take time. */
export const keptLineSchema = z.object({
  id: narrationLineIdSchema,
  takeId: takeIdSchema,
  startMs: takeMsSchema,
  endMs: takeMsSchema,
  text: z.string(),
  voice: z.string().nullable(),
  /** As it was heard, where a hand has corrected it. */
  heardText: z.string().nullable(),
});
export type KeptLine = z.infer<typeof keptLineSchema>;

export const linePatchSchema = z.strictObject({ text: z.string().trim().min(1).max(10_000) });

export const decisions = ['open', 'accepted', 'dismissed'] as const;
export const proposalSchema = z.object({
  id: proposalIdSchema,
  jobId: jobIdSchema,
  takeId: takeIdSchema,
  startMs: takeMsSchema,
  endMs: takeMsSchema,
  heard: heardProposalSchema,
  decision: z.enum(decisions),
  /** Where it was promised, when it is about what became of a promise. */
  promisedAt: z.object({ takeId: takeIdSchema, ms: takeMsSchema }).nullable(),
  /** The marker or reading that acceptance made. */
  recordId: z.string().nullable(),
});
export type Proposal = z.infer<typeof proposalSchema>;

/** `change`: a payload put right by hand before it is accepted. */
export const decideSchema = z.strictObject({
  decision: z.enum(['accept', 'dismiss']),
  change: z.record(z.string(), z.unknown()).optional(),
});
export type Decide = z.infer<typeof decideSchema>;

/** Decides on all open proposals of one type. */
export const decideAllSchema = z.strictObject({
  decision: z.enum(['accept', 'dismiss']),
  type: z.enum(proposalTypes),
});

export const narrationSchema = z.object({
  lines: z.array(keptLineSchema),
  proposals: z.array(proposalSchema),
});
export type Narration = z.infer<typeof narrationSchema>;

/** Where captions are put in: moved by so many milliseconds. */
export const importQuerySchema = z.object({
  offsetMs: z.coerce.number().int().min(-86_400_000).max(86_400_000).default(0),
  name: z.string().max(200).default('This file'),
});

export const importedSchema = z.object({
  change: changeIdSchema,
  format: captionFormatSchema,
  lines: z.int(),
  /** Lines of the file that could not be read, and lines that fall on no take. */
  unread: z.array(z.object({ line: z.int(), content: z.string() })),
  outside: z.int(),
  proposed: z.int(),
});
export type Imported = z.infer<typeof importedSchema>;

/** What could not be accepted as it stands, when all of a type were. */
export const decidedAllSchema = z.object({
  change: changeIdSchema.nullable(),
  decided: z.int(),
  left: z.int(),
});

export const slangListSchema = z.strictObject({ slang: z.array(slangSchema).max(500) });

export const speechModelSchema = z.object({ name: z.string(), sizeBytes: z.int() });
export type SpeechModel = z.infer<typeof speechModelSchema>;
export const speechModelsSchema = z.object({ folder: z.string(), models: z.array(speechModelSchema) });
export const listenSchema = z.strictObject({ model: z.string().max(200).optional() });
