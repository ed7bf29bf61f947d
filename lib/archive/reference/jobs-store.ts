import { jobs } from '@/db/schema';
import { dayOfJob } from '@/lib/work';
import type { ReferenceJob } from '@/shared/reference';

/** What the lines of the reference tell of a job. */
export const jobColumns = {
  id: jobs.id,
  number: jobs.number,
  title: jobs.title,
  receivedOn: jobs.receivedOn,
  createdAt: jobs.createdAt,
};

type JobRow = Pick<typeof jobs.$inferSelect, keyof typeof jobColumns>;

export function asReferenceJob(job: JobRow, instrument: string): ReferenceJob {
  const { id, number, title } = job;
  return { id, number, title, instrument, day: dayOfJob(job) };
}
