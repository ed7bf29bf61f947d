import { createReadStream, statSync } from 'node:fs';
import { PassThrough, pipeline, type Readable } from 'node:stream';
import { type ReadStreamOptions, ZipFile } from 'yazl';

/** A file of the archive: from memory, from the disk as it is, or made when its turn comes. */
export type Packed =
  | { name: string; bytes: Buffer; isPackedAlready: boolean }
  | { name: string; path: string; sizeBytes: number }
  | { name: string; open: () => Readable; modifiedAt: Date };

const pieceBytes = 1 << 20;

/**
 * Writes a ZIP (ZIP64 where it is needed) while it is being read: nothing is kept in memory but what comes from it.
 * Ends with an error where a file from the disk cannot be read to its end.
 */
export function zipStream(files: readonly Packed[]): Readable {
  const zip = new ZipFile();
  const out = new PassThrough({ highWaterMark: pieceBytes });
  let reading: Readable | null = null;
  zip.on('error', (error: Error) => out.destroy(error));
  const addLazily = (name: string, options: Partial<ReadStreamOptions>, open: () => Readable) =>
    zip.addReadStreamLazy(name, options, (give) => {
      reading = open();
      reading.on('error', (error) => out.destroy(error));
      give(null, reading);
    });
  for (const file of files) {
    if ('bytes' in file) zip.addBuffer(file.bytes, file.name, { compress: !file.isPackedAlready });
    else if ('path' in file) {
      const { mtime } = statSync(file.path);
      addLazily(file.name, { compress: false, size: file.sizeBytes, mtime }, () =>
        createReadStream(file.path, { highWaterMark: pieceBytes }),
      );
    } else addLazily(file.name, { compress: true, mtime: file.modifiedAt }, file.open);
  }
  zip.end();
  // yazl joins its streams by pipe(), which leaves a file open when whoever reads goes away.
  pipeline(asReadable(zip.outputStream), out, () => reading?.destroy());
  return out;
}

/** The types of yazl call it a ReadableStream; it is a PassThrough of Node. */
function asReadable(stream: NodeJS.ReadableStream): Readable {
  if (!(stream instanceof PassThrough)) throw new Error('yazl gives no PassThrough any more.');
  return stream;
}
