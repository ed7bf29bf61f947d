import { database } from '@/db/open';
import { recordingsIn } from '@/lib/media/store';
import { folderIdSchema } from '@/shared/ids';
import { route } from '../../../_http/route';

export const GET = route(async (_request, { folder }) =>
  Response.json({ recordings: await recordingsIn(database(), folderIdSchema.parse(folder)) }),
);
