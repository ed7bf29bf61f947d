import { z } from 'zod';

/** Ids are opaque: 20 letters and digits. The brand keeps a take's id from standing in for a job's. */
const opaque = z.string().regex(/^[0-9a-z]{20}$/, 'not an id of this workshop');

export const jobIdSchema = opaque.brand<'job'>();
export const takeIdSchema = opaque.brand<'take'>();
export const markerIdSchema = opaque.brand<'marker'>();
export const readingIdSchema = opaque.brand<'reading'>();
export const meterIdSchema = opaque.brand<'meter'>();
export const recordingIdSchema = opaque.brand<'recording'>();
export const folderIdSchema = opaque.brand<'folder'>();
export const taskIdSchema = opaque.brand<'task'>();
export const changeIdSchema = opaque.brand<'change'>();
export const traceIdSchema = opaque.brand<'trace'>();
export const outcomeIdSchema = opaque.brand<'outcome'>();
export const harnessIdSchema = opaque.brand<'harness'>();
export const narrationLineIdSchema = opaque.brand<'narration line'>();
export const proposalIdSchema = opaque.brand<'proposal'>();
export const clientIdSchema = opaque.brand<'client'>();
export const instrumentIdSchema = opaque.brand<'instrument'>();
export const claimIdSchema = opaque.brand<'claim'>();
export const workItemIdSchema = opaque.brand<'work item'>();
export const partIdSchema = opaque.brand<'part'>();
export const handOverIdSchema = opaque.brand<'hand-over'>();
export const madeCutIdSchema = opaque.brand<'made cut'>();

export type JobId = z.infer<typeof jobIdSchema>;
export type TakeId = z.infer<typeof takeIdSchema>;
export type MarkerId = z.infer<typeof markerIdSchema>;
export type ReadingId = z.infer<typeof readingIdSchema>;
export type MeterId = z.infer<typeof meterIdSchema>;
export type RecordingId = z.infer<typeof recordingIdSchema>;
export type FolderId = z.infer<typeof folderIdSchema>;
export type TaskId = z.infer<typeof taskIdSchema>;
export type ChangeId = z.infer<typeof changeIdSchema>;
export type TraceId = z.infer<typeof traceIdSchema>;
export type OutcomeId = z.infer<typeof outcomeIdSchema>;
export type HarnessId = z.infer<typeof harnessIdSchema>;
export type NarrationLineId = z.infer<typeof narrationLineIdSchema>;
export type ProposalId = z.infer<typeof proposalIdSchema>;
export type ClientId = z.infer<typeof clientIdSchema>;
export type InstrumentId = z.infer<typeof instrumentIdSchema>;
export type ClaimId = z.infer<typeof claimIdSchema>;
export type WorkItemId = z.infer<typeof workItemIdSchema>;
export type PartId = z.infer<typeof partIdSchema>;
export type HandOverId = z.infer<typeof handOverIdSchema>;
export type MadeCutId = z.infer<typeof madeCutIdSchema>;
