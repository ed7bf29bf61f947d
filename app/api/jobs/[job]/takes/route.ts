import { database } from '@/db/open';
import { addTake } from '@/lib/film/store';
import { lookAtRecording } from '@/lib/media/store';
import { jobRow } from '@/lib/work/store';
import { jobIdSchema } from '@/shared/ids';
import { newTakeSchema } from '@/shared/takes';
import { body, route } from '../../../_http/route';

export const POST = route(async (request, { job }) => {
  const { id } = jobRow(database(), jobIdSchema.parse(job));
  const { change, take } = addTake(database(), id, (await body(request, newTakeSchema)).path);
  const task = lookAtRecording(database(), take.recordingId);
  return Response.json(
    { change, take, task },
    { status: 202, headers: { location: `/api/takes/${take.id}` } },
  );
});
