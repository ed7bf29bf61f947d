import { asc, eq } from 'drizzle-orm';
import { type Edit, edit, GoneError } from '@/db/changes';
import { newId } from '@/db/ids';
import type { Database } from '@/db/open';
import { parts, workItems } from '@/db/schema';
import { momentInJob } from '@/lib/film/store';
import {
  type ChangeId,
  type JobId,
  type PartId,
  partIdSchema,
  type WorkItemId,
  workItemIdSchema,
} from '@/shared/ids';
import type { FilmMoment } from '@/shared/moments';
import {
  type NewPart,
  type NewWorkItem,
  type NewWorkItemRead,
  newPartSchema,
  newWorkItemSchema,
  type Part,
  type PartPatch,
  type WorkItem,
  type WorkItemPatch,
} from '@/shared/work';
import { refuseIfChanged } from './meanwhile';
import { settledPrice } from './price';
import { jobRow } from './row-store';
import { workshopOf } from './workshop-store';

/** What is to be done in a job, in the order it was written down. */
export function workItemsOf(db: Database, jobId: JobId): WorkItem[] {
  return db
    .select()
    .from(workItems)
    .where(eq(workItems.jobId, jobId))
    .orderBy(asc(workItems.createdAt), asc(workItems.id))
    .all();
}

export function partsOf(db: Database, jobId: JobId): Part[] {
  return db
    .select()
    .from(parts)
    .where(eq(parts.jobId, jobId))
    .orderBy(asc(parts.createdAt), asc(parts.id))
    .all();
}

export function addWorkItem(
  db: Database,
  jobId: JobId,
  wanted: NewWorkItem,
): { change: ChangeId; item: WorkItem } {
  jobRow(db, jobId);
  const { change, value } = edit(db, jobId, `“${wanted.what}” ${wanted.origin ?? 'asked'}`, (e) =>
    insertWorkItem(db, e, jobId, wanted),
  );
  return { change, item: value };
}

/** Writes a work item down as part of a larger change. */
export function insertWorkItem(db: Database, e: Edit, jobId: JobId, wanted: NewWorkItem): WorkItem {
  const row = workItemRowFor(db, jobId, newWorkItemSchema.parse(wanted), Date.now());
  checkMoments(db, jobId, [row.begun, row.ended]);
  e.insert('workItems', row);
  return row;
}

/** The row of a new work item; its price has a currency. */
export function workItemRowFor(
  db: Database,
  jobId: JobId,
  wanted: Omit<NewWorkItemRead, 'begun' | 'ended'> & Partial<Pick<WorkItem, 'begun' | 'ended'>>,
  createdAt: number,
): WorkItem {
  const item = { begun: null, ended: null, ...wanted };
  const price = settledPrice(item, workshopOf(db).currency);
  return { id: newId(workItemIdSchema), jobId, ...item, ...price, createdAt };
}

export function patchWorkItem(
  db: Database,
  id: WorkItemId,
  { was, ...patch }: WorkItemPatch,
): { change: ChangeId; item: WorkItem } {
  const row = workItemRow(db, id);
  refuseIfChanged(row, patch, was);
  checkMoments(db, row.jobId, [patch.begun, patch.ended]);
  const next = { ...patch, ...settledPrice({ ...row, ...patch }, workshopOf(db).currency) };
  const label = patch.outcome === undefined ? `“${row.what}” changed` : `“${row.what}”: ${patch.outcome}`;
  const { change } = edit(db, row.jobId, label, (e) => e.update('workItems', id, next));
  return { change, item: workItemRow(db, id) };
}

export function removeWorkItem(db: Database, id: WorkItemId): ChangeId {
  const row = workItemRow(db, id);
  return edit(db, row.jobId, `“${row.what}” taken off`, (e) => e.remove('workItems', id)).change;
}

export function addPart(db: Database, jobId: JobId, wanted: NewPart): { change: ChangeId; part: Part } {
  jobRow(db, jobId);
  const part = newPartSchema.parse(wanted);
  checkMoments(db, jobId, [part.moment]);
  const row = { id: newId(partIdSchema), jobId, ...part, createdAt: Date.now() };
  const { change } = edit(db, jobId, `${part.what} ${part.deed}`, (e) => e.insert('parts', row));
  return { change, part: row };
}

export function patchPart(
  db: Database,
  id: PartId,
  { was, ...patch }: PartPatch,
): { change: ChangeId; part: Part } {
  const row = partRow(db, id);
  refuseIfChanged(row, patch, was);
  checkMoments(db, row.jobId, [patch.moment]);
  const { change } = edit(db, row.jobId, `part “${row.what}” changed`, (e) => e.update('parts', id, patch));
  return { change, part: partRow(db, id) };
}

export function removePart(db: Database, id: PartId): ChangeId {
  const row = partRow(db, id);
  return edit(db, row.jobId, `part “${row.what}” taken off`, (e) => e.remove('parts', id)).change;
}

function checkMoments(db: Database, jobId: JobId, moments: readonly (FilmMoment | null | undefined)[]): void {
  for (const moment of moments) if (moment) momentInJob(db, jobId, moment.takeId, moment.ms);
}

export function workItemRow(db: Database, id: WorkItemId) {
  const row = db.select().from(workItems).where(eq(workItems.id, id)).get();
  if (!row) throw new GoneError('work item');
  return row;
}

function partRow(db: Database, id: PartId) {
  const row = db.select().from(parts).where(eq(parts.id, id)).get();
  if (!row) throw new GoneError('part');
  return row;
}
