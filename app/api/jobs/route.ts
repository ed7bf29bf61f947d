import { database } from '@/db/open';
import { addJob, getJobRecord, listTickets } from '@/lib/work/store';
import { newJobSchema } from '@/shared/jobs';
import { body, route } from '../_http/route';

export const dynamic = 'force-dynamic';

export const GET = route(() => Response.json({ jobs: listTickets(database()) }));

export const POST = route(async (request) => {
  const job = addJob(database(), await body(request, newJobSchema));
  return Response.json(getJobRecord(database(), job.id), {
    status: 201,
    headers: { location: `/api/jobs/${job.id}` },
  });
});
