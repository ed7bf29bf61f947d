import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { database } from '@/db/open';
import { getJobRecord } from '@/lib/work/store';
import { jobIdSchema } from '@/shared/ids';
import type { JobRecord } from '@/shared/jobs';
import { DomainError } from '@/shared/problem';
import { JobDesk } from './_desk/job-desk';

export const dynamic = 'force-dynamic';

interface Props {
  params: Promise<{ job: string }>;
}

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const record = recordOrNull((await params).job);
  return { title: record ? `No. ${record.job.number} ${record.job.title}` : 'No such job' };
}

export default async function JobPage({ params }: Props) {
  const record = recordOrNull((await params).job);
  if (!record || record.job.deletedAt !== null) notFound();
  return <JobDesk first={record} />;
}

function recordOrNull(job: string): JobRecord | null {
  const id = jobIdSchema.safeParse(job);
  if (!id.success) return null;
  try {
    return getJobRecord(database(), id.data);
  } catch (error) {
    if (error instanceof DomainError && error.kind === 'not-found') return null;
    throw error;
  }
}
