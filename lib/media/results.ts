import { z } from 'zod';
import { fingerprintSchema, hintsSchema, peaksLevelSchema, probeSchema } from '@/shared/media';

/** What each kind of work on a recording finds out; while it runs, what it has so far. */
export const probeResultSchema = z.object({ probe: probeSchema, fingerprint: fingerprintSchema });

export const soundResultSchema = z.object({
  peaks: z.array(peaksLevelSchema),
  silences: hintsSchema.shape.silences,
});
export type SoundResult = z.infer<typeof soundResultSchema>;

/** `stills`: take times of the stills on disk. */
export const picturesResultSchema = z.object({
  stills: z.array(z.int()),
  viewChanges: hintsSchema.shape.viewChanges,
});
export type PicturesResult = z.infer<typeof picturesResultSchema>;

export interface ViewingCopyResult {
  sizeBytes: number;
}

/** What a speech model heard, as SubRip; its times lie `offsetMs` off the take's clock. */
export const listenResultSchema = z.object({ captions: z.string(), offsetMs: z.int() });
export type ListenResult = z.infer<typeof listenResultSchema>;
