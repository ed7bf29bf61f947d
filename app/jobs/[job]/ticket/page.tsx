import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { listChanges } from '@/db/changes';
import { database } from '@/db/open';
import { getJobRecord, workshopOf } from '@/lib/work/store';
import { jobIdSchema } from '@/shared/ids';
import type { Change, JobRecord } from '@/shared/jobs';
import { DomainError } from '@/shared/problem';
import { TicketDesk } from '../_ticket/ticket-desk';

export const dynamic = 'force-dynamic';

interface Props {
  params: Promise<{ job: string }>;
}

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const first = firstOrNull((await params).job);
  return { title: first ? `Ticket no. ${first.record.job.number}` : 'No such job' };
}

export default async function TicketPage({ params }: Props) {
  const first = firstOrNull((await params).job);
  if (!first || first.record.job.deletedAt !== null) notFound();
  return (
    <TicketDesk
      firstRecord={first.record}
      firstChanges={first.changes}
      currency={workshopOf(database()).currency}
    />
  );
}

function firstOrNull(job: string): { record: JobRecord; changes: Change[] } | null {
  const id = jobIdSchema.safeParse(job);
  if (!id.success) return null;
  try {
    return { record: getJobRecord(database(), id.data), changes: listChanges(database(), id.data) };
  } catch (error) {
    if (error instanceof DomainError && error.kind === 'not-found') return null;
    throw error;
  }
}
