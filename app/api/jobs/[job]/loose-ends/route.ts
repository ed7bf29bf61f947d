import { database } from '@/db/open';
import { looseEndsOf } from '@/lib/work/store';
import { jobIdSchema } from '@/shared/ids';
import { route } from '../../../_http/route';

export const GET = route((_request, { job }) =>
  Response.json({ looseEnds: looseEndsOf(database(), jobIdSchema.parse(job)) }),
);
