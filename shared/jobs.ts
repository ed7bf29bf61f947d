import { z } from 'zod';
import { claimSchema, serialReadingSchema } from './claims';
import { clientSchema, newClientSchema } from './clients';
import { daySchema } from './days';
import { changeIdSchema, clientIdSchema, instrumentIdSchema, jobIdSchema } from './ids';
import { instrumentTypeSchema } from './instruments';
import { looseEndSchema, readyLookSchema } from './loose-ends';
import { markerSchema, titleSchema } from './markers';
import { momentSchema } from './moments';
import { meterSchema, readingSchema } from './readings';
import { takeSchema } from './takes';
import { taskSchema } from './tasks';
import { outcomeRecordSchema, worksheetSchema } from './traces';
import { newWorkItemSchema, partSchema, workItemSchema } from './work';

const freeWords = z.string().trim().max(200).nullable();

export const instrumentSchema = z.object({
  id: instrumentIdSchema,
  type: z.string(),
  maker: z.string().nullable(),
  model: z.string().nullable(),
  serial: z.string().nullable(),
  features: z.string().nullable(),
  /** Whose it is. */
  clientId: clientIdSchema.nullable(),
});
export type Instrument = z.infer<typeof instrumentSchema>;

const instrumentFields = {
  type: instrumentTypeSchema,
  maker: freeWords,
  model: freeWords,
  serial: freeWords,
  features: z.string().trim().max(5000).nullable(),
  /** Whose it is. */
  clientId: clientIdSchema.nullable(),
};
const instrumentPatchFields = z.strictObject(instrumentFields).partial();
export const instrumentPatchSchema = instrumentPatchFields.extend({ was: instrumentPatchFields.optional() });
export type InstrumentPatch = z.infer<typeof instrumentPatchSchema>;
export const newInstrumentSchema = z
  .strictObject(instrumentFields)
  .partial({ maker: true, model: true, serial: true, features: true, clientId: true });

export const jobStates = ['booked in', 'on the bench', 'ready', 'collected', 'returned undone'] as const;
export const jobStateSchema = z.enum(jobStates);
export type JobState = z.infer<typeof jobStateSchema>;

const ticketFields = {
  title: titleSchema,
  receivedOn: daySchema,
  promisedOn: daySchema.nullable(),
  /** Where it stands in the workshop. */
  place: freeWords,
  /** What it came in with: case, strap, cable. */
  cameWith: z.array(z.string().trim().min(1).max(80)).max(30),
};

/** A new job: of an instrument that is known by its id or described, for a client that is known or named. */
export const newJobSchema = z
  .strictObject({
    title: titleSchema,
    instrument: z.union([z.strictObject({ id: instrumentIdSchema }), newInstrumentSchema]),
    client: z.union([z.strictObject({ id: clientIdSchema }), newClientSchema]).optional(),
    ...z.strictObject(ticketFields).omit({ title: true }).partial().shape,
    work: z
      .array(newWorkItemSchema.omit({ begun: true, ended: true }))
      .max(50)
      .default([]),
  })
  .refine(({ receivedOn, promisedOn }) => !receivedOn || !promisedOn || promisedOn >= receivedOn, {
    path: ['promisedOn'],
    message: 'it is promised for a day before it was received',
  });
export type NewJob = z.input<typeof newJobSchema>;
export type NewJobRead = z.infer<typeof newJobSchema>;

const jobPatchFields = z
  .strictObject({
    ...ticketFields,
    state: jobStateSchema,
    collectedOn: daySchema.nullable(),
    instrumentId: instrumentIdSchema,
    clientId: clientIdSchema.nullable(),
  })
  .partial();
export const jobPatchSchema = jobPatchFields.extend({
  /** What stood there when it was changed; the change is refused where something else stands there now. */
  was: jobPatchFields.optional(),
  /** Ids of the loose ends that were looked at: a job with others is not set to ready or collected. */
  lookedAt: z.array(z.string().max(200)).max(2000).optional(),
});
export type JobPatch = z.infer<typeof jobPatchSchema>;

