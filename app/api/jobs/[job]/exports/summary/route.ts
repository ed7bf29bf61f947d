import { z } from 'zod';
import { database } from '@/db/open';
import { summaryPdfOf } from '@/lib/handover/store';
import { jobIdSchema } from '@/shared/ids';
import { summaryPaperSchema } from '@/shared/summary';
import { query, route } from '../../../../_http/route';

const querySchema = z.object({ paper: summaryPaperSchema.optional() });

export const GET = route(async (request, { job }) => {
  const { paper } = query(request, querySchema);
  const { fileName, pdf } = await summaryPdfOf(database(), jobIdSchema.parse(job), paper);
  return new Response(Buffer.from(pdf), {
    headers: {
      'content-type': 'application/pdf',
      'content-disposition': `inline; filename="${fileName}.pdf"`,
      'cache-control': 'no-store',
    },
  });
});
