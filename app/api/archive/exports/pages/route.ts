import { zipAnswer } from '@/app/_server/bundles';
import { database, home } from '@/db/open';
import { builtSearchScript, pagesOf } from '@/lib/archive/store';
import { dayOf } from '@/lib/work';
import { pagesQuerySchema } from '@/shared/archive-exports';
import { query, route } from '../../../_http/route';

export const dynamic = 'force-dynamic';

/** The chosen part as a set of pages for any web host. */
export const GET = route(async (request) => {
  const { made = dayOf(Date.now()), ...chosen } = query(request, pagesQuerySchema);
  const set = { home: home(), made, searchScript: builtSearchScript() };
  return zipAnswer(`archive-pages-${made}.zip`, await pagesOf(database(), chosen, set));
});
