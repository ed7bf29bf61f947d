import type { Database } from '@/db/open';
import { enqueueTask, supervisor, type TaskHandlers } from '@/lib/tasks/store';
import type { RecordingId } from '@/shared/ids';
import type { Fingerprint } from '@/shared/media';
import { DomainError } from '@/shared/problem';
import type { Task } from '@/shared/tasks';
import { filesOfSize, placeOf } from './folder-store';
import {
  folderOfRecording,
  getRecording,
  moveRecording,
  pathOfRecording,
  sameFile,
  updateRecording,
  viewingCopyPath,
} from './recording-store';
import { picturesResultSchema, probeResultSchema, soundResultSchema } from './results';

/** What becomes of what the engine finds: it is written to the recording. */
export function taskResults(db: Database, home: string): Omit<TaskHandlers, 'listen' | 'cut'> {
  const path = (id: RecordingId) => pathOfRecording(db, getRecording(db, id));
  const within = (id: RecordingId) => ({ path: path(id), folder: folderOfRecording(home, id) });
  const hintsOf = (id: RecordingId) => getRecording(db, id).hints ?? { silences: [], viewChanges: [] };
  return {
    probe: {
      prepare: (id) => ({ path: path(id) }),
      onResult: (id, result) => {
        const { probe, fingerprint } = probeResultSchema.parse(result);
        const before = getRecording(db, id).fingerprint;
        if (before && !sameFile(before, fingerprint)) updateRecording(db, id, nothingReadYet);
        updateRecording(db, id, {
          probe,
          fingerprint,
          sizeBytes: probe.sizeBytes,
          state: 'ready',
          problem: null,
        });
        lookFurther(db, id);
      },
      onFailure: (id, title, detail) => {
        // A missing recording has been marked as such where it was noticed.
        if (getRecording(db, id).state !== 'missing')
          updateRecording(db, id, { state: 'failed', problem: `${title} ${detail}` });
      },
    },
    sound: {
      prepare: within,
      onProgress: (id, partial) => updateRecording(db, id, { peaks: soundResultSchema.parse(partial).peaks }),
      onResult: (id, result) => {
        const { peaks, silences } = soundResultSchema.parse(result);
        updateRecording(db, id, { peaks, soundRead: true, hints: { ...hintsOf(id), silences } });
      },
      onFailure: (id, title, detail) => updateRecording(db, id, { problem: `${title} ${detail}` }),
    },
    pictures: {
      prepare: within,
      onProgress: (id, partial) =>
        updateRecording(db, id, { stills: picturesResultSchema.parse(partial).stills }),
      onResult: (id, result) => {
        const { stills, viewChanges } = picturesResultSchema.parse(result);
        updateRecording(db, id, { stills, picturesRead: true, hints: { ...hintsOf(id), viewChanges } });
      },
      onFailure: (id, title, detail) => updateRecording(db, id, { problem: `${title} ${detail}` }),
    },
    'viewing-copy': {
      prepare: (id) => ({ path: path(id), to: viewingCopyPath(home, id) }),
      onResult: (id) => updateRecording(db, id, { viewingCopy: true }),
      onFailure: (id, title, detail) => updateRecording(db, id, { problem: `${title} ${detail}` }),
    },
  };
}

/** Another file lies there now: what was made from the old one does not belong to it. */
const nothingReadYet = {
  peaks: null,
  soundRead: false,
  hints: null,
  stills: null,
  picturesRead: false,
  viewingCopy: false,
};

/** Starts finding out what a recording is, or goes on where that stopped. */
export function lookAtRecording(db: Database, id: RecordingId): Task | null {
  const recording = getRecording(db, id);
  if (recording.state !== 'ready') return enqueueTask('probe', id);
  lookFurther(db, id);
  return null;
}

/** Sound and stills, where there are any that are not on disk yet. */
function lookFurther(db: Database, id: RecordingId): void {
  const { probe, soundRead, picturesRead } = getRecording(db, id);
  if (probe && probe.audio.length > 0 && !soundRead) enqueueTask('sound', id);
  if (probe?.video && !picturesRead) enqueueTask('pictures', id);
}

/**
 * Looks at a recording once more: where it lies now, by size and fingerprint, and what it is.
 * @throws DomainError where it is still missing
 */
export async function lookAgain(db: Database, id: RecordingId): Promise<Task | null> {
  const recording = getRecording(db, id);
  try {
    pathOfRecording(db, recording);
  } catch (error) {
    if (!(error instanceof DomainError) || error.kind !== 'gone') throw error;
    await findAgain(db, id);
  }
  updateRecording(db, id, { state: 'new', problem: null, crashes: 0 });
  return lookAtRecording(db, id);
}

async function findAgain(db: Database, id: RecordingId): Promise<void> {
  const recording = getRecording(db, id);
  for (const path of await filesOfSize(db, recording.sizeBytes)) {
    const found = await fingerprintOf(path);
    if (found && recording.fingerprint && sameFile(found, recording.fingerprint))
      return moveRecording(db, recording, placeOf(db, path));
  }
  throw new DomainError(
    'not-found',
    'It lies in none of the recordings folders.',
    'Name the folder it was moved to under Settings, plug in its drive, or point to it by hand under “Takes”.',
  );
}

/** Null where the file, though of the right size, cannot be read as a recording. */
export async function fingerprintOf(path: string): Promise<Fingerprint | null> {
  try {
    return probeResultSchema.parse(await supervisor().ask('probe', { path })).fingerprint;
  } catch (error) {
    // The supervisor may be bundled apart from this, so its DomainError is known by its shape.
    if (error instanceof Error && 'kind' in error) return null;
    throw error;
  }
}

/** Starts making a copy that browsers can play. */
export function makeViewingCopy(id: RecordingId): Task {
  return enqueueTask('viewing-copy', id);
}
