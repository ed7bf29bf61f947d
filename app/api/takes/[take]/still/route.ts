import { z } from 'zod';
import { database, home } from '@/db/open';
import { getTake } from '@/lib/film/store';
import { exactStillOf, stripStillOf } from '@/lib/media/store';
import { takeIdSchema } from '@/shared/ids';
import { query, route } from '../../../_http/route';

const querySchema = z.object({
  ms: z.coerce.number().int().min(0),
  size: z.enum(['strip', 'full']).default('full'),
});

/** `strip`: the nearest small still already made. `full`: the very picture shown at that moment. */
export const GET = route(async (request, { take }) => {
  const { ms, size } = query(request, querySchema);
  const { recordingId } = getTake(database(), takeIdSchema.parse(take));
  const bytes =
    size === 'strip'
      ? await stripStillOf(database(), home(), recordingId, ms)
      : await exactStillOf(database(), recordingId, ms);
  return new Response(new Uint8Array(bytes), {
    headers: { 'content-type': 'image/jpeg', 'cache-control': 'private, max-age=3600' },
  });
});
