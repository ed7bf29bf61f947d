import { database } from '@/db/open';
import { restoreJob } from '@/lib/work/store';
import { jobIdSchema } from '@/shared/ids';
import { route } from '../../../_http/route';

export const POST = route((_request, { job }) =>
  Response.json({ change: restoreJob(database(), jobIdSchema.parse(job)) }),
);
