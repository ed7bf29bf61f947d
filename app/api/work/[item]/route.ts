import { database } from '@/db/open';
import { patchWorkItem, removeWorkItem } from '@/lib/work/store';
import { workItemIdSchema } from '@/shared/ids';
import { workItemPatchSchema } from '@/shared/work';
import { body, route } from '../../_http/route';

export const PATCH = route(async (request, { item }) => {
  const patch = await body(request, workItemPatchSchema);
  return Response.json(patchWorkItem(database(), workItemIdSchema.parse(item), patch));
});

export const DELETE = route((_request, { item }) =>
  Response.json({ change: removeWorkItem(database(), workItemIdSchema.parse(item)) }),
);
