import { database } from '@/db/open';
import { addWorkItem, jobRow, partsOf, workItemsOf } from '@/lib/work/store';
import { jobIdSchema } from '@/shared/ids';
import { newWorkItemSchema } from '@/shared/work';
import { body, route } from '../../../_http/route';

export const GET = route((_request, { job }) => {
  const { id } = jobRow(database(), jobIdSchema.parse(job));
  return Response.json({ items: workItemsOf(database(), id), parts: partsOf(database(), id) });
});

export const POST = route(async (request, { job }) => {
  const wanted = await body(request, newWorkItemSchema);
  return Response.json(addWorkItem(database(), jobIdSchema.parse(job), wanted), { status: 201 });
});
