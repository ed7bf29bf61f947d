import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { database } from '@/db/open';
import { endLeisure } from '@/lib/tasks/store';
import { JobDesk } from './_desk/job-desk';
import { recordOrNull } from './_desk/record-or-null';

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
  endLeisure(database(), record.job.id);
  return <JobDesk first={record} />;
}
