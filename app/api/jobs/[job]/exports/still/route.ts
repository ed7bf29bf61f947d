import { z } from 'zod';
import { database } from '@/db/open';
import { captionedStillOf } from '@/lib/handover/store';
import { jobIdSchema, markerIdSchema, readingIdSchema } from '@/shared/ids';
import { query, route } from '../../../../_http/route';

const querySchema = z.object({ line: z.union([markerIdSchema, readingIdSchema]) });

/** The picture of a marker or a reading in full size, with its caption below. */
export const GET = route(async (request, { job }) => {
  const { line } = query(request, querySchema);
  const { fileName, jpeg } = await captionedStillOf(database(), jobIdSchema.parse(job), line);
  return new Response(jpeg, {
    headers: {
      'content-type': 'image/jpeg',
      'content-disposition': `attachment; filename="${fileName}.jpg"`,
      'cache-control': 'no-store',
    },
  });
});
