import { and, asc, eq, inArray, isNull, type SQL } from 'drizzle-orm';
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
import { layOut } from '@/lib/film';
import { onClock, takesOfJobs } from '@/lib/film/store';
import { dayOf, dayOfJob } from '@/lib/work';
import type { JobId, MarkerId, ReadingId, TakeId } from '@/shared/ids';
import type { Take } from '@/shared/takes';
import { listed, readyOnce } from './ready-store';
import type { ToldJob } from './things';

/** What is told of a job where not all of its markers and readings are wanted, which may be hundreds. */
export interface Only {
  markers: readonly MarkerId[];
  readings: readonly ReadingId[];
}

/** The records of jobs that are not in the bin, each in a lasting order, in a handful of queries however many. */
export function toldJobs(db: Database, ids: readonly JobId[], only?: Only): Map<JobId, ToldJob> {
  if (ids.length === 0) return new Map();
  const ask = statements(db);
  const of = { ids: JSON.stringify(ids) };
  const rows = ask.jobs.all(of);
  const takes = takesOfJobs(db, [...ids]);
  const record = {
    markers: byJob(only ? ask.markersById.all({ ids: JSON.stringify(only.markers) }) : ask.markers.all(of)),
    readings: byJob(
      only ? ask.readingsById.all({ ids: JSON.stringify(only.readings) }) : ask.readings.all(of),
    ),
    traces: byJob(ask.traces.all(of)),
    outcomes: byJob(ask.outcomes.all(of)),
    work: byJob(ask.work.all(of)),
    parts: byJob(ask.parts.all(of)),
    claims: claimsByJob(
      db,
      rows.map(({ instrument }) => instrument.id),
    ),
  };
  const told = ({ job, instrument, client }: (typeof rows)[number]): ToldJob => {
    const filmed = takes.get(job.id) ?? [];
    return {
      job: { ...job, receivedOn: dayOfJob(job) },
      instrument,
      client,
      takes: filmed.map((take) => ({
        id: take.id,
        day: filmedOn(take, dayOfJob(job)),
        hasPicture: take.stills.length > 0,
      })),
      film: layOut(filmed.map(onClock)),
      markers: record.markers.get(job.id) ?? [],
      readings: record.readings.get(job.id) ?? [],
      traces: record.traces.get(job.id) ?? [],
      outcomes: record.outcomes.get(job.id) ?? [],
      work: record.work.get(job.id) ?? [],
      parts: record.parts.get(job.id) ?? [],
      claims: record.claims.get(job.id) ?? [],
    };
  };
  return new Map(rows.map((row) => [row.job.id, told(row)]));
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
  const rows = statements(db).claims.all({ ids: JSON.stringify(instrumentIds) });
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
  return { number: row.job.number, type: row.type, day: filmedOn(take, dayOfJob(row.job)) };
}

function filmedOn({ recordedAt }: Take, received: string): string {
  return recordedAt === null ? received : dayOf(recordedAt);
}

/** Asked for each question: made ready once for each database. */
const statements = readyOnce((db) => {
  const ids = listed('ids');
  const markersWhere = (where: SQL) =>
    db.select().from(markers).where(where).orderBy(asc(markers.id)).prepare();
  const readingsWhere = (where: SQL) =>
    db.select().from(readings).where(where).orderBy(asc(readings.createdAt), asc(readings.id)).prepare();
  return {
    jobs: db
      .select({ job: jobs, instrument: instruments, client: clients })
      .from(jobs)
      .innerJoin(instruments, eq(instruments.id, jobs.instrumentId))
      .leftJoin(clients, eq(clients.id, jobs.clientId))
      .where(and(inArray(jobs.id, ids), isNull(jobs.deletedAt)))
      .prepare(),
    markers: markersWhere(inArray(markers.jobId, ids)),
    markersById: markersWhere(inArray(markers.id, ids)),
    readings: readingsWhere(inArray(readings.jobId, ids)),
    readingsById: readingsWhere(inArray(readings.id, ids)),
    traces: db.select().from(traces).where(inArray(traces.jobId, ids)).orderBy(asc(traces.id)).prepare(),
    outcomes: db
      .select()
      .from(outcomes)
      .where(inArray(outcomes.jobId, ids))
      .orderBy(asc(outcomes.id))
      .prepare(),
    work: db
      .select()
      .from(workItems)
      .where(inArray(workItems.jobId, ids))
      .orderBy(asc(workItems.id))
      .prepare(),
    parts: db.select().from(parts).where(inArray(parts.jobId, ids)).orderBy(asc(parts.id)).prepare(),
    claims: db
      .select()
      .from(claims)
      .where(inArray(claims.instrumentId, ids))
      .orderBy(asc(claims.id))
      .prepare(),
  };
});
