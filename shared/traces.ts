import { z } from 'zod';
import { jobIdSchema, outcomeIdSchema, takeIdSchema, traceIdSchema } from './ids';
import { takeMsSchema } from './markers';
import {
  assumedCoilSchema,
  planKinds,
  planLineSchema,
  planSchema,
  totalCheckSchema,
  traceAnalysisSchema,
  wiringOutcomeSchema,
} from './wiring';

const conductorsSchema = z.array(z.string().trim().min(1).max(60)).min(1).max(6);
const rowsSchema = z.array(z.string().trim().min(1).max(24)).min(1).max(2);

/** The worksheet of one pickup, as it is kept. Its readings are the job's own. */
export const worksheetSchema = z.object({
  id: traceIdSchema,
  jobId: jobIdSchema,
  subject: z.string(),
  conductors: conductorsSchema,
  shield: z.boolean(),
  frame: z.boolean(),
  rows: rowsSchema,
  assumed: z.array(assumedCoilSchema),
  /** The plan chosen for joining; totals are held against it. */
  planId: z.string().nullable(),
});
export type WorksheetRecord = z.infer<typeof worksheetSchema>;

const fields = {
  subject: z.string().trim().min(1).max(120),
  conductors: conductorsSchema,
  shield: z.boolean(),
  frame: z.boolean(),
  rows: rowsSchema,
};
export const newTraceSchema = z.strictObject({
  ...fields,
  shield: fields.shield.default(true),
  frame: fields.frame.default(false),
  rows: fields.rows.default(['slug', 'screw']),
  /** Take the roles over from another trace, as assumed. */
  from: traceIdSchema.optional(),
});
export type NewTrace = z.infer<typeof newTraceSchema>;

export const tracePatchSchema = z
  .strictObject({ ...fields, planId: z.string().max(200).nullable() })
  .partial();
export type TracePatch = z.infer<typeof tracePatchSchema>;

/** What was really joined, and the moment of the joint. */
export const outcomeRecordSchema = z.object({
  id: outcomeIdSchema,
  traceId: traceIdSchema,
  takeId: takeIdSchema.nullable(),
  ms: takeMsSchema.nullable(),
  outcome: wiringOutcomeSchema,
});
export type OutcomeRecord = z.infer<typeof outcomeRecordSchema>;

export const newOutcomeSchema = z.strictObject({
  planId: z.string().min(1).max(200),
  /** Where it differs from the plan. */
  lines: z.array(planLineSchema).max(20).optional(),
  takeId: takeIdSchema.nullable().default(null),
  ms: takeMsSchema.nullable().default(null),
});
export type NewOutcome = z.infer<typeof newOutcomeSchema>;

/** A trace thought through: what follows, what to measure next, how it can be wired, whether the total fits. */
export const traceViewSchema = z.object({
  worksheet: worksheetSchema,
  analysis: traceAnalysisSchema,
  plans: z.array(planSchema),
  unavailable: z.array(z.object({ kind: z.enum(planKinds), why: z.string() })),
  /** The newest total against the chosen plan; null without either. */
  check: totalCheckSchema.nullable(),
  outcomes: z.array(outcomeRecordSchema),
});
export type TraceView = z.infer<typeof traceViewSchema>;
