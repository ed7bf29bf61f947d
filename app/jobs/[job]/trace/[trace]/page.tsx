import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { database } from '@/db/open';
import { getTraceView } from '@/lib/wiring/store';
import { getJobRecord } from '@/lib/work/store';
import { traceIdSchema } from '@/shared/ids';
import { DomainError } from '@/shared/problem';
import type { TraceView } from '@/shared/traces';
import { TraceDesk } from '../../_trace/trace-desk';

export const dynamic = 'force-dynamic';

interface Props {
  params: Promise<{ trace: string }>;
}

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const trace = traceOrNull((await params).trace);
  return { title: trace ? `Trace: ${trace.worksheet.subject}` : 'No such trace' };
}

export default async function TracePage({ params }: Props) {
  const trace = traceOrNull((await params).trace);
  if (!trace) notFound();
  return <TraceDesk firstRecord={getJobRecord(database(), trace.worksheet.jobId)} firstTrace={trace} />;
}

function traceOrNull(trace: string): TraceView | null {
  const id = traceIdSchema.safeParse(trace);
  if (!id.success) return null;
  try {
    return getTraceView(database(), id.data);
  } catch (error) {
    if (error instanceof DomainError && error.kind === 'not-found') return null;
    throw error;
  }
}
