import { database } from '@/db/open';
import { decide } from '@/lib/narration/store';
import { proposalIdSchema } from '@/shared/ids';
import { decideSchema } from '@/shared/narration-record';
import { body, route } from '../../_http/route';

export const POST = route(async (request, { proposal }) =>
  Response.json(decide(database(), proposalIdSchema.parse(proposal), await body(request, decideSchema))),
);
