import { database } from '@/db/open';
import { mergeClients } from '@/lib/work/store';
import { mergeSchema } from '@/shared/clients';
import { clientIdSchema } from '@/shared/ids';
import { body, route } from '../../../_http/route';

export const POST = route(async (request, { client }) => {
  const { other } = await body(request, mergeSchema);
  return Response.json(mergeClients(database(), clientIdSchema.parse(client), other));
});
