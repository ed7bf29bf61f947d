import { database } from '@/db/open';
import { previewGiveOut } from '@/lib/archive/store';
import { giveOutQuerySchema } from '@/shared/archive-exports';
import { query, route } from '../../../_http/route';

export const dynamic = 'force-dynamic';

/** What would go out, and what stands in the way. */
export const GET = route(async (request) =>
  Response.json(await previewGiveOut(database(), query(request, giveOutQuerySchema))),
);
