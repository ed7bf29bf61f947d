import { database } from '@/db/open';
import { readingsAnswer, readingsTable } from '@/lib/archive/store';
import { readingsQuerySchema } from '@/shared/reference';
import { query, route } from '../../../_http/route';
import { csvAnswer } from '../csv-answer';

export const dynamic = 'force-dynamic';

/** How readings of a kind spread; with `reading`, where a new one stands among them. */
export const GET = route((request) => {
  const asked = query(request, readingsQuerySchema);
  const answer = readingsAnswer(database(), asked);
  return asked.as === 'csv'
    ? csvAnswer('readings', readingsTable(answer.kind, answer.groups))
    : Response.json(answer);
});
