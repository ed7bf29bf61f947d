import { database } from '@/db/open';
import { forgetFolder, setClockOffset } from '@/lib/media/store';
import { folderIdSchema } from '@/shared/ids';
import { folderPatchSchema } from '@/shared/takes';
import { body, route } from '../../_http/route';

export const PATCH = route(async (request, { folder }) => {
  const { clockOffsetMinutes } = await body(request, folderPatchSchema);
  return Response.json(setClockOffset(database(), folderIdSchema.parse(folder), clockOffsetMinutes));
});

export const DELETE = route((_request, { folder }) =>
  Response.json({ change: forgetFolder(database(), folderIdSchema.parse(folder)) }),
);
