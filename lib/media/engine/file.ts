import { closeSync, openSync, readSync, type Stats, statSync } from 'node:fs';
import { problems } from './errors';

/** Looks at the file itself before FFmpeg does, for a clearer word than "invalid data". */
export function checkFile(path: string): Stats {
  try {
    const info = statSync(path);
    if (info.isDirectory()) throw problems.folder();
    if (!info.isFile()) throw problems.notMedia();
    if (info.size === 0) throw problems.empty();
    closeSync(openSync(path, 'r'));
    return info;
  } catch (error) {
    throw inWords(error);
  }
}

function inWords(error: unknown): unknown {
  const code = error instanceof Error && 'code' in error ? error.code : null;
  if (code === 'ENOENT' || code === 'ENOTDIR') return problems.missing();
  return code === 'EACCES' || code === 'EPERM' ? problems.forbidden() : error;
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
  return ['ftyp', 'moov', 'mdat', 'wide', 'free', 'skip'].includes(
    headOf(path, 8).subarray(4).toString('latin1'),
  );
}
