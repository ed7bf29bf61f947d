import { database } from '@/db/open';
import { pickupsAnswer, pickupsTable } from '@/lib/archive/store';
import { pickupsQuerySchema } from '@/shared/reference';
import { query, route } from '../../../_http/route';
import { csvAnswer } from '../csv-answer';

export const dynamic = 'force-dynamic';

/** Pickups that were traced; with `colours`, the cables like the one in the hand. */
export const GET = route((request) => {
  const asked = query(request, pickupsQuerySchema);
  const answer = pickupsAnswer(database(), asked);
  return asked.as === 'csv'
    ? csvAnswer('pickups-traced', pickupsTable(answer.pickups))
    : Response.json(answer);
});
