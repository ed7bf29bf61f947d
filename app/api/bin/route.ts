import { database } from '@/db/open';
import { listBin } from '@/lib/work/store';
import { route } from '../_http/route';

export const dynamic = 'force-dynamic';

/** Jobs deleted in the last 30 days. */
export const GET = route(() => Response.json({ jobs: listBin(database()) }));
