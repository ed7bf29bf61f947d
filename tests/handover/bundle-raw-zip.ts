import { crc32, deflateRawSync } from 'node:zlib';

/** A file of a ZIP written by hand, with what is to be wrong in it. */
export interface RawFile {
  name: string | Buffer;
  data: Buffer;
  deflated?: boolean;
  /** What stands in the headers in place of what is so. */
  says?: {
    method?: number;
    flags?: number;
    crc?: number;
    sizeBytes?: number;
    packedBytes?: number;
    externalAttributes?: number;
    localName?: string;
    position?: number;
  };
}

/** A ZIP, byte by byte: ZIP Application Note 6.3.10, sections 4.3.7 (local), 4.3.12 (central), 4.3.16 (end). */
export function rawZip(files: readonly RawFile[], { count = files.length } = {}): Buffer {
  const locals: Buffer[] = [];
  const centrals: Buffer[] = [];
  let position = 0;
  for (const file of files) {
    const name = Buffer.from(file.name);
    const packed = file.deflated ? deflateRawSync(file.data) : file.data;
    const common = commonOf(file, packed);
    const localName = file.says?.localName === undefined ? name : Buffer.from(file.says.localName);
    const local = Buffer.concat([number(0x04034b50, 4), common(localName.length), localName, packed]);
    const { externalAttributes = 0, position: told = position } = file.says ?? {};
    centrals.push(
      Buffer.concat([
        ...[number(0x02014b50, 4), number(0x033f, 2), common(name.length), number(0, 6)],
        ...[number(externalAttributes, 4), number(told, 4), name],
      ]),
    );
    locals.push(local);
    position += local.length;
  }
  const central = Buffer.concat(centrals);
  return Buffer.concat([...locals, central, ...endOf(count, central.length, position)]);
}

/** What local and central headers share, from the version on to the lengths of the names. */
function commonOf({ data, deflated, says = {} }: RawFile, packed: Buffer): (nameLength: number) => Buffer {
  return (nameLength) =>
    Buffer.concat([
      ...[number(20, 2), number((says.flags ?? 0) | 0x800, 2), number(says.method ?? (deflated ? 8 : 0), 2)],
      ...[number(0, 4), number(says.crc ?? crc32(data), 4), number(says.packedBytes ?? packed.length, 4)],
      ...[number(says.sizeBytes ?? data.length, 4), number(nameLength, 2), number(0, 2)],
    ]);
}

/** With more files than 16 bits can tell, the ZIP64 records stand before the end (sections 4.3.14 and 4.3.15). */
function endOf(count: number, centralBytes: number, position: number): Buffer[] {
  const isLong = count > 0xfffe;
  const short = Math.min(count, 0xffff);
  const zip64 = [
    ...[number(0x06064b50, 4), long(44), number(45, 2), number(45, 2), number(0, 4), number(0, 4)],
    ...[long(count), long(count), long(centralBytes), long(position)],
    ...[number(0x07064b50, 4), number(0, 4), long(position + centralBytes), number(1, 4)],
  ];
  return [
    ...(isLong ? zip64 : []),
    ...[number(0x06054b50, 4), number(0, 4), number(short, 2), number(short, 2)],
    ...[number(centralBytes, 4), number(isLong ? 0xffffffff : position, 4), number(0, 2)],
  ];
}

function number(value: number, bytes: number): Buffer {
  const buffer = Buffer.alloc(bytes);
  buffer.writeUIntLE(value, 0, Math.min(bytes, 6));
  return buffer;
}

function long(value: number): Buffer {
  const buffer = Buffer.alloc(8);
  buffer.writeBigUInt64LE(BigInt(value));
  return buffer;
}
