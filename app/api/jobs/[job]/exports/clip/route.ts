import { z } from 'zod';
import { database } from '@/db/open';
import { clipOf } from '@/lib/handover/store';
import { jobIdSchema, markerIdSchema, readingIdSchema } from '@/shared/ids';
import { query, route } from '../../../../_http/route';

const querySchema = z.object({
  line: z.union([markerIdSchema, readingIdSchema]),
  seconds: z.coerce.number().min(1).max(60).optional(),
});

/** A short clip of a marker or a reading, made as it is asked for. */
export const GET = route(async (request, { job }) => {
  const { line, seconds } = query(request, querySchema);
  const lengthMs = seconds === undefined ? null : Math.round(seconds * 1000);
  const { fileName, bytes } = await clipOf(database(), jobIdSchema.parse(job), line, lengthMs);
  return new Response(bytes, {
    headers: {
      'content-type': 'video/mp4',
      'content-disposition': `attachment; filename="${fileName}.mp4"`,
      'cache-control': 'no-store',
    },
  });
});
