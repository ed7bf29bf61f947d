import { database } from '@/db/open';

export const dynamic = 'force-dynamic';

export function GET(): Response {
  database().$client.prepare('select 1').get();
  return Response.json({ ok: true });
}
