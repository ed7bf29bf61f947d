import { readSync, writeSync } from 'node:fs';

/** Bytes of an open file from a place on; fewer at its end. */
export function readAt(file: number, at: number, length: number): Buffer {
  const bytes = Buffer.alloc(length);
  return bytes.subarray(0, readSync(file, bytes, 0, length, at));
}

export function writeAt(file: number, bytes: Buffer, at: number): void {
  for (let done = 0; done < bytes.length; )
    done += writeSync(file, bytes, done, bytes.length - done, at + done);
}
