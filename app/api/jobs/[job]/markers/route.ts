import { database } from '@/db/open';
import { addMarker } from '@/lib/film/store';
import { jobRow } from '@/lib/work/store';
import { jobIdSchema } from '@/shared/ids';
import { newMarkerSchema } from '@/shared/markers';
import { body, route } from '../../../_http/route';

export const POST = route(async (request, { job }) => {
  const { id } = jobRow(database(), jobIdSchema.parse(job));
  return Response.json(addMarker(database(), id, await body(request, newMarkerSchema)), { status: 201 });
});
