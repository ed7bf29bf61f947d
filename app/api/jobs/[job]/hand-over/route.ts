import { database } from '@/db/open';
import { getHandOverView } from '@/lib/handover/store';
import { jobIdSchema } from '@/shared/ids';
import { route } from '../../../_http/route';

export const GET = route((_request, { job }) =>
  Response.json(getHandOverView(database(), jobIdSchema.parse(job))),
);
