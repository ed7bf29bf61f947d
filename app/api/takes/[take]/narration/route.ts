import { z } from 'zod';
import { database } from '@/db/open';
import { importToTake, removeNarration, shiftTake } from '@/lib/narration/store';
import { takeIdSchema } from '@/shared/ids';
import { importQuerySchema } from '@/shared/narration-record';
import { body, bytes, query, route } from '../../../_http/route';

/** A captions file (WebVTT, SubRip, timed text: told apart by content) for this take, in place of what was there. */
export const POST = route(async (request, { take }) => {
  const { name, offsetMs } = query(request, importQuerySchema);
  return Response.json(
    importToTake(database(), takeIdSchema.parse(take), { bytes: await bytes(request), name, offsetMs }),
    { status: 201 },
  );
});

const shiftSchema = z.strictObject({ byMs: z.int().min(-86_400_000).max(86_400_000) });

/** Moves all lines of the take, when captions run early or late. */
export const PATCH = route(async (request, { take }) => {
  const { byMs } = await body(request, shiftSchema);
  return Response.json({ change: shiftTake(database(), takeIdSchema.parse(take), byMs) });
});

export const DELETE = route((_request, { take }) =>
  Response.json({ change: removeNarration(database(), takeIdSchema.parse(take)) }),
);
