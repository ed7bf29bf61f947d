import { database } from '@/db/open';
import { addMeter, listMeters } from '@/lib/readings/store';
import { newMeterSchema } from '@/shared/readings';
import { body, route } from '../_http/route';

export const dynamic = 'force-dynamic';

export const GET = route(() => Response.json({ meters: listMeters(database()) }));

export const POST = route(async (request) =>
  Response.json(addMeter(database(), await body(request, newMeterSchema)), { status: 201 }),
);
