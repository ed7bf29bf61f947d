import { database } from '@/db/open';
import { addClaim } from '@/lib/work/store';
import { newClaimSchema } from '@/shared/claims';
import { instrumentIdSchema } from '@/shared/ids';
import { body, route } from '../../../_http/route';

export const POST = route(async (request, { instrument }) => {
  const wanted = await body(request, newClaimSchema);
  return Response.json(addClaim(database(), instrumentIdSchema.parse(instrument), wanted), { status: 201 });
});
