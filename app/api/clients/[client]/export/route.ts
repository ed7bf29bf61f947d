import { database } from '@/db/open';
import { exportClient } from '@/lib/work/store';
import { clientIdSchema } from '@/shared/ids';
import { route } from '../../../_http/route';

/** The file's name tells nobody whose it is. */
export const GET = route((_request, { client }) => {
  const known = exportClient(database(), clientIdSchema.parse(client));
  return new Response(`${JSON.stringify(known, null, 2)}\n`, {
    headers: {
      'content-type': 'application/json; charset=utf-8',
      'content-disposition': `attachment; filename="client-${known.madeAt.slice(0, 10)}.json"`,
      'cache-control': 'no-store',
    },
  });
});
