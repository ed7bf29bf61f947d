export type NalCodec = 'h264' | 'hevc';

export interface NalUnit {
  type: number;
  /** Place of its first byte, behind length or start code, and of the first byte behind it. */
  start: number;
  end: number;
  /** Place of its length or start code. */
  prefix: number;
}

/**
 * The NAL units of one packet.
 * @param settings the decoder's settings: `avcC` or `hvcC` (ISO/IEC 14496-15) say how long the lengths are; anything
 *   else means start codes (ITU-T H.264, Annex B)
 */
export function nalUnits(data: Buffer, codec: NalCodec, settings: Buffer | null): NalUnit[] {
  const lengthBytes = lengthBytesOf(codec, settings);
  const typeOf = (start: number) =>
    codec === 'h264' ? (data[start] ?? 0) & 31 : ((data[start] ?? 0) >> 1) & 63;
  const spans = lengthBytes === null ? byStartCodes(data) : byLengths(data, lengthBytes);
  return spans.map((span) => ({ type: typeOf(span.start), ...span }));
}

/** Bytes of each length before a unit; null where units stand behind start codes. */
export function lengthBytesOf(codec: NalCodec, settings: Buffer | null): number | null {
  if (settings?.[0] !== 1) return null;
  return ((settings[codec === 'h264' ? 4 : 21] ?? 3) & 3) + 1;
}

type Span = Omit<NalUnit, 'type'>;

function byLengths(data: Buffer, lengthBytes: number): Span[] {
  const spans: Span[] = [];
  for (let prefix = 0; prefix + lengthBytes < data.length; ) {
    const start = prefix + lengthBytes;
    const end = Math.min(data.length, start + data.readUIntBE(prefix, lengthBytes));
    if (end > start) spans.push({ prefix, start, end });
    prefix = Math.max(end, start);
  }
  return spans;
}

const startCode = Buffer.from([0, 0, 1]);

function byStartCodes(data: Buffer): Span[] {
  const spans: Span[] = [];
  for (let prefix = data.indexOf(startCode); prefix >= 0; ) {
    const next = data.indexOf(startCode, prefix + 3);
    spans.push({ prefix, start: prefix + 3, end: next < 0 ? data.length : next });
    prefix = next;
  }
  return spans;
}
