import { z } from 'zod';
import { jobIdSchema, readingIdSchema, traceIdSchema } from './ids';
import { momentSchema } from './moments';
import { basisSchema, readingKindIdSchema } from './readings';
import { wiringBasisSchema } from './wiring';

/** How a table of the reference is given out. */
export const referenceFormatSchema = z.enum(['json', 'csv']).default('json');

const words = (longest: number) =>
  z
    .string()
    .default('')
    .transform((text) => text.trim().slice(0, longest));
const pageFields = {
  instrument: words(60),
  as: referenceFormatSchema,
  limit: z.coerce.number().int().min(1).max(1000).default(25),
};

/** A job as a line of the reference names it. */
export const referenceJobSchema = z.object({
  id: jobIdSchema,
  number: z.int(),
  title: z.string(),
  instrument: z.string(),
  day: z.string(),
});
export type ReferenceJob = z.infer<typeof referenceJobSchema>;

const countedSchema = z.array(z.object({ value: z.string(), count: z.int() }));

// Pickups traced

export const pickupsQuerySchema = z.strictObject({
  ...pageFields,
  /** Colours in the hand: "red white green black bare", letter codes, any order. */
  colours: words(300),
  /** The first is 1. */
  page: z.coerce.number().int().min(1).max(10_000).default(1),
});
export type PickupsQuery = z.infer<typeof pickupsQuerySchema>;

/** One conductor end of a coil, with every conductor that is the same point. */
const coilEndSchema = z.object({ names: z.array(z.string()), isPositive: z.boolean() });
export const tracedCoilSchema = z.object({
  /** The row of poles it sits on; null where that is not known. */
  row: z.string().nullable(),
  ends: z.tuple([coilEndSchema, coilEndSchema]),
  ohms: z.number().nullable(),
  /** The weakest of how its ends, its row and its positive end are known. */
  basis: wiringBasisSchema,
});
export type TracedCoil = z.infer<typeof tracedCoilSchema>;

/** How the conductors of a cable and those that were asked for go together. */
export const cableLikenessSchema = z.enum(['same', 'more', 'fewer']);
export type CableLikeness = z.infer<typeof cableLikenessSchema>;

export const tracedPickupSchema = z.object({
  trace: traceIdSchema,
  job: referenceJobSchema,
  subject: z.string(),
  conductors: z.array(z.object({ name: z.string(), code: z.string() })),
  shield: z.boolean(),
  frame: z.boolean(),
  coils: z.array(tracedCoilSchema),
  totalOhms: z.number().nullable(),
  /** What was joined last, and how that is known. */
  joined: z.object({ title: z.string(), basis: wiringBasisSchema }).nullable(),
  /** What the record says of maker and model, each with how it is known. */
  said: z.array(z.object({ text: z.string(), basis: basisSchema })),
  /** The weakest basis of all coils; null where nothing is known of any. */
  basis: wiringBasisSchema.nullable(),
  /** Nothing left to measure and nothing that contradicts. */
  complete: z.boolean(),
  /** Why the worksheet cannot be thought through. */
  problem: z.string().nullable(),
  moment: momentSchema.nullable(),
  /** Null where no colours were asked for. */
  likeness: cableLikenessSchema.nullable(),
});
export type TracedPickup = z.infer<typeof tracedPickupSchema>;

const basisCountsSchema = z.object({
  measured: z.int(),
  implied: z.int(),
  assumed: z.int(),
  stated: z.int(),
});
export type BasisCounts = z.infer<typeof basisCountsSchema>;

/** What cables with the same colours turned out to be, and how often. */
export const assignmentSchema = z.object({
  coils: z.array(tracedCoilSchema.omit({ ohms: true, basis: true })),
  counts: basisCountsSchema,
  traces: z.array(z.object({ trace: traceIdSchema, job: referenceJobSchema })),
});
export type Assignment = z.infer<typeof assignmentSchema>;

/** Of one conductor: which end of which coil, among those that were measured or follow from it. */
export const conductorUseSchema = z.object({
  name: z.string(),
  code: z.string(),
  uses: z.array(z.object({ end: z.string(), count: z.int() })),
});
export type ConductorUse = z.infer<typeof conductorUseSchema>;

export const coloursAskedSchema = z.object({
  conductors: z.array(z.object({ name: z.string(), code: z.string() })),
  shield: z.boolean(),
  /** Short letters that could mean several colours, and what they were taken for. */
  taken: z.array(z.object({ said: z.string(), means: z.string() })),
  /** What is no colour. */
  unknown: z.array(z.string()),
});
export type ColoursAsked = z.infer<typeof coloursAskedSchema>;

