import { database, home } from '@/db/open';
import { listenTo } from '@/lib/narration/store';
import { takeIdSchema } from '@/shared/ids';
import { listenSchema } from '@/shared/narration-record';
import { body, route } from '../../../_http/route';

/** Has a speech model listen to the take. */
export const POST = route(async (request, { take }) => {
  const { model } = await body(request, listenSchema);
  return Response.json(
    { task: listenTo(database(), home(), takeIdSchema.parse(take), model) },
    { status: 202 },
  );
});
