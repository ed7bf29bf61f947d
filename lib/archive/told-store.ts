import { and, asc, eq, inArray, isNull } from 'drizzle-orm';
import type { Database } from '@/db/open';
import {
  claims,
  clients,
  instruments,
  jobs,
  markers,
  outcomes,
  parts,
  readings,
  traces,
  workItems,
} from '@/db/schema';
import { takesOfJobs } from '@/lib/film/store';
import { dayOf } from '@/lib/work';
import type { JobId, MarkerId, ReadingId, TakeId } from '@/shared/ids';
import type { Take } from '@/shared/takes';
import type { ToldJob } from './things';

/** What is told of a job where not all of its markers and readings are wanted, which may be hundreds. */
export interface Only {
  markers: readonly MarkerId[];
  readings: readonly ReadingId[];
}

/** The records of jobs that are not in the bin, each in a lasting order, in a handful of queries however many. */
export function toldJobs(db: Database, ids: readonly JobId[], only?: Only): Map<JobId, ToldJob> {
  if (ids.length === 0) return new Map();
  const of = [...ids];
  const rows = db
    .select({ job: jobs, instrument: instruments, client: clients })
    .from(jobs)
    .innerJoin(instruments, eq(instruments.id, jobs.instrumentId))
    .leftJoin(clients, eq(clients.id, jobs.clientId))
    .where(and(inArray(jobs.id, of), isNull(jobs.deletedAt)))
    .all();
  const takes = takesOfJobs(db, of);
  const record = {
    markers: byJob(
      db
        .select()
        .from(markers)
        .where(only ? inArray(markers.id, [...only.markers]) : inArray(markers.jobId, of))
        .orderBy(asc(markers.id))
        .all(),
    ),
    readings: byJob(
      db
        .select()
        .from(readings)
        .where(only ? inArray(readings.id, [...only.readings]) : inArray(readings.jobId, of))
        .orderBy(asc(readings.createdAt), asc(readings.id))
        .all(),
    ),
    traces: byJob(db.select().from(traces).where(inArray(traces.jobId, of)).orderBy(asc(traces.id)).all()),
    outcomes: byJob(
      db.select().from(outcomes).where(inArray(outcomes.jobId, of)).orderBy(asc(outcomes.id)).all(),
    ),
    work: byJob(
      db.select().from(workItems).where(inArray(workItems.jobId, of)).orderBy(asc(workItems.id)).all(),
    ),
    parts: byJob(db.select().from(parts).where(inArray(parts.jobId, of)).orderBy(asc(parts.id)).all()),
    claims: claimsByJob(
      db,
      rows.map(({ instrument }) => instrument.id),
    ),
  };
  return new Map(
    rows.map(({ job, instrument, client }) => [
      job.id,
      {
        job: { ...job, receivedOn: receivedOn(job) },
        instrument,
        client,
        takes: (takes.get(job.id) ?? []).map((take) => ({
          id: take.id,
          day: filmedOn(take, receivedOn(job)),
          hasPicture: take.stills.length > 0,
        })),
        markers: record.markers.get(job.id) ?? [],
        readings: record.readings.get(job.id) ?? [],
        traces: record.traces.get(job.id) ?? [],
        outcomes: record.outcomes.get(job.id) ?? [],
        work: record.work.get(job.id) ?? [],
        parts: record.parts.get(job.id) ?? [],
        claims: record.claims.get(job.id) ?? [],
      },
    ]),
  );
}

function byJob<R extends { jobId: JobId }>(rows: readonly R[]): Map<JobId, R[]> {
  const map = new Map<JobId, R[]>();
  for (const row of rows) {
    const own = map.get(row.jobId);
    if (own) own.push(row);
    else map.set(row.jobId, [row]);
  }
  return map;
}

/** A claim stands with the job it came up in; one that came up in none, with the newest job of the instrument. */
function claimsByJob(db: Database, instrumentIds: readonly (typeof instruments.$inferSelect.id)[]) {
  const rows = db
    .select()
    .from(claims)
    .where(inArray(claims.instrumentId, [...instrumentIds]))
    .orderBy(asc(claims.id))
    .all();
  const loose = rows.filter(({ jobId }) => jobId === null).map(({ instrumentId }) => instrumentId);
  const newest = new Map(
    (loose.length === 0
      ? []
      : db
          .select({ id: jobs.id, instrumentId: jobs.instrumentId })
          .from(jobs)
          .where(and(inArray(jobs.instrumentId, loose), isNull(jobs.deletedAt)))
          .orderBy(asc(jobs.number))
          .all()
    ).map(({ id, instrumentId }) => [instrumentId, id]),
  );
  return byJob(
    rows.flatMap((row) => {
      const jobId = row.jobId ?? newest.get(row.instrumentId);
      return jobId ? [{ ...row, jobId }] : [];
    }),
  );
}

/** What the index keeps of a take with its lines; null where it is gone or its job in the bin. */
export function toldTake(
  db: Database,
  jobId: JobId,
  takeId: TakeId,
): { number: number; type: string; day: string } | null {
  const row = db
    .select({ job: jobs, type: instruments.type })
    .from(jobs)
    .innerJoin(instruments, eq(instruments.id, jobs.instrumentId))
    .where(and(eq(jobs.id, jobId), isNull(jobs.deletedAt)))
    .get();
  const take = takesOfJobs(db, [jobId])
    .get(jobId)
    ?.find(({ id }) => id === takeId);
  if (!row || !take) return null;
  return { number: row.job.number, type: row.type, day: filmedOn(take, receivedOn(row.job)) };
}

type JobRow = typeof jobs.$inferSelect;

function receivedOn(job: Pick<JobRow, 'receivedOn' | 'createdAt'>): string {
  return job.receivedOn ?? dayOf(job.createdAt);
}

function filmedOn({ recordedAt }: Take, received: string): string {
  return recordedAt === null ? received : dayOf(recordedAt);
}
