import { eq } from 'drizzle-orm';
import { GoneError } from '@/db/changes';
import type { Database } from '@/db/open';
import { type clients, type instruments, jobs } from '@/db/schema';
import type { Client } from '@/shared/clients';
import type { JobId } from '@/shared/ids';
import type { Instrument, Job } from '@/shared/jobs';
import { dayOfJob } from './days';

export type JobRow = typeof jobs.$inferSelect;

/** Throws where the job is not there. A job in the bin counts: its change can still be undone. */
export function jobRow(db: Database, id: JobId): JobRow {
  const row = db.select().from(jobs).where(eq(jobs.id, id)).get();
  if (!row) throw new GoneError('job');
  return row;
}

export function asJob({ clientId: _, instrumentId: __, ...job }: JobRow): Job {
  return { ...job, receivedOn: dayOfJob(job) };
}

export function asInstrument({ createdAt: _, ...instrument }: typeof instruments.$inferSelect): Instrument {
  return instrument;
}

export function asClient({ createdAt: _, ...client }: typeof clients.$inferSelect): Client {
  return client;
}
