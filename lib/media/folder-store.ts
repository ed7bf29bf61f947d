import { type Dirent, realpathSync, statSync } from 'node:fs';
import { readdir, stat } from 'node:fs/promises';
import { basename, dirname, isAbsolute, join, relative, sep } from 'node:path';
import { eq } from 'drizzle-orm';
import { edit, GoneError } from '@/db/changes';
import { newId } from '@/db/ids';
import type { Database } from '@/db/open';
import { folders, jobs, recordings, takes } from '@/db/schema';
import { type ChangeId, type FolderId, folderIdSchema, type JobId } from '@/shared/ids';
import { DomainError } from '@/shared/problem';
import type { Folder, FoundRecording, NewFolder } from '@/shared/takes';
import { looksLikeRecording } from './recording-names';

/** How deep, and how many files, a recordings folder is read: enough for years of work by date. */
const deepest = 8;
const mostFiles = 20_000;

export class PathError extends DomainError {
  constructor(title: string, path: string, detail: string) {
    super('invalid', title, detail, { path });
  }
}

export function listFolders(db: Database): Folder[] {
  return db.select().from(folders).orderBy(folders.createdAt).all().map(asFolder);
}

/** Names a folder in which recordings lie. The same folder twice is the same folder. */
export function addFolder(db: Database, wanted: NewFolder): Folder {
  const path = realFolder(wanted.path);
  const known = db.select().from(folders).where(eq(folders.path, path)).get();
  if (known) return asFolder(known);
  const row = {
    id: newId(folderIdSchema),
    path,
    clockOffsetMinutes: wanted.clockOffsetMinutes,
    createdAt: Date.now(),
  };
  edit(db, null, 'recordings folder named', (e) => e.insert('folders', row));
  return asFolder(row);
}

export function setClockOffset(db: Database, id: FolderId, clockOffsetMinutes: number): Folder {
  edit(db, null, 'camera clock set', (e) => e.update('folders', id, { clockOffsetMinutes }));
  return asFolder(folderRow(db, id));
}

/** Forgets a folder that no take uses; the files in it are untouched. */
export function forgetFolder(db: Database, id: FolderId): ChangeId {
  folderRow(db, id);
  const used = db
    .select({ id: recordings.id })
    .from(recordings)
    .where(eq(recordings.folderId, id))
    .limit(1)
    .get();
  if (used) {
    throw new DomainError(
      'conflict',
      'Takes lie in this folder.',
      'Delete those takes first, or leave the folder named: it costs nothing.',
    );
  }
  return edit(db, null, 'recordings folder forgotten', (e) => e.remove('folders', id)).change;
}

/** What lies in a recordings folder, newest first. Links that lead out of the folder are left out. */
export async function recordingsIn(db: Database, id: FolderId): Promise<FoundRecording[]> {
  const folder = folderRow(db, id);
  const used = usesByPath(db, id);
  const found = await readTree(folder.path);
  return found
    .map(({ path, sizeBytes, modifiedAt }) => {
      const below = relative(folder.path, path);
      return {
        path,
        name: basename(path),
        under: slashes(dirname(below) === '.' ? '' : dirname(below)),
        sizeBytes,
        modifiedAt,
        usedBy: used.get(slashes(below)) ?? [],
      };
    })
    .sort((a, b) => b.modifiedAt - a.modifiedAt || a.name.localeCompare(b.name, 'en', { numeric: true }));
}

/** Where a file stands among the recordings folders. */
export interface Place {
  folderId: FolderId;
  /** Below the folder, with forward slashes. */
  path: string;
  absolutePath: string;
}

/** Whether a whole path lies below a whole folder's, by their letters: links are to be resolved before. */
export function liesIn(folderPath: string, absolutePath: string): boolean {
  return absolutePath.startsWith(folderPath.endsWith(sep) ? folderPath : folderPath + sep);
}

/** Finds the recordings folder that really holds a file, links resolved. Throws where none does. */
export function placeOf(db: Database, wanted: string): Place {
  if (!isAbsolute(wanted)) {
    throw new PathError(
      'The path does not start at the root.',
      wanted,
      'Give the whole path, as the folder list shows it.',
    );
  }
  const absolutePath = realFile(wanted);
  const holder = db
    .select()
    .from(folders)
    .all()
    .filter((folder) => liesIn(folder.path, absolutePath))
    .sort((a, b) => b.path.length - a.path.length)[0];
  if (!holder) {
    throw new DomainError(
      'forbidden',
      'That file is in none of the recordings folders.',
      'Name its folder under Settings first. A link that leads out of a recordings folder does not count.',
      { path: wanted },
    );
  }
  return { folderId: holder.id, path: slashes(relative(holder.path, absolutePath)), absolutePath };
}

/** The whole path of a recording, checked again at each use: it must still lie in its folder. */
export function openablePath(folderPath: string, path: string): string {
  const absolutePath = realFile(join(folderPath, path));
  if (!liesIn(folderPath, absolutePath)) {
    throw new DomainError(
      'forbidden',
      'The recording now leads out of its folder.',
      'Put the file itself into the recordings folder, not a link.',
      { path },
    );
  }
  return absolutePath;
}

