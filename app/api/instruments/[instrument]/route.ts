import { database } from '@/db/open';
import { getInstrumentView, patchInstrument } from '@/lib/work/store';
import { instrumentIdSchema } from '@/shared/ids';
import { instrumentPatchSchema } from '@/shared/jobs';
import { onTicketOf } from '../../_http/on-ticket';
import { body, route } from '../../_http/route';

export const GET = route((_request, { instrument }) =>
  Response.json(getInstrumentView(database(), instrumentIdSchema.parse(instrument))),
);

/** `?job=`: the job on whose ticket it is changed, so that it is undone with that job. */
export const PATCH = route(async (request, { instrument }) => {
  const patch = await body(request, instrumentPatchSchema);
  return Response.json(
    patchInstrument(database(), instrumentIdSchema.parse(instrument), patch, onTicketOf(request)),
  );
});
