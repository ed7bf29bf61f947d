import { eq, max } from 'drizzle-orm';
import { newId } from '@/db/ids';
import type { Database } from '@/db/open';
import {
  claims,
  clients,
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
import { addFolder, placeOf, recordingAt } from '@/lib/media/store';
import type { BundleRecord, BundleTake } from '@/shared/bundle';
import {
  type FolderId,
  handOverIdSchema,
  harnessIdSchema,
  type JobId,
  type RecordingId,
  recordingIdSchema,
  type TakeId,
} from '@/shared/ids';

/** Where the recording of a take lies on this machine now. */
export type Settled =
  | { how: 'known'; recordingId: RecordingId }
  | { how: 'lies here' | 'in the bundle'; path: string }
  /** `name`: of the file that is looked for, where the machine does not know the recording either. */
  | { how: 'missing'; recordingId: RecordingId | null; name: string };

export interface Writing {
  /** With ids of this workshop (`withNewIds`). */
  record: BundleRecord;
  settled: ReadonlyMap<TakeId, Settled>;
  /** What was received with the bundle lies here, and what is missing is looked for here; null where it is not needed. */
  folder: string | null;
}

/** Writes a record down as a new job. One transaction is around it. */
export function writeJob(db: Database, { record, settled, folder }: Writing): JobId {
  const { id: jobId, ...job } = record.job;
  const folderId = folder === null ? null : namedFolder(db, folder, record);
  writeEntries(db, record);
  db.insert(jobs)
    .values({
      ...job,
      id: jobId,
      number: nextNumber(db),
      demo: false,
      updatedAt: Date.now(),
      deletedAt: null,
    })
    .run();
  for (const take of record.takes) {
    const recordingId = recordingFor(db, take, settled.get(take.id) ?? null, folderId);
    const { id, position, trimStartMs, trimEndMs, createdAt } = take;
    db.insert(takes).values({ id, jobId, recordingId, position, trimStartMs, trimEndMs, createdAt }).run();
  }
  keepFilmOrder(db, jobId, record.film);
  writeRows(db, jobId, record);
  return jobId;
}

/** The client, instrument and meters, where they are new. What is there already stays as it is. */
function writeEntries(db: Database, record: BundleRecord): void {
  for (const row of record.clients) db.insert(clients).values(row).onConflictDoNothing().run();
  db.insert(instruments).values(record.instrument).onConflictDoNothing().run();
  for (const row of record.meters) db.insert(meters).values(row).onConflictDoNothing().run();
}

function writeRows(db: Database, jobId: JobId, record: BundleRecord): void {
  for (const row of record.markers)
    db.insert(markers)
      .values({ ...row, jobId })
      .run();
  for (const row of record.readings)
    db.insert(readings)
      .values({ ...row, jobId })
      .run();
  for (const row of record.traces)
    db.insert(traces)
      .values({ ...row, jobId })
      .run();
  for (const row of record.outcomes)
    db.insert(outcomes)
      .values({ ...row, jobId })
      .run();
  for (const row of record.lines)
    db.insert(narrationLines)
      .values({ ...row, jobId })
      .run();
  for (const row of record.proposals)
    db.insert(proposals)
      .values({ ...row, jobId })
      .run();
  for (const row of record.work)
    db.insert(workItems)
      .values({ ...row, jobId })
      .run();
  for (const row of record.parts)
    db.insert(parts)
      .values({ ...row, jobId })
      .run();
  writeClaims(db, jobId, record);
  const { harness, handOver } = record;
  if (harness)
    db.insert(harnesses)
      .values({ ...harness, id: harnessIdSchema.parse(jobId), jobId })
      .run();
  if (handOver)
    db.insert(handOvers)
      .values({ ...handOver, id: handOverIdSchema.parse(jobId), jobId })
      .run();
}

/** What was claimed in other jobs is not claimed twice about an instrument that is known. */
function writeClaims(db: Database, jobId: JobId, { claims: wanted, instrument }: BundleRecord): void {
  const there = db.select().from(claims).where(eq(claims.instrumentId, instrument.id)).all();
  const said = new Set(there.map(wordsOf));
  for (const { ofJob, ...claim } of wanted) {
    if (!ofJob && said.has(wordsOf(claim))) continue;
    db.insert(claims)
      .values({ ...claim, instrumentId: instrument.id, jobId: ofJob ? jobId : null })
      .run();
  }
}

function wordsOf({
  kind,
  subject,
  value,
  basis,
  evidence,
  sure,
}: Omit<BundleRecord['claims'][number], 'ofJob'>): string {
  return JSON.stringify([kind, subject, value, basis, evidence, sure]);
}

function namedFolder(db: Database, path: string, { takes: [first] }: BundleRecord): FolderId {
  return addFolder(db, { path, clockOffsetMinutes: first?.recording.clockOffsetMinutes ?? 0 }).id;
}

function recordingFor(
  db: Database,
  { recording }: BundleTake,
  settled: Settled | null,
  folderId: FolderId | null,
): RecordingId {
  if (settled && 'path' in settled) {
    const row = recordingAt(db, placeOf(db, settled.path));
    const { probe, fingerprint } = recording;
    // Until the engine has looked at it, what the record tells of it stands.
    if (row.state === 'new')
      db.update(recordings).set({ probe, fingerprint }).where(eq(recordings.id, row.id)).run();
    return row.id;
  }
  if (settled?.how === 'known') return settled.recordingId;
  if (settled?.how === 'missing' && settled.recordingId !== null) return settled.recordingId;
  if (settled?.how !== 'missing' || folderId === null)
    throw new Error(`Nobody has settled where “${recording.name}” lies.`);
  return missingRecording(db, recording, folderId, settled.name);
}

/** It keeps what is known of it, so that it can be pointed to, or found by its fingerprint, later. */
function missingRecording(
  db: Database,
  { sizeBytes, modifiedAt, fingerprint, probe }: BundleTake['recording'],
  folderId: FolderId,
  path: string,
): RecordingId {
  const id = newId(recordingIdSchema);
  const known = { sizeBytes, modifiedAt, fingerprint, probe, state: 'missing' as const };
  db.insert(recordings)
    .values({ id, folderId, path, ...known, createdAt: Date.now() })
    .run();
  return id;
}

/** Where another camera clock or file name would order the film anew, its order is held as if by hand. */
function keepFilmOrder(db: Database, jobId: JobId, film: readonly TakeId[]): void {
  const now = takesOf(db, jobId).map(({ id }) => id);
  if (film.every((id, at) => id === now[at])) return;
  film.forEach((id, position) => {
    db.update(takes).set({ position }).where(eq(takes.id, id)).run();
  });
}

function nextNumber(db: Database): number {
  const row = db
    .select({ newest: max(jobs.number) })
    .from(jobs)
    .get();
  return (row?.newest ?? 0) + 1;
}
