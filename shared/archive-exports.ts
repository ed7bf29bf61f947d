import { z } from 'zod';
import { filterFields, hasKindOfRange, rangeRule } from './archive';
import { findingSchema } from './cut';
import { daySchema } from './days';
import { jobIdSchema } from './ids';
import { markerKindSchema } from './markers';
import { basisSchema, readingKindIdSchema, unitIdSchema } from './readings';
import { planLineSchema } from './wiring';

/** Numbers of tickets, parted by commas. */
const ticketsSchema = z
  .string()
  .regex(/^(\d{1,9}(,\d{1,9})*)?$/)
  .max(8000)
  .default('')
  .transform((text) => text.split(',').filter(Boolean).map(Number));

const chosen = {
  ...filterFields,
  /** Jobs that are left out by hand. */
  without: ticketsSchema,
};

/** The part of the archive that is to go out. */
export const giveOutQuerySchema = z.strictObject(chosen).refine(hasKindOfRange, rangeRule);
export type GiveOutQuery = z.infer<typeof giveOutQuerySchema>;

export const exportTables = ['moments', 'readings', 'conductors'] as const;
export const exportTableSchema = z.enum(exportTables);
export type ExportTable = z.infer<typeof exportTableSchema>;
/** `public`: what may be seen by anybody. `everything`: for the bench itself, with names and all. */
export const exportScopeSchema = z.enum(['public', 'everything']).default('public');
export type ExportScope = z.infer<typeof exportScopeSchema>;

/** `made`: the day that stands on the pages; today where it is not given. */
export const pagesQuerySchema = z
  .strictObject({ ...chosen, made: daySchema.optional() })
  .refine(hasKindOfRange, rangeRule);
export const jsonQuerySchema = z
  .strictObject({ ...chosen, scope: exportScopeSchema })
  .refine(hasKindOfRange, rangeRule);
export const csvQuerySchema = z
  .strictObject({ ...chosen, scope: exportScopeSchema, which: exportTableSchema })
  .refine(hasKindOfRange, rangeRule);

/** Time on the published film in milliseconds; null for what is not pinned to it, or not shown. */
const atMsSchema = z.int().nonnegative().nullable();

/** A job as anybody may see it. */
export const publicJobSchema = z.object({
  number: z.int(),
  title: z.string(),
  day: z.string(),
  instrument: z.object({ type: z.string(), maker: z.string().nullable(), model: z.string().nullable() }),
  chapters: z.array(
    z.object({ atMs: atMsSchema, kind: markerKindSchema, title: z.string(), note: z.string().nullable() }),
  ),
  readings: z.array(
    z.object({
      atMs: atMsSchema,
      kind: readingKindIdSchema,
      subject: z.string(),
      /** Terminals, string, fret: where it was taken. */
      place: z.string(),
      between: z.tuple([z.string(), z.string()]).nullable(),
      /** As it is said, with its uncertainty where it is known. */
      value: z.string(),
      /** The digits as the meter showed them, in `unit`; null where it was open. */
      digits: z.string().nullable(),
      unit: unitIdSchema,
      open: z.boolean(),
      baseValue: z.number().nullable(),
      basis: basisSchema,
      note: z.string().nullable(),
    }),
  ),
  traces: z.array(
    z.object({
      subject: z.string(),
      conductors: z.array(z.string()),
      shield: z.boolean(),
      follows: z.array(z.object({ text: z.string(), basis: basisSchema })),
      joined: z.array(
        z.object({ atMs: atMsSchema, title: z.string(), basis: basisSchema, lines: z.array(planLineSchema) }),
      ),
    }),
  ),
  done: z.array(z.object({ atMs: atMsSchema, what: z.string() })),
});
export type PublicJob = z.infer<typeof publicJobSchema>;

export const publicArchiveFormat = 'benchtake public archive';
/** `archive.json`. */
export const publicArchiveSchema = z.object({
  format: z.literal(publicArchiveFormat),
  version: z.literal(1),
  jobs: z.array(publicJobSchema),
});

/** What would go out, and what stands in the way of it. */
export const giveOutPreviewSchema = z.object({
  counts: z.object({
    jobs: z.int(),
    chapters: z.int(),
    readings: z.int(),
    traces: z.int(),
    /** Left out because something private would go public. */
    inTheWay: z.int(),
    /** Left out by hand. */
    leftOut: z.int(),
  }),
  /** Instrument types in the whole archive, the commonest first. */
  instruments: z.array(z.object({ value: z.string(), count: z.int() })),
  /** Kinds of reading in it, with how many jobs hold one, and the lowest and the highest in the base unit. */
  readings: z.array(
    z.object({ kind: readingKindIdSchema, count: z.int(), low: z.number(), high: z.number() }),
  ),
  /** The jobs that fit, the newest first. */
  jobs: z.array(
    z.object({
      id: jobIdSchema,
      number: z.int(),
      title: z.string(),
      instrument: z.string(),
      day: z.string(),
      state: z.enum(['goes out', 'in the way', 'left out']),
      findings: z.array(findingSchema),
    }),
  ),
});
export type GiveOutPreview = z.infer<typeof giveOutPreviewSchema>;
export type GiveOutJob = GiveOutPreview['jobs'][number];
