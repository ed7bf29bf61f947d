import { zipAnswer } from '@/app/_server/bundles';
import { database, home } from '@/db/open';
import { summaryPdfOf, writeBundle } from '@/lib/handover/store';
import { bundleQuerySchema } from '@/shared/bundle';
import { jobIdSchema } from '@/shared/ids';
import { query, route } from '../../../_http/route';

/** The file's name tells nobody whose job it is. */
export const GET = route(async (request, { job }) => {
  const id = jobIdSchema.parse(job);
  const wanted = query(request, bundleQuerySchema);
  const { fileName, stream } = await writeBundle(database(), home(), id, wanted, async () => {
    const { pdf } = await summaryPdfOf(database(), id, undefined);
    return new Map([['client-summary.pdf', Buffer.from(pdf)]]);
  });
  return zipAnswer(fileName, stream);
});
