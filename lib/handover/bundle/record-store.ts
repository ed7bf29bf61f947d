import { eq, sql } from 'drizzle-orm';
import { GoneError } from '@/db/changes';
import type { Database } from '@/db/open';
import {
  claims,
  clients,
  folders,
  handOvers,
  harnesses,
  instruments,
  jobs,
  markers,
  meters,
  narrationLines,
  outcomes,
  parts,
  proposals,
  readings,
  recordings,
  takes,
  traces,
  workItems,
} from '@/db/schema';
import { takesOf } from '@/lib/film/store';
import { type BundleRecord, type BundleTake, bundleFormat, bundleVersion } from '@/shared/bundle';
import type { ClientId, InstrumentId, JobId, MeterId, TakeId } from '@/shared/ids';
import { keptOf } from '../kept-store';
import { reachOf } from './moments';
import { withoutLoose } from './without-loose';

/** Rows in the order they were made: where nothing else tells two apart, they are shown in it. */
const asMade = sql`rowid`;

/**
 * All that is on the record of a job, as it goes into a bundle: not what is worked out from it, nor the undo history.
 * @param fileOf the place in the bundle of the recording of a take; null where it is not in it
 */
export function bundleRecordOf(
  db: Database,
  jobId: JobId,
  fileOf: (takeId: TakeId) => string | null,
  madeAt: Date,
): BundleRecord {
  const job = jobPartOf(db, jobId);
  const instrument = instrumentOf(db, job.instrumentId);
  const record = withoutLoose({
    format: bundleFormat,
    version: bundleVersion,
    madeAt: madeAt.toISOString(),
    job,
    clients: [...new Set([job.clientId, instrument.clientId])].flatMap((id) => (id ? clientOf(db, id) : [])),
    instrument,
    claims: claimsAbout(db, instrument.id, jobId),
    meters: metersOf(db, jobId),
    takes: takePartsOf(db, jobId, fileOf),
    film: takesOf(db, jobId).map(({ id }) => id),
    markers: bare(db.select().from(markers).where(eq(markers.jobId, jobId)).orderBy(asMade).all()),
    readings: bare(db.select().from(readings).where(eq(readings.jobId, jobId)).orderBy(asMade).all()),
    traces: bare(db.select().from(traces).where(eq(traces.jobId, jobId)).orderBy(asMade).all()),
    outcomes: bare(db.select().from(outcomes).where(eq(outcomes.jobId, jobId)).orderBy(asMade).all()),
    harness: harnessOf(db, jobId),
    lines: bare(
      db.select().from(narrationLines).where(eq(narrationLines.jobId, jobId)).orderBy(asMade).all(),
    ),
    proposals: bare(db.select().from(proposals).where(eq(proposals.jobId, jobId)).orderBy(asMade).all()),
    work: bare(db.select().from(workItems).where(eq(workItems.jobId, jobId)).orderBy(asMade).all()),
    parts: bare(db.select().from(parts).where(eq(parts.jobId, jobId)).orderBy(asMade).all()),
    handOver: handOverOf(db, jobId),
  });
  const reach = reachOf(record);
  return {
    ...record,
    takes: record.takes.map((take) => ({
      ...take,
      reachMs: Math.max(take.reachMs, reach.get(take.id) ?? 0),
    })),
  };
}

function bare<T extends { jobId: JobId }>(rows: readonly T[]): Omit<T, 'jobId'>[] {
  return rows.map(({ jobId: _, ...row }) => row);
}

function jobPartOf(db: Database, id: JobId): BundleRecord['job'] {
  const row = db.select().from(jobs).where(eq(jobs.id, id)).get();
  if (!row) throw new GoneError('job');
  const { demo: _, updatedAt: __, deletedAt: ___, ...job } = row;
  return job;
}

function instrumentOf(db: Database, id: InstrumentId): BundleRecord['instrument'] {
  const row = db.select().from(instruments).where(eq(instruments.id, id)).get();
  if (!row) throw new GoneError('instrument');
  return row;
}

function clientOf(db: Database, id: ClientId): BundleRecord['clients'] {
  return db.select().from(clients).where(eq(clients.id, id)).all();
}

/** What is claimed about the instrument in any job; film and readings of other jobs are not in the bundle. */
function claimsAbout(db: Database, instrumentId: InstrumentId, jobId: JobId): BundleRecord['claims'] {
  return db
    .select()
    .from(claims)
    .where(eq(claims.instrumentId, instrumentId))
    .orderBy(asMade)
    .all()
    .map(({ instrumentId: _, jobId: of, ...claim }) => ({ ...claim, ofJob: of === jobId }));
}

function metersOf(db: Database, jobId: JobId): BundleRecord['meters'] {
  const used = db
    .selectDistinct({ id: readings.meterId })
    .from(readings)
    .where(eq(readings.jobId, jobId))
    .all();
  const ids = new Set<MeterId | null>(used.map(({ id }) => id));
  return db
    .select()
    .from(meters)
    .orderBy(asMade)
    .all()
    .filter(({ id }) => ids.has(id));
}

function takePartsOf(db: Database, jobId: JobId, fileOf: (takeId: TakeId) => string | null): BundleTake[] {
  return db
    .select({ take: takes, recording: recordings, clockOffsetMinutes: folders.clockOffsetMinutes })
    .from(takes)
    .innerJoin(recordings, eq(recordings.id, takes.recordingId))
    .innerJoin(folders, eq(folders.id, recordings.folderId))
    .where(eq(takes.jobId, jobId))
    .orderBy(sql`${takes}.rowid`)
    .all()
    .map(({ take: { id, position, trimStartMs, trimEndMs, createdAt }, recording, clockOffsetMinutes }) => ({
      ...{ id, position, trimStartMs, trimEndMs, createdAt },
      reachMs: recording.probe?.durationMs ?? 0,
      recording: {
        name: recording.path.split('/').at(-1) ?? recording.path,
        sizeBytes: recording.sizeBytes,
        modifiedAt: recording.modifiedAt,
        clockOffsetMinutes,
        fingerprint: recording.fingerprint,
        probe: recording.probe,
        file: fileOf(id),
      },
    }));
}

function harnessOf(db: Database, jobId: JobId): BundleRecord['harness'] {
  const row = db.select().from(harnesses).where(eq(harnesses.jobId, jobId)).get();
  return row ? { harness: row.harness, createdAt: row.createdAt } : null;
}

function handOverOf(db: Database, jobId: JobId): BundleRecord['handOver'] {
  const row = db.select().from(handOvers).where(eq(handOvers.jobId, jobId)).get();
  return row ? { ...keptOf(db, jobId), createdAt: row.createdAt } : null;
}
