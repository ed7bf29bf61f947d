import { database } from '@/db/open';
import { getHandOverView, patchSummary } from '@/lib/handover/store';
import { summaryPatchSchema } from '@/shared/hand-over';
import { jobIdSchema } from '@/shared/ids';
import { body, route } from '../../../_http/route';

export const PATCH = route(async (request, { job }) => {
  const id = jobIdSchema.parse(job);
  const change = patchSummary(database(), id, await body(request, summaryPatchSchema));
  return Response.json({ change, handOver: getHandOverView(database(), id) });
});
