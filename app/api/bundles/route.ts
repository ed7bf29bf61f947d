import { sentBody } from '@/app/_server/bundles';
import { database, home } from '@/db/open';
import { bringInBundle } from '@/lib/handover/store';
import { route } from '../_http/route';

/** The body is the ZIP itself. */
export const POST = route(async (request) =>
  Response.json(await bringInBundle(database(), home(), sentBody(request)), { status: 201 }),
);
