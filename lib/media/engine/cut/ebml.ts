/** An element of RFC 8794: place of its first byte, of its content, and of the byte behind it. */
export interface Element {
  id: number;
  start: number;
  content: number;
  /** Infinity for a size that is not known. */
  end: number;
}

/** Makes an element; its size takes `sizeBytes`, or as few as will do. */
export function element(id: number, content: Buffer, sizeBytes = leastSizeBytes(content.length)): Buffer {
  return Buffer.concat([idBytes(id), sizeOf(content.length, sizeBytes), content]);
}

export function master(id: number, ...children: Buffer[]): Buffer {
  return element(id, Buffer.concat(children));
}

/** An unsigned integer of eight bytes at the most, as short as it goes. */
export function unsigned(id: number, value: number): Buffer {
  const bytes = Buffer.alloc(8);
  bytes.writeBigUInt64BE(BigInt(value));
  const first = bytes.findIndex((byte) => byte !== 0);
  return element(id, bytes.subarray(first < 0 ? 7 : first));
}

export function text(id: number, value: string): Buffer {
  return element(id, Buffer.from(value));
}

export const voidId = 0xec;

/** A Void element of exactly so many bytes; nine are always enough for its head. */
export function voidOf(bytes: number): Buffer {
  const sizeBytes = bytes < 9 ? 1 : 8;
  return element(voidId, Buffer.alloc(bytes - 1 - sizeBytes), sizeBytes);
}

/** Reads the head of an element; null where there is none. `at` is its place in the file. */
export function readElement(bytes: Buffer, at: number): Element | null {
  const idLength = lengthOf(bytes[0] ?? 0);
  const sizeLength = lengthOf(bytes[idLength] ?? 0);
  if (idLength > 4 || sizeLength > 8 || bytes.length < idLength + sizeLength) return null;
  const id = bytes.readUIntBE(0, idLength);
  const raw = BigInt(`0x${bytes.toString('hex', idLength, idLength + sizeLength)}`);
  const size = raw & ((1n << BigInt(7 * sizeLength)) - 1n);
  const unknown = size === (1n << BigInt(7 * sizeLength)) - 1n;
  const content = at + idLength + sizeLength;
  return { id, start: at, content, end: unknown ? Number.POSITIVE_INFINITY : content + Number(size) };
}

/** The elements within some bytes. */
export function elementsIn(bytes: Buffer, from = 0, to = bytes.length): Element[] {
  const found: Element[] = [];
  for (let at = from; at < to; ) {
    const next = readElement(bytes.subarray(at, Math.min(to, at + 12)), at);
    if (!next || next.end > to) break;
    found.push(next);
    at = next.end;
  }
  return found;
}

/** Bytes of a number by the place of its first set bit. */
function lengthOf(first: number): number {
  return Math.clz32(first) - 23;
}

function idBytes(id: number): Buffer {
  const bytes = Buffer.alloc(4);
  bytes.writeUInt32BE(id);
  return bytes.subarray(bytes.findIndex((byte) => byte !== 0));
}

function leastSizeBytes(size: number): number {
  // All ones mean an unknown size.
  return [1, 2, 3, 4, 5, 6, 7].find((bytes) => size < 2 ** (7 * bytes) - 1) ?? 8;
}

function sizeOf(size: number, bytes: number): Buffer {
  const value = BigInt(size) | (1n << BigInt(7 * bytes));
  return Buffer.from(value.toString(16).padStart(bytes * 2, '0'), 'hex');
}
