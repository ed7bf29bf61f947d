import { eq, inArray } from 'drizzle-orm';
import { z } from 'zod';
import type { Database } from '@/db/open';
import { jobs, settings } from '@/db/schema';
import type { BundleReport } from '@/shared/bundle';
import { type JobId, jobIdSchema } from '@/shared/ids';

const key = 'bundlesBroughtIn';
/** Which job each bundle came from, by its opaque id there, and which it became here. */
const keptSchema = z.array(z.object({ from: jobIdSchema, jobId: jobIdSchema }));

/** Jobs of this workshop that a job of a bundle is or became already; newest first. Those in the bin count. */
export function jobsBefore(db: Database, from: JobId): BundleReport['before'] {
  const ids = keptIn(db).flatMap((each) => (each.from === from ? each.jobId : []));
  return db
    .select({ id: jobs.id, number: jobs.number, title: jobs.title })
    .from(jobs)
    .where(inArray(jobs.id, [from, ...ids]))
    .all()
    .sort((a, b) => b.number - a.number);
}

/** Remembers what a bundle became. */
export function rememberBundle(db: Database, from: JobId, jobId: JobId): void {
  const value = [...keptIn(db), { from, jobId }];
  db.insert(settings)
    .values({ key, value })
    .onConflictDoUpdate({ target: settings.key, set: { value } })
    .run();
}

function keptIn(db: Database): z.infer<typeof keptSchema> {
  const row = db.select().from(settings).where(eq(settings.key, key)).get();
  return row ? keptSchema.parse(row.value) : [];
}
