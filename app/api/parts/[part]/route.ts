import { database } from '@/db/open';
import { patchPart, removePart } from '@/lib/work/store';
import { partIdSchema } from '@/shared/ids';
import { partPatchSchema } from '@/shared/work';
import { body, route } from '../../_http/route';

export const PATCH = route(async (request, { part }) => {
  const patch = await body(request, partPatchSchema);
  return Response.json(patchPart(database(), partIdSchema.parse(part), patch));
});

export const DELETE = route((_request, { part }) =>
  Response.json({ change: removePart(database(), partIdSchema.parse(part)) }),
);
