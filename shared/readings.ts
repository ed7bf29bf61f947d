import { z } from 'zod';
import { jobIdSchema, meterIdSchema, readingIdSchema, takeIdSchema } from './ids';
import { jackSettingSchema } from './jack';
import { takeMsSchema } from './markers';

export const bases = ['measured', 'implied', 'assumed', 'stated'] as const;
/** How a thing is known. */
export const basisSchema = z.enum(bases);
export type Basis = z.infer<typeof basisSchema>;

export const readingKindIds = [
  'resistance',
  'polarity-kick',
  'inductance',
  'capacitance',
  'voltage',
  'current',
  'string-height',
  'relief',
  'nut-slot-depth',
  'fret-height',
  'intonation',
  'pickup-height',
  'pitch',
  'humidity',
  'temperature',
  'length',
  'mass',
  'string-tension',
  'plate-voltage',
  'bias-current',
] as const;
export const readingKindIdSchema = z.enum(readingKindIds);
export type ReadingKindId = z.infer<typeof readingKindIdSchema>;

export const unitIds = [
  ...(['Ω', 'kΩ', 'MΩ', 'mV', 'V', 'µA', 'mA', 'A', 'pF', 'nF', 'µF', 'F', 'mH', 'H'] as const),
  ...([
    'mm',
    'cm',
    'm',
    'in',
    'thou',
    '64ths',
    'cents',
    'Hz',
    'kHz',
    '°C',
    '°F',
    '%RH',
    'g',
    'kg',
    'oz',
    'lb',
    'N',
    'lbf',
    'kick',
  ] as const),
] as const;
export const unitIdSchema = z.enum(unitIds);
export type UnitId = z.infer<typeof unitIdSchema>;

/** The digits as the meter showed them: 4.08, .010, -3, 6 (of 64ths). */
export const digitsSchema = z
  .string()
  .regex(/^[-+−]?(\d+([.,]\d*)?|[.,]\d+)$/, 'digits as the meter shows them, such as 4.08');

/** Accuracy of one range of a meter: ± (percent of the reading + counts of the last digit). */
export const meterRangeSchema = z.strictObject({
  unit: unitIdSchema,
  /** The largest value that the range shows, in `unit`. */
  fullScale: z.number().positive(),
  /** One count of the last digit, in `unit`. */
  resolution: z.number().positive(),
  percent: z.number().nonnegative(),
  counts: z.number().nonnegative(),
});
export type MeterRange = z.infer<typeof meterRangeSchema>;

export const meterSchema = z.object({
  id: meterIdSchema,
  name: z.string(),
  ranges: z.array(meterRangeSchema),
});
export type Meter = z.infer<typeof meterSchema>;
export const newMeterSchema = z.strictObject({
  name: z.string().trim().min(1).max(100),
  ranges: z.array(meterRangeSchema).max(40),
});
export type NewMeter = z.infer<typeof newMeterSchema>;

const word = z.string().trim().min(1).max(60);

/** What some kinds need beside their value. */
export const readingDetailsSchema = z.strictObject({
  /** Which string: "low E", "3rd". */
  string: word.optional(),
  fret: z.int().min(0).max(40).optional(),
  side: z.enum(['bass', 'treble']).optional(),
  testFrequencyHz: z.number().positive().optional(),
  /** A kick: the conductor that each lead of the meter was on. */
  leads: z.strictObject({ red: word, black: word }).optional(),
  steel: z.enum(['laid on', 'taken off']).optional(),
  row: word.optional(),
  sign: z.union([z.literal(1), z.literal(-1)]).optional(),
  size: z.enum(['large', 'small']).optional(),
  /** The temperature of the thing measured, where a copper coil is to be compared at one temperature. */
  celsius: z.number().min(-60).max(120).optional(),
  /** At the output jack: how the instrument stood. */
  jack: jackSettingSchema.optional(),
});
export type ReadingDetails = z.infer<typeof readingDetailsSchema>;

const betweenSchema = z
  .tuple([word, word])
  .refine(([a, b]) => a.toLowerCase() !== b.toLowerCase(), 'a reading lies between two different terminals');

/** A reading as it is kept. The value stands as it was read, with its base value beside it. */
export const readingSchema = z.object({
  id: readingIdSchema,
  jobId: jobIdSchema,
  takeId: takeIdSchema.nullable(),
  ms: takeMsSchema.nullable(),
  kind: readingKindIdSchema,
  /** Over range: the meter showed open. */
  open: z.boolean(),
  valueText: z.string().nullable(),
  unit: unitIdSchema,
  /** In the base unit of the kind; null when open. */
  baseValue: z.number().nullable(),
  subject: z.string(),
  between: z.tuple([z.string(), z.string()]).nullable(),
  basis: basisSchema,
  meterId: meterIdSchema.nullable(),
  details: readingDetailsSchema,
  note: z.string().nullable(),
});
export type Reading = z.infer<typeof readingSchema>;

const place = { takeId: takeIdSchema.nullable().optional(), ms: takeMsSchema.nullable().optional() };

const fields = {
  kind: readingKindIdSchema,
  value: z.union([digitsSchema, z.number()]).optional(),
  open: z.boolean().optional(),
  unit: unitIdSchema.optional(),
  subject: z.string().trim().max(120).optional(),
  between: betweenSchema.nullable().optional(),
  ...place,
  basis: basisSchema.optional(),
  meterId: meterIdSchema.nullable().optional(),
  details: readingDetailsSchema.optional(),
  note: z.string().trim().max(10_000).nullable().optional(),
};

const both = (r: { takeId?: unknown; ms?: unknown }) => (r.takeId == null) === (r.ms == null);
const bothRule = { path: ['ms'], message: 'a moment is a take and a time in it: give both or neither' };

export const newReadingSchema = z.strictObject(fields).refine(both, bothRule);
export type NewReading = z.infer<typeof newReadingSchema>;

export const readingPatchSchema = z.strictObject(fields).partial().refine(both, bothRule);
export type ReadingPatch = z.infer<typeof readingPatchSchema>;

/** One typed line; what it leaves open is asked back. */
export const quickReadingSchema = z
  .strictObject({
    text: z.string().trim().min(1).max(300),
    ...place,
    basis: basisSchema.optional(),
    meterId: meterIdSchema.nullable().optional(),
  })
  .refine(both, bothRule);
export type QuickReading = z.infer<typeof quickReadingSchema>;
