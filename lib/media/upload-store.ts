import { createHash } from 'node:crypto';
import {
  closeSync,
  createReadStream,
  existsSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readdirSync,
  renameSync,
  rmSync,
  statfsSync,
  statSync,
  utimesSync,
} from 'node:fs';
import { join } from 'node:path';
import type { Database } from '@/db/open';
import { addFolder } from './folder-store';
import { numberedName, receivedName } from './received-name';

/** How long an unfinished upload is kept. */
export const uploadsKeptMs = 7 * 86_400_000;
/** Left free whatever is sent: the record itself must always find room. */
const reserveBytes = 256 << 20;

/** Where uploads lie until they are whole. */
export function uploadsFolder(home: string): string {
  return join(home, 'uploads');
}

/** Room for recordings on the drive of the data folder. */
export function roomForUploads(home: string): number {
  const { bavail, bsize } = statfsSync(home);
  return Math.max(0, bavail * bsize - reserveBytes);
}

/** Throws away what was begun a week ago or earlier and never finished. */
export function clearOldUploads(home: string, nowMs: number): void {
  const folder = uploadsFolder(home);
  if (!existsSync(folder)) return;
  // The bytes of an upload and what is noted of it share its id; the note is as old as the upload.
  const begun = new Map<string, number>();
  for (const name of readdirSync(folder)) {
    const id = name.replace(/\..*$/, '');
    begun.set(id, Math.min(begun.get(id) ?? nowMs, statSync(join(folder, name)).mtimeMs));
  }
  for (const name of readdirSync(folder)) {
    const since = begun.get(name.replace(/\..*$/, '')) ?? nowMs;
    if (nowMs - since > uploadsKeptMs) rmSync(join(folder, name), { recursive: true, force: true });
  }
}

/** SHA-256 of a file as it lies on the disk, in hexadecimal. */
export async function sha256OfFile(path: string): Promise<string> {
  const hash = createHash('sha256');
  for await (const piece of createReadStream(path, { highWaterMark: 1 << 20 })) hash.update(piece);
  return hash.digest('hex');
}

interface Arrived {
  /** Where it lies now. */
  path: string;
  /** What the device that sent it calls it. */
  name: string;
  jobNumber: number;
  lastModified: number | undefined;
}

/**
 * Moves a whole upload to `received/<job number>/` in the data folder, which is a recordings folder, under a name
 * that is free there.
 * @returns its path there
 */
export function receiveUpload(db: Database, home: string, arrived: Arrived): string {
  const received = join(home, 'received');
  const folder = join(received, String(arrived.jobNumber));
  mkdirSync(folder, { recursive: true });
  addFolder(db, { path: received, clockOffsetMinutes: 0 });
  settle(arrived.path);
  if (arrived.lastModified !== undefined) {
    const at = new Date(arrived.lastModified);
    utimesSync(arrived.path, at, at);
  }
  const to = reserve(folder, receivedName(arrived.name));
  try {
    renameSync(arrived.path, to);
  } catch (error) {
    rmSync(to);
    throw error;
  }
  return to;
}

/** On the disk, not only on its way there. */
function settle(path: string): void {
  const file = openSync(path, 'r+');
  try {
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

/** Takes the first free name, so that nothing that lies there can be overwritten. */
function reserve(folder: string, name: string): string {
  for (let number = 1; ; number++) {
    const path = join(folder, number === 1 ? name : numberedName(name, number));
    try {
      closeSync(openSync(path, 'wx'));
      return path;
    } catch (error) {
      if (!(error instanceof Error && 'code' in error && error.code === 'EEXIST')) throw error;
    }
  }
}
