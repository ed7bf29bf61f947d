import { eq } from 'drizzle-orm';
import { z } from 'zod';
import type { Edit } from '@/db/changes';
import type { Database } from '@/db/open';
import { handOvers } from '@/db/schema';
import { jobRow } from '@/lib/work/store';
import { type CutSettings, cutSettingsSchema } from '@/shared/cut';
import { type HandOverId, handOverIdSchema, type JobId } from '@/shared/ids';
import { keptNotesSchema, videoAddressSchema } from '@/shared/notes';
import { keptSummarySchema } from '@/shared/summary';

const notesSchema = z.object({
  sections: keptNotesSchema.default([]),
  /** Where the video will be seen. */
  videoAddress: videoAddressSchema.nullable().default(null),
});

/** What a person chose and wrote for the hand-over of a job. */
export interface KeptHandOver {
  cut: CutSettings;
  notes: z.infer<typeof notesSchema>;
  summary: z.infer<typeof keptSummarySchema>;
  /** Ids of private findings that may go public all the same. */
  allowed: string[];
}

/** @throws GoneError where the job is not there */
export function keptOf(db: Database, jobId: JobId): KeptHandOver {
  jobRow(db, jobId);
  const row = db.select().from(handOvers).where(eq(handOvers.jobId, jobId)).get();
  return {
    cut: cutSettingsSchema.parse(row?.cut ?? {}),
    notes: notesSchema.parse(row?.notes ?? {}),
    summary: keptSummarySchema.parse(row?.summary ?? {}),
    allowed: row?.allowed ?? [],
  };
}

/** Writes part of it down as part of a change. */
export function keep(db: Database, e: Edit, jobId: JobId, part: Partial<KeptHandOver>): void {
  const id = rowIdOf(jobId);
  const isNew = !db.select({ id: handOvers.id }).from(handOvers).where(eq(handOvers.id, id)).get();
  if (isNew) e.insert('handOvers', { ...keptOf(db, jobId), ...part, id, jobId, createdAt: Date.now() });
  else e.update('handOvers', id, part);
}

function rowIdOf(jobId: JobId): HandOverId {
  return handOverIdSchema.parse(jobId);
}
