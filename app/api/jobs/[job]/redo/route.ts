import { redoNewest } from '@/db/changes';
import { database } from '@/db/open';
import { jobIdSchema } from '@/shared/ids';
import { route } from '../../../_http/route';

export const POST = route((_request, { job }) =>
  Response.json({ redone: redoNewest(database(), jobIdSchema.parse(job)) }),
);
