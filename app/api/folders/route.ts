import { database } from '@/db/open';
import { addFolder, listFolders } from '@/lib/media/store';
import { newFolderSchema } from '@/shared/takes';
import { body, route } from '../_http/route';

export const dynamic = 'force-dynamic';

export const GET = route(() => Response.json({ folders: listFolders(database()) }));

export const POST = route(async (request) =>
  Response.json(addFolder(database(), await body(request, newFolderSchema)), { status: 201 }),
);
