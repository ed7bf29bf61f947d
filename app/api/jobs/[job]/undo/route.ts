import { undoNewest } from '@/db/changes';
import { database } from '@/db/open';
import { jobIdSchema } from '@/shared/ids';
import { route } from '../../../_http/route';

export const POST = route((_request, { job }) =>
  Response.json({ undone: undoNewest(database(), jobIdSchema.parse(job)) }),
);
