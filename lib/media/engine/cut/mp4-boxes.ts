/** A box of ISO/IEC 14496-12, 4.2: place of its first byte, of its content, and of the byte behind it. */
export interface Box {
  type: string;
  start: number;
  content: number;
  end: number;
}

export function box(type: string, ...contents: Buffer[]): Buffer {
  const content = Buffer.concat(contents);
  const head = Buffer.alloc(8);
  head.writeUInt32BE(content.length + 8);
  head.write(type, 4, 'latin1');
  return Buffer.concat([head, content]);
}

/** A full box: version and flags before its content. */
export function fullBox(type: string, version: number, flags: number, ...contents: Buffer[]): Buffer {
  return box(type, numbers32((version << 24) | flags), ...contents);
}

export function numbers32(...values: number[]): Buffer {
  const bytes = Buffer.alloc(values.length * 4);
  for (const [i, value] of values.entries()) bytes.writeInt32BE(value | 0, i * 4);
  return bytes;
}

export function numbers16(...values: number[]): Buffer {
  const bytes = Buffer.alloc(values.length * 2);
  for (const [i, value] of values.entries()) bytes.writeInt16BE(value, i * 2);
  return bytes;
}

export function number64(value: number): Buffer {
  const bytes = Buffer.alloc(8);
  bytes.writeBigUInt64BE(BigInt(value));
  return bytes;
}

/**
 * Reads the head of a box.
 * @param bytes at least 16, or all that there is, from the box on
 * @param room bytes from the box to the end of what holds it
 */
export function readBoxHead(bytes: Buffer, start: number, room: number): Box | null {
  if (bytes.length < 8) return null;
  const short = bytes.readUInt32BE(0);
  if (short === 1 && bytes.length < 16) return null;
  const size = short === 1 ? Number(bytes.readBigUInt64BE(8)) : short === 0 ? room : short;
  const head = short === 1 ? 16 : 8;
  if (size < head || size > room) return null;
  return { type: bytes.toString('latin1', 4, 8), start, content: start + head, end: start + size };
}

/** The boxes within a span of bytes, as far as they are whole. */
export function boxesIn(bytes: Buffer, from = 0, to = bytes.length): Box[] {
  const found: Box[] = [];
  for (let at = from; at < to; ) {
    const next = readBoxHead(bytes.subarray(at, Math.min(to, at + 16)), at, to - at);
    if (!next) break;
    found.push(next);
    at = next.end;
  }
  return found;
}

/** The first box along a path of types, such as `mdia/minf/stbl`. */
export function boxAt(bytes: Buffer, path: string, within?: Box): Box | null {
  let found: Box | null = within ?? null;
  for (const type of path.split('/')) {
    found =
      boxesIn(bytes, found?.content ?? 0, found?.end ?? bytes.length).find((one) => one.type === type) ??
      null;
    if (!found) return null;
  }
  return found;
}
