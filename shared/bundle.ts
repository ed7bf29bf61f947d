import { z } from 'zod';
import { claimKindSchema, sureness } from './claims';
import { clientSchema } from './clients';
import { cutSettingsSchema } from './cut';
import { daySchema } from './days';
import {
  claimIdSchema,
  clientIdSchema,
  instrumentIdSchema,
  jobIdSchema,
  markerIdSchema,
  meterIdSchema,
  narrationLineIdSchema,
  outcomeIdSchema,
  partIdSchema,
  proposalIdSchema,
  readingIdSchema,
  takeIdSchema,
  traceIdSchema,
  workItemIdSchema,
} from './ids';
import { instrumentTypeSchema } from './instruments';
import { harnessSchema } from './jack';
import { jobSchema, jobStateSchema } from './jobs';
import { readyLookSchema } from './loose-ends';
import { markerKindSchema, takeMsSchema, titleSchema } from './markers';
import { fingerprintSchema, probeSchema } from './media';
import { momentSchema } from './moments';
import { heardProposalSchema } from './narration';
import { decisions } from './narration-record';
import { keptNotesSchema, videoAddressSchema } from './notes';
import {
  basisSchema,
  meterRangeSchema,
  readingDetailsSchema,
  readingKindIdSchema,
  unitIdSchema,
} from './readings';
import { keptSummarySchema } from './summary';
import { assumedCoilSchema, wiringOutcomeSchema } from './wiring';
import { charges, currencySchema, deeds, oldPartFates, origins, partSources, workOutcomes } from './work';

/**
 * The record of a job bundle, `record.json`. It holds a job whole, private things too: it is for the repairer.
 * Ids are opaque, tie the parts of one record together and get new ones where the bundle is brought in. Rows stand
 * in the order they were made. `…At` is milliseconds since 1970-01-01T00:00Z, `…Ms` take time, days are ISO 8601.
 */
export const bundleFormat = 'benchtake job';
/** Raised when a field changes its meaning or a new one must not be passed over. */
export const bundleVersion = 1;

const at = z.int();
const moment = momentSchema.nullable();
const name = z.string().max(200).nullable();
/** Room for what a person may write and what the program puts before it. */
const text = z.string().max(40_000).nullable();
const tuple = z.tuple([z.string().max(120), z.string().max(120)]);

const jobPartSchema = z.strictObject({
  id: jobIdSchema,
  /** On the ticket it was; it gets the next free one where it is brought in. */
  number: z.int(),
  title: titleSchema,
  clientId: clientIdSchema.nullable(),
  instrumentId: instrumentIdSchema,
  state: jobStateSchema,
  receivedOn: daySchema.nullable(),
  promisedOn: daySchema.nullable(),
  collectedOn: daySchema.nullable(),
  place: name,
  cameWith: z.array(z.string().max(200)).max(100),
  readyLook: readyLookSchema.nullable(),
  createdAt: at,
});

/** Private. The client of the job, and the owner of the instrument where that is somebody else. */
const clientPartSchema = clientSchema
  .extend({ name: z.string().min(1).max(200), alias: z.string().min(1).max(200), reach: text, notes: text })
  .extend({ createdAt: at })
  .strict();

const instrumentPartSchema = z.strictObject({
  id: instrumentIdSchema,
  type: instrumentTypeSchema,
  maker: name,
  model: name,
  serial: name,
  features: text,
  clientId: clientIdSchema.nullable(),
  createdAt: at,
});

const claimPartSchema = z.strictObject({
  id: claimIdSchema,
  /** Whether it came up in this job. */
  ofJob: z.boolean(),
  kind: claimKindSchema,
  subject: name,
  value: z.string().min(1).max(300),
  basis: basisSchema,
  evidence: text,
  moment,
  readingId: readingIdSchema.nullable(),
  sure: z.enum(sureness),
  createdAt: at,
});

