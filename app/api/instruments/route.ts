import { z } from 'zod';
import { database } from '@/db/open';
import { listInstruments } from '@/lib/work/store';
import { clientIdSchema } from '@/shared/ids';
import { query, route } from '../_http/route';

export const dynamic = 'force-dynamic';

const querySchema = z.strictObject({
  find: z.string().max(500).optional(),
  client: clientIdSchema.optional(),
});

export const GET = route((request) => {
  const { find, client } = query(request, querySchema);
  return Response.json({ instruments: listInstruments(database(), { find, clientId: client }) });
});
