import { database } from '@/db/open';
import { searchArchive } from '@/lib/archive/store';
import { archiveQuerySchema } from '@/shared/archive';
import { query, route } from '../_http/route';

export const dynamic = 'force-dynamic';

/** The moments of all jobs that answer a question. */
export const GET = route((request) =>
  Response.json(searchArchive(database(), query(request, archiveQuerySchema))),
);
