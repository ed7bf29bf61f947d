import { database } from '@/db/open';
import { addOutcome } from '@/lib/wiring/store';
import { traceIdSchema } from '@/shared/ids';
import { newOutcomeSchema } from '@/shared/traces';
import { body, route } from '../../../_http/route';

export const POST = route(async (request, { trace }) =>
  Response.json(addOutcome(database(), traceIdSchema.parse(trace), await body(request, newOutcomeSchema)), {
    status: 201,
  }),
);
