import { database } from '@/db/open';
import { listBacklogs, lookThroughFolder } from '@/lib/archive/store';
import { newBacklogSchema } from '@/shared/backlog';
import { body, route } from '../../_http/route';

export const dynamic = 'force-dynamic';

export const GET = route(() => Response.json({ backlogs: listBacklogs(database()) }));

/** Starts looking through a folder of older recordings. */
export const POST = route(async (request) => {
  const started = lookThroughFolder(database(), await body(request, newBacklogSchema));
  return Response.json(started, {
    status: 202,
    headers: { location: `/api/archive/backlog/${started.id}` },
  });
});
