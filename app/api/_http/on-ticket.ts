import { z } from 'zod';
import { type JobId, jobIdSchema } from '@/shared/ids';
import { query } from './route';

const querySchema = z.strictObject({ job: jobIdSchema.optional() });

/** `?job=` of a change to something that outlives a job: the job on whose ticket it was made, or null. */
export function onTicketOf(request: Request): JobId | null {
  return query(request, querySchema).job ?? null;
}
