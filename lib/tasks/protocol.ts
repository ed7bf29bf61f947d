import { z } from 'zod';
import type { ProblemKind } from '@/shared/problem';
import { taskKindSchema, workshopTaskKinds } from '@/shared/tasks';

/**
 * What the worker does: the kinds of long work, and what somebody waits for. `still`: one picture. `captioned-still`:
 * one in full size with its caption below. `cut-facts`: what a cut is made from.
 */
export const runKindSchema = z.enum([
  ...taskKindSchema.exclude(workshopTaskKinds).options,
  'still',
  'captioned-still',
  'cut-facts',
]);
export type RunKind = z.infer<typeof runKindSchema>;

/** From the server to the worker. What a payload holds, the runner of that kind checks. */
export const orderSchema = z.discriminatedUnion('type', [
  z.object({ type: z.literal('run'), id: z.int(), kind: runKindSchema, payload: z.unknown() }),
  z.object({ type: z.literal('cancel'), id: z.int() }),
]);
export type Order = z.infer<typeof orderSchema>;

const problemKinds = [
  'invalid',
  'not-found',
  'conflict',
  'gone',
  'forbidden',
  'unavailable',
  'too-large',
] as const satisfies readonly ProblemKind[];

/** A DomainError on its way between processes. */
const workProblemSchema = z.object({ kind: z.enum(problemKinds), title: z.string(), detail: z.string() });
export type WorkProblem = z.infer<typeof workProblemSchema>;

/** From the worker to the server. A partial result has the shape of the result. */
export const reportSchema = z.discriminatedUnion('type', [
  z.object({ type: z.literal('ready') }),
  z.object({
    type: z.literal('progress'),
    id: z.int(),
    progress: z.number().min(0).max(1),
    residentBytes: z.int(),
    partial: z.unknown().optional(),
  }),
  z.object({ type: z.literal('done'), id: z.int(), result: z.unknown() }),
  z.object({ type: z.literal('failed'), id: z.int(), problem: workProblemSchema }),
  z.object({ type: z.literal('cancelled'), id: z.int() }),
]);
export type Report = z.infer<typeof reportSchema>;
