import { z } from 'zod';
import { changeIdSchema, clientIdSchema, instrumentIdSchema, jobIdSchema } from './ids';
import { instrumentTypeSchema } from './instruments';
import { markerSchema, titleSchema } from './markers';
import { meterSchema, readingSchema } from './readings';
import { takeSchema } from './takes';
import { taskSchema } from './tasks';
import { outcomeRecordSchema, worksheetSchema } from './traces';

const freeWords = z.string().trim().max(200).nullable();

export const instrumentSchema = z.object({
  id: instrumentIdSchema,
  type: z.string(),
  maker: z.string().nullable(),
  model: z.string().nullable(),
  serial: z.string().nullable(),
});
export type Instrument = z.infer<typeof instrumentSchema>;

export const clientSchema = z.object({ id: clientIdSchema, name: z.string(), alias: z.string() });
export type Client = z.infer<typeof clientSchema>;

const instrumentFields = {
  type: instrumentTypeSchema,
  maker: freeWords,
  model: freeWords,
  serial: freeWords,
};
const clientFields = { name: z.string().trim().min(1).max(200), alias: z.string().trim().min(1).max(200) };

export const newJobSchema = z.strictObject({
  title: titleSchema,
  instrument: z.strictObject(instrumentFields).partial({ maker: true, model: true, serial: true }),
  client: z.strictObject(clientFields).partial({ alias: true }).optional(),
});
export type NewJob = z.infer<typeof newJobSchema>;

export const jobPatchSchema = z
  .strictObject({
    title: titleSchema,
    instrument: z.strictObject(instrumentFields).partial(),
    client: z.strictObject(clientFields).partial({ alias: true }).nullable(),
  })
  .partial();
export type JobPatch = z.infer<typeof jobPatchSchema>;

export const jobSchema = z.object({
  id: jobIdSchema,
  /** Number on the ticket. */
  number: z.int(),
  title: z.string(),
  demo: z.boolean(),
  createdAt: z.int(),
  updatedAt: z.int(),
  deletedAt: z.int().nullable(),
});
export type Job = z.infer<typeof jobSchema>;

/** A job as it hangs in the rack. */
export const ticketSchema = jobSchema.extend({
  instrument: instrumentSchema,
  client: clientSchema.nullable(),
  takes: z.int(),
  filmMs: z.int(),
  markers: z.int(),
  readings: z.int(),
  /** Addresses of a few stills, in film order. */
  stills: z.array(z.string()),
});
export type Ticket = z.infer<typeof ticketSchema>;

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
