import { database } from '@/db/open';
import { setWorkshop, workshopOf } from '@/lib/work/store';
import { workshopSchema } from '@/shared/workshop';
import { body, route } from '../_http/route';

export const dynamic = 'force-dynamic';

export const GET = route(() => Response.json(workshopOf(database())));

export const PUT = route(async (request) => {
  const workshop = await body(request, workshopSchema);
  setWorkshop(database(), workshop);
  return Response.json(workshop);
});
