import { createWriteStream, mkdirSync, readdirSync, renameSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { numberedName } from '@/lib/media';
import { roomForUploads } from '@/lib/media/store';
import { BundleError } from './problems';

/** Writes what is sent to a file. @param announcedBytes how many there should be; null where nobody has said */
export async function receive(
  source: Readable,
  to: string,
  announcedBytes: number | null,
  home: string,
): Promise<void> {
  if (announcedBytes !== null) checkRoom(announcedBytes, home);
  try {
    await pipeline(source, createWriteStream(to, { flags: 'wx' }));
  } catch (error) {
    // The disk's own errors are told as such; any other is the sender's going away.
    if (error instanceof Error && 'syscall' in error && 'path' in error) throw error;
    if (error instanceof Error && 'code' in error && error.code === 'ENOSPC') throw error;
    throw new BundleError('damaged', 'The sending of the bundle broke off.');
  }
  if (announcedBytes !== null && statSync(to).size !== announcedBytes)
    throw new BundleError('damaged', 'Only a part of the bundle arrived.');
}

/** @throws BundleError where so much does not go onto the drive of the data folder */
export function checkRoom(bytes: number, home: string): void {
  const room = roomForUploads(home);
  if (bytes <= room) return;
  throw new BundleError(
    'no room',
    `The bundle needs ${megabytes(bytes)} MB, and ${megabytes(room)} MB are free.`,
  );
}

/** Moves files into a new folder below `received/` in the data folder. @returns the folder */
export function moveToReceived(home: string, from: string, jobNumber: number): string {
  const to = newFolder(join(home, 'received'), `bundle-of-job-${jobNumber}`);
  for (const name of readdirSync(from)) renameSync(join(from, name), join(to, name));
  return to;
}

/** Under the first name that is free. */
function newFolder(parent: string, name: string): string {
  mkdirSync(parent, { recursive: true });
  for (let number = 1; ; number++) {
    const path = join(parent, number === 1 ? name : numberedName(name, number));
    try {
      mkdirSync(path);
      return path;
    } catch (error) {
      if (!(error instanceof Error && 'code' in error && error.code === 'EEXIST')) throw error;
    }
  }
}

function megabytes(bytes: number): string {
  return String(Math.ceil(bytes / 1_000_000));
}
