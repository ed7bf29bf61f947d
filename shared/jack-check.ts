import { z } from 'zod';
import { readingIdSchema } from './ids';
import {
  expectedReadingSchema,
  harnessCoilSchema,
  harnessPickupSchema,
  harnessSchema,
  jackJudgementSchema,
  jackSettingSchema,
} from './jack';

export const arrangementIds = ['one pickup', 'two shared', 'two of each', 'three shared'] as const;
export const arrangementIdSchema = z.enum(arrangementIds);
export type ArrangementId = z.infer<typeof arrangementIdSchema>;

const sketchedCoilSchema = harnessCoilSchema.extend({ ohms: harnessCoilSchema.shape.ohms.nullable() });
const sketchedPickupSchema = harnessPickupSchema.extend({ coils: z.array(sketchedCoilSchema) });
export type SketchedPickup = z.infer<typeof sketchedPickupSchema>;

/** A harness to begin from. Null where a coil has not been measured: nobody guesses it. */
export const harnessSketchSchema = harnessSchema.extend({ pickups: z.array(sketchedPickupSchema) });
export type HarnessSketch = z.infer<typeof harnessSketchSchema>;

/** The check at the jack of one job, thought through with the job's readings now. */
export const jackViewSchema = z.object({
  /** Null until it is described. */
  harness: harnessSchema.nullable(),
  expected: z.array(expectedReadingSchema),
  /** By the newest reading of each setting; null without a harness. */
  judgement: jackJudgementSchema.nullable(),
  /** Readings at the jack that this harness has no place for, and why. */
  passedOver: z.array(z.object({ reading: readingIdSchema, setting: jackSettingSchema, why: z.string() })),
  /** Pickups that the job has measured. */
  known: z.array(harnessPickupSchema),
  suggestion: harnessSketchSchema,
  cautions: z.array(z.string()),
});
export type JackView = z.infer<typeof jackViewSchema>;
