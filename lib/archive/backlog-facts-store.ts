import { and, eq, isNotNull, isNull, sql } from 'drizzle-orm';
import { GoneError } from '@/db/changes';
import type { Database } from '@/db/open';
import { backlogFiles, backlogResults, backlogs, folders, jobs, recordings, takes } from '@/db/schema';
import type { BacklogId, BacklogPlan, JobNamed, JobRule } from '@/shared/backlog';
import type { FolderId } from '@/shared/ids';
import type { Fingerprint } from '@/shared/media';
import { type BacklogFile, type EarlierJob, planBacklog, type Use } from './backlog/plan';

export type BacklogRow = typeof backlogs.$inferSelect;
export type BacklogFileRow = typeof backlogFiles.$inferSelect;

export function backlogRow(db: Database, id: BacklogId): BacklogRow {
  const row = db.select().from(backlogs).where(eq(backlogs.id, id)).get();
  if (!row) throw new GoneError('import');
  return row;
}

/** Whether a path below the recordings folder lies in the folder that was chosen. */
export function isUnder(path: string, under: string): boolean {
  return under === '' || path.startsWith(`${under}/`);
}

export function fileRowsOf(db: Database, { folderId, under }: BacklogRow): BacklogFileRow[] {
  const all = db.select().from(backlogFiles).where(eq(backlogFiles.folderId, folderId)).all();
  return all.filter(({ path }) => isUnder(path, under));
}

/** What the recordings of the folder would become, by what was found when they were looked at. */
export function planOf(db: Database, row: BacklogRow, rule: JobRule): BacklogPlan {
  const uses = usesOf(db);
  const offsets = new Map(
    db
      .select()
      .from(folders)
      .all()
      .map(({ id, clockOffsetMinutes }) => [id, clockOffsetMinutes]),
  );
  const files = fileRowsOf(db, row).map(
    (file): BacklogFile => ({
      path: file.path,
      recordedAt: file.probe?.recordedAt ?? null,
      clockOffsetMinutes: offsets.get(file.placeFolderId) ?? 0,
      modifiedAt: file.modifiedAt,
      durationMs: file.probe?.durationMs ?? 0,
      captions: file.captions,
      fingerprint: file.fingerprint && keyOfFile(file.fingerprint),
      unreadable: file.problem,
      use: uses.of(file),
    }),
  );
  const timeZone = Intl.DateTimeFormat().resolvedOptions().timeZone;
  return planBacklog(files, earlierJobs(db, row.folderId), {
    rule,
    under: row.under,
    timeZone,
    now: Date.now(),
  });
}

function earlierJobs(db: Database, folderId: FolderId): EarlierJob[] {
  return db
    .select({ home: backlogResults.home, day: backlogResults.day, job: named })
    .from(backlogResults)
    .innerJoin(backlogs, eq(backlogs.id, backlogResults.backlogId))
    .innerJoin(jobs, eq(jobs.id, backlogResults.jobId))
    .where(and(eq(backlogs.folderId, folderId), eq(backlogResults.joined, false), isNull(jobs.deletedAt)))
    .orderBy(backlogResults.id)
    .all();
}

const named = { id: jobs.id, number: jobs.number, title: jobs.title };

/** The jobs that files belong to, by place and by fingerprint. Jobs in the bin do not count. */
function usesOf(db: Database): { of: (file: BacklogFileRow) => Use | null } {
  const isSpoken = sql<number>`exists (select 1 from narration_lines where narration_lines.take_id = ${takes.id})`;
  const byImport = sql<number>`exists (select 1 from ${backlogResults} where ${backlogResults.jobId} = ${jobs.id})`;
  const rows = db
    .select({ recording: recordings, job: named, isSpoken, byImport })
    .from(takes)
    .innerJoin(recordings, eq(recordings.id, takes.recordingId))
    .innerJoin(jobs, eq(jobs.id, takes.jobId))
    .where(isNull(jobs.deletedAt))
    .all();
  const byPlace = new Map<string, Use>();
  const byBytes = new Map<string, JobNamed>();
  for (const { recording, job, ...told } of rows) {
    const wantsCaptions = told.byImport === 1 && told.isSpoken === 0;
    byPlace.set(keyOfPlace(recording.folderId, recording.path), { job, here: true, wantsCaptions });
    if (recording.fingerprint) byBytes.set(keyOfFile(recording.fingerprint), job);
  }
  return {
    of: ({ placeFolderId, placePath, fingerprint }) => {
      const here = byPlace.get(keyOfPlace(placeFolderId, placePath));
      if (here) return here;
      const job = fingerprint && byBytes.get(keyOfFile(fingerprint));
      return job ? { job, here: false, wantsCaptions: false } : null;
    },
  };
}

/** Whether a recording is a take of a job that is not in the bin. */
export function isTake(db: Database, { placeFolderId, placePath }: BacklogFileRow): boolean {
  const take = db
    .select({ id: takes.id })
    .from(takes)
    .innerJoin(recordings, eq(recordings.id, takes.recordingId))
    .innerJoin(jobs, eq(jobs.id, takes.jobId))
    .where(
      and(eq(recordings.folderId, placeFolderId), eq(recordings.path, placePath), isNull(jobs.deletedAt)),
    )
    .get();
  return take !== undefined;
}

/** Known recordings by their place: what is known of them need not be found out again. */
export function knownRecordings(db: Database): Map<string, typeof recordings.$inferSelect> {
  const ready = db
    .select()
    .from(recordings)
    .where(and(eq(recordings.state, 'ready'), isNotNull(recordings.probe)))
    .all();
  return new Map(ready.map((recording) => [keyOfPlace(recording.folderId, recording.path), recording]));
}

export function keyOfPlace(folderId: FolderId, path: string): string {
  return `${folderId}/${path}`;
}

function keyOfFile({ sizeBytes, sha256 }: Fingerprint): string {
  return `${sizeBytes} ${sha256}`;
}
