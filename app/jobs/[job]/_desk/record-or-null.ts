import { database } from '@/db/open';
import { getJobRecord } from '@/lib/work/store';
import { jobIdSchema } from '@/shared/ids';
import type { JobRecord } from '@/shared/jobs';
import { DomainError } from '@/shared/problem';

/** The job that an address names; null where there is none. A job in the bin counts. */
export function recordOrNull(job: string): JobRecord | null {
  const id = jobIdSchema.safeParse(job);
  if (!id.success) return null;
  try {
    return getJobRecord(database(), id.data);
  } catch (error) {
    if (error instanceof DomainError && error.kind === 'not-found') return null;
    throw error;
  }
}
