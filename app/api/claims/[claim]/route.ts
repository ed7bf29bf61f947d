import { database } from '@/db/open';
import { patchClaim, removeClaim } from '@/lib/work/store';
import { claimPatchSchema } from '@/shared/claims';
import { claimIdSchema } from '@/shared/ids';
import { onTicketOf } from '../../_http/on-ticket';
import { body, route } from '../../_http/route';

export const PATCH = route(async (request, { claim }) => {
  const patch = await body(request, claimPatchSchema);
  return Response.json(patchClaim(database(), claimIdSchema.parse(claim), patch, onTicketOf(request)));
});

export const DELETE = route((request, { claim }) =>
  Response.json({ change: removeClaim(database(), claimIdSchema.parse(claim), onTicketOf(request)) }),
);
