import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { z } from 'zod';
import type { Database } from '@/db/open';
import { supervisor } from '@/lib/tasks/store';
import type { RecordingId } from '@/shared/ids';
import { DomainError } from '@/shared/problem';
import { peaksFileName } from './peaks';
import { folderOfRecording, getRecording, pathOfRecording } from './recording-store';
import { stillFileName } from './stills';

/** One zoom level of the sound, as far as it has been read. */
export async function peaksFileOf(home: string, id: RecordingId, pairsPerSecond: number): Promise<Buffer> {
  try {
    return await readFile(join(folderOfRecording(home, id), peaksFileName(pairsPerSecond)));
  } catch (error) {
    if (!(error instanceof Error && 'code' in error && error.code === 'ENOENT')) throw error;
    throw new DomainError(
      'not-found',
      'No sound has been read at that level.',
      'The take tells its levels under “peaks”.',
    );
  }
}

/** The nearest still already made for the strip, as JPEG. */
export async function stripStillOf(db: Database, home: string, id: RecordingId, ms: number): Promise<Buffer> {
  const stills = getRecording(db, id).stills ?? [];
  const nearest = [...stills].sort((a, b) => Math.abs(a - ms) - Math.abs(b - ms))[0];
  if (nearest === undefined)
    throw new DomainError(
      'not-found',
      'No stills have been taken yet.',
      'Wait until the pictures have been read.',
    );
  return readFile(join(folderOfRecording(home, id), stillFileName(nearest)));
}

/** The very picture shown at a moment, as JPEG, from the recording itself. */
export async function exactStillOf(db: Database, id: RecordingId, ms: number): Promise<Buffer> {
  const path = pathOfRecording(db, getRecording(db, id));
  const bytes = await supervisor().ask('still', { path, ms });
  return Buffer.from(z.instanceof(Uint8Array).parse(bytes));
}
