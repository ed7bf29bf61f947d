import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { AV_CODEC_ID_MJPEG, AV_PIX_FMT_YUVJ420P } from 'node-av/constants';
import { Codec, CodecContext, Frame, Packet, Rational, type Stream } from 'node-av/lib';
import { z } from 'zod';
import { cutCoverSchema } from '@/shared/cut-engine';
import { shownSize } from '../cut';
import { type CaptionStrip, captionRunSchema, captionStrip } from './caption-strip';
import { msOf, StreamReader } from './cut/film-reader';
import { filtersFor } from './cut/shaping';
import { problems } from './errors';
import { FilterChain, filterValue } from './filter-chain';
import { check, decode, openDecoder } from './native';
import { Pace, type Watch } from './pace';
import { pixelAspect, rotationOf } from './stream-facts';

export const captionedStillSchema = z.object({
  path: z.string().min(1),
  /** Take time. */
  ms: z.int().nonnegative(),
  covers: z.array(cutCoverSchema).default([]),
  caption: z.array(captionRunSchema),
  /** Of the caller's; the words of the caption are written into it. */
  folder: z.string().min(1),
});
export type CaptionedStill = z.infer<typeof captionedStillSchema>;

/** Ink on paper, whatever the picture is like. */
const paper = '0xFBF8F1';
const ink = '0x1F1B16';
/** 2 is best, 31 worst. */
const jpegQuality = 2;
const lambdaPerQuality = 118; // FF_QP2LAMBDA

/** The very picture shown at a take time, in the size of the recording, as JPEG with the caption on a strip below. */
export async function captionedStill(wanted: CaptionedStill, watch: Watch): Promise<Buffer> {
  const reader = StreamReader.open(wanted.path, 'video');
  if (!reader) throw problems.noPicture();
  const shown = new Frame();
  shown.alloc();
  try {
    await decodeUpTo(reader, wanted.ms, shown, new Pace(watch));
    return drawn(shown, reader.stream, wanted);
  } finally {
    shown.free();
    reader.close();
  }
}

/** Leaves in `shown` the last picture that begins at or before a take time, or the first there is. */
async function decodeUpTo(reader: StreamReader, wantedMs: number, shown: Frame, pace: Pace): Promise<void> {
  const decoder = openDecoder(reader.stream, 1);
  if (!decoder) throw problems.noPicture();
  const frame = new Frame();
  frame.alloc();
  let any = false;
  let passed = false;
  const use = (next: Frame) => {
    passed ||= (msOf(reader.seconds(next.bestEffortTimestamp)) ?? 0) > wantedMs;
    if (passed && any) return;
    shown.unref();
    shown.ref(next);
    any = true;
  };
  try {
    if (!reader.seekAtOrBefore(wantedMs, () => reader.startsClean) && !toFirstClean(reader))
      throw problems.noStill();
    do {
      decode(decoder, reader.packet, frame, use);
      if (pace.due) await pace.rest(0);
    } while (!passed && reader.read());
    if (!passed) decode(decoder, null, frame, use);
    if (!any) throw problems.noStill();
  } finally {
    frame.free();
    decoder.freeContext();
  }
}

function toFirstClean(reader: StreamReader): boolean {
  reader.seek(0);
  while (reader.read()) if (reader.startsClean) return true;
  return false;
}

function drawn(frame: Frame, stream: Stream, { caption, covers, folder }: CaptionedStill): Buffer {
  const shape = {
    width: frame.width,
    height: frame.height,
    rotation: rotationOf(stream),
    pixelAspect: aspectOf(stream),
  };
  const size = shownSize(shape);
  const strip = captionStrip(caption, size);
  const chain = new FilterChain(
    'buffer',
    `video_size=${frame.width}x${frame.height}:pix_fmt=${frame.format}:time_base=1/1000`,
    [
      filtersFor(shape, { ...size, like: '', rotation: 0, pixelAspect: [1, 1] }, covers),
      'scale=out_range=full,format=yuvj420p',
      `pad=iw:ih+${strip.height}:0:0:${paper}`,
      ...wordsOn(strip, size.height, folder),
    ].join(','),
  );
  try {
    let jpeg: Buffer | null = null;
    chain.push(frame, (picture) => {
      jpeg = encoded(picture);
    });
    if (!jpeg) throw new Error('libavfilter gave no picture back');
    return jpeg;
  } finally {
    chain.free();
  }
}

/** Shares of a pixel's height are lost on nobody: the picture is made of whole pixels in the end. */
function aspectOf(stream: Stream): [number, number] {
  return [Math.max(1, Math.round(pixelAspect(stream) * 10_000)), 10_000];
}

/** Words go in by files, so that nothing of them is read as libavfilter's own notation. */
function wordsOn({ runs, sizePx }: CaptionStrip, topPx: number, folder: string): string[] {
  return runs.map(({ text, font, x, y }, place) => {
    const file = join(folder, `caption-${place}.txt`);
    writeFileSync(file, text);
    const from = `textfile=${filterValue(file)}:fontfile=${filterValue(font)}:expansion=none`;
    return `drawtext=${from}:fontsize=${sizePx}:fontcolor=${ink}:x=${x}:y=${topPx + y}:y_align=baseline`;
  });
}

function encoded(picture: Frame): Buffer {
  const encoder = new CodecContext();
  const codec = Codec.findEncoder(AV_CODEC_ID_MJPEG);
  const packet = new Packet();
  packet.alloc();
  try {
    encoder.allocContext3(codec);
    Object.assign(encoder, {
      width: picture.width,
      height: picture.height,
      pixelFormat: AV_PIX_FMT_YUVJ420P,
      timeBase: new Rational(1, 25),
      threadCount: 1,
    });
    check(encoder.open2Sync(codec, null), 'starting the JPEG encoder');
    picture.pts = 0n;
    picture.quality = jpegQuality * lambdaPerQuality;
    check(encoder.sendFrameSync(picture), 'writing a still');
    check(encoder.receivePacketSync(packet), 'writing a still');
    return Buffer.from(packet.data ?? []);
  } finally {
    packet.free();
    encoder.freeContext();
  }
}
