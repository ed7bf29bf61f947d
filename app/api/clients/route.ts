import { z } from 'zod';
import { database } from '@/db/open';
import { addClient, listClients } from '@/lib/work/store';
import { newClientSchema } from '@/shared/clients';
import { body, query, route } from '../_http/route';

export const dynamic = 'force-dynamic';

const querySchema = z.object({ find: z.string().max(500).default('') });

export const GET = route((request) => {
  const { find } = query(request, querySchema);
  return Response.json({ clients: listClients(database(), find) });
});

export const POST = route(async (request) => {
  const client = addClient(database(), await body(request, newClientSchema));
  return Response.json({ client }, { status: 201, headers: { location: `/api/clients/${client.id}` } });
});
