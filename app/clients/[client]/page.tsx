import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { database } from '@/db/open';
import { dayOf } from '@/lib/work';
import { getClientView, recordingsNaming } from '@/lib/work/store';
import { clientIdSchema } from '@/shared/ids';
import type { ClientView } from '@/shared/jobs';
import { DomainError } from '@/shared/problem';
import { ClientCard } from './_client/client-card';

export const dynamic = 'force-dynamic';

interface Props {
  params: Promise<{ client: string }>;
}

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  return { title: viewOrNull((await params).client)?.client.name ?? 'No such client' };
}

export default async function ClientPage({ params }: Props) {
  const view = viewOrNull((await params).client);
  if (!view) notFound();
  const namingFiles = recordingsNaming(database(), view.client.id);
  return <ClientCard view={view} namingFiles={namingFiles} today={dayOf(Date.now())} />;
}

function viewOrNull(client: string): ClientView | null {
  const id = clientIdSchema.safeParse(client);
  if (!id.success) return null;
  try {
    return getClientView(database(), id.data);
  } catch (error) {
    if (error instanceof DomainError && error.kind === 'not-found') return null;
    throw error;
  }
}