const meterPartSchema = z.strictObject({
  id: meterIdSchema,
  name: z.string().min(1).max(100),
  ranges: z.array(meterRangeSchema).max(40),
  createdAt: at,
});

/** The file that a take points at: enough to know it again wherever it lies. */
const recordingPartSchema = z.strictObject({
  name: z.string().min(1).max(255),
  sizeBytes: z.int().nonnegative(),
  modifiedAt: at,
  /** Minutes that the camera's clock was set right by. */
  clockOffsetMinutes: z
    .int()
    .min(-14 * 60)
    .max(14 * 60),
  fingerprint: fingerprintSchema.extend({ sha256: z.string().regex(/^[0-9a-f]{64}$/) }).nullable(),
  probe: probeSchema.nullable(),
  /** Its place in this bundle, below `recordings/`; null where it is not in it. */
  file: z.string().max(400).nullable(),
});

const takePartSchema = z.strictObject({
  id: takeIdSchema,
  /** Place in the film given by hand; null while the film follows the camera clock. */
  position: z.int().min(0).max(1_000_000).nullable(),
  trimStartMs: takeMsSchema,
  trimEndMs: takeMsSchema.nullable(),
  /** All that is pinned to the take lies within this: its length, or more where something stands behind its end. */
  reachMs: takeMsSchema,
  createdAt: at,
  recording: recordingPartSchema,
});

const markerPartSchema = z.strictObject({
  id: markerIdSchema,
  takeId: takeIdSchema,
  kind: markerKindSchema,
  title: titleSchema,
  note: text,
  ms: takeMsSchema,
  endMs: takeMsSchema.nullable(),
  public: z.boolean(),
  createdAt: at,
});

const readingPartSchema = z.strictObject({
  id: readingIdSchema,
  takeId: takeIdSchema.nullable(),
  ms: takeMsSchema.nullable(),
  kind: readingKindIdSchema,
  open: z.boolean(),
  /** The digits as the meter showed them; null when open. */
  valueText: z.string().max(60).nullable(),
  unit: unitIdSchema,
  baseValue: z.number().nullable(),
  subject: z.string().max(120),
  between: tuple.nullable(),
  basis: basisSchema,
  meterId: meterIdSchema.nullable(),
  details: readingDetailsSchema,
  note: text,
  createdAt: at,
});

const short = z.string().min(1).max(60);
const tracePartSchema = z.strictObject({
  id: traceIdSchema,
  subject: z.string().min(1).max(120),
  conductors: z.array(short).min(1).max(6),
  shield: z.boolean(),
  frame: z.boolean(),
  rows: z.array(z.string().min(1).max(24)).min(1).max(2),
  assumed: z.array(assumedCoilSchema).max(6),
  planId: z.string().max(200).nullable(),
  createdAt: at,
});

const outcomePartSchema = z.strictObject({
  id: outcomeIdSchema,
  traceId: traceIdSchema,
  takeId: takeIdSchema.nullable(),
  ms: takeMsSchema.nullable(),
  outcome: wiringOutcomeSchema,
  createdAt: at,
});

const linePartSchema = z.strictObject({
  id: narrationLineIdSchema,
  takeId: takeIdSchema,
  startMs: takeMsSchema,
  endMs: takeMsSchema,
  text: z.string().min(1).max(10_000),
  voice: name,
  heardText: z.string().max(10_000).nullable(),
});

const proposalPartSchema = z.strictObject({
  id: proposalIdSchema,
  takeId: takeIdSchema,
  /** The same words at the same place have the same key. */
  key: z.string().min(1).max(200),
  startMs: takeMsSchema,
  endMs: takeMsSchema,
  heard: heardProposalSchema,
  decision: z.enum(decisions),
  promisedAt: moment,
  /** The marker, reading or work item that acceptance made. */
  recordId: z.union([markerIdSchema, readingIdSchema, workItemIdSchema]).nullable(),
});