export const pickupsAnswerSchema = z.object({
  asked: coloursAskedSchema.nullable(),
  /** Cables with the very same colours; null where none were asked for. */
  same: z
    .object({
      count: z.int(),
      /** The newest of them, which the groups are made of. */
      lookedAt: z.int(),
      assignments: z.array(assignmentSchema),
      conductors: z.array(conductorUseSchema),
      /** Cables of these colours that were not worked out. */
      open: z.int(),
    })
    .nullable(),
  pickups: z.array(tracedPickupSchema),
  count: z.int(),
  page: z.int(),
  pages: z.int(),
  instruments: countedSchema,
});
export type PickupsAnswer = z.infer<typeof pickupsAnswerSchema>;

// Readings

export const readingsQuerySchema = z.strictObject({
  ...pageFields,
  kind: z.union([readingKindIdSchema, z.literal('')]).default(''),
  /** What was measured, as the table names it: "neck pickup". */
  place: words(200),
  /** A reading to be seen against the earlier ones, as it would be noted: "neck 7.2k". */
  reading: words(300),
});
export type ReadingsQuery = z.infer<typeof readingsQuerySchema>;

/** The spread of one kind of reading at one place on one type of instrument, in the kind's base unit. */
export const spreadSchema = z.object({
  /** Measured values. */
  n: z.int(),
  min: z.number().nullable(),
  /** Null with fewer than five. */
  quartiles: z.object({ lower: z.number(), median: z.number(), upper: z.number() }).nullable(),
  max: z.number().nullable(),
  /** All of them, smallest first, where there are fewer than five. */
  few: z.array(z.number()),
  /** Measured, and over range. */
  open: z.int(),
  /** Not measured: implied, assumed or stated. In none of the figures. */
  notMeasured: z.int(),
});
export type Spread = z.infer<typeof spreadSchema>;

export const readingGroupSchema = spreadSchema.extend({ instrument: z.string(), place: z.string() });
export type ReadingGroup = z.infer<typeof readingGroupSchema>;

/** Where a value stands among earlier ones. */
export const standingSchema = z.object({
  value: z.number(),
  n: z.int(),
  below: z.int(),
  equal: z.int(),
  above: z.int(),
  /** Whether there are enough of them to judge. */
  isEnough: z.boolean(),
  sentence: z.string(),
});
export type Standing = z.infer<typeof standingSchema>;

export const readingsAnswerSchema = z.object({
  kinds: z.array(z.object({ kind: readingKindIdSchema, label: z.string(), count: z.int() })),
  instruments: countedSchema,
  kind: readingKindIdSchema.nullable(),
  groups: z.array(readingGroupSchema),
  /** Groups beyond the limit: the ones with the fewest readings. */
  left: z.int(),
  /** What was typed against what was measured before; or what has to be said more clearly. */
  standing: z
    .object({ said: z.string(), instrument: z.string(), place: z.string(), is: standingSchema })
    .nullable(),
  unclear: z.string().nullable(),
  /** The place that was chosen: its newest readings. */
  chosen: z
    .object({
      place: z.string(),
      count: z.int(),
      readings: z.array(
        z.object({
          id: readingIdSchema,
          job: referenceJobSchema,
          said: z.string(),
          value: z.number().nullable(),
          moment: momentSchema.nullable(),
        }),
      ),
    })
    .nullable(),
});
export type ReadingsAnswer = z.infer<typeof readingsAnswerSchema>;

// Faults and fixes

export const faultsQuerySchema = z.strictObject({
  ...pageFields,
  /** A fault by its word in the archive. */
  fault: words(80),
});
export type FaultsQuery = z.infer<typeof faultsQuerySchema>;

const placeFoundSchema = z.object({
  job: referenceJobSchema,
  said: z.string(),
  moment: momentSchema.nullable(),
});
export type PlaceFound = z.infer<typeof placeFoundSchema>;

export const faultSchema = z.object({
  instrument: z.string(),
  /** The archive's word for it, and the way it is written most often. */
  word: z.string(),
  said: z.string(),
  jobs: z.int(),
  found: z.array(placeFoundSchema),
  cures: z.array(
    z.object({
      word: z.string(),
      said: z.string(),
      jobs: z.int(),
      moments: z.array(placeFoundSchema),
    }),
  ),
  /** Jobs with a moment marked as the result. */
  shown: z.int(),
  /** Jobs in which no work was noted that could be told to belong to it. */
  without: z.int(),
});
export type Fault = z.infer<typeof faultSchema>;

export const faultsAnswerSchema = z.object({
  instruments: countedSchema,
  jobs: z.int(),
  faults: z.array(faultSchema),
  left: z.int(),
});
export type FaultsAnswer = z.infer<typeof faultsAnswerSchema>;
