import { z } from 'zod';
import { cutInspectionSchema, cutResultSchema } from './cut-engine';
import { changeIdSchema, jobIdSchema, madeCutIdSchema, takeIdSchema } from './ids';
import { tyingPlaceSchema } from './loose-ends';
import { takeMsSchema } from './markers';
import { taskSchema } from './tasks';

const span = { takeId: takeIdSchema, fromMs: takeMsSchema, toMs: takeMsSchema };
const endsLater = ({ fromMs, toMs }: { fromMs: number; toMs: number }) => toMs > fromMs;
const endRule = { path: ['toMs'], message: 'it ends after it begins' };

/** A part of a take, in take time; the end is the first moment that no longer belongs to it. */
export const takeSpanSchema = z.strictObject(span).refine(endsLater, endRule);
export type TakeSpan = z.infer<typeof takeSpanSchema>;

const share = z.number().min(0).max(1);
/** A region of the picture as it is shown, in parts of its width and height, for a span of time. */
export const coverSchema = z
  .strictObject({ ...span, x: share, y: share, width: share, height: share })
  .refine(endsLater, endRule)
  .refine(({ x, y, width, height }) => width > 0 && height > 0 && x + width <= 1 && y + height <= 1, {
    path: ['width'],
    message: 'it lies within the picture',
  });
export type Cover = z.infer<typeof coverSchema>;

/** How the public cut of a job is to be made. */
export const cutSettingsSchema = z.strictObject({
  /** Parts that are left out. */
  cutAway: z.array(takeSpanSchema).max(2000).default([]),
  /** Spans muted by hand, beside the private words that were accepted. */
  muted: z.array(takeSpanSchema).max(2000).default([]),
  covers: z.array(coverSchema).max(500).default([]),
  /** Added before and after each private word that was heard: its time within a caption is reckoned, not measured. */
  widenMs: z.int().min(0).max(5000).default(0),
  muteWith: z.enum(['silence', 'tone']).default('silence'),
  cutting: z.enum(['key-frames', 'exact']).default('key-frames'),
  /** Integrated loudness to level to, in LUFS (ITU-R BS.1770); null leaves it. */
  lufs: z.number().min(-40).max(-8).nullable().default(null),
  format: z.enum(['mp4', 'mkv']).default('mp4'),
});
export type CutSettings = z.infer<typeof cutSettingsSchema>;

const patchFields = z
  .strictObject({
    cutAway: z.array(takeSpanSchema).max(2000),
    muted: z.array(takeSpanSchema).max(2000),
    covers: z.array(coverSchema).max(500),
    widenMs: z.int().min(0).max(5000),
    muteWith: z.enum(['silence', 'tone']),
    cutting: z.enum(['key-frames', 'exact']),
    lufs: z.number().min(-40).max(-8).nullable(),
    format: z.enum(['mp4', 'mkv']),
  })
  .partial();
/** `was`: what stood there when it was changed; the change is refused where something else stands there now. */
export const cutPatchSchema = patchFields.extend({ was: patchFields.optional() });
export type CutPatch = z.infer<typeof cutPatchSchema>;

export const publicDocuments = ['chapters', 'notes', 'cut'] as const;
export type PublicDocument = (typeof publicDocuments)[number];

/** Something private that would go public. Each has to be decided before the public cut may be made. */
export const findingSchema = z.object({
  /** The same finding has the same id as long as its words stand. */
  id: z.string(),
  /** Spoken, or written in a public text. */
  what: z.enum(['spoken', 'written']),
  /** The private words, and where they stand, in a sentence. */
  words: z.string(),
  sentence: z.string(),
  documents: z.array(z.enum(publicDocuments)),
  place: tyingPlaceSchema,
  /** `held back`: muted in the cut. `allowed`: goes public on purpose. */
  decision: z.enum(['open', 'held back', 'allowed']),
});
export type Finding = z.infer<typeof findingSchema>;
export const findingsSchema = z.object({ findings: z.array(findingSchema) });
/** Written words cannot be held back but by writing other ones. */
export const decideFindingSchema = z.strictObject({
  id: z.string().max(300),
  decision: z.enum(['open', 'held back', 'allowed']),
});

/** A public cut that was made. */
export const madeCutSchema = z.object({
  id: madeCutIdSchema,
  jobId: jobIdSchema,
  /** Where it lies on the bench machine. */
  path: z.string(),
  /** Whether it still lies there. */
  present: z.boolean(),
  result: cutResultSchema,
  /** What a fresh look at the written file found. */
  inspection: cutInspectionSchema,
  createdAt: z.int(),
});
export type MadeCut = z.infer<typeof madeCutSchema>;

/** A piece of the cut as it will be made. */
export const plannedCutPieceSchema = z.object({
  takeId: takeIdSchema,
  fromMs: z.int(),
  toMs: z.int(),
  outMs: z.int(),
  startMovedMs: z.int(),
  endMovedMs: z.int(),
  how: z.enum(['copied', 'partly copied', 'encoded', 'no picture']),
});
export const cutForecastSchema = z.object({
  pieces: z.array(plannedCutPieceSchema),
  durationMs: z.int(),
  picture: z.enum(['none', 'copied', 'mixed', 'encoded']),
  sound: z.enum(['none', 'copied', 'encoded']),
});
export type CutForecast = z.infer<typeof cutForecastSchema>;

export const cutViewSchema = z.object({
  settings: cutSettingsSchema,
  /** How long the published film is. */
  durationMs: z.int(),
  /** Silences and camera stops that a rough cut can start from, as parts to leave out. */
  roughCut: z.array(takeSpanSchema),
  findings: z.array(findingSchema),
  made: z.array(madeCutSchema),
  /** The cut under way. */
  task: taskSchema.nullable(),
});
export type CutView = z.infer<typeof cutViewSchema>;
export const cutChangedSchema = z.object({ change: changeIdSchema, cut: cutViewSchema });
