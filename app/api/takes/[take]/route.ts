import { database } from '@/db/open';
import { getTake, patchTake, removeTake } from '@/lib/film/store';
import { lookAtRecording } from '@/lib/media/store';
import { takeIdSchema } from '@/shared/ids';
import { takePatchSchema } from '@/shared/takes';
import { body, route } from '../../_http/route';

export const GET = route((_request, { take }) =>
  Response.json(getTake(database(), takeIdSchema.parse(take))),
);

export const PATCH = route(async (request, { take }) => {
  const patch = await body(request, takePatchSchema);
  const answer = patchTake(database(), takeIdSchema.parse(take), patch);
  if (patch.path !== undefined) lookAtRecording(database(), answer.take.recordingId);
  return Response.json(answer);
});

export const DELETE = route((_request, { take }) =>
  Response.json({ change: removeTake(database(), takeIdSchema.parse(take)) }),
);
