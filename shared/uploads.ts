import { z } from 'zod';
import { changeIdSchema, jobIdSchema } from './ids';
import { takeSchema } from './takes';
import { taskSchema } from './tasks';

/** Where recordings are sent by tus 1.0 (tus.io/protocols/resumable-upload). */
export const uploadsPath = '/api/uploads';

/** What an upload tells of itself when it is created (tus 1.0, Upload-Metadata). */
export const uploadMetadataSchema = z.object({
  job: jobIdSchema,
  filename: z.string('tell what the file is called'),
  /** When the file was last written on the device that sends it; milliseconds since 1970. */
  lastModified: z.coerce.number().int().positive().max(8.64e15).optional(),
});
export type UploadMetadata = z.infer<typeof uploadMetadataSchema>;

/** Ends an upload whose last byte has arrived: what its bytes must hash to (FIPS 180-4, in hexadecimal). */
export const finishUploadSchema = z.strictObject({
  sha256: z.string().regex(/^[0-9a-f]{64}$/, 'not a SHA-256 in small hexadecimal letters'),
});

/** The take that an upload became. */
export const finishedUploadSchema = z.object({
  change: changeIdSchema,
  take: takeSchema,
  task: taskSchema.nullable(),
});
export type FinishedUpload = z.infer<typeof finishedUploadSchema>;

/**
 * Where the browser finds ffmpeg.wasm. The versions stand in the address, so that its files can be kept for ever
 * and a newer program never meets an older core.
 */
export const enginePath = '/engine/0.12.15-0.12.10';
