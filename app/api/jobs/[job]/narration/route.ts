import { database } from '@/db/open';
import { importToFilm, narrationOf } from '@/lib/narration/store';
import { jobRow } from '@/lib/work/store';
import { jobIdSchema } from '@/shared/ids';
import { importQuerySchema } from '@/shared/narration-record';
import { bytes, query, route } from '../../../_http/route';

export const GET = route((_request, { job }) =>
  Response.json(narrationOf(database(), jobRow(database(), jobIdSchema.parse(job)).id)),
);

/** A captions file of the whole film, split over its takes. */
export const POST = route(async (request, { job }) => {
  const { id } = jobRow(database(), jobIdSchema.parse(job));
  const { name, offsetMs } = query(request, importQuerySchema);
  return Response.json(importToFilm(database(), id, { bytes: await bytes(request), name, offsetMs }), {
    status: 201,
  });
});
