import { z } from 'zod';
import { database, home } from '@/db/open';
import { getTake } from '@/lib/film/store';
import { peaksFileOf } from '@/lib/media/store';
import { takeIdSchema } from '@/shared/ids';
import { query, route } from '../../../_http/route';

const querySchema = z.object({ level: z.coerce.number().int().positive() });

/** One zoom level of the sound: signed bytes, lowest and highest sample by turns. Grows while the sound is read. */
export const GET = route(async (request, { take }) => {
  const { recordingId } = getTake(database(), takeIdSchema.parse(take));
  const bytes = await peaksFileOf(home(), recordingId, query(request, querySchema).level);
  return new Response(new Uint8Array(bytes), {
    headers: { 'content-type': 'application/octet-stream', 'cache-control': 'no-store' },
  });
});
