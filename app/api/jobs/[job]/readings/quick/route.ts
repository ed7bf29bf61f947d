import { database } from '@/db/open';
import { addQuickReading } from '@/lib/readings/store';
import { jobRow } from '@/lib/work/store';
import { jobIdSchema } from '@/shared/ids';
import { quickReadingSchema } from '@/shared/readings';
import { body, route } from '../../../../_http/route';

/** One typed line. What it leaves open is asked back as a problem: nothing is guessed. */
export const POST = route(async (request, { job }) => {
  const { id } = jobRow(database(), jobIdSchema.parse(job));
  return Response.json(addQuickReading(database(), id, await body(request, quickReadingSchema)), {
    status: 201,
  });
});
