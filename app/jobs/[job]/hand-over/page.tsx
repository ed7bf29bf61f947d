import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { database } from '@/db/open';
import { getHandOverView } from '@/lib/handover/store';
import type { HandOverView } from '@/shared/hand-over';
import { recordOrNull } from '../_desk/record-or-null';
import { HandOverDesk } from '../_hand-over/hand-over-desk';

export const dynamic = 'force-dynamic';

interface Props {
  params: Promise<{ job: string }>;
}

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const record = recordOrNull((await params).job);
  return { title: record ? `Hand-over of no. ${record.job.number}` : 'No such job' };
}

export default async function HandOverPage({ params }: Props) {
  const record = recordOrNull((await params).job);
  if (!record || record.job.deletedAt !== null) notFound();
  const view: HandOverView = getHandOverView(database(), record.job.id);
  return <HandOverDesk firstRecord={record} firstView={view} />;
}
