import { database } from '@/db/open';
import { setSynonyms, synonymsOf } from '@/lib/archive/store';
import { synonymsSchema } from '@/shared/archive';
import { body, route } from '../../_http/route';

export const dynamic = 'force-dynamic';

export const GET = route(() => Response.json({ synonyms: synonymsOf(database()) }));

/** The repairer's own words for the trade's, whole list at once. */
export const PUT = route(async (request) => {
  const { synonyms } = await body(request, synonymsSchema);
  setSynonyms(database(), synonyms);
  return Response.json({ synonyms });
});
