import { AV_CODEC_ID_H264, AV_CODEC_ID_HEVC } from 'node-av/constants';
import type { CodecParameters, Packet } from 'node-av/lib';
import { type NalCodec, nalUnits } from './nal-units';

/** Types of units that hold supplemental information: ITU-T H.264, table 7-1; H.265, table 7-1. */
const supplemental: Readonly<Record<NalCodec, readonly number[]>> = { h264: [6], hevc: [39, 40] };
/**
 * Registered and unregistered user data (ITU-T H.264, D.1; H.265, D.2.1): captions, places, and whatever else a camera
 * writes in between the pictures. No decoder needs them.
 */
const userData: ReadonlySet<number> = new Set([4, 5]);

/** Takes user data out of packets of one stream, before they get their stamps; most packets are left as they are. */
export function userDataRemover({ codecId, extradata }: CodecParameters): (packet: Packet) => void {
  if (codecId !== AV_CODEC_ID_H264 && codecId !== AV_CODEC_ID_HEVC) return () => undefined;
  const codec: NalCodec = codecId === AV_CODEC_ID_H264 ? 'h264' : 'hevc';
  const settings = extradata;
  return (packet) => {
    const { data } = packet;
    const kept = data && withoutUserData(data, codec, settings);
    if (!kept || kept === data) return;
    const { flags } = packet;
    // Empties all other fields of the packet.
    packet.data = kept;
    packet.flags = flags;
  };
}

/** The same buffer where there is nothing to take out. A unit that holds user data goes as a whole. */
export function withoutUserData(data: Buffer, codec: NalCodec, settings: Buffer | null): Buffer {
  const units = nalUnits(data, codec, settings);
  const head = codec === 'h264' ? 1 : 2;
  const taken = units.filter(
    ({ type, start, end }) =>
      supplemental[codec].includes(type) && hasUserData(data.subarray(start + head, end)),
  );
  if (taken.length === 0 || taken.length === units.length) return data;
  return Buffer.concat(
    units.filter((unit) => !taken.includes(unit)).map(({ prefix, end }) => data.subarray(prefix, end)),
  );
}

/** ITU-T H.264, 7.3.2.3.1: messages one after the other, type and size in bytes of 255 and a rest. */
function hasUserData(payload: Buffer): boolean {
  const number = (at: number) => {
    let value = 0;
    let end = at;
    while (payload[end] === 255) {
      value += 255;
      end += 1;
    }
    return { value: value + (payload[end] ?? 0), end: end + 1 };
  };
  // The last byte is the stop bit.
  for (let at = 0; at < payload.length - 1; ) {
    const type = number(at);
    const size = number(type.end);
    if (userData.has(type.value)) return true;
    at = size.end + size.value;
  }
  return false;
}
