import { AV_CODEC_ID_HEVC, AVFMT_FLAG_BITEXACT } from 'node-av/constants';
import {
  type CodecParameters,
  Dictionary,
  FormatContext,
  type Packet,
  Rational,
  type Stream,
} from 'node-av/lib';
import type { Container } from './container';
import { written } from './errors';

/** What a packet is laid down with, in ticks of its track's own clock. */
export interface Stamps {
  pts: number;
  dts: number;
  duration: number;
}

/** The file of the cut under construction: no tag but its title, its index at the front. */
export class CutOutput {
  readonly #format = new FormatContext();
  readonly #container: Container;
  readonly #indexBytes: number | null;
  #open = false;

  /**
   * @param indexBytes room kept at the front for the index, so that the file need not be written twice; null leaves
   *   the index at the end
   */
  constructor(path: string, container: Container, title: string | null, indexBytes: number | null) {
    this.#container = container;
    this.#indexBytes = indexBytes;
    const name = container === 'mp4' ? 'mp4' : 'matroska';
    written(this.#format.allocOutputContext2(null, name, `file:${path}`));
    written(this.#format.openOutputSync());
    this.#open = true;
    // Neither the program's name nor the time of writing goes into the file.
    this.#format.setFlags(AVFMT_FLAG_BITEXACT);
    if (title !== null) this.#format.metadata = Dictionary.fromObject({ title });
  }

  /** @param ticks of its clock each second */
  addTrack(ticks: number, describe: (parameters: CodecParameters) => void): CutTrack {
    const stream = this.#format.newStream();
    describe(stream.codecpar);
    stream.codecpar.codecTag = this.#tagFor(stream.codecpar);
    stream.timeBase = new Rational(1, ticks);
    return new CutTrack(this.#format, stream, ticks);
  }

  /** The tag of another container is none of this one; the muxer knows its own. */
  #tagFor({ codecId }: CodecParameters): string | number {
    // ISO/IEC 14496-15, 8.4.1: all parameter sets stand in the settings. Not all players take the muxer's `hev1`.
    return codecId === AV_CODEC_ID_HEVC && this.#container === 'mp4' ? 'hvc1' : 0;
  }

  /** Once all tracks are there. */
  begin(): void {
    const room = this.#container === 'mp4' ? 'moov_size' : 'reserve_index_space';
    const front = this.#indexBytes === null ? {} : { [room]: String(this.#indexBytes) };
    const options = { ...front, avoid_negative_ts: 'disabled' };
    written(this.#format.writeHeaderSync(Dictionary.fromObject(options)));
  }

  end(): void {
    written(this.#format.writeTrailerSync());
  }

  close(): void {
    if (this.#open) this.#format.closeOutputSync();
    this.#format.freeContext();
  }
}

export class CutTrack {
  readonly #format: FormatContext;
  readonly #stream: Stream;
  readonly #ticks: number;
  #rescale: { from: Rational; to: Rational } | null = null;

  constructor(format: FormatContext, stream: Stream, ticks: number) {
    this.#format = format;
    this.#stream = stream;
    this.#ticks = ticks;
  }

  /** The packet is empty afterwards. */
  write(packet: Packet, { pts, dts, duration }: Stamps): void {
    // The muxer settles on a clock of its own when the header is written.
    this.#rescale ??= { from: new Rational(1, this.#ticks), to: this.#stream.timeBase };
    packet.pts = BigInt(pts);
    packet.dts = BigInt(dts);
    packet.duration = BigInt(duration);
    packet.rescaleTs(this.#rescale.from, this.#rescale.to);
    packet.streamIndex = this.#stream.index;
    packet.pos = -1n;
    written(this.#format.interleavedWriteFrameSync(packet));
  }
}
