import { database } from '@/db/open';
import { loadOlderJobs } from '@/lib/work/store';
import { route } from '../../_http/route';

/** Loads the older demonstration jobs, or finds them where they are loaded already: how many there are. */
export const POST = route(() => Response.json({ jobs: loadOlderJobs(database()) }, { status: 201 }));
