import { mkdirSync, utimesSync } from 'node:fs';
import { join } from 'node:path';
import type { BundleRecord, BundleTake } from '@/shared/bundle';
import type { TakeId } from '@/shared/ids';
import { namer } from './entry-name';
import type { Arrival, FingerprintOf } from './find-store';
import { BundleError } from './problems';
import { checkRoom } from './receive-store';
import type { Archive } from './unpack-store';

/** Recordings taken out of the bundle into a folder, and the names that missing ones are to have there; by take. */
export interface Unpacked {
  folder: string;
  names: ReadonlyMap<TakeId, string>;
}

/** What the record says of the recordings in the bundle is held against what is there, before any is unpacked. */
export function checkRecordings({ takes }: BundleRecord, archive: Archive): void {
  for (const { recording } of takes) {
    const { file, sizeBytes } = recording;
    if (file === null) continue;
    const size = archive.sizeOf(file);
    if (!file.startsWith('recordings/') || size === null)
      throw new BundleError('record', 'The record names a recording that is not in the bundle.', file);
    if (size !== sizeBytes)
      throw new BundleError(
        'damaged',
        'A recording in the bundle has another size than its record says.',
        file,
      );
  }
}

/** Unpacks the recordings that lie nowhere else. Each must be the one that the record knows. */
export async function unpackRecordings(
  { takes }: BundleRecord,
  arrivals: ReadonlyMap<TakeId, Arrival>,
  archive: Archive,
  folder: string,
  { home, fingerprintOf }: { home: string; fingerprintOf: FingerprintOf },
): Promise<Unpacked> {
  const wanted = takes.filter(({ id }) => arrivals.get(id)?.how === 'in the bundle');
  checkRoom(
    wanted.reduce((sum, { recording }) => sum + recording.sizeBytes, 0),
    home,
  );
  mkdirSync(folder);
  const nameOf = namer();
  const names = new Map<TakeId, string>();
  for (const take of takes) {
    const arrival = arrivals.get(take.id);
    if (arrival?.how === 'missing') names.set(take.id, nameOf(take.recording.name));
    if (arrival?.how !== 'in the bundle') continue;
    const name = nameOf(take.recording.name);
    names.set(take.id, name);
    await unpackOne(take, arrival.file, archive, join(folder, name), fingerprintOf);
  }
  return { folder, names };
}

async function unpackOne(
  { recording: { fingerprint, modifiedAt } }: BundleTake,
  file: string,
  archive: Archive,
  to: string,
  fingerprintOf: FingerprintOf,
): Promise<void> {
  await archive.extract(file, to);
  // Where a recording does not say when it was made, the date of its file does.
  const at = new Date(modifiedAt);
  utimesSync(to, at, at);
  if (fingerprint === null) return; // Nobody has looked at it before; the engine will.
  const found = await fingerprintOf(to);
  if (found?.sha256 !== fingerprint.sha256)
    throw new BundleError('damaged', 'A recording in the bundle is not the one that its record knows.', file);
}
