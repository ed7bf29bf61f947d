import { statSync } from 'node:fs';
import { join } from 'node:path';
import { and, eq, ne } from 'drizzle-orm';
import { newId } from '@/db/ids';
import type { Database } from '@/db/open';
import { folders, recordings, takes } from '@/db/schema';
import { type JobId, type RecordingId, recordingIdSchema, type TakeId } from '@/shared/ids';
import type { Fingerprint } from '@/shared/media';
import { DomainError } from '@/shared/problem';
import { openablePath, type Place } from './folder-store';

export type Recording = typeof recordings.$inferSelect;

export class RecordingMissingError extends DomainError {
  constructor(path: string) {
    super(
      'gone',
      'The recording is not where it was.',
      'If it was moved, put its new folder under Settings and press “Look for it”, or point to it by hand. Nothing on the record is lost.',
      { path },
    );
  }
}

/** The recording at a place: the known one, or a new one yet to be looked at. */
export function recordingAt(db: Database, place: Place): Recording {
  const known = db
    .select()
    .from(recordings)
    .where(and(eq(recordings.folderId, place.folderId), eq(recordings.path, place.path)))
    .get();
  if (known) return known;
  const info = statSync(place.absolutePath);
  return db
    .insert(recordings)
    .values({
      id: newId(recordingIdSchema),
      folderId: place.folderId,
      path: place.path,
      sizeBytes: info.size,
      modifiedAt: Math.round(info.mtimeMs),
      state: 'new',
      createdAt: Date.now(),
    })
    .returning()
    .get();
}

export function getRecording(db: Database, id: RecordingId): Recording {
  const row = db.select().from(recordings).where(eq(recordings.id, id)).get();
  if (!row) throw new DomainError('not-found', 'There is no such recording.', 'Load the page again.');
  return row;
}

export function updateRecording(db: Database, id: RecordingId, patch: Partial<Omit<Recording, 'id'>>): void {
  db.update(recordings).set(patch).where(eq(recordings.id, id)).run();
}

/** Where the recording lies now. Marks it missing, and says so, when it does not; a known one that is back is ready again. */
export function pathOfRecording(db: Database, recording: Recording): string {
  const folder = db.select().from(folders).where(eq(folders.id, recording.folderId)).get();
  if (!folder) throw new RecordingMissingError(recording.path);
  try {
    const path = openablePath(folder.path, recording.path);
    if (recording.state === 'missing' && recording.probe)
      updateRecording(db, recording.id, { state: 'ready' });
    return path;
  } catch (error) {
    if (!(error instanceof DomainError) || error.kind !== 'not-found') throw error;
    noticeMissing(db, recording);
    throw new RecordingMissingError(join(folder.path, recording.path));
  }
}

/** Looks whether the recordings of a job lie where they did, and notes which do not. */
export function noticeMissingOf(db: Database, jobId: JobId): void {
  const own = db
    .select({ recording: recordings })
    .from(takes)
    .innerJoin(recordings, eq(recordings.id, takes.recordingId))
    .where(eq(takes.jobId, jobId))
    .all();
  for (const { recording } of own) {
    try {
      pathOfRecording(db, recording);
    } catch (error) {
      if (!(error instanceof DomainError)) throw error; // It stands on the recording; the page says so.
    }
  }
}

/** A recording that was found again elsewhere keeps all that is known of it, until it turns out to be another one. */
export function moveRecording(db: Database, recording: Recording, place: Place): void {
  const other = db
    .select()
    .from(recordings)
    .where(
      and(
        eq(recordings.folderId, place.folderId),
        eq(recordings.path, place.path),
        ne(recordings.id, recording.id),
      ),
    )
    .get();
  if (other) {
    throw new DomainError(
      'conflict',
      'That file is already known as another recording.',
      'Add it to the job as a take of its own, and delete the missing one.',
      { path: place.path },
    );
  }
  updateRecording(db, recording.id, {
    folderId: place.folderId,
    path: place.path,
    state: 'new',
    problem: null,
  });
}

export function sameFile(a: Fingerprint, b: Fingerprint): boolean {
  return a.sizeBytes === b.sizeBytes && a.sha256 === b.sha256;
}

/** Folder of what was made from a recording: peaks, stills, viewing copy. */
export function folderOfRecording(home: string, id: RecordingId): string {
  return join(home, 'recordings', id);
}

export function viewingCopyPath(home: string, id: RecordingId): string {
  return join(folderOfRecording(home, id), 'viewing.mp4');
}

function noticeMissing(db: Database, recording: Recording): void {
  if (recording.state !== 'missing') updateRecording(db, recording.id, { state: 'missing' });
}

/** The file that a page is shown for a take: the viewing copy where there is one, otherwise the recording. */
export function filmPathOf(db: Database, home: string, takeId: TakeId): string {
  const take = db.select().from(takes).where(eq(takes.id, takeId)).get();
  if (!take)
    throw new DomainError(
      'not-found',
      'There is no such take.',
      'It may have been deleted; undo brings it back.',
    );
  const recording = getRecording(db, take.recordingId);
  return recording.viewingCopy ? viewingCopyPath(home, recording.id) : pathOfRecording(db, recording);
}
