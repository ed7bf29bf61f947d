import { database } from '@/db/open';
import { removeOutcome } from '@/lib/wiring/store';
import { outcomeIdSchema } from '@/shared/ids';
import { route } from '../../_http/route';

export const DELETE = route((_request, { outcome }) =>
  Response.json({ change: removeOutcome(database(), outcomeIdSchema.parse(outcome)) }),
);
