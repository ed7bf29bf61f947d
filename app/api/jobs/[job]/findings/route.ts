import { database } from '@/db/open';
import { decideFinding, findingsOf } from '@/lib/handover/store';
import { decideFindingSchema } from '@/shared/cut';
import { jobIdSchema } from '@/shared/ids';
import { body, route } from '../../../_http/route';

export const GET = route((_request, { job }) =>
  Response.json({ findings: findingsOf(database(), jobIdSchema.parse(job)) }),
);

/** Decides on one. */
export const POST = route(async (request, { job }) => {
  const id = jobIdSchema.parse(job);
  const change = decideFinding(database(), id, await body(request, decideFindingSchema));
  return Response.json({ change, findings: findingsOf(database(), id) });
});
