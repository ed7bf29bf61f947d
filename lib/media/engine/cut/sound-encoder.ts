import {
  AV_CODEC_FLAG_BITEXACT,
  AV_CODEC_FLAG_GLOBAL_HEADER,
  AV_CODEC_ID_AAC,
  AV_OPT_SEARCH_CHILDREN,
  AV_OPT_TYPE_INT64,
  AV_SAMPLE_FMT_FLTP,
} from 'node-av/constants';
import { Codec, CodecContext, type Frame, Packet, Rational } from 'node-av/lib';
import { check } from '../native';
import type { CutOutput, CutTrack } from './output';
import { layoutOf, type SoundFormat } from './sound-mixer';

const soundBits: Readonly<Record<SoundFormat['channels'], bigint>> = { 1: 112_000n, 2: 192_000n };

/** Encodes one line of samples as AAC. */
export class SoundEncoder {
  readonly #encoder = new CodecContext();
  readonly #packet = new Packet();
  readonly frameSamples: number;
  #track: CutTrack | null = null;
  readonly #ticks: number;

  constructor(format: SoundFormat) {
    const codec = Codec.findEncoder(AV_CODEC_ID_AAC);
    this.#encoder.allocContext3(codec);
    Object.assign(this.#encoder, {
      sampleRate: format.sampleRateHz,
      sampleFormat: AV_SAMPLE_FMT_FLTP,
      channelLayout: layoutOf(format),
      timeBase: new Rational(1, format.sampleRateHz),
    });
    this.#encoder.setFlags(AV_CODEC_FLAG_GLOBAL_HEADER, AV_CODEC_FLAG_BITEXACT);
    check(
      this.#encoder.setOption('b', soundBits[format.channels], AV_OPT_TYPE_INT64, AV_OPT_SEARCH_CHILDREN),
      'the bit rate',
    );
    check(this.#encoder.open2Sync(codec, null), 'starting the AAC encoder');
    this.frameSamples = this.#encoder.frameSize;
    this.#ticks = format.sampleRateHz;
    this.#packet.alloc();
  }

  addTo(output: CutOutput): void {
    this.#track = output.addTrack(this.#ticks, (parameters) => {
      check(parameters.fromContext(this.#encoder), 'describing the sound');
    });
  }

  /** Null: the end. */
  add(frame: Frame | null): void {
    check(this.#encoder.sendFrameSync(frame), 'encoding sound');
    while (this.#encoder.receivePacketSync(this.#packet) >= 0) {
      const { pts, dts, duration } = this.#packet;
      this.#track?.write(this.#packet, {
        pts: Number(pts),
        dts: Number(dts),
        duration: Number(duration),
      });
    }
  }

  free(): void {
    this.#packet.free();
    this.#encoder.freeContext();
  }
}
