import { database } from '@/db/open';
import { getTask } from '@/lib/tasks/store';
import { taskIdSchema } from '@/shared/ids';
import { taskEvents } from '../../../_http/events';
import { route } from '../../../_http/route';

export const GET = route((request, { task }) =>
  taskEvents(request, getTask(database(), taskIdSchema.parse(task))),
);
