import { database } from '@/db/open';
import { calendarOf, setCalendar } from '@/lib/archive/store';
import { archiveCalendarSchema } from '@/shared/archive';
import { body, route } from '../../_http/route';

export const dynamic = 'force-dynamic';

export const GET = route(() => Response.json(calendarOf(database())));

/** Hemisphere and first day of the week, which spoken times follow from. */
export const PUT = route(async (request) => {
  const calendar = await body(request, archiveCalendarSchema);
  setCalendar(database(), calendar);
  return Response.json(calendar);
});
