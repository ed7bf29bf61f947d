import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';

/** Small enough that the page stays alive between two. */
const pieceBytes = 1 << 20;
/** Read at once: fewer waits for the device's storage. */
const readBytes = 16 << 20;

/**
 * SHA-256 of a file, read piece by piece. The browser's own needs the whole file in memory, and is missing on pages
 * that do not come by https (W3C Web Cryptography, section 10: secure contexts), as ours in a workshop network.
 * @param onBytes told now and then how many have been read
 * @returns small hexadecimal letters
 */
export async function sha256OfBlob(
  blob: Blob,
  signal: AbortSignal,
  onBytes: (bytes: number) => void = () => {},
): Promise<string> {
  const hash = sha256.create();
  for (let at = 0; at < blob.size; at += readBytes) {
    const bytes = new Uint8Array(await blob.slice(at, at + readBytes).arrayBuffer());
    for (let from = 0; from < bytes.length; from += pieceBytes) {
      signal.throwIfAborted();
      hash.update(bytes.subarray(from, from + pieceBytes));
      await turn();
    }
    onBytes(Math.min(at + readBytes, blob.size));
  }
  return bytesToHex(hash.digest());
}

/** Lets the page do what it has to; unlike a timer it is not slowed down in a page that lies behind another. */
function turn(): Promise<void> {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(null);
  });
}
