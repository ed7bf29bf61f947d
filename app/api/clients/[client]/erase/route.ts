import { database } from '@/db/open';
import { forgetChangedWords } from '@/lib/archive/store';
import { eraseClient } from '@/lib/work/store';
import { eraseSchema } from '@/shared/clients';
import { clientIdSchema } from '@/shared/ids';
import { body, route } from '../../../_http/route';

export const POST = route(async (request, { client }) => {
  const { name } = await body(request, eraseSchema);
  return Response.json(eraseClient(database(), clientIdSchema.parse(client), name, forgetChangedWords));
});
