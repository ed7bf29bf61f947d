import { database } from '@/db/open';
import { removeCut } from '@/lib/handover/store';
import { madeCutIdSchema } from '@/shared/ids';
import { route } from '../../_http/route';

/** Takes it off the list; the file stays. */
export const DELETE = route((_request, { cut }) =>
  Response.json({ change: removeCut(database(), madeCutIdSchema.parse(cut)) }),
);
