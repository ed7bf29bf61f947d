import { database } from '@/db/open';
import { forecastCut } from '@/lib/handover/store';
import { jobIdSchema } from '@/shared/ids';
import { route } from '../../../../_http/route';

/** How the cut would be made: what is copied, what is encoded, by how much cuts move. */
export const GET = route(async (_request, { job }) =>
  Response.json(await forecastCut(database(), jobIdSchema.parse(job))),
);
