import { database } from '@/db/open';
import { addTrace, worksheetsOf } from '@/lib/wiring/store';
import { jobRow } from '@/lib/work/store';
import { jobIdSchema } from '@/shared/ids';
import { newTraceSchema } from '@/shared/traces';
import { body, route } from '../../../_http/route';

export const GET = route((_request, { job }) =>
  Response.json({ traces: worksheetsOf(database(), jobRow(database(), jobIdSchema.parse(job)).id) }),
);

export const POST = route(async (request, { job }) => {
  const { id } = jobRow(database(), jobIdSchema.parse(job));
  return Response.json(addTrace(database(), id, await body(request, newTraceSchema)), { status: 201 });
});
