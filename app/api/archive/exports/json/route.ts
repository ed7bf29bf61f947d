import { database } from '@/db/open';
import { publicJsonOf, wholeJsonOf } from '@/lib/archive/store';
import { dayOf } from '@/lib/work';
import { jsonQuerySchema } from '@/shared/archive-exports';
import { query, route } from '../../../_http/route';
import { downloadName, textDownload } from '../download';

export const dynamic = 'force-dynamic';

/** The chosen part as JSON: what may be public, or everything where that is asked for. */
export const GET = route((request) => {
  const { scope, ...chosen } = query(request, jsonQuerySchema);
  const name = `${downloadName(scope, dayOf(Date.now()))}.json`;
  const db = database();
  const json = scope === 'public' ? publicJsonOf(db, chosen) : wholeJsonOf(db, chosen);
  return textDownload(name, 'application/json', json);
});
