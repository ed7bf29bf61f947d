const blockBytes = 64 * 1024;
/** Places in the middle that are sampled, evenly apart. */
const middleBlocks = 6;

export interface Block {
  position: number;
  length: number;
}

/** Which parts of a file are hashed: head, samples from the middle, tail; a small file whole. */
export function fingerprintBlocks(sizeBytes: number): Block[] {
  const count = middleBlocks + 2;
  if (sizeBytes <= count * blockBytes) return [{ position: 0, length: sizeBytes }];
  const last = sizeBytes - blockBytes;
  return Array.from({ length: count }, (_, i) => ({
    position: Math.floor((last * i) / (count - 1)),
    length: blockBytes,
  }));
}
