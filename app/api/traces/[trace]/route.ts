import { database } from '@/db/open';
import { getTraceView, patchTrace, removeTrace } from '@/lib/wiring/store';
import { traceIdSchema } from '@/shared/ids';
import { tracePatchSchema } from '@/shared/traces';
import { body, route } from '../../_http/route';

export const GET = route((_request, { trace }) =>
  Response.json(getTraceView(database(), traceIdSchema.parse(trace))),
);

export const PATCH = route(async (request, { trace }) =>
  Response.json(patchTrace(database(), traceIdSchema.parse(trace), await body(request, tracePatchSchema))),
);

export const DELETE = route((_request, { trace }) =>
  Response.json({ change: removeTrace(database(), traceIdSchema.parse(trace)) }),
);
