import { database } from '@/db/open';
import { serialPatternsOf, setSerialPatterns } from '@/lib/work/store';
import { serialPatternsSchema } from '@/shared/claims';
import { body, route } from '../_http/route';

export const dynamic = 'force-dynamic';

export const GET = route(() => Response.json({ patterns: serialPatternsOf(database()) }));

/** The repairer's own patterns, whole list at once. */
export const PUT = route(async (request) => {
  const { patterns } = await body(request, serialPatternsSchema);
  setSerialPatterns(database(), patterns);
  return Response.json({ patterns });
});
