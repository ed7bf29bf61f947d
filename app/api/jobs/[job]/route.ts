import { database } from '@/db/open';
import { deleteJob, getJobRecord, patchJob } from '@/lib/work/store';
import { jobIdSchema } from '@/shared/ids';
import { jobPatchSchema } from '@/shared/jobs';
import { body, route } from '../../_http/route';

export const GET = route((_request, { job }) =>
  Response.json(getJobRecord(database(), jobIdSchema.parse(job))),
);

export const PATCH = route(async (request, { job }) => {
  const id = jobIdSchema.parse(job);
  const change = patchJob(database(), id, await body(request, jobPatchSchema));
  return Response.json({ change, record: getJobRecord(database(), id) });
});

export const DELETE = route((_request, { job }) =>
  Response.json({ change: deleteJob(database(), jobIdSchema.parse(job)) }),
);
