import { database } from '@/db/open';
import { addPart } from '@/lib/work/store';
import { jobIdSchema } from '@/shared/ids';
import { newPartSchema } from '@/shared/work';
import { body, route } from '../../../_http/route';

export const POST = route(async (request, { job }) => {
  const wanted = await body(request, newPartSchema);
  return Response.json(addPart(database(), jobIdSchema.parse(job), wanted), { status: 201 });
});
