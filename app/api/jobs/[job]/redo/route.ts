import { redoNewest } from '@/db/changes';
import { database } from '@/db/open';
import { jobRow } from '@/lib/work/store';
import { jobIdSchema } from '@/shared/ids';
import { route } from '../../../_http/route';

export const POST = route((_request, { job }) =>
  Response.json({ redone: redoNewest(database(), jobRow(database(), jobIdSchema.parse(job)).id) }),
);
