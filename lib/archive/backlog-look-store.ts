import { readdir } from 'node:fs/promises';
import { dirname, relative, sep } from 'node:path';
import { and, eq } from 'drizzle-orm';
import { z } from 'zod';
import type { Database } from '@/db/open';
import { backlogFiles, backlogs } from '@/db/schema';
import { listFolders, placeOf, recordingsIn } from '@/lib/media/store';
import { type OwnRunner, supervisor } from '@/lib/tasks/store';
import { backlogIdSchema } from '@/shared/backlog';
import type { FolderId } from '@/shared/ids';
import { fingerprintSchema, probeSchema } from '@/shared/media';
import { DomainError } from '@/shared/problem';
import type { FoundRecording } from '@/shared/takes';
import { captionsBeside, looksLikeCaptions } from './backlog/captions-beside';
import {
  type BacklogFileRow,
  backlogRow,
  fileRowsOf,
  isUnder,
  keyOfPlace,
  knownRecordings,
} from './backlog-facts-store';

const payloadSchema = z.object({ backlog: backlogIdSchema });
const lookedSchema = z.object({ probe: probeSchema, fingerprint: fingerprintSchema });
type Found = Pick<BacklogFileRow, 'probe' | 'fingerprint' | 'problem'>;

/** Looks at every recording in the folder that was chosen. What has not changed since it was looked at is not read again. */
export function lookThrough(db: Database): OwnRunner {
  return async (payload, { signal, report }) => {
    const row = backlogRow(db, payloadSchema.parse(payload).backlog);
    const top = folderPath(db, row.folderId);
    const listed = (await recordingsIn(db, row.folderId)).map((file) => ({
      ...file,
      below: below(top, file.path),
    }));
    const files = onePlaceEach(
      db,
      listed.filter((file) => isUnder(file.below, row.under)),
    );
    const before = new Map(fileRowsOf(db, row).map((file) => [file.path, file]));
    const known = knownRecordings(db);
    const captions = captionsFinder();
    for (const [index, file] of files.entries()) {
      signal.throwIfAborted();
      report(index / files.length, `Looking at recording ${index + 1} of ${files.length}: ${file.name}`);
      const earlier = [before.get(file.below), known.get(keyOfPlace(file.placeFolderId, file.placePath))];
      const found = earlier.find((each) => isUnchanged(each, file)) ?? (await lookAt(file.path));
      keep(db, row.folderId, file, found, await captions(file.path));
      before.delete(file.below);
    }
    for (const path of before.keys()) forget(db, row.folderId, path);
    db.update(backlogs).set({ lookedAt: Date.now() }).where(eq(backlogs.id, row.id)).run();
    return files.length === 1 ? 'One recording was looked at.' : `${files.length} recordings were looked at.`;
  };
}

type Listed = FoundRecording & { below: string };
type Placed = Listed & { placeFolderId: FolderId; placePath: string };

function folderPath(db: Database, id: FolderId): string {
  const folder = listFolders(db).find((each) => each.id === id);
  if (!folder?.reachable)
    throw new DomainError(
      'unavailable',
      'The recordings folder cannot be read.',
      'Is the drive plugged in, and may this program read it? Then try again.',
    );
  return folder.path;
}

/** A link and the file that it leads to are one recording: the shorter way to it is kept. */
function onePlaceEach(db: Database, files: readonly Listed[]): Placed[] {
  const places = new Map<string, Placed>();
  for (const file of [...files].sort(byPath)) {
    const { folderId, path } = placeOf(db, file.path);
    const key = keyOfPlace(folderId, path);
    if (!places.has(key)) places.set(key, { ...file, placeFolderId: folderId, placePath: path });
  }
  return [...places.values()];
}

function byPath(a: Listed, b: Listed): number {
  return a.below.length - b.below.length || a.below.localeCompare(b.below, 'en', { numeric: true });
}

function isUnchanged(
  earlier: Pick<BacklogFileRow, 'sizeBytes' | 'modifiedAt' | 'probe' | 'fingerprint'> | undefined,
  { sizeBytes, modifiedAt }: Listed,
): boolean {
  if (!earlier?.probe || !earlier.fingerprint) return false;
  return earlier.sizeBytes === sizeBytes && earlier.modifiedAt === modifiedAt;
}

async function lookAt(path: string): Promise<Found> {
  try {
    return { ...lookedSchema.parse(await supervisor().ask('probe', { path })), problem: null };
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    return { probe: null, fingerprint: null, problem: `${error.message} ${error.detail}` };
  }
}

/** Names of the captions beside recordings; each folder is read once. */
function captionsFinder(): (recording: string) => Promise<string[]> {
  const folders = new Map<string, string[]>();
  return async (recording) => {
    const folder = dirname(recording);
    const known = folders.get(folder) ?? (await captionsIn(folder));
    folders.set(folder, known);
    return captionsBeside(recording.slice(folder.length + 1), known);
  };
}

async function captionsIn(folder: string): Promise<string[]> {
  const entries = await readdir(folder, { withFileTypes: true });
  return entries.filter((entry) => entry.isFile() && looksLikeCaptions(entry.name)).map(({ name }) => name);
}

function keep(db: Database, folderId: FolderId, file: Placed, found: Found, captions: string[]): void {
  const { below: path, placeFolderId, placePath, sizeBytes, modifiedAt } = file;
  const { probe, fingerprint, problem } = found;
  const told = { placeFolderId, placePath, sizeBytes, modifiedAt, probe, fingerprint, problem, captions };
  db.insert(backlogFiles)
    .values({ folderId, path, ...told })
    .onConflictDoUpdate({ target: [backlogFiles.folderId, backlogFiles.path], set: told })
    .run();
}

function forget(db: Database, folderId: FolderId, path: string): void {
  db.delete(backlogFiles)
    .where(and(eq(backlogFiles.folderId, folderId), eq(backlogFiles.path, path)))
    .run();
}

function below(top: string, path: string): string {
  const way = relative(top, path);
  return sep === '/' ? way : way.replaceAll(sep, '/');
}
