import { z } from 'zod';
import { changeIdSchema, jobIdSchema, partIdSchema, workItemIdSchema } from './ids';
import { momentSchema } from './moments';
import { basisSchema } from './readings';

export const origins = ['asked', 'offered', 'found'] as const;
export const charges = ['agreed', 'reduced', 'free'] as const;
export const workOutcomes = ['open', 'done', 'not done', 'declined'] as const;

/** Code of a currency by ISO 4217, such as EUR. */
export const currencySchema = z.string().regex(/^[A-Z]{3}$/, 'the three capitals of a currency, such as EUR');

const moment = momentSchema.nullable();
const why = z.string().trim().max(2000).nullable();

/** One thing asked for, offered or found, what it costs, and what became of it. */
export const workItemSchema = z.object({
  id: workItemIdSchema,
  jobId: jobIdSchema,
  what: z.string(),
  origin: z.enum(origins),
  /** Null while nothing was said about it. */
  charge: z.enum(charges).nullable(),
  /** In the smallest unit of `currency`; null where no price was agreed. */
  priceMinor: z.int().nullable(),
  currency: currencySchema.nullable(),
  outcome: z.enum(workOutcomes),
  /** Why it was not done, declined, reduced. */
  why: z.string().nullable(),
  /** Where it was asked for, offered or found on film. */
  begun: moment,
  /** Where it was done or declined on film. */
  ended: moment,
  createdAt: z.int(),
});
export type WorkItem = z.infer<typeof workItemSchema>;

const itemFields = {
  what: z.string().trim().min(1).max(300),
  origin: z.enum(origins),
  charge: z.enum(charges).nullable(),
  priceMinor: z.int().min(0).max(1_000_000_000).nullable(),
  currency: currencySchema.nullable(),
  outcome: z.enum(workOutcomes),
  why,
  begun: moment,
  ended: moment,
};
export const newWorkItemSchema = z.strictObject({
  ...itemFields,
  origin: itemFields.origin.default('asked'),
  charge: itemFields.charge.default(null),
  priceMinor: itemFields.priceMinor.default(null),
  currency: itemFields.currency.default(null),
  outcome: itemFields.outcome.default('open'),
  why: why.default(null),
  begun: moment.default(null),
  ended: moment.default(null),
});
export type NewWorkItem = z.input<typeof newWorkItemSchema>;
export type NewWorkItemRead = z.infer<typeof newWorkItemSchema>;

const itemPatchFields = z.strictObject(itemFields).partial();
/** `was`: what stood there when it was changed; the change is refused where something else stands there now. */
export const workItemPatchSchema = itemPatchFields.extend({ was: itemPatchFields.optional() });
export type WorkItemPatch = z.infer<typeof workItemPatchSchema>;

export const deeds = ['fitted', 'removed', 'reused'] as const;
export const partSources = ['stock', 'client', 'instrument'] as const;
export const oldPartFates = ['returned', 'kept'] as const;

/** A part that went in, came out or went back in. */
export const partSchema = z.object({
  id: partIdSchema,
  jobId: jobIdSchema,
  what: z.string(),
  deed: z.enum(deeds),
  /** From stock, supplied by the client, or out of the instrument itself. */
  source: z.enum(partSources).nullable(),
  /** What became of a removed part. */
  fate: z.enum(oldPartFates).nullable(),
  /** What is in doubt about its origin. */
  doubt: z.string().nullable(),
  doubtBasis: basisSchema.nullable(),
  /** The words that the doubt rests on; the moment shows it. */
  evidence: z.string().nullable(),
  moment,
  createdAt: z.int(),
});
export type Part = z.infer<typeof partSchema>;

const partFields = {
  what: z.string().trim().min(1).max(300),
  deed: z.enum(deeds),
  source: z.enum(partSources).nullable(),
  fate: z.enum(oldPartFates).nullable(),
  doubt: z.string().trim().max(1000).nullable(),
  doubtBasis: basisSchema.nullable(),
  evidence: z.string().trim().max(2000).nullable(),
  moment,
};
export const newPartSchema = z.strictObject({
  ...partFields,
  source: partFields.source.default(null),
  fate: partFields.fate.default(null),
  doubt: partFields.doubt.default(null),
  doubtBasis: partFields.doubtBasis.default(null),
  evidence: partFields.evidence.default(null),
  moment: moment.default(null),
});
export type NewPart = z.input<typeof newPartSchema>;

const partPatchFields = z.strictObject(partFields).partial();
export const partPatchSchema = partPatchFields.extend({ was: partPatchFields.optional() });
export type PartPatch = z.infer<typeof partPatchSchema>;

export const workOfJobSchema = z.object({ items: z.array(workItemSchema), parts: z.array(partSchema) });
export const workItemChangedSchema = z.object({ change: changeIdSchema, item: workItemSchema });
export const partChangedSchema = z.object({ change: changeIdSchema, part: partSchema });
