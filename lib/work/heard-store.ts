import { and, eq } from 'drizzle-orm';
import type { Edit } from '@/db/changes';
import type { Database } from '@/db/open';
import { proposals, workItems } from '@/db/schema';
import { decide, decideAll, type HeardRow } from '@/lib/narration/store';
import type { JobId, ProposalId } from '@/shared/ids';
import { workItemIdSchema } from '@/shared/ids';
import type { FilmMoment } from '@/shared/moments';
import type { HeardProposal, ProposalType } from '@/shared/narration';
import type { Decide } from '@/shared/narration-record';
import type { NewWorkItem, WorkItem } from '@/shared/work';
import { insertWorkItem } from './item-store';

type HeardWork = Extract<HeardProposal, { type: 'work' }>;

/** Accepts or dismisses one proposal; what was heard about the work goes on the ticket. */
export function decideProposal(db: Database, id: ProposalId, wanted: Decide) {
  return decide(db, id, wanted, keepWork);
}

/** Decides on all open proposals of a type. */
export function decideProposals(
  db: Database,
  jobId: JobId,
  type: ProposalType,
  decision: Decide['decision'],
) {
  return decideAll(db, jobId, type, decision, keepWork);
}

/** A promise becomes a work item; what became of a promise ends the item that it made. */
function keepWork(db: Database, e: Edit, row: HeardRow, heard: HeardWork): string {
  const moment = { takeId: row.takeId, ms: row.startMs };
  const promised = row.promisedAt && itemPromisedAt(db, row.jobId, row.promisedAt);
  const { outcome, description, origin, charge } = heard.payload;
  if (promised && outcome !== 'promised') {
    e.update('workItems', promised.id, { outcome, ended: moment });
    return promised.id;
  }
  const isOpen = outcome === 'promised';
  const item: NewWorkItem = {
    what: description,
    origin,
    charge: charge === 'free' ? 'free' : null,
    outcome: isOpen ? 'open' : outcome,
    begun: isOpen ? moment : row.promisedAt,
    ended: isOpen ? null : moment,
  };
  return insertWorkItem(db, e, row.jobId, item).id;
}

/** The item that the promise at this moment made, where it was accepted. */
function itemPromisedAt(db: Database, jobId: JobId, { takeId, ms }: FilmMoment): WorkItem | null {
  const rows = db
    .select({ recordId: proposals.recordId })
    .from(proposals)
    .where(and(eq(proposals.jobId, jobId), eq(proposals.takeId, takeId), eq(proposals.startMs, ms)))
    .all();
  for (const { recordId } of rows) {
    const id = workItemIdSchema.safeParse(recordId);
    const item = id.success && db.select().from(workItems).where(eq(workItems.id, id.data)).get();
    if (item) return item;
  }
  return null;
}
