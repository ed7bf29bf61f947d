import type { Stats } from 'node:fs';
import {
  AV_DISPOSITION_ATTACHED_PIC,
  AV_NOPTS_VALUE,
  AVDISCARD_ALL,
  AVERROR_EOF,
  AVMEDIA_TYPE_AUDIO,
  AVMEDIA_TYPE_VIDEO,
} from 'node-av/constants';
import { FormatContext, Packet, type Stream } from 'node-av/lib';
import { chooseSound } from '../sound-choice';
import { problems } from './errors';
import { checkFile, startsLikeMp4 } from './file';
import './native';

/** Bad packets in a row after which the rest of a damaged file is given up. */
const mostBadReads = 1000;

/** An opened recording. {@link withInput} opens and closes it. */
export class Input {
  readonly format: FormatContext;
  readonly streams: Stream[];
  /** The picture; a cover picture in a sound file does not count. */
  readonly video: Stream | null;
  readonly audio: Stream[];
  /** The one sound stream that is heard. */
  readonly sound: Stream | null;
  readonly info: Stats;
  readonly packet = new Packet();
  #kept: ReadonlySet<number> | null = null;

  /** Throws a DomainError for what is not a readable recording. */
  constructor(path: string) {
    this.info = checkFile(path);
    this.format = new FormatContext();
    // A name such as "concat:…" or "-x" must never be read as anything but a file.
    if (this.format.openInputSync(`file:${path}`) < 0) throw this.#whyNot(path);
    this.packet.alloc();
    this.format.findStreamInfoSync();
    this.streams = this.format.streams;
    this.video =
      this.streams.find((stream) => stream.codecpar.codecType === AVMEDIA_TYPE_VIDEO && !isCover(stream)) ??
      null;
    this.audio = this.streams.filter((stream) => stream.codecpar.codecType === AVMEDIA_TYPE_AUDIO);
    this.sound = this.audio[chooseSound(this.audio.map((stream) => stream.disposition))] ?? null;
    if (!this.video && this.audio.length === 0) {
      this.close();
      throw problems.noStreams();
    }
  }

  /** From now on only packets of these streams are read. */
  keepOnly(...kept: Stream[]): void {
    this.#kept = new Set(kept.map((stream) => stream.index));
    for (const stream of this.streams) if (!this.#kept.has(stream.index)) stream.discard = AVDISCARD_ALL;
  }

  /** Reads the next packet into `packet`; false at the end. Damaged places are passed over. */
  read(): boolean {
    for (let badReads = 0; badReads < mostBadReads; ) {
      this.packet.unref();
      const code = this.format.readFrameSync(this.packet);
      if (code === AVERROR_EOF) return false;
      if (code < 0) badReads += 1;
      // Packets that were read ahead to find the streams come out though their stream is discarded.
      else if (!this.#kept || this.#kept.has(this.packet.streamIndex)) return true;
    }
    return false;
  }

  /** Seconds on the file's own clock at which the shown picture (or, without one, the sound) begins. */
  get zeroSeconds(): number {
    const first = this.video ?? this.sound;
    return (first ? startOf(first) : null) ?? this.startSeconds ?? 0;
  }

  /** Seconds on the file's own clock of whatever comes first. */
  get startSeconds(): number | null {
    return this.format.startTime === AV_NOPTS_VALUE ? null : Number(this.format.startTime) / 1e6;
  }

  close(): void {
    this.packet.free();
    this.format.closeInputSync();
  }

  #whyNot(path: string): Error {
    // An MP4 whose camera never wrote the index is "invalid data" to FFmpeg, as is a text file.
    return startsLikeMp4(path) ? problems.noIndex() : problems.notMedia();
  }
}

/** Opens a recording, and closes it whatever happens. */
export async function withInput<T>(path: string, work: (input: Input) => Promise<T>): Promise<T> {
  const input = new Input(path);
  try {
    return await work(input);
  } finally {
    input.close();
  }
}

/** Reads a stream's time stamps as seconds on the file's own clock; null for none. */
export function clockOf(stream: Stream): (stamp: bigint) => number | null {
  const tick = stream.timeBase.toDouble();
  return (stamp) => (stamp === AV_NOPTS_VALUE ? null : Number(stamp) * tick);
}

export function startOf(stream: Stream): number | null {
  return clockOf(stream)(stream.startTime);
}

function isCover(stream: Stream): boolean {
  return (stream.disposition & AV_DISPOSITION_ATTACHED_PIC) !== 0;
}
