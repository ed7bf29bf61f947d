import { database } from '@/db/open';
import { correctLine } from '@/lib/narration/store';
import { narrationLineIdSchema } from '@/shared/ids';
import { linePatchSchema } from '@/shared/narration-record';
import { body, route } from '../../_http/route';

/** Corrects the words of a line; its time stays. */
export const PATCH = route(async (request, { line }) => {
  const { text } = await body(request, linePatchSchema);
  return Response.json({ change: correctLine(database(), narrationLineIdSchema.parse(line), text) });
});
