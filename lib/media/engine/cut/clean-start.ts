import { AV_CODEC_ID_H264, AV_CODEC_ID_HEVC } from 'node-av/constants';
import type { CodecParameters, Packet } from 'node-av/lib';
import { nalUnits } from './nal-units';

/**
 * Whether a key frame is one that takes no regard of anything before it. In H.264 that is an IDR picture (ITU-T H.264,
 * 7.4.1.2.4), in HEVC an IDR or BLA picture (ITU-T H.265, 7.4.2.2); other key frames may be followed by pictures, or
 * have an order of pictures, that build on the ones before.
 */
export function isCleanStart({ codecId, extradata }: CodecParameters, packet: Packet): boolean {
  if (codecId !== AV_CODEC_ID_H264 && codecId !== AV_CODEC_ID_HEVC) return true;
  const codec = codecId === AV_CODEC_ID_H264 ? 'h264' : 'hevc';
  for (const { type } of nalUnits(packet.data ?? Buffer.alloc(0), codec, extradata)) {
    if (codec === 'h264' ? type === 5 : type >= 16 && type <= 20) return true;
  }
  return false;
}
