import { database } from '@/db/open';
import { getTake } from '@/lib/film/store';
import { lookAgain } from '@/lib/media/store';
import { takeIdSchema } from '@/shared/ids';
import { route } from '../../../_http/route';

/** Looks at the recording again: finds it where it lies now, or tries once more what failed. */
export const POST = route(async (_request, { take }) => {
  const id = takeIdSchema.parse(take);
  const task = await lookAgain(database(), getTake(database(), id).recordingId);
  return Response.json({ take: getTake(database(), id), task }, { status: 202 });
});
