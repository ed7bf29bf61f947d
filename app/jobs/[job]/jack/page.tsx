import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { database } from '@/db/open';
import { getJackView } from '@/lib/wiring/store';
import { getJobRecord } from '@/lib/work/store';
import { jobIdSchema } from '@/shared/ids';
import type { JackView } from '@/shared/jack-check';
import type { JobRecord } from '@/shared/jobs';
import { DomainError } from '@/shared/problem';
import { JackDesk } from '../_jack/jack-desk';

export const dynamic = 'force-dynamic';

export const metadata: Metadata = { title: 'Check at the jack' };

export default async function JackPage({ params }: { params: Promise<{ job: string }> }) {
  const first = firstOrNull((await params).job);
  if (!first) notFound();
  return <JackDesk firstRecord={first.record} firstView={first.view} />;
}

function firstOrNull(job: string): { record: JobRecord; view: JackView } | null {
  const id = jobIdSchema.safeParse(job);
  if (!id.success) return null;
  try {
    return { record: getJobRecord(database(), id.data), view: getJackView(database(), id.data) };
  } catch (error) {
    if (error instanceof DomainError && error.kind === 'not-found') return null;
    throw error;
  }
}
