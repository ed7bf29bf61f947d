import { database } from '@/db/open';
import { getTake } from '@/lib/film/store';
import { makeViewingCopy } from '@/lib/media/store';
import { takeIdSchema } from '@/shared/ids';
import { route } from '../../../_http/route';

/** Starts making a copy that browsers can play. */
export const POST = route((_request, { take }) => {
  const { recordingId } = getTake(database(), takeIdSchema.parse(take));
  return Response.json({ task: makeViewingCopy(recordingId) }, { status: 202 });
});
