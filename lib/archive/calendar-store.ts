import { eq } from 'drizzle-orm';
import type { Database } from '@/db/open';
import { settings } from '@/db/schema';
import { type ArchiveCalendar, archiveCalendarSchema } from '@/shared/archive';

const key = 'archiveCalendar';

/** When spring is, and where a week begins, in this workshop. */
export function calendarOf(db: Database): ArchiveCalendar {
  const row = db.select().from(settings).where(eq(settings.key, key)).get();
  return archiveCalendarSchema.parse(row?.value ?? {});
}

export function setCalendar(db: Database, calendar: ArchiveCalendar): void {
  db.insert(settings)
    .values({ key, value: calendar })
    .onConflictDoUpdate({ target: settings.key, set: { value: calendar } })
    .run();
}
