import { database } from '@/db/open';
import { patchMarker, removeMarker } from '@/lib/film/store';
import { markerIdSchema } from '@/shared/ids';
import { markerPatchSchema } from '@/shared/markers';
import { body, route } from '../../_http/route';

export const PATCH = route(async (request, { marker }) =>
  Response.json(
    patchMarker(database(), markerIdSchema.parse(marker), await body(request, markerPatchSchema)),
  ),
);

export const DELETE = route((_request, { marker }) =>
  Response.json({ change: removeMarker(database(), markerIdSchema.parse(marker)) }),
);
