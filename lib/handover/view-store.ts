import type { Database } from '@/db/open';
import type { HandOverView } from '@/shared/hand-over';
import type { JobId } from '@/shared/ids';
import { getCutView } from './cut-store';
import { handoverFactsOf } from './facts-store';
import { notesView } from './notes-store';
import { chaptersOfPublished } from './published-chapters';
import { summaryView } from './summary-store';

/** The four documents of a job, as they stand. */
export function getHandOverView(db: Database, jobId: JobId): HandOverView {
  const facts = handoverFactsOf(db, jobId);
  const { record, published } = facts;
  return {
    chapters: chaptersOfPublished(published, record.markers, record.job.title),
    notes: notesView(db, facts),
    summary: summaryView(db, facts),
    cut: getCutView(db, jobId, facts),
  };
}
