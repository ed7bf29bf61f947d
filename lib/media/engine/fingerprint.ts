import { createHash } from 'node:crypto';
import { open } from 'node:fs/promises';
import type { Fingerprint } from '@/shared/media';
import { fingerprintBlocks } from '../fingerprint-layout';
import { checkFile } from './file';

/** Size and SHA-256 over size and sampled blocks: half a megabyte is read of however large a file. */
export async function fingerprint(path: string): Promise<Fingerprint> {
  const { size } = checkFile(path);
  const hash = createHash('sha256').update(`${size}\n`);
  const file = await open(path);
  try {
    for (const { position, length } of fingerprintBlocks(size)) {
      const { buffer, bytesRead } = await file.read(Buffer.alloc(length), 0, length, position);
      hash.update(buffer.subarray(0, bytesRead));
    }
  } finally {
    await file.close();
  }
  return { sizeBytes: size, sha256: hash.digest('hex') };
}
