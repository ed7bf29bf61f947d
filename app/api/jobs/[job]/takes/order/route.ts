import { database } from '@/db/open';
import { orderByClock } from '@/lib/film/store';
import { jobRow } from '@/lib/work/store';
import { jobIdSchema } from '@/shared/ids';
import { route } from '../../../../_http/route';

/** Lets the film follow the recorded-at times again. */
export const DELETE = route((_request, { job }) =>
  Response.json({ change: orderByClock(database(), jobRow(database(), jobIdSchema.parse(job)).id) }),
);
