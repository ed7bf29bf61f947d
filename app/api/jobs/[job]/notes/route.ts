import { database } from '@/db/open';
import { getHandOverView, patchNotes } from '@/lib/handover/store';
import { notesPatchSchema } from '@/shared/hand-over';
import { jobIdSchema } from '@/shared/ids';
import { body, route } from '../../../_http/route';

export const PATCH = route(async (request, { job }) => {
  const id = jobIdSchema.parse(job);
  const change = patchNotes(database(), id, await body(request, notesPatchSchema));
  return Response.json({ change, handOver: getHandOverView(database(), id) });
});