export const jobSchema = z.object({
  id: jobIdSchema,
  /** Number on the ticket. */
  number: z.int(),
  title: z.string(),
  state: jobStateSchema,
  receivedOn: z.string(),
  promisedOn: z.string().nullable(),
  collectedOn: z.string().nullable(),
  place: z.string().nullable(),
  cameWith: z.array(z.string()),
  /** The loose ends that were looked at when it was set to ready; null before. */
  readyLook: readyLookSchema.nullable(),
  demo: z.boolean(),
  createdAt: z.int(),
  updatedAt: z.int(),
  deletedAt: z.int().nullable(),
});
export type Job = z.infer<typeof jobSchema>;

/** A job as it hangs in the rack. */
export const ticketSchema = jobSchema.omit({ readyLook: true, cameWith: true }).extend({
  instrument: instrumentSchema,
  client: clientSchema.pick({ id: true, name: true, alias: true }).nullable(),
  takes: z.int(),
  filmMs: z.int(),
  markers: z.int(),
  readings: z.int(),
  /** Addresses of a few stills, in film order. */
  stills: z.array(z.string()),
  looseEnds: z.array(looseEndSchema),
  /** Of what was noted last; null where nothing is pinned to the film. */
  lastMoment: momentSchema.nullable(),
});
export type Ticket = z.infer<typeof ticketSchema>;

/** The rack: what is on the bench first, then what is due, what is ready, and what has gone. */
export const rackQuerySchema = z.strictObject({
  find: z.string().max(500).default(''),
  limit: z.coerce.number().int().min(1).max(10_000).default(10_000),
});
export const rackSchema = z.object({
  jobs: z.array(ticketSchema),
  /** How many there are, in the rack or found. */
  total: z.int(),
});
export type RackOfTickets = z.infer<typeof rackSchema>;

/** A step that can be taken back or done again, by its label. */
const stepSchema = z.object({ id: changeIdSchema, label: z.string() }).nullable();

/** The whole record of a job in one answer. */
export const jobRecordSchema = z.object({
  job: jobSchema,
  instrument: instrumentSchema,
  client: clientSchema.nullable(),
  takes: z.array(takeSchema),
  markers: z.array(markerSchema),
  readings: z.array(readingSchema),
  /** All meters of the workshop: readings name theirs by id. */
  meters: z.array(meterSchema),
  traces: z.array(worksheetSchema),
  outcomes: z.array(outcomeRecordSchema),
  work: z.array(workItemSchema),
  parts: z.array(partSchema),
  /** What is claimed about the instrument, in this job or another. */
  claims: z.array(claimSchema),
  looseEnds: z.array(looseEndSchema),
  /** Changes whenever spoken lines or proposals do; they are loaded by themselves. */
  narration: z.string(),
  tasks: z.array(taskSchema),
  undo: stepSchema,
  redo: stepSchema,
});
export type JobRecord = z.infer<typeof jobRecordSchema>;

export const changeSchema = z.object({
  id: changeIdSchema,
  label: z.string(),
  at: z.int(),
  undone: z.boolean(),
});
export type Change = z.infer<typeof changeSchema>;

/** An instrument with what is claimed about it and the jobs it came in for. */
export const instrumentViewSchema = z.object({
  instrument: instrumentSchema,
  client: clientSchema.nullable(),
  claims: z.array(claimSchema),
  /** What the repairer's own patterns make of the serial. */
  serialReadings: z.array(serialReadingSchema),
  jobs: z.array(jobSchema),
});
export type InstrumentView = z.infer<typeof instrumentViewSchema>;
export const instrumentsSchema = z.object({ instruments: z.array(instrumentSchema) });

/** A client with all their instruments and jobs. */
export const clientViewSchema = z.object({
  client: clientSchema,
  instruments: z.array(instrumentSchema),
  jobs: z.array(jobSchema),
});
export type ClientView = z.infer<typeof clientViewSchema>;
