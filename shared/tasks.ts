import { z } from 'zod';
import { jobIdSchema, recordingIdSchema, taskIdSchema } from './ids';

/**
 * Kinds of long work on one recording. `probe`: what a recording is, and its fingerprint. `sound`: peaks and silences.
 * `pictures`: stills and changes of view. `viewing-copy`: a copy that browsers can play. `listen`: the spoken words, by a
 * speech model that lies on this machine.
 */
const recordingTaskKinds = ['probe', 'sound', 'pictures', 'viewing-copy', 'listen'] as const;
export type RecordingTaskKind = (typeof recordingTaskKinds)[number];
/** Kinds of long work on a whole job. `cut`: its public cut. */
const jobTaskKinds = ['cut'] as const;
export type JobTaskKind = (typeof jobTaskKinds)[number];
/** Kinds of long work on the record of the workshop. `backlog-look`, `backlog-import`: older recordings. */
export const workshopTaskKinds = ['backlog-look', 'backlog-import'] as const;
export type WorkshopTaskKind = (typeof workshopTaskKinds)[number];

export const taskKindSchema = z.enum([...recordingTaskKinds, ...jobTaskKinds, ...workshopTaskKinds]);
export type TaskKind = z.infer<typeof taskKindSchema>;

export const taskStates = ['queued', 'running', 'done', 'failed', 'cancelled'] as const;
export const taskStateSchema = z.enum(taskStates);
export type TaskState = z.infer<typeof taskStateSchema>;

export const taskSchema = z.object({
  id: taskIdSchema,
  kind: taskKindSchema,
  /** The recording or the job that it is about; both null for work of the workshop. */
  recordingId: recordingIdSchema.nullable(),
  jobId: jobIdSchema.nullable(),
  state: taskStateSchema,
  /** Part done, 0 to 1. */
  progress: z.number().min(0).max(1),
  /** For a person: what is being done, or why it failed and what to do. */
  message: z.string().nullable(),
});
export type Task = z.infer<typeof taskSchema>;
