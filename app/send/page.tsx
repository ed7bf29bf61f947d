import type { Metadata } from 'next';
import { database } from '@/db/open';
import { jobRow, rackOf } from '@/lib/work/store';
import { jobIdSchema } from '@/shared/ids';
import { DomainError } from '@/shared/problem';
import { type ChosenJob, jobsAtOnce } from './_send/chosen-job';
import { SendPage } from './_send/send-page';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Send a recording' };

interface Props {
  searchParams: Promise<{ job?: string | string[] }>;
}

export default async function Page({ searchParams }: Props) {
  const { jobs } = rackOf(database(), { find: '', limit: jobsAtOnce });
  return <SendPage first={chosenBy((await searchParams).job)} jobs={jobs.map(shortly)} />;
}

/** The job that the address names; null where it names none, or one that lies in the bin. */
function chosenBy(job: string | string[] | undefined): ChosenJob | null {
  const id = jobIdSchema.safeParse(job);
  if (!id.success) return null;
  try {
    const row = jobRow(database(), id.data);
    return row.deletedAt === null ? shortly(row) : null;
  } catch (error) {
    if (error instanceof DomainError && error.kind === 'not-found') return null;
    throw error;
  }
}

function shortly({ id, number, title }: ChosenJob): ChosenJob {
  return { id, number, title };
}
