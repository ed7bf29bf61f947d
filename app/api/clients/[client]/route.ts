import { database } from '@/db/open';
import { getClientView, patchClient, removeClient } from '@/lib/work/store';
import { clientPatchSchema } from '@/shared/clients';
import { clientIdSchema } from '@/shared/ids';
import { body, route } from '../../_http/route';

export const GET = route((_request, { client }) =>
  Response.json(getClientView(database(), clientIdSchema.parse(client))),
);

export const PATCH = route(async (request, { client }) => {
  const patch = await body(request, clientPatchSchema);
  return Response.json(patchClient(database(), clientIdSchema.parse(client), patch));
});

export const DELETE = route((_request, { client }) =>
  Response.json({ change: removeClient(database(), clientIdSchema.parse(client)) }),
);
