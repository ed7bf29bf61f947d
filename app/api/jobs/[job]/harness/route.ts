import { database } from '@/db/open';
import { getJackView, putHarness, removeHarness } from '@/lib/wiring/store';
import { jobRow } from '@/lib/work/store';
import { jobIdSchema } from '@/shared/ids';
import { harnessSchema } from '@/shared/jack';
import { body, route } from '../../../_http/route';

export const GET = route((_request, { job }) => {
  const { id } = jobRow(database(), jobIdSchema.parse(job));
  return Response.json(getJackView(database(), id));
});

export const PUT = route(async (request, { job }) => {
  const { id } = jobRow(database(), jobIdSchema.parse(job));
  return Response.json(putHarness(database(), id, await body(request, harnessSchema)));
});

export const DELETE = route((_request, { job }) => {
  const { id } = jobRow(database(), jobIdSchema.parse(job));
  return Response.json({ change: removeHarness(database(), id) });
});
