import { database } from '@/db/open';
import { undoBacklog, viewBacklog } from '@/lib/archive/store';
import { backlogIdSchema, backlogQuerySchema } from '@/shared/backlog';
import { query, route } from '../../../_http/route';

export const GET = route((request, { backlog }) => {
  const { rule } = query(request, backlogQuerySchema);
  return Response.json(viewBacklog(database(), backlogIdSchema.parse(backlog), rule));
});

/** Takes the import back: its jobs go into the bin. */
export const DELETE = route((_request, { backlog }) =>
  Response.json(undoBacklog(database(), backlogIdSchema.parse(backlog))),
);
