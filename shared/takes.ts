import { z } from 'zod';
import { folderIdSchema, jobIdSchema, recordingIdSchema, takeIdSchema } from './ids';
import { takeMsSchema } from './markers';
import { hintsSchema, peaksLevelSchema, probeSchema } from './media';

export const recordingStates = ['new', 'ready', 'missing', 'failed'] as const;

/** A take with what is known of its recording. */
export const takeSchema = z.object({
  id: takeIdSchema,
  jobId: jobIdSchema,
  recordingId: recordingIdSchema,
  trimStartMs: takeMsSchema,
  trimEndMs: takeMsSchema.nullable(),
  /** File name, and the whole path on the bench machine. */
  name: z.string(),
  path: z.string(),
  state: z.enum(recordingStates),
  problem: z.string().nullable(),
  /** 0 until the recording has been looked at. */
  durationMs: z.int().nonnegative(),
  /** With the folder's camera clock offset; null where unknown. */
  recordedAt: z.int().nullable(),
  probe: probeSchema.nullable(),
  peaks: z.array(peaksLevelSchema),
  stills: z.array(z.int()),
  hints: hintsSchema.nullable(),
  viewingCopy: z.boolean(),
});
export type Take = z.infer<typeof takeSchema>;

export const newTakeSchema = z.strictObject({ path: z.string().min(1).max(4096) });
export type NewTake = z.infer<typeof newTakeSchema>;

export const takePatchSchema = z
  .strictObject({
    /** Place in the film, counted from 0. */
    index: z.int().min(0),
    trimStartMs: takeMsSchema,
    trimEndMs: takeMsSchema.nullable(),
    /** Where the recording lies now, when it was moved. */
    path: z.string().min(1).max(4096),
  })
  .partial();
export type TakePatch = z.infer<typeof takePatchSchema>;

export const folderSchema = z.object({
  id: folderIdSchema,
  path: z.string(),
  clockOffsetMinutes: z.int(),
  /** False when the folder cannot be read now. */
  reachable: z.boolean(),
});
export type Folder = z.infer<typeof folderSchema>;

const offsetSchema = z
  .int()
  .min(-14 * 60)
  .max(14 * 60);
export const newFolderSchema = z.strictObject({
  path: z.string().trim().min(1).max(4096),
  clockOffsetMinutes: offsetSchema.default(0),
});
export type NewFolder = z.infer<typeof newFolderSchema>;
export const folderPatchSchema = z.strictObject({ clockOffsetMinutes: offsetSchema });

/** A file in a recordings folder that looks like a recording. */
export const foundRecordingSchema = z.object({
  path: z.string(),
  name: z.string(),
  /** The part of the path below the folder that holds it; empty at the top. */
  under: z.string(),
  sizeBytes: z.int(),
  modifiedAt: z.int(),
  /** Jobs that already use it. */
  usedBy: z.array(z.object({ jobId: jobIdSchema, number: z.int(), title: z.string() })),
});
export type FoundRecording = z.infer<typeof foundRecordingSchema>;
