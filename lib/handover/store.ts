import { eq } from 'drizzle-orm';
import { GoneError } from '@/db/changes';
import type { Database } from '@/db/open';
import { jobs } from '@/db/schema';
import { type Chapter, chaptersOf } from '@/lib/film';
import { filmOf, markersOf } from '@/lib/film/store';
import type { JobId } from '@/shared/ids';

/** The chapters of a job's film, with a file name that any disk takes. */
export function chapterListOf(db: Database, jobId: JobId): { fileName: string; chapters: Chapter[] } {
  const job = db.select().from(jobs).where(eq(jobs.id, jobId)).get();
  if (!job) throw new GoneError('job');
  return {
    fileName: `job-${job.number}-chapters`,
    chapters: chaptersOf(filmOf(db, jobId), markersOf(db, jobId), job.title),
  };
}
