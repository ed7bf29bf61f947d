import { database } from '@/db/open';
import { patchReading, removeReading } from '@/lib/readings/store';
import { readingIdSchema } from '@/shared/ids';
import { readingPatchSchema } from '@/shared/readings';
import { body, route } from '../../_http/route';

export const PATCH = route(async (request, { reading }) =>
  Response.json(
    patchReading(database(), readingIdSchema.parse(reading), await body(request, readingPatchSchema)),
  ),
);

export const DELETE = route((_request, { reading }) =>
  Response.json({ change: removeReading(database(), readingIdSchema.parse(reading)) }),
);
