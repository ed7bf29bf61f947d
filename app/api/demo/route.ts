import { join } from 'node:path';
import { database } from '@/db/open';
import { loadDemonstration } from '@/lib/work/store';
import { route } from '../_http/route';

/** Loads the demonstration job, or finds it where it is loaded already. */
export const POST = route(() => {
  const media = join(process.cwd(), 'db', 'demo', 'media');
  return Response.json({ job: loadDemonstration(database(), media) }, { status: 201 });
});
