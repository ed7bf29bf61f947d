import { database } from '@/db/open';
import { tableOf } from '@/lib/archive/store';
import { csvQuerySchema } from '@/shared/archive-exports';
import { query, route } from '../../../_http/route';
import { downloadName, textDownload } from '../download';

export const dynamic = 'force-dynamic';

/** A table of the chosen part. RFC 4180, section 3: the type and its parameters. */
export const GET = route((request) => {
  const { scope, which, ...chosen } = query(request, csvQuerySchema);
  return textDownload(
    `${downloadName(scope, which)}.csv`,
    'text/csv; charset=utf-8; header=present',
    tableOf(database(), chosen, which, scope),
  );
});