const workPartSchema = z.strictObject({
  id: workItemIdSchema,
  what: z.string().min(1).max(300),
  origin: z.enum(origins),
  charge: z.enum(charges).nullable(),
  priceMinor: z.int().min(0).max(1_000_000_000).nullable(),
  currency: currencySchema.nullable(),
  outcome: z.enum(workOutcomes),
  why: text,
  begun: moment,
  ended: moment,
  createdAt: at,
});

const partPartSchema = z.strictObject({
  id: partIdSchema,
  what: z.string().min(1).max(300),
  deed: z.enum(deeds),
  source: z.enum(partSources).nullable(),
  fate: z.enum(oldPartFates).nullable(),
  doubt: text,
  doubtBasis: basisSchema.nullable(),
  evidence: text,
  moment,
  createdAt: at,
});

/** What was chosen and written by hand for the hand-over. */
const handOverPartSchema = z.strictObject({
  cut: cutSettingsSchema,
  notes: z.strictObject({ sections: keptNotesSchema, videoAddress: videoAddressSchema.nullable() }),
  summary: keptSummarySchema,
  /** Ids of private findings that may go public all the same. */
  allowed: z.array(z.string().max(300)).max(10_000),
  createdAt: at,
});

export const bundleRecordSchema = z.strictObject({
  format: z.literal(bundleFormat),
  version: z.literal(bundleVersion),
  madeAt: z.iso.datetime(),
  job: jobPartSchema,
  clients: z.array(clientPartSchema).max(2),
  instrument: instrumentPartSchema,
  claims: z.array(claimPartSchema).max(10_000),
  /** Those that readings of the job were taken with. */
  meters: z.array(meterPartSchema).max(1000),
  takes: z.array(takePartSchema).max(5000),
  /** Takes in the order of the film. */
  film: z.array(takeIdSchema).max(5000),
  markers: z.array(markerPartSchema).max(100_000),
  readings: z.array(readingPartSchema).max(100_000),
  traces: z.array(tracePartSchema).max(1000),
  outcomes: z.array(outcomePartSchema).max(10_000),
  harness: z.strictObject({ harness: harnessSchema, createdAt: at }).nullable(),
  lines: z.array(linePartSchema).max(500_000),
  proposals: z.array(proposalPartSchema).max(500_000),
  work: z.array(workPartSchema).max(10_000),
  parts: z.array(partPartSchema).max(10_000),
  handOver: handOverPartSchema.nullable(),
});
export type BundleRecord = z.infer<typeof bundleRecordSchema>;
export type BundleTake = BundleRecord['takes'][number];

export const bundleQuerySchema = z.object({ recordings: z.enum(['none', 'all']).default('none') });
export type BundleQuery = z.infer<typeof bundleQuerySchema>;

/** `found`: it lay in a recordings folder. `brought`: it came with the bundle. `missing`: to be pointed to later. */
export const recordingArrivals = ['found', 'brought', 'missing'] as const;

export const bundleReportSchema = z.object({
  /** On the ticket it was, on the machine that it comes from. */
  numberBefore: z.int(),
  /** `known`: the same entry was there already and is used; nothing of it was changed. */
  client: z.enum(['none', 'new', 'known']),
  instrument: z.enum(['new', 'known']),
  recordings: z.array(
    z.object({
      takeId: takeIdSchema,
      name: z.string(),
      how: z.enum(recordingArrivals),
      /** Where it lies now; null where it is missing. */
      path: z.string().nullable(),
    }),
  ),
  /** Jobs of this workshop that are this job already: itself, or brought in before. */
  before: z.array(jobSchema.pick({ id: true, number: true, title: true })),
  /** Files of the bundle that were not needed, for the record holds what they tell. */
  passedOver: z.int(),
  /** All of it in plain sentences. */
  said: z.array(z.string()),
});
export type BundleReport = z.infer<typeof bundleReportSchema>;

export const broughtInSchema = z.object({ job: jobSchema, report: bundleReportSchema });
export type BroughtIn = z.infer<typeof broughtInSchema>;
