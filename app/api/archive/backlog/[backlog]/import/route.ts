import { database } from '@/db/open';
import { orderImport } from '@/lib/archive/store';
import { backlogIdSchema, importOrderSchema } from '@/shared/backlog';
import { body, route } from '../../../../_http/route';

/** Starts the import, or goes on with it. */
export const POST = route(async (request, { backlog }) => {
  const wanted = await body(request, importOrderSchema);
  const task = orderImport(database(), backlogIdSchema.parse(backlog), wanted);
  return Response.json({ task }, { status: 202, headers: { location: `/api/tasks/${task.id}` } });
});
