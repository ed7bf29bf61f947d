import { database } from '@/db/open';
import { setSlang, slangOf } from '@/lib/narration/store';
import { slangListSchema } from '@/shared/narration-record';
import { body, route } from '../_http/route';

export const dynamic = 'force-dynamic';

export const GET = route(() => Response.json({ slang: slangOf(database()) }));

/** The repairer's own words, whole list at once. */
export const PUT = route(async (request) => {
  const { slang } = await body(request, slangListSchema);
  setSlang(database(), slang);
  return Response.json({ slang });
});
