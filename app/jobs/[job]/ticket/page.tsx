import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { listChanges } from '@/db/changes';
import { database } from '@/db/open';
import { workshopOf } from '@/lib/work/store';
import { recordOrNull } from '../_desk/record-or-null';
import { TicketDesk } from '../_ticket/ticket-desk';

export const dynamic = 'force-dynamic';

interface Props {
  params: Promise<{ job: string }>;
}

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const record = recordOrNull((await params).job);
  return { title: record ? `Ticket no. ${record.job.number}` : 'No such job' };
}

export default async function TicketPage({ params }: Props) {
  const record = recordOrNull((await params).job);
  if (!record || record.job.deletedAt !== null) notFound();
  const db = database();
  return (
    <TicketDesk
      firstRecord={record}
      firstChanges={listChanges(db, record.job.id)}
      currency={workshopOf(db).currency}
    />
  );
}
