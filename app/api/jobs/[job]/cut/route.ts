import { database } from '@/db/open';
import { getCutView, patchCut } from '@/lib/handover/store';
import { cutPatchSchema } from '@/shared/cut';
import { jobIdSchema } from '@/shared/ids';
import { body, route } from '../../../_http/route';

export const GET = route((_request, { job }) =>
  Response.json(getCutView(database(), jobIdSchema.parse(job))),
);

/** Parts that are left out, spans muted, regions covered, and how the file is to be. */
export const PATCH = route(async (request, { job }) => {
  const id = jobIdSchema.parse(job);
  const change = patchCut(database(), id, await body(request, cutPatchSchema));
  return Response.json({ change, cut: getCutView(database(), id) });
});
