import type { Metadata } from 'next';
import { lastTouched } from '@/app/_parts/words';
import { database } from '@/db/open';
import { listClients } from '@/lib/work/store';
import { CardIndex } from './_clients/card-index';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Clients' };

export default function ClientsPage() {
  const now = Date.now();
  const clients = listClients(database(), '').map((client) => ({
    ...client,
    touched: client.lastJobAt === null ? null : lastTouched(client.lastJobAt, now),
  }));
  return <CardIndex clients={clients} />;
}
