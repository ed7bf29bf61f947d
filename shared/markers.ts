import { z } from 'zod';
import { jobIdSchema, markerIdSchema, takeIdSchema } from './ids';

export const markerKinds = ['intake', 'diagnosis', 'measurement', 'work', 'result'] as const;
export const markerKindSchema = z.enum(markerKinds);
export type MarkerKind = z.infer<typeof markerKindSchema>;

/** Milliseconds from the first shown frame of a take. */
export const takeMsSchema = z.int().min(0).max(1_000_000_000);
export const titleSchema = z.string().trim().min(1).max(200);
const noteSchema = z.string().trim().max(10_000).nullable();

export const markerSchema = z.object({
  id: markerIdSchema,
  jobId: jobIdSchema,
  takeId: takeIdSchema,
  kind: markerKindSchema,
  title: z.string(),
  note: z.string().nullable(),
  ms: takeMsSchema,
  /** Null for a point; otherwise the end of a span in the same take. */
  endMs: takeMsSchema.nullable(),
  public: z.boolean(),
});
export type Marker = z.infer<typeof markerSchema>;

const fields = {
  kind: markerKindSchema,
  title: titleSchema,
  note: noteSchema.optional(),
  takeId: takeIdSchema,
  ms: takeMsSchema,
  endMs: takeMsSchema.nullable().optional(),
};
const endsAfterItStarts = (m: { ms?: number | undefined; endMs?: number | null | undefined }): boolean =>
  m.endMs == null || m.ms === undefined || m.endMs > m.ms;
const endRule = { path: ['endMs'], message: 'a span ends after it starts' };

export const newMarkerSchema = z
  .strictObject({
    ...fields,
    title: z.string().trim().max(200).default(''),
    public: z.boolean().default(true),
  })
  .refine(endsAfterItStarts, endRule);
export type NewMarker = z.infer<typeof newMarkerSchema>;

export const markerPatchSchema = z
  .strictObject({ ...fields, public: z.boolean() })
  .partial()
  .refine(endsAfterItStarts, endRule);
export type MarkerPatch = z.infer<typeof markerPatchSchema>;
