const BOM_UTF8 = [0xef, 0xbb, 0xbf];
const BOM_UTF16_LE = [0xff, 0xfe];
const BOM_UTF16_BE = [0xfe, 0xff];

const startsWith = (bytes: Uint8Array, mark: readonly number[]): boolean =>
  mark.every((byte, at) => bytes[at] === byte);

/** Share of zero bytes at even or odd places: western text in UTF-16 has a zero in every pair. */
function zeroShare(bytes: Uint8Array, parity: 0 | 1): number {
  const upTo = Math.min(bytes.length, 2000);
  let zeros = 0;
  for (let at = parity; at < upTo; at += 2) if (bytes[at] === 0) zeros++;
  return upTo < 4 ? 0 : zeros / (upTo / 2);
}

function encodingOf(bytes: Uint8Array): 'utf-8' | 'utf-16le' | 'utf-16be' {
  if (startsWith(bytes, BOM_UTF8)) return 'utf-8';
  if (startsWith(bytes, BOM_UTF16_LE)) return 'utf-16le';
  if (startsWith(bytes, BOM_UTF16_BE)) return 'utf-16be';
  if (zeroShare(bytes, 1) > 0.6) return 'utf-16le';
  if (zeroShare(bytes, 0) > 0.6) return 'utf-16be';
  return 'utf-8';
}

/**
 * Text of a captions file: UTF-8, UTF-16 (with or without a byte-order mark) or, where the bytes are no
 * valid UTF-8, Windows-1252. Line ends become `\n`; a byte-order mark is dropped. Never throws.
 */
export function decodeCaptionBytes(bytes: Uint8Array): string {
  const encoding = encodingOf(bytes);
  const text = encoding === 'utf-8' ? decodeUtf8(bytes) : new TextDecoder(encoding).decode(bytes);
  return text
    .replace(/^\uFEFF/, '')
    .replace(/\r\n?/g, '\n')
    .replaceAll('\0', '\uFFFD');
}

/** Bytes 0x80 to 0x9F of Windows-1252 (Encoding standard, index windows-1252); the rest is Latin-1. */
const C1 = '€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ';

/** By hand, because Node 20 decodes `windows-1252` as Latin-1. */
function decodeWindows1252(bytes: Uint8Array): string {
  const letters: string[] = [];
  for (const byte of bytes)
    letters.push(byte >= 0x80 && byte <= 0x9f ? C1.charAt(byte - 0x80) : String.fromCharCode(byte));
  return letters.join('');
}

function decodeUtf8(bytes: Uint8Array): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    // Not valid UTF-8: subtitle tools on older machines write Windows-1252.
    return decodeWindows1252(bytes);
  }
}
