import type { Database } from '@/db/open';
import type { Chapter } from '@/lib/film';
import type { JobId } from '@/shared/ids';
import { handoverFactsOf } from './facts-store';
import { findingsOf, refuseFindings } from './findings-store';

/**
 * The chapters of a job's published film, with a file name that any disk takes.
 * @throws FindingsError where a title holds something private on which nobody has decided
 */
export function chapterListOf(
  db: Database,
  jobId: JobId,
): { fileName: string; chapters: readonly Chapter[] } {
  const facts = handoverFactsOf(db, jobId);
  refuseFindings(findingsOf(db, jobId, facts), 'chapters');
  return { fileName: `job-${facts.record.job.number}-chapters`, chapters: facts.chapters };
}
