import { jobs } from '@/db/schema';
import { dayOf } from '@/lib/work';
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

export function asReferenceJob(
  { id, number, title, receivedOn, createdAt }: JobRow,
  instrument: string,
): ReferenceJob {
  return { id, number, title, instrument, day: receivedOn ?? dayOf(createdAt) };
}

/** How often each value stands in a list, the commonest first. */
export function countedValues(values: readonly string[]): { value: string; count: number }[] {
  const counts = new Map<string, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  return [...counts]
    .map(([value, count]) => ({ value, count }))
    .sort((a, b) => b.count - a.count || a.value.localeCompare(b.value));
}
