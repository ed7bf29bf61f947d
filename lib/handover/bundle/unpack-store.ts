import { createWriteStream, statSync } from 'node:fs';
import { type Readable, Transform } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { crc32 } from 'node:zlib';
import { type Entry, openPromise, type ZipFile } from 'yauzl';
import { type ArchiveEntry, checkArchive, mostEntries, recordName } from './archive';
import { BundleError } from './problems';

/** A bundle whose list of files is in order. What is in the files is checked as they are read. */
export interface Archive {
  /** Names of its files. */
  names: readonly string[];
  sizeOf(name: string): number | null;
  readRecord(): Promise<string>;
  /** Writes a file of it to a new file on the disk. */
  extract(name: string, to: string): Promise<void>;
  close(): void;
}

type Listed = ArchiveEntry & { raw: Entry };

/** @throws BundleError where it is no ZIP, or one that is not safe */
export async function openArchive(path: string): Promise<Archive> {
  const { size } = statSync(path);
  const zip = await opened(path);
  try {
    const files = new Map<string, Listed>();
    const listed = await listOf(zip);
    const checked = checkArchive(listed, size);
    for (const entry of listed)
      if (entry.name !== null && checked.has(entry.name)) files.set(entry.name, entry);
    return archiveOf(zip, files);
  } catch (error) {
    zip.close();
    throw error;
  }
}

function archiveOf(zip: ZipFile, files: ReadonlyMap<string, Listed>): Archive {
  const entryOf = (name: string): Entry => {
    const entry = files.get(name);
    if (!entry) throw new BundleError('record', 'The record names a file that is not in the bundle.', name);
    return entry.raw;
  };
  return {
    names: [...files.keys()],
    sizeOf: (name) => files.get(name)?.sizeBytes ?? null,
    readRecord: () => inWords(recordName, () => textOf(zip, entryOf(recordName))),
    extract: (name, to) =>
      inWords(name, async () => {
        const { bytes, check } = await checkedStream(zip, entryOf(name));
        await pipeline(bytes, check, createWriteStream(to, { flags: 'wx', flush: true }));
      }),
    close: () => zip.close(),
  };
}

async function opened(path: string): Promise<ZipFile> {
  try {
    return await openPromise(path, { lazyEntries: true, autoClose: false, decodeStrings: false });
  } catch (error) {
    if (isOfDisk(error)) throw error;
    throw new BundleError('no archive', 'That is no whole ZIP file.');
  }
}

async function listOf(zip: ZipFile): Promise<Listed[]> {
  if (zip.entryCount > mostEntries)
    throw new BundleError('unsafe', `The bundle lists ${zip.entryCount} files: more than any job has.`);
  const entries: Listed[] = [];
  try {
    for await (const raw of zip.eachEntry()) entries.push(asListed(raw));
  } catch (error) {
    if (isOfDisk(error)) throw error;
    throw new BundleError('damaged', 'The list of files in the bundle is damaged.');
  }
  return entries;
}

function asListed(raw: Entry): Listed {
  return {
    name: utf8(raw.fileNameRaw),
    isEncrypted: raw.isEncrypted(),
    method: raw.compressionMethod,
    externalAttributes: raw.externalFileAttributes,
    sizeBytes: raw.uncompressedSize,
    packedBytes: raw.compressedSize,
    position: raw.relativeOffsetOfLocalHeader,
    raw,
  };
}

async function textOf(zip: ZipFile, entry: Entry): Promise<string> {
  const { bytes, check } = await checkedStream(zip, entry);
  const pieces: Buffer[] = [];
  await pipeline(bytes, check, async (source: AsyncIterable<Buffer>) => {
    for await (const piece of source) pieces.push(piece);
  });
  const text = utf8(Buffer.concat(pieces));
  if (text === null) throw new BundleError('damaged', 'The record in the bundle is not readable: no UTF-8.');
  return text;
}

/** The unpacked bytes of a file, never more than were told, and the check of its sum (CRC-32), which yauzl leaves out. */
async function checkedStream(zip: ZipFile, entry: Entry): Promise<{ bytes: Readable; check: Transform }> {
  const local = await zip.readLocalFileHeaderPromise(entry, {});
  if (!local.fileName.equals(entry.fileNameRaw))
    throw new BundleError('unsafe', 'A file of the bundle goes by two names.', utf8(entry.fileNameRaw) ?? '');
  let sum = 0;
  const check = new Transform({
    transform: (piece: Buffer, _, done) => {
      sum = crc32(piece, sum);
      done(null, piece);
    },
    flush: (done) => done(sum === entry.crc32 ? null : new Error('CRC-32')),
  });
  return { bytes: await zip.openReadStreamPromise(entry), check };
}

/** Errors of the archive become one of the bundle; those of the disk stay what they are. */
async function inWords<T>(name: string, work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    if (error instanceof BundleError || isOfDisk(error)) throw error;
    throw new BundleError('damaged', 'A file of the bundle is damaged.', name);
  }
}

/** System errors have a number; those of zlib are about the archive. */
function isOfDisk(error: unknown): boolean {
  return error instanceof Error && 'errno' in error && 'syscall' in error;
}

function utf8(bytes: Buffer): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return null;
  }
}
