import {
  AV_CODEC_FLAG_GLOBAL_HEADER,
  AV_OPT_SEARCH_CHILDREN,
  AV_OPT_TYPE_STRING,
  type AVCodecID,
} from 'node-av/constants';
import {
  Codec,
  CodecContext,
  Dictionary,
  FFmpegError,
  FormatContext,
  type Frame,
  Packet,
  type Stream,
} from 'node-av/lib';
import { problems } from './errors';
import { check } from './native';

/** An MP4 file under construction, with its index moved to the front at the end. */
export class Mp4Output {
  readonly #format = new FormatContext();
  readonly #tracks: Track[] = [];

  constructor(path: string) {
    written(this.#format.allocOutputContext2(null, 'mp4', `file:${path}`));
    written(this.#format.openOutputSync());
  }

  addTrack(
    codecId: AVCodecID,
    options: Record<string, string>,
    prepare: (encoder: CodecContext) => void,
  ): Track {
    const track = new Track(this.#format, codecId, options, prepare);
    this.#tracks.push(track);
    return track;
  }

  /** Once all tracks are there. */
  begin(): void {
    written(this.#format.writeHeaderSync(Dictionary.fromObject({ movflags: '+faststart' })));
  }

  end(): void {
    written(this.#format.writeTrailerSync());
  }

  close(): void {
    for (const track of this.#tracks) track.free();
    this.#format.closeOutputSync();
    this.#format.freeContext();
  }
}

/** One encoded stream of the file. */
export class Track {
  readonly #format: FormatContext;
  readonly #stream: Stream;
  readonly #encoder = new CodecContext();
  readonly #packet = new Packet();

  constructor(
    format: FormatContext,
    codecId: AVCodecID,
    options: Record<string, string>,
    prepare: (encoder: CodecContext) => void,
  ) {
    const codec = Codec.findEncoder(codecId);
    this.#encoder.allocContext3(codec);
    prepare(this.#encoder);
    this.#encoder.setFlags(AV_CODEC_FLAG_GLOBAL_HEADER);
    // Not by a Dictionary: node-av 6.1 frees it a second time when it is collected.
    for (const [name, value] of Object.entries(options)) {
      check(
        this.#encoder.setOption(name, value, AV_OPT_TYPE_STRING, AV_OPT_SEARCH_CHILDREN),
        `the setting ${name}`,
      );
    }
    check(this.#encoder.open2Sync(codec, null), 'starting an encoder');
    this.#format = format;
    this.#stream = format.newStream();
    this.#stream.timeBase = this.#encoder.timeBase;
    check(this.#stream.codecpar.fromContext(this.#encoder), 'describing a track');
    this.#packet.alloc();
  }

  /** Null: the end. */
  add(frame: Frame | null): void {
    check(this.#encoder.sendFrameSync(frame), 'encoding');
    while (this.#encoder.receivePacketSync(this.#packet) >= 0) {
      this.#packet.rescaleTs(this.#encoder.timeBase, this.#stream.timeBase);
      this.#packet.streamIndex = this.#stream.index;
      written(this.#format.interleavedWriteFrameSync(this.#packet));
    }
  }

  free(): void {
    this.#packet.free();
    this.#encoder.freeContext();
  }
}

function written(code: number): void {
  if (code < 0) throw problems.notWritten(FFmpegError.strerror(code));
}
