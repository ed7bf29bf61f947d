import { database } from '@/db/open';
import { faultsAnswer, faultsTable } from '@/lib/archive/store';
import { faultsQuerySchema } from '@/shared/reference';
import { query, route } from '../../../_http/route';
import { csvAnswer } from '../csv-answer';

export const dynamic = 'force-dynamic';

/** What was found by instrument type, and the work that was done about it. */
export const GET = route((request) => {
  const asked = query(request, faultsQuerySchema);
  const answer = faultsAnswer(database(), asked);
  return asked.as === 'csv'
    ? csvAnswer('faults-and-fixes', faultsTable(answer.faults))
    : Response.json(answer);
});
