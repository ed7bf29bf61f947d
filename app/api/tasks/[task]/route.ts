import { database } from '@/db/open';
import { cancelTask, getTask } from '@/lib/tasks/store';
import { taskIdSchema } from '@/shared/ids';
import { route } from '../../_http/route';

export const GET = route((_request, { task }) =>
  Response.json(getTask(database(), taskIdSchema.parse(task))),
);

/** Cancels. A task that is over stays as it ended. */
export const DELETE = route((_request, { task }) => Response.json(cancelTask(taskIdSchema.parse(task))));
