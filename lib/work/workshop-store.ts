import { eq } from 'drizzle-orm';
import type { Database } from '@/db/open';
import { settings } from '@/db/schema';
import { type Workshop, workshopSchema } from '@/shared/workshop';

/** The workshop as its settings tell; a new one has no name yet. */
export function workshopOf(db: Database): Workshop {
  const row = db.select().from(settings).where(eq(settings.key, 'workshop')).get();
  return workshopSchema.parse(row?.value ?? {});
}

export function setWorkshop(db: Database, workshop: Workshop): void {
  db.insert(settings)
    .values({ key: 'workshop', value: workshop })
    .onConflictDoUpdate({ target: settings.key, set: { value: workshop } })
    .run();
}
