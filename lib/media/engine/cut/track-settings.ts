import {
  AV_CODEC_ID_AAC,
  AV_PKT_DATA_DISPLAYMATRIX,
  AVMEDIA_TYPE_AUDIO,
  AVMEDIA_TYPE_VIDEO,
} from 'node-av/constants';
import { type CodecParameters, Rational } from 'node-av/lib';
import type { CutFormat } from '../../cut';
import { check } from '../native';

/**
 * Describes a copied picture. Field by field, so that nothing goes along but what a player needs to show it: no side
 * data except the way it is turned.
 */
export function describePicture(
  to: CodecParameters,
  from: CodecParameters,
  format: CutFormat,
  settings: Buffer | null,
): void {
  Object.assign(to, {
    codecType: AVMEDIA_TYPE_VIDEO,
    codecId: from.codecId,
    extradata: settings,
    format: from.format,
    width: format.width,
    height: format.height,
    sampleAspectRatio: new Rational(...format.pixelAspect),
    profile: from.profile,
    level: from.level,
    bitRate: from.bitRate,
    videoDelay: from.videoDelay,
    colorRange: from.colorRange,
    colorPrimaries: from.colorPrimaries,
    colorTrc: from.colorTrc,
    colorSpace: from.colorSpace,
    chromaLocation: from.chromaLocation,
  });
  if (format.rotation !== 0)
    check(to.addCodedSideData(AV_PKT_DATA_DISPLAYMATRIX, displayMatrix(format)), 'turning the picture');
}

export function describeSound(to: CodecParameters, from: CodecParameters): void {
  Object.assign(to, {
    codecType: AVMEDIA_TYPE_AUDIO,
    codecId: AV_CODEC_ID_AAC,
    extradata: from.extradata,
    format: from.format,
    sampleRate: from.sampleRate,
    channelLayout: from.channelLayout,
    frameSize: from.frameSize,
    profile: from.profile,
    bitRate: from.bitRate,
  });
}

/** ISO/IEC 14496-12, 8.3.2.3: nine numbers, fixed point with 16 bits (the last column: 30) behind the point. */
function displayMatrix({ rotation, width, height }: CutFormat): Buffer {
  const one = 1 << 16;
  const turned: Readonly<Record<CutFormat['rotation'], readonly number[]>> = {
    0: [one, 0, 0, 0, one, 0, 0, 0],
    90: [0, one, 0, -one, 0, 0, height * one, 0],
    180: [-one, 0, 0, 0, -one, 0, width * one, height * one],
    270: [0, -one, 0, one, 0, 0, 0, width * one],
  };
  const bytes = Buffer.alloc(36);
  for (const [i, value] of [...turned[rotation], 1 << 30].entries()) bytes.writeInt32LE(value | 0, i * 4);
  return bytes;
}
