import { z } from 'zod';

const msSchema = z.int().nonnegative();

/** Take time in milliseconds; the end is the first moment that no longer belongs to it. */
export const cutSpanSchema = z
  .object({ fromMs: msSchema, toMs: msSchema })
  .refine(({ fromMs, toMs }) => toMs > fromMs, 'The end must lie behind the start');
export type CutSpan = z.infer<typeof cutSpanSchema>;

const shareSchema = z.number().min(0).max(1);

/** A region of the picture, as it is shown (after rotation), in parts of its width and height; for a span of time. */
export const cutCoverSchema = cutSpanSchema.and(
  z.object({ x: shareSchema, y: shareSchema, width: shareSchema, height: shareSchema }),
);
export type CutCover = z.infer<typeof cutCoverSchema>;

/** One kept part of a take. All times are take time in milliseconds. */
export const cutPieceSchema = z.object({
  path: z.string().min(1),
  fromMs: msSchema,
  toMs: msSchema,
  mutes: z.array(cutSpanSchema).default([]),
  covers: z.array(cutCoverSchema).default([]),
});
export type CutPiece = z.infer<typeof cutPieceSchema>;

/** A chapter on the clock of a cut. */
export const cutChapterSchema = z.object({ startMs: msSchema, title: z.string() });
export type CutChapter = z.infer<typeof cutChapterSchema>;

/** What is to be cut, before it is said where the file goes. */
export const cutPlanSpecSchema = z.object({
  /** In film order. */
  pieces: z.array(cutPieceSchema).min(1),
  muteWith: z.enum(['silence', 'tone']).default('silence'),
  /** `key-frames`: copied where it can be, starting on the key frame at or before. `exact`: on the very picture. */
  cutting: z.enum(['key-frames', 'exact']).default('key-frames'),
  /** Integrated loudness to level to (ITU-R BS.1770); null leaves it. */
  loudness: z
    .object({ lufs: z.number().min(-70).max(-5) })
    .nullable()
    .default(null),
  title: z.string().nullable().default(null),
  /** On the clock of the asked-for cut; they are moved along where a cut moves to a key frame. */
  chapters: z.array(cutChapterSchema).default([]),
});
export type CutPlanSpec = z.infer<typeof cutPlanSpecSchema>;

export const cutSpecSchema = cutPlanSpecSchema.extend({
  /** The file to publish, ending in `.mp4` or `.mkv`. */
  output: z.string().regex(/\.(mp4|mkv)$/i, 'The name must end in .mp4 or .mkv'),
  /** Finished pieces wait here, so that they are not made again after a restart. */
  workFolder: z.string().min(1),
});
export type CutSpec = z.infer<typeof cutSpecSchema>;

/** The picture of a source as far as cutting is concerned. Sizes in coded pixels, before rotation. */
export const cutPictureSchema = z.object({
  codec: z.string(),
  pixelFormat: z.string().nullable(),
  width: z.int().positive(),
  height: z.int().positive(),
  rotation: z.union([z.literal(0), z.literal(90), z.literal(180), z.literal(270)]),
  /** Width and height of a coded pixel. */
  pixelAspect: z.tuple([z.int().positive(), z.int().positive()]),
  frameRate: z.number().positive().nullable(),
  /** Digest of the decoder's settings: only equal ones can be joined without re-encoding. */
  settings: z.string(),
  /** Whether its packets can go into the cut as they are. */
  copies: z.boolean(),
  /** Whether freshly encoded pictures can stand beside copied ones (H.264, 8 bits, 4:2:0). */
  mixes: z.boolean(),
});
export type CutPicture = z.infer<typeof cutPictureSchema>;

export const cutSourceSchema = z.object({
  durationMs: msSchema,
  picture: cutPictureSchema.nullable(),
  sound: z
    .object({
      codec: z.string(),
      sampleRateHz: z.int().positive(),
      channels: z.int().positive(),
      /** Whether its packets can go into the cut as they are. */
      copies: z.boolean(),
    })
    .nullable(),
});
export type CutSource = z.infer<typeof cutSourceSchema>;

/** Where one piece's picture can be cut without re-encoding. Take time in milliseconds; null where there is none. */
export const cutPointsSchema = z.object({
  /** The last clean key frame at or before the piece's start. */
  keyAtMs: msSchema.nullable(),
  /** The first clean key frame behind the piece's start. */
  nextKeyMs: msSchema.nullable(),
  /** The last moment at or before the piece's end at which no kept picture needs a later one. */
  closedAtMs: msSchema.nullable(),
});
export type CutPoints = z.infer<typeof cutPointsSchema>;

/** What the engine finds out about the sources of a cut: sources by path, cut points by place among the pieces. */
export const cutFactsSchema = z.object({
  sources: z.record(z.string(), cutSourceSchema),
  points: z.array(cutPointsSchema),
});
export type CutFacts = z.infer<typeof cutFactsSchema>;

export const cutLoudnessSchema = z.object({
  /** Integrated loudness in LUFS; null for silence. */
  integratedLufs: z.number().nullable(),
  /** Highest true peak in dBTP; null for silence. */
  truePeakDbtp: z.number().nullable(),
});
export type CutLoudness = z.infer<typeof cutLoudnessSchema>;

/** What a fresh look at a written cut finds. */
export const cutInspectionSchema = z.object({
  sizeBytes: z.int(),
  durationMs: msSchema,
  streams: z.array(
    z.object({
      kind: z.enum(['picture', 'sound', 'chapters', 'other']),
      codec: z.string(),
      /** As shown, in pixels. */
      width: z.int().nullable(),
      height: z.int().nullable(),
      sampleRateHz: z.int().nullable(),
      channels: z.int().nullable(),
    }),
  ),
  chapters: z.array(cutChapterSchema),
  /** Tags that still stand in the file, but for what every file of its kind has (brand, track language, handler). */
  tags: z.record(z.string(), z.string()),
  hasPlaceTags: z.boolean(),
  hasDeviceTags: z.boolean(),
  loudness: cutLoudnessSchema.nullable(),
  /** How much later the sound begins and ends than the picture, in milliseconds; null without both. */
  soundStartsLaterMs: z.int().nullable(),
  soundEndsLaterMs: z.int().nullable(),
});
export type CutInspection = z.infer<typeof cutInspectionSchema>;

/** How far the writing is. */
export const cutProgressSchema = z.object({
  stage: z.enum(['looking', 'encoding', 'measuring', 'writing', 'closing']),
  /** Milliseconds of the film that this stage has done. */
  doneMs: msSchema,
  totalMs: msSchema,
});
export type CutProgress = z.infer<typeof cutProgressSchema>;

export const cutResultSchema = z.object({
  sizeBytes: z.int(),
  durationMs: msSchema,
  /** Where each piece really begins and ends, and when it begins in the cut. */
  pieces: z.array(z.object({ path: z.string(), fromMs: msSchema, toMs: msSchema, outMs: msSchema })),
  /** On the clock of the cut as it was written. */
  chapters: z.array(cutChapterSchema),
  picture: z.enum(['none', 'copied', 'mixed', 'encoded']),
  sound: z.enum(['none', 'copied', 'encoded']),
  /** Measured before levelling; null where nothing was to be levelled. */
  measured: cutLoudnessSchema.nullable(),
  /** Finished pieces of an earlier run that were used again. */
  reusedPieces: z.int(),
});
export type CutResult = z.infer<typeof cutResultSchema>;
