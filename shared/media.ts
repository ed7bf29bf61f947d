import { z } from 'zod';

/** The picture of a recording, as it is shown: after rotation and pixel aspect. Sizes in pixels. */
export const videoProbeSchema = z.object({
  codec: z.string(),
  profile: z.string().nullable(),
  pixelFormat: z.string().nullable(),
  codedWidth: z.int().nonnegative(),
  codedHeight: z.int().nonnegative(),
  shownWidth: z.int().nonnegative(),
  shownHeight: z.int().nonnegative(),
  /** Degrees clockwise that a player turns the coded picture. */
  rotation: z.union([z.literal(0), z.literal(90), z.literal(180), z.literal(270)]),
  /** Average frames per second; null when a stream has a single picture. */
  frameRate: z.number().positive().nullable(),
  variableFrameRate: z.boolean(),
});

export const audioProbeSchema = z.object({
  codec: z.string(),
  profile: z.string().nullable(),
  channels: z.int().nonnegative(),
  sampleRateHz: z.int().nonnegative(),
  language: z.string().nullable(),
});

/** When a recording was made, and how far the clock can be trusted. */
export const recordedAtSchema = z.object({
  /** Milliseconds since 1970-01-01T00:00Z, before any camera clock offset. */
  epochMs: z.int(),
  /** `zoned`: written with its offset. `utc`: written as UTC, by a camera that may have meant local time. `file`: the file's own date. */
  source: z.enum(['zoned', 'utc', 'file']),
  /** Minutes east of UTC where the recording says so. */
  offsetMinutes: z.int().nullable(),
});

/** What can be known of a recording without decoding it. Times in milliseconds. */
export const probeSchema = z.object({
  /** One short word: mp4, mov, matroska, webm, avi, mpegts, wav, … */
  container: z.string(),
  sizeBytes: z.int().nonnegative(),
  durationMs: z.int().nonnegative(),
  /** Presentation time of the first shown frame on the file's own clock; film time starts there. */
  firstFrameMs: z.int(),
  video: videoProbeSchema.nullable(),
  audio: z.array(audioProbeSchema),
  recordedAt: recordedAtSchema.nullable(),
  hasPlaceTags: z.boolean(),
  hasDeviceTags: z.boolean(),
  /** Whether common browsers can play it as it is; if not, why, for a person. */
  playable: z.object({ ok: z.boolean(), reason: z.string().nullable() }),
});
export type Probe = z.infer<typeof probeSchema>;

/** Sound peaks of one zoom level on disk: signed bytes, lowest and highest sample by turns. */
export const peaksLevelSchema = z.object({
  /** Pairs (lowest, highest) in each second. */
  pairsPerSecond: z.int().positive(),
  /** Pairs written so far; grows while the sound is being read. */
  pairs: z.int().nonnegative(),
});
export type PeaksLevel = z.infer<typeof peaksLevelSchema>;

/** Faint hints for the strip: where nothing is heard, where the view changes. Take time in milliseconds. */
export const hintsSchema = z.object({
  silences: z.array(z.object({ startMs: z.int(), endMs: z.int() })),
  viewChanges: z.array(z.object({ ms: z.int() })),
});
export type Hints = z.infer<typeof hintsSchema>;

/** Hashed samples and size: enough to know a recording again after it was moved or renamed. */
export const fingerprintSchema = z.object({
  sizeBytes: z.int().nonnegative(),
  sha256: z.string().length(64),
});
export type Fingerprint = z.infer<typeof fingerprintSchema>;
