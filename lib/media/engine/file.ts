import { accessSync, closeSync, constants, openSync, readSync, type Stats, statSync } from 'node:fs';
import { problems } from './errors';

/** Looks at the file itself before FFmpeg does, for a clearer word than "invalid data". */
export function checkFile(path: string): Stats {
  const info = statSync(path, { throwIfNoEntry: false });
  if (!info) throw problems.missing();
  if (info.isDirectory()) throw problems.folder();
  if (info.isFile() && info.size === 0) throw problems.empty();
  try {
    accessSync(path, constants.R_OK);
  } catch {
    throw problems.forbidden();
  }
  return info;
}

/** The first bytes of a file. */
export function headOf(path: string, length: number): Buffer {
  const file = openSync(path, 'r');
  try {
    const bytes = Buffer.alloc(length);
    return bytes.subarray(0, readSync(file, bytes, 0, length, 0));
  } finally {
    closeSync(file);
  }
}

/** ISO/IEC 14496-12: a file of boxes, each a length and a four-letter type. */
export function startsLikeMp4(path: string): boolean {
  return ['ftyp', 'moov', 'mdat', 'wide', 'free', 'skip'].includes(headOf(path, 8).subarray(4).toString('latin1'));
}
