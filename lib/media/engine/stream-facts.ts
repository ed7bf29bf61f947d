import { AV_CODEC_ID_NONE, AV_PIX_FMT_NONE, AV_PKT_DATA_DISPLAYMATRIX } from 'node-av/constants';
import { avGetCodecName, avGetPixFmtName, Codec, CodecContext, type Stream } from 'node-av/lib';
import { clockwiseFrom, type Rotation } from '../rotation';
import type { Tags } from '../tags';

export function codecName(stream: Stream): string {
  const { codecId } = stream.codecpar;
  return codecId === AV_CODEC_ID_NONE ? 'unknown' : (avGetCodecName(codecId) ?? 'unknown');
}

/** Not every decoder of a codec names the profiles: the one that is used for AV1 does not. */
export function profileName(stream: Stream): string | null {
  const { codecId, profile } = stream.codecpar;
  const usual = Codec.findDecoder(codecId);
  const decoders = usual?.profiles ? [usual] : Codec.getCodecList().filter((codec) => codec.id === codecId);
  return (
    decoders.flatMap((codec) => codec.profiles ?? []).find((known) => known.profile === profile)?.name ?? null
  );
}

export function pixelFormatName(stream: Stream): string | null {
  const context = new CodecContext();
  context.allocContext3(null);
  try {
    context.parametersToContext(stream.codecpar);
    return context.pixelFormat === AV_PIX_FMT_NONE ? null : avGetPixFmtName(context.pixelFormat);
  } finally {
    context.freeContext();
  }
}

export function rotationOf(stream: Stream): Rotation {
  const bytes = stream.codecpar.getCodedSideData(AV_PKT_DATA_DISPLAYMATRIX);
  if (!bytes || bytes.length < 36) return 0;
  return clockwiseFrom(Array.from({ length: 9 }, (_, i) => bytes.readInt32LE(i * 4)));
}

/** Width of a coded pixel for a height of 1; 1 where the file does not say. */
export function pixelAspect(stream: Stream): number {
  const [own, inside] = [stream.sampleAspectRatio, stream.codecpar.sampleAspectRatio].map((ratio) =>
    ratio.toDouble(),
  );
  return [own, inside].find((aspect) => aspect !== undefined && aspect > 0 && Number.isFinite(aspect)) ?? 1;
}

export function tagsOf(...sources: { metadata: Stream['metadata'] }[]): Tags {
  const entries = sources.flatMap(({ metadata }) => Object.entries(metadata?.getAll() ?? {}));
  // Earlier sources win: the file's own tags before those of its streams.
  return Object.fromEntries(entries.reverse().map(([key, value]) => [key.toLowerCase(), value]));
}
