import { database } from '@/db/open';
import { decideProposal } from '@/lib/work/store';
import { proposalIdSchema } from '@/shared/ids';
import { decideSchema } from '@/shared/narration-record';
import { body, route } from '../../_http/route';

export const POST = route(async (request, { proposal }) =>
  Response.json(
    decideProposal(database(), proposalIdSchema.parse(proposal), await body(request, decideSchema)),
  ),
);
