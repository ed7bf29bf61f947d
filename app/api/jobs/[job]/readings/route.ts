import { database } from '@/db/open';
import { addReading } from '@/lib/readings/store';
import { jobRow } from '@/lib/work/store';
import { jobIdSchema } from '@/shared/ids';
import { newReadingSchema } from '@/shared/readings';
import { body, route } from '../../../_http/route';

export const POST = route(async (request, { job }) => {
  const { id } = jobRow(database(), jobIdSchema.parse(job));
  return Response.json(addReading(database(), id, await body(request, newReadingSchema)), { status: 201 });
});
