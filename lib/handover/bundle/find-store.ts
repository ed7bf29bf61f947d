import { eq } from 'drizzle-orm';
import type { Database } from '@/db/open';
import { recordings } from '@/db/schema';
import { listFolders, pathOfRecording, recordingsIn } from '@/lib/media/store';
import type { BundleRecord, BundleTake } from '@/shared/bundle';
import type { RecordingId, TakeId } from '@/shared/ids';
import type { Fingerprint } from '@/shared/media';
import { DomainError } from '@/shared/problem';

/** Where the recording of a take is to be had. */
export type Arrival =
  | { how: 'known'; recordingId: RecordingId; path: string }
  | { how: 'lies here'; path: string }
  | { how: 'in the bundle'; file: string }
  /** The machine may know it all the same: its drive is not plugged in. */
  | { how: 'missing'; recordingId: RecordingId | null };

export type FingerprintOf = (path: string) => Promise<Fingerprint | null>;

/** Looks for the recordings of a record: those that are known, then in the recordings folders, then in the bundle. */
export async function arrivalsOf(
  db: Database,
  { takes }: BundleRecord,
  fingerprintOf: FingerprintOf,
): Promise<Map<TakeId, Arrival>> {
  const arrivals = new Map<TakeId, Arrival>();
  const taken = new Set<string>();
  const lying = new Lying(db, fingerprintOf);
  for (const take of takes) {
    const arrival =
      known(db, take, taken) ??
      (await lying.find(take, taken)) ??
      fromBundle(take) ??
      missing(db, take, taken);
    if ('path' in arrival) taken.add(arrival.path);
    if (arrival.how === 'missing' && arrival.recordingId) taken.add(arrival.recordingId);
    arrivals.set(take.id, arrival);
  }
  return arrivals;
}

/** A job has each recording once, so one that another take has taken is left to it. */
function known(db: Database, { recording }: BundleTake, taken: ReadonlySet<string>): Arrival | null {
  for (const row of alikeTo(db, recording)) {
    try {
      const path = pathOfRecording(db, row);
      if (!taken.has(path)) return { how: 'known', recordingId: row.id, path };
    } catch (error) {
      if (!(error instanceof DomainError)) throw error; // It is not where it was: another may be.
    }
  }
  return null;
}

/** Files in the recordings folders, listed once and only when they are wanted. */
class Lying {
  private readonly db: Database;
  private readonly fingerprintOf: FingerprintOf;
  private files: { path: string; sizeBytes: number }[] | null = null;

  constructor(db: Database, fingerprintOf: FingerprintOf) {
    this.db = db;
    this.fingerprintOf = fingerprintOf;
  }

  async find({ recording }: BundleTake, taken: ReadonlySet<string>): Promise<Arrival | null> {
    const { fingerprint, sizeBytes } = recording;
    if (!fingerprint) return null;
    this.files ??= await this.list();
    for (const { path } of this.files.filter(
      (file) => file.sizeBytes === sizeBytes && !taken.has(file.path),
    )) {
      const found = await this.fingerprintOf(path);
      if (found && isSame(found, fingerprint)) return { how: 'lies here', path };
    }
    return null;
  }

  private async list() {
    const lists = await Promise.all(
      listFolders(this.db).map(({ id }) => recordingsIn(this.db, id).catch(none)),
    );
    return lists.flat();
  }
}

/** A drive that is not plugged in holds nothing that could be found now. */
function none(error: unknown): [] {
  if (error instanceof DomainError) return [];
  throw error;
}

function fromBundle({ recording: { file } }: BundleTake): Arrival | null {
  return file === null ? null : { how: 'in the bundle', file };
}

function missing(db: Database, { recording }: BundleTake, taken: ReadonlySet<string>): Arrival {
  const row = alikeTo(db, recording).find(({ id, state }) => state === 'missing' && !taken.has(id));
  return { how: 'missing', recordingId: row?.id ?? null };
}

/** Recordings that this machine knows by the same fingerprint, wherever they lie. */
function alikeTo(db: Database, { fingerprint, sizeBytes }: BundleTake['recording']) {
  if (!fingerprint) return [];
  return db
    .select()
    .from(recordings)
    .where(eq(recordings.sizeBytes, sizeBytes))
    .all()
    .filter((row) => row.fingerprint !== null && isSame(row.fingerprint, fingerprint));
}

function isSame(one: Fingerprint, other: Fingerprint): boolean {
  return one.sizeBytes === other.sizeBytes && one.sha256 === other.sha256;
}