/** Every file in every recordings folder that could be a recording of this size. */
export async function filesOfSize(db: Database, sizeBytes: number): Promise<string[]> {
  const trees = await Promise.all(
    db
      .select()
      .from(folders)
      .all()
      .map((folder) => readTree(folder.path).catch(unreachable)),
  );
  return trees
    .flat()
    .filter((file) => file.sizeBytes === sizeBytes)
    .map((file) => file.path);
}

interface FoundFile {
  path: string;
  sizeBytes: number;
  modifiedAt: number;
}

/** A drive that is not plugged in holds nothing that could be found now. */
function unreachable(error: unknown): FoundFile[] {
  if (error instanceof DomainError) return [];
  throw error;
}

async function readTree(top: string): Promise<FoundFile[]> {
  const found: FoundFile[] = [];
  const waiting = [{ folder: top, depth: 0 }];
  for (let next = waiting.shift(); next && found.length < mostFiles; next = waiting.shift()) {
    const { folder, depth } = next;
    for (const entry of await entriesOf(folder, depth)) {
      const path = join(folder, entry.name);
      if (entry.isDirectory() && depth < deepest && !entry.name.startsWith('.'))
        waiting.push({ folder: path, depth: depth + 1 });
      else if (looksLikeRecording(entry.name)) found.push(...(await fileAt(path, entry, top)));
    }
  }
  return found;
}

async function entriesOf(folder: string, depth: number): Promise<Dirent[]> {
  try {
    return await readdir(folder, { withFileTypes: true });
  } catch {
    if (depth > 0) return []; // A folder below that may not be read hides its own files only.
    throw new DomainError(
      'unavailable',
      'The recordings folder cannot be read.',
      'Is the drive plugged in, and may this program read it? Then try again.',
      { path: folder },
    );
  }
}

async function fileAt(path: string, entry: Dirent, top: string): Promise<FoundFile[]> {
  if (!entry.isFile() && !entry.isSymbolicLink()) return [];
  if (entry.isSymbolicLink() && !leadsInto(path, top)) return [];
  const info = await stat(path).catch(() => null); // Gone between the listing and the look.
  return info?.isFile() ? [{ path, sizeBytes: info.size, modifiedAt: Math.round(info.mtimeMs) }] : [];
}

function leadsInto(link: string, top: string): boolean {
  try {
    return liesIn(top, realpathSync(link));
  } catch {
    return false; // A link to nothing.
  }
}

function realFolder(wanted: string): string {
  if (!isAbsolute(wanted))
    throw new PathError(
      'The path does not start at the root.',
      wanted,
      'Give the whole path of the folder, for example /home/you/Videos or D:\\Videos.',
    );
  let path: string;
  try {
    path = realpathSync(wanted);
  } catch {
    throw new PathError(
      'There is no such folder.',
      wanted,
      'Check the spelling. A drive must be plugged in while you name a folder on it.',
    );
  }
  if (!statSync(path).isDirectory())
    throw new PathError('That is a file, not a folder.', wanted, 'Name the folder that the file lies in.');
  return path;
}

function realFile(wanted: string): string {
  let path: string;
  try {
    path = realpathSync(wanted);
  } catch {
    throw new DomainError(
      'not-found',
      'There is no such file.',
      'It may have been moved or renamed, or its drive is not plugged in.',
      { path: wanted },
    );
  }
  const info = statSync(path);
  if (info.isDirectory())
    throw new PathError('That is a folder, not a recording.', wanted, 'Pick a file inside it.');
  if (!info.isFile())
    throw new PathError('That is a device or a pipe, not a recording.', wanted, 'Pick an ordinary file.');
  return path;
}

function folderRow(db: Database, id: FolderId) {
  const row = db.select().from(folders).where(eq(folders.id, id)).get();
  if (!row) throw new GoneError('folder');
  return row;
}

function asFolder(row: typeof folders.$inferSelect): Folder {
  const reachable = statSync(row.path, { throwIfNoEntry: false })?.isDirectory() ?? false;
  return { id: row.id, path: row.path, clockOffsetMinutes: row.clockOffsetMinutes, reachable };
}

function usesByPath(db: Database, folderId: FolderId) {
  const rows = db
    .select({
      path: recordings.path,
      jobId: jobs.id,
      number: jobs.number,
      title: jobs.title,
      deletedAt: jobs.deletedAt,
    })
    .from(recordings)
    .innerJoin(takes, eq(takes.recordingId, recordings.id))
    .innerJoin(jobs, eq(jobs.id, takes.jobId))
    .where(eq(recordings.folderId, folderId))
    .all();
  const uses = new Map<string, { jobId: JobId; number: number; title: string }[]>();
  for (const { path, deletedAt, ...job } of rows)
    if (deletedAt === null) uses.set(path, [...(uses.get(path) ?? []), job]);
  return uses;
}

function slashes(path: string): string {
  return sep === '/' ? path : path.replaceAll(sep, '/');
}
