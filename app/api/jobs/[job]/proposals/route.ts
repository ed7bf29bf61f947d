import { database } from '@/db/open';
import { proposalsOf } from '@/lib/narration/store';
import { decideProposals, jobRow } from '@/lib/work/store';
import { jobIdSchema } from '@/shared/ids';
import { decideAllSchema } from '@/shared/narration-record';
import { body, route } from '../../../_http/route';

export const GET = route((_request, { job }) =>
  Response.json({ proposals: proposalsOf(database(), jobRow(database(), jobIdSchema.parse(job)).id) }),
);

/** Decides on all open proposals of one type. */
export const POST = route(async (request, { job }) => {
  const { id } = jobRow(database(), jobIdSchema.parse(job));
  const { type, decision } = await body(request, decideAllSchema);
  return Response.json(decideProposals(database(), id, type, decision));
});
