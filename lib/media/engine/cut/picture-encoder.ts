import {
  AV_CODEC_FLAG_BITEXACT,
  AV_CODEC_FLAG_GLOBAL_HEADER,
  AV_CODEC_ID_H264,
  AV_OPT_SEARCH_CHILDREN,
  AV_OPT_TYPE_STRING,
  AV_PICTURE_TYPE_NONE,
  AV_PIX_FMT_YUV420P,
} from 'node-av/constants';
import { Codec, CodecContext, type CodecParameters, type Frame, Packet, Rational } from 'node-av/lib';
import type { CutFormat } from '../../cut';
import { check } from '../native';
import { CutOutput, type CutTrack } from './output';
import { pictureTicks } from './picture-line';

/** How pictures are encoded. */
export interface EncoderSettings {
  format: CutFormat;
  /** Number of the parameter sets, so that they can stand beside those of copied pictures. */
  parameterSet: number;
  frameRate: number;
  /** What the numbers of each pixel mean; null where it is not said. */
  colour: Pick<CodecParameters, 'colorPrimaries' | 'colorTrc' | 'colorSpace'> | null;
}

/** 18 is hardly told from the original, 23 is x264's own choice. */
const crf = 19;
const keyEverySeconds = 2;
/** Kept in every file of pieces, so that a change of these lines does not mix with pieces of before. */
export const encoderVersion = `x264 crf ${crf} veryfast`;

/** Writes one encoded piece of picture, with stamps in {@link pictureTicks} from its start. */
export class PictureEncoder {
  readonly #output: CutOutput;
  readonly #encoder = new CodecContext();
  readonly #packet = new Packet();
  readonly #track: CutTrack;

  constructor(path: string, settings: EncoderSettings) {
    openEncoder(this.#encoder, settings);
    this.#packet.alloc();
    this.#output = new CutOutput(path, 'mp4', null, null);
    this.#track = this.#output.addTrack(pictureTicks, (parameters) => {
      check(parameters.fromContext(this.#encoder), 'describing the picture');
    });
    this.#output.begin();
  }

  /** @param ticks from the start of the piece; and how long it is shown */
  add(frame: Frame, ticks: number, duration: number): void {
    frame.pts = BigInt(ticks);
    frame.duration = BigInt(duration);
    // What kind of picture it was in the source is none of the encoder's business.
    frame.pictType = AV_PICTURE_TYPE_NONE;
    this.#encode(frame);
  }

  end(): void {
    this.#encode(null);
    this.#output.end();
  }

  close(): void {
    this.#packet.free();
    this.#encoder.freeContext();
    this.#output.close();
  }

  #encode(frame: Frame | null): void {
    check(this.#encoder.sendFrameSync(frame), 'encoding a picture');
    while (this.#encoder.receivePacketSync(this.#packet) >= 0) {
      const { pts, dts, duration } = this.#packet;
      const stamps = { pts: Number(pts), dts: Number(dts), duration: Number(duration) };
      this.#track.write(this.#packet, stamps);
    }
  }
}

function openEncoder(
  encoder: CodecContext,
  { format, parameterSet, frameRate, colour }: EncoderSettings,
): void {
  const codec = Codec.findEncoder(AV_CODEC_ID_H264);
  encoder.allocContext3(codec);
  Object.assign(encoder, {
    width: format.width,
    height: format.height,
    pixelFormat: AV_PIX_FMT_YUV420P,
    sampleAspectRatio: new Rational(...format.pixelAspect),
    timeBase: new Rational(1, pictureTicks),
    framerate: new Rational(Math.max(1, Math.round(frameRate * 1000)), 1000),
    gopSize: Math.max(1, Math.round(frameRate * keyEverySeconds)),
    // Pictures in the order in which they are shown join anywhere.
    maxBFrames: 0,
    threadCount: 0,
    ...colour,
  });
  encoder.setFlags(AV_CODEC_FLAG_GLOBAL_HEADER, AV_CODEC_FLAG_BITEXACT);
  const options = { preset: 'veryfast', crf: String(crf), 'x264-params': `sps-id=${parameterSet}` };
  // Not by a Dictionary: node-av 6.1 frees it a second time when it is collected.
  for (const [name, value] of Object.entries(options))
    check(encoder.setOption(name, value, AV_OPT_TYPE_STRING, AV_OPT_SEARCH_CHILDREN), `the setting ${name}`);
  check(encoder.open2Sync(codec, null), 'starting the H.264 encoder');
}
