import { AV_CODEC_ID_MJPEG, AV_PIX_FMT_YUVJ420P } from 'node-av/constants';
import { Codec, CodecContext, type Frame, Packet, Rational, type Stream } from 'node-av/lib';
import { isSideways, type Rotation } from '../rotation';
import { fitHeight, type Size } from '../stills';
import { FilterChain } from './filter-chain';
import { check } from './native';
import { pixelAspect, rotationOf } from './stream-facts';

/** Quarter turns as libavfilter calls them. */
export const turns: Readonly<Record<Rotation, string>> = {
  0: '',
  90: ',transpose=clock',
  180: ',hflip,vflip',
  270: ',transpose=cclock',
};

/** 2 is best, 31 worst. */
const jpegQuality = 4;

/** A small picture, ready to be written. */
export interface Picture extends Size {
  jpeg: Buffer;
  /** Brightness plane, `stride` bytes a row. */
  luma: Buffer;
  stride: number;
}

/** Makes JPEG pictures of frames, turned and shaped as they are shown, at most `height` high. */
export class JpegMaker {
  readonly #stream: Stream;
  readonly #height: number;
  readonly #packet = new Packet();
  #chain: { key: string; filters: FilterChain } | null = null;
  #encoder: CodecContext | null = null;
  #made = 0n;

  constructor(stream: Stream, height: number) {
    this.#stream = stream;
    this.#height = height;
    this.#packet.alloc();
  }

  make(frame: Frame): Picture {
    let picture: Picture | null = null;
    this.#chainFor(frame).push(frame, (shaped) => {
      const { width, height, data, linesize } = shaped;
      picture = {
        width,
        height,
        luma: Buffer.from(data?.[0] ?? []),
        stride: linesize[0] ?? width,
        jpeg: this.#encode(shaped),
      };
    });
    if (!picture) throw new Error('libavfilter gave no picture back');
    return picture;
  }

  free(): void {
    this.#chain?.filters.free();
    this.#encoder?.freeContext();
    this.#packet.free();
  }

  #chainFor(frame: Frame): FilterChain {
    const key = keyOf(frame);
    if (this.#chain?.key === key) return this.#chain.filters;
    this.#chain?.filters.free();
    this.#chain = { key, filters: shaping(frame, this.#stream, this.#height) };
    return this.#chain.filters;
  }

  #encode(shaped: Frame): Buffer {
    const encoder = this.#encoderFor(shaped);
    shaped.pts = this.#made++;
    shaped.quality = jpegQuality * 118; // FF_QP2LAMBDA
    check(encoder.sendFrameSync(shaped), 'writing a still');
    check(encoder.receivePacketSync(this.#packet), 'writing a still');
    const jpeg = Buffer.from(this.#packet.data ?? []);
    this.#packet.unref();
    return jpeg;
  }

  #encoderFor({ width, height }: Frame): CodecContext {
    if (this.#encoder?.width === width && this.#encoder.height === height) return this.#encoder;
    this.#encoder?.freeContext();
    const codec = Codec.findEncoder(AV_CODEC_ID_MJPEG);
    const encoder = new CodecContext();
    encoder.allocContext3(codec);
    Object.assign(encoder, {
      width,
      height,
      pixelFormat: AV_PIX_FMT_YUVJ420P,
      timeBase: new Rational(1, 25),
      threadCount: 1,
    });
    check(encoder.open2Sync(codec, null), 'starting the JPEG encoder');
    this.#encoder = encoder;
    return encoder;
  }
}

/** Turned, shaped, and full-range 4:2:0 as JPEG wants it. */
function shaping(frame: Frame, stream: Stream, height: number): FilterChain {
  const rotation = rotationOf(stream);
  const sideways = isSideways(rotation);
  const wide = { width: Math.round(frame.width * pixelAspect(stream)), height: frame.height };
  const target = fitHeight(sideways ? { width: wide.height, height: wide.width } : wide, height);
  const [w, h] = sideways ? [target.height, target.width] : [target.width, target.height];
  return new FilterChain(
    'buffer',
    `video_size=${frame.width}x${frame.height}:pix_fmt=${frame.format}:time_base=1/1000`,
    `scale=${w}:${h}:flags=bilinear:out_range=full${turns[rotation]},format=yuvj420p,setsar=1`,
  );
}

function keyOf(frame: Frame): string {
  return `${frame.width}x${frame.height}/${frame.format}`;
}
