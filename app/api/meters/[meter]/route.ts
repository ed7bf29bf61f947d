import { database } from '@/db/open';
import { patchMeter, removeMeter } from '@/lib/readings/store';
import { meterIdSchema } from '@/shared/ids';
import { newMeterSchema } from '@/shared/readings';
import { body, route } from '../../_http/route';

export const PATCH = route(async (request, { meter }) =>
  Response.json(
    patchMeter(database(), meterIdSchema.parse(meter), await body(request, newMeterSchema.partial())),
  ),
);

export const DELETE = route((_request, { meter }) =>
  Response.json({ change: removeMeter(database(), meterIdSchema.parse(meter)) }),
);
