import { undoChange } from '@/db/changes';
import { database } from '@/db/open';
import { changeIdSchema } from '@/shared/ids';
import { route } from '../../../_http/route';

export const POST = route((_request, { change }) =>
  Response.json({ undone: undoChange(database(), changeIdSchema.parse(change)) }),
);
