import { database } from '@/db/open';
import { startCut } from '@/lib/handover/store';
import { jobIdSchema } from '@/shared/ids';
import { route } from '../../../../_http/route';

export const POST = route((_request, { job }) =>
  Response.json({ task: startCut(database(), jobIdSchema.parse(job)) }, { status: 202 }),
);
