import { AV_PKT_FLAG_DISCARD } from 'node-av/constants';
import type { Packet } from 'node-av/lib';
import type { CutPart } from '../../cut';
import { type ReaderPool, StreamReader } from './film-reader';
import type { CutTrack } from './output';

/** A stretch of finished picture: packets of a recording, or a file that was encoded for it. */
export interface PictureStretch {
  part: CutPart;
  /** When it begins in the cut. */
  outMs: number;
  /** The recording; or the encoded file, whose clock begins at the start of the part. */
  path: string;
}

/** Ticks of the picture's clock each second (the usual clock of ISO/IEC 13818-1). */
export const pictureTicks = 90_000;
const ticksPerMs = pictureTicks / 1000;
/** A picture at 25 a second. */
const usualDuration = pictureTicks / 25;

/** Lays the pictures of all stretches on the clock of the cut, packet by packet, without decoding them. */
export class PictureLine {
  readonly #stretches: readonly PictureStretch[];
  readonly #pool: ReaderPool;
  readonly #track: CutTrack;
  readonly #clean: (packet: Packet) => void;
  /** How much earlier pictures are decoded than shown: the same all along, or decoding would step back at joints. */
  readonly #delay: number;
  #lastDts = Number.NEGATIVE_INFINITY;
  /** Place in the cut of the latest packet. */
  ms = 0;

  constructor(
    stretches: readonly PictureStretch[],
    pool: ReaderPool,
    track: CutTrack,
    clean: (packet: Packet) => void,
  ) {
    this.#stretches = stretches;
    this.#pool = pool;
    this.#track = track;
    this.#clean = clean;
    this.#delay = stretches.reduce((most, stretch) => Math.max(most, this.#delayOf(stretch)), 0);
  }

  /** Writes one packet with each step. */
  *steps(): Generator<void> {
    for (const stretch of this.#stretches) {
      if (stretch.part.how === 'copy') yield* this.#lay(stretch, this.#reader(stretch.path));
      else {
        const reader = openEncoded(stretch.path);
        try {
          yield* this.#lay(stretch, reader);
        } finally {
          reader.close();
        }
      }
    }
    this.ms = Number.POSITIVE_INFINITY;
  }

  *#lay(stretch: PictureStretch, reader: StreamReader): Generator<void> {
    const { fromMs, toMs } = timesIn(stretch);
    if (!toFirst(stretch, reader)) return;
    const own = delayHere(reader);
    const start = stretch.outMs * ticksPerMs;
    const shift = start - fromMs * ticksPerMs;
    const decodingShift = shift - (this.#delay - own);
    // Matroska does not say when a picture is decoded, and after a seek FFmpeg needs some to find out.
    let unknown = start - this.#delay;
    do {
      const { packet, ms } = reader;
      if (ms === null) continue;
      // The cut ends at a closed place: nothing behind this packet is shown before it.
      if (ms >= toMs) break;
      // Pictures that build on what lies before the cut.
      if (ms < fromMs) continue;
      // A picture up to half a millisecond before the rounded start of its stretch belongs to it.
      const shown = Math.max(start, (ticksAt(reader, packet.pts) ?? 0) + shift);
      const known = ticksAt(reader, packet.dts);
      const lasts = Math.min(durationOf(reader), start + (toMs - fromMs) * ticksPerMs - shown);
      this.#write(packet, shown, known === null ? unknown : known + decodingShift, lasts);
      unknown = Number.NEGATIVE_INFINITY;
      this.ms = stretch.outMs + ms - fromMs;
      yield;
    } while (reader.read());
  }

  #write(packet: Packet, shown: number, decoded: number, duration: number): void {
    const dts = Math.max(this.#lastDts + 1, Math.min(decoded, shown));
    this.#lastDts = dts;
    packet.freeSideData();
    packet.clearFlags(AV_PKT_FLAG_DISCARD);
    this.#clean(packet);
    this.#track.write(packet, { pts: Math.max(shown, dts), dts, duration });
  }

  #delayOf(stretch: PictureStretch): number {
    if (stretch.part.how === 'copy') return firstDelay(stretch, this.#reader(stretch.path));
    const reader = openEncoded(stretch.path);
    try {
      return firstDelay(stretch, reader);
    } finally {
      reader.close();
    }
  }

  #reader(path: string): StreamReader {
    const reader = this.#pool.get(path);
    if (!reader) throw new Error('A copied picture has gone');
    return reader;
  }
}

function openEncoded(path: string): StreamReader {
  const reader = StreamReader.open(path, 'video');
  if (!reader) throw new Error('An encoded piece holds no picture');
  return reader;
}

/** From where to where on the reader's own clock. */
function timesIn({ part }: PictureStretch): { fromMs: number; toMs: number } {
  return part.how === 'copy' ? part : { fromMs: 0, toMs: part.toMs - part.fromMs };
}

/** Reads up to the packet with which a stretch begins. */
function toFirst(stretch: PictureStretch, reader: StreamReader): boolean {
  const { fromMs } = timesIn(stretch);
  return reader.seekAtOrBefore(fromMs, () => reader.packet.isKeyframe) && toKeyAt(reader, fromMs);
}

function toKeyAt(reader: StreamReader, fromMs: number): boolean {
  do if (reader.packet.isKeyframe && (reader.ms ?? -1) >= fromMs) return true;
  while (reader.read());
  return false;
}

/** Of the last picture of all it must be told: without a length it would not be shown. */
function durationOf({ packet, stream }: StreamReader): number {
  const ticks = Math.round(Number(packet.duration) * stream.timeBase.toDouble() * pictureTicks);
  return ticks > 0 ? ticks : usualDuration;
}

function firstDelay(stretch: PictureStretch, reader: StreamReader): number {
  return toFirst(stretch, reader) ? delayHere(reader) : 0;
}

/** How much earlier the key frame in hand is decoded than shown. */
function delayHere(reader: StreamReader): number {
  const [shown, decoded] = [ticksAt(reader, reader.packet.pts), ticksAt(reader, reader.packet.dts)];
  if (shown !== null && decoded !== null) return shown - decoded;
  return reader.stream.codecpar.videoDelay * durationOf(reader);
}

/** A stamp in ticks of the cut's clock, from take time 0; null for none. */
function ticksAt(reader: StreamReader, stamp: bigint): number | null {
  const seconds = reader.seconds(stamp);
  return seconds === null ? null : Math.round(seconds * pictureTicks);
}
