import { AVSEEK_FLAG_BACKWARD } from 'node-av/constants';
import type { Packet, Stream } from 'node-av/lib';
import { clockOf, Input } from '../input';
import { isCleanStart } from './clean-start';

/** Transport streams are sought by guessing: aimed at the first picture itself, they start behind it. */
const startLeadSeconds = 1;
/** Further back, where an index leads past the wanted moment. */
const runUps = [0, 1000, 5000, 20_000, 60_000];

/** One stream of a recording, packet by packet, on take time. Recordings are only ever read. */
export class StreamReader {
  readonly input: Input;
  readonly stream: Stream;
  readonly #zeroSeconds: number;
  readonly #secondsAt: (stamp: bigint) => number | null;

  /** Null where the recording has no such stream. Throws a DomainError for what cannot be read. */
  static open(path: string, kind: 'video' | 'sound'): StreamReader | null {
    const input = new Input(path);
    const stream = input[kind];
    if (stream) return new StreamReader(input, stream);
    input.close();
    return null;
  }

  private constructor(input: Input, stream: Stream) {
    this.input = input;
    this.stream = stream;
    // Taken once: what a stream tells of its start may change while others are discarded.
    this.#zeroSeconds = input.zeroSeconds;
    this.#secondsAt = clockOf(stream);
    input.keepOnly(stream);
  }

  get packet(): Packet {
    return this.input.packet;
  }

  /** The next packet; false at the end. */
  read(): boolean {
    return this.input.read();
  }

  /** Take time in seconds of a stamp of this stream; null for none. */
  seconds(stamp: bigint): number | null {
    const seconds = this.#secondsAt(stamp);
    return seconds === null ? null : seconds - this.#zeroSeconds;
  }

  /** Take time of the packet; null where it has no stamp. */
  get ms(): number | null {
    return msOf(this.seconds(this.packet.pts));
  }

  /** Whether decoding can begin with this packet, whatever was decoded before it. */
  get startsClean(): boolean {
    return this.packet.isKeyframe && isCleanStart(this.stream.codecpar, this.packet);
  }

  seek(ms: number): void {
    const seconds = ms <= 0 ? -startLeadSeconds : ms / 1000;
    const stamp = Math.round((seconds + this.#zeroSeconds) / this.stream.timeBase.toDouble());
    // Where a file cannot be sought, reading goes on from where it is.
    this.input.format.seekFrameSync(this.stream.index, BigInt(stamp), AVSEEK_FLAG_BACKWARD);
  }

  /**
   * Seeks, ever further back, until the packet read first lies at or before a moment.
   * @param isStart whether a packet may be the first
   * @returns whether there is one; it then stands in `packet`
   */
  seekAtOrBefore(wantedMs: number, isStart: () => boolean): boolean {
    for (const runUpMs of [...runUps, wantedMs]) {
      this.seek(Math.max(0, wantedMs - runUpMs));
      if (this.#readUntil(isStart) && (this.ms ?? Infinity) <= wantedMs) return true;
      if (runUpMs >= wantedMs) break;
    }
    return false;
  }

  close(): void {
    this.input.close();
  }

  #readUntil(isStart: () => boolean): boolean {
    while (this.read()) if (isStart()) return true;
    return false;
  }
}

export function msOf(seconds: number | null): number | null {
  return seconds === null ? null : Math.round(seconds * 1000);
}

/** Readers of many takes, each opened once. */
export class ReaderPool {
  readonly #kind: 'video' | 'sound';
  readonly #readers = new Map<string, StreamReader | null>();

  constructor(kind: 'video' | 'sound') {
    this.#kind = kind;
  }

  get(path: string): StreamReader | null {
    const known = this.#readers.get(path);
    if (known !== undefined) return known;
    const reader = StreamReader.open(path, this.#kind);
    this.#readers.set(path, reader);
    return reader;
  }

  close(): void {
    for (const reader of this.#readers.values()) reader?.close();
    this.#readers.clear();
  }
}
