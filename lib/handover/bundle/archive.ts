import { faultOfName, sameOnDisk } from './entry-name';
import { BundleError } from './problems';

/** What the central directory of a ZIP tells of a file. Sizes and places in bytes. */
export interface ArchiveEntry {
  /** Null where its bytes are no UTF-8. */
  name: string | null;
  isEncrypted: boolean;
  /** ZIP Application Note, section 4.4.5: 0 stored, 8 deflated. */
  method: number;
  /** Section 4.4.15; the upper half holds the file mode of POSIX systems. */
  externalAttributes: number;
  sizeBytes: number;
  packedBytes: number;
  /** Of the local header. */
  position: number;
}

export const recordName = 'record.json';
/** Far more than a bundle holds; the list itself must not fill the memory. */
export const mostEntries = 120_000;
export const mostRecordBytes = 200_000_000;
/** How much a file may grow on unpacking. Deflate reaches 1032 (RFC 1951); a record of years comes to less than 30. */
const mostRatio = 200;
/** Small files may be all blank. */
const ratioCountsFromBytes = 1_000_000;
const localHeaderBytes = 30;

/**
 * Holds the list of files in an archive against what Benchtake writes.
 * @returns its files by name, folders left out
 * @throws BundleError on the first thing that is not safe
 */
export function checkArchive(
  entries: readonly ArchiveEntry[],
  archiveBytes: number,
): Map<string, ArchiveEntry> {
  const files = new Map<string, ArchiveEntry>();
  const onDisk = new Set<string>();
  for (const entry of entries) {
    const name = checkEntry(entry);
    if (onDisk.has(sameOnDisk(name)))
      throw new BundleError('unsafe', 'Two files of the bundle have the same name.', name);
    onDisk.add(sameOnDisk(name));
    if (!name.endsWith('/')) files.set(name, entry);
  }
  checkPlaces(entries, archiveBytes);
  const record = files.get(recordName);
  if (!record) throw new BundleError('no bundle', 'That ZIP holds no record of a job.');
  if (record.sizeBytes > mostRecordBytes)
    throw new BundleError('unsafe', 'The record in the bundle is larger than any job.', recordName);
  return files;
}

function checkEntry(entry: ArchiveEntry): string {
  const { name } = entry;
  if (name === null) throw new BundleError('unsafe', 'A name in the bundle is not readable: no UTF-8.');
  const fault = faultOfName(name);
  if (fault) throw new BundleError('unsafe', `The bundle is not safe: ${fault}.`, name);
  if (entry.isEncrypted)
    throw new BundleError('unsafe', 'A file of the bundle is locked with a password.', name);
  if (entry.method !== 0 && entry.method !== 8)
    throw new BundleError('unsafe', 'A file of the bundle is packed in a way that is not known here.', name);
  checkKind(name, entry.externalAttributes);
  checkSizes(name, entry);
  return name;
}

/** Links, devices and pipes are told by the file type of POSIX modes (IEEE 1003.1, sys/stat.h). */
function checkKind(name: string, externalAttributes: number): void {
  const type = (externalAttributes >>> 16) & 0o170000;
  const isFolder = name.endsWith('/');
  if (type === 0 || type === (isFolder ? 0o040000 : 0o100000)) return;
  const what = type === 0o120000 ? 'a link' : 'no ordinary file';
  throw new BundleError('unsafe', `The bundle is not safe: ${what} lies in it.`, name);
}

function checkSizes(name: string, { sizeBytes, packedBytes }: ArchiveEntry): void {
  if (sizeBytes >= ratioCountsFromBytes && sizeBytes > packedBytes * mostRatio)
    throw new BundleError('unsafe', 'A file of the bundle would grow out of all measure on unpacking.', name);
}

/** Files that lie over each other are one lump of bytes unpacked many times over. */
function checkPlaces(entries: readonly ArchiveEntry[], archiveBytes: number): void {
  let free = 0;
  for (const entry of [...entries].sort((a, b) => a.position - b.position)) {
    if (entry.position < free)
      throw new BundleError('unsafe', 'Files of the bundle lie over each other.', entry.name ?? undefined);
    free = entry.position + localHeaderBytes + entry.packedBytes;
    if (free > archiveBytes)
      throw new BundleError('damaged', 'The bundle ends before its files do.', entry.name ?? undefined);
  }
}
