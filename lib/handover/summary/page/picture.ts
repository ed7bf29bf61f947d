import { crc32, inflateSync } from 'node:zlib';

/** A picture that can be put into the file as it is. */
export interface Picture {
  bytes: Uint8Array;
  width: number;
  height: number;
}

/** More than a page can show; a small file can unpack to much more than it looks. */
const mostPixels = 24_000_000;
const mostBytes = 16_000_000;

/**
 * Looks at a JPEG or PNG before the writer gets it: the writer unpacks a PNG later, where a fault in it could no
 * longer be caught.
 * @returns the picture, or in words why it cannot be printed
 */
export function pictureOf(bytes: Uint8Array): Picture | string {
  if (bytes.length > mostBytes) return 'the file is too large';
  const size = isPng(bytes) ? sizeOfPng(bytes) : isJpeg(bytes) ? sizeOfJpeg(bytes) : null;
  if (size === null) return 'it is no JPEG and no PNG';
  if (typeof size === 'string') return size;
  if (size.width === 0 || size.height === 0) return 'it has no size';
  if (size.width * size.height > mostPixels) return 'it has too many pixels';
  return { bytes, ...size };
}

type Size = { width: number; height: number };

const pngSignature = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];

function isPng(bytes: Uint8Array): boolean {
  return pngSignature.every((byte, at) => bytes[at] === byte);
}

function isJpeg(bytes: Uint8Array): boolean {
  return bytes[0] === 0xff && bytes[1] === 0xd8;
}

/** Chunks, checksums, and whether the pixels can be unpacked (W3C PNG, sections 5.3, 10 and 11.2). */
function sizeOfPng(bytes: Uint8Array): Size | string {
  const chunks = chunksOf(bytes);
  if (!chunks) return 'the file is damaged';
  const head = chunks.find(({ type }) => type === 'IHDR')?.data;
  if (head?.length !== 13 || chunks.at(-1)?.type !== 'IEND') return 'the file is damaged';
  const size = { width: head.readUInt32BE(0), height: head.readUInt32BE(4) };
  if (size.width * size.height > mostPixels) return size;
  const channels = [1, 0, 3, 1, 2, 0, 4][head.readUInt8(9)] ?? 0;
  const lineBytes = Math.ceil((size.width * channels * head.readUInt8(8)) / 8) + 1;
  const packed = Buffer.concat(chunks.filter(({ type }) => type === 'IDAT').map(({ data }) => data));
  const isInterlaced = head.readUInt8(12) === 1;
  return unpacks(packed, lineBytes * size.height, isInterlaced) ? size : 'the file is damaged';
}

function chunksOf(bytes: Uint8Array): { type: string; data: Buffer }[] | null {
  const view = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const chunks: { type: string; data: Buffer }[] = [];
  let at = pngSignature.length;
  while (at < view.length) {
    if (at + 12 > view.length) return null;
    const end = at + 8 + view.readUInt32BE(at);
    if (end + 4 > view.length || crc32(view.subarray(at + 4, end)) !== view.readUInt32BE(end)) return null;
    chunks.push({ type: view.toString('latin1', at + 4, at + 8), data: view.subarray(at + 8, end) });
    at = end + 4;
  }
  return chunks;
}

/** Interlaced pixels come in seven passes, with a byte for each line of each pass. */
function unpacks(packed: Buffer, wantedBytes: number, isInterlaced: boolean): boolean {
  try {
    const pixels = inflateSync(packed, { maxOutputLength: wantedBytes * 2 + 1024 });
    return isInterlaced ? pixels.length > 0 : pixels.length === wantedBytes;
  } catch {
    return false;
  }
}

const frameMarkers = new Set([0xc0, 0xc1, 0xc2, 0xc3, 0xc5, 0xc6, 0xc7, 0xc9, 0xca, 0xcb, 0xcd, 0xce, 0xcf]);

/** The frame header (ITU-T T.81, B.2.2), and whether the end of the picture is there. */
function sizeOfJpeg(bytes: Uint8Array): Size | string {
  const view = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (view.lastIndexOf(Buffer.from([0xff, 0xd9])) < 0) return 'the file is damaged: its end is missing';
  let at = 2;
  while (at + 9 < view.length && view[at] === 0xff) {
    const marker = view[at + 1] ?? 0;
    if (frameMarkers.has(marker))
      return { height: view.readUInt16BE(at + 5), width: view.readUInt16BE(at + 7) };
    at += 2 + view.readUInt16BE(at + 2);
  }
  return 'the file is damaged';
}
