import { database } from '@/db/open';
import { addJob, getJobRecord, rackOf } from '@/lib/work/store';
import { newJobSchema, rackQuerySchema } from '@/shared/jobs';
import { body, query, route } from '../_http/route';

export const dynamic = 'force-dynamic';

export const GET = route((request) => Response.json(rackOf(database(), query(request, rackQuerySchema))));

export const POST = route(async (request) => {
  const job = addJob(database(), await body(request, newJobSchema));
  return Response.json(getJobRecord(database(), job.id), {
    status: 201,
    headers: { location: `/api/jobs/${job.id}` },
  });
});
