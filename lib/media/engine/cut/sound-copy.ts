import { AV_PKT_FLAG_DISCARD } from 'node-av/constants';
import type { PlannedPiece } from '../../cut';
import type { Container } from './container';
import type { ReaderPool, StreamReader } from './film-reader';
import type { CutOutput, CutTrack } from './output';
import { describeSound } from './track-settings';

/** Lays the sound packets of a cut of one piece down as they are. */
export class SoundCopy {
  readonly #reader: StreamReader;
  readonly #piece: PlannedPiece;
  readonly #track: CutTrack;
  readonly #ticks: number;
  readonly #earliest: number;
  /** Place in the cut of the latest packet. */
  ms = 0;

  constructor(piece: PlannedPiece, pool: ReaderPool, output: CutOutput, container: Container) {
    const reader = pool.get(piece.path);
    if (!reader) throw new Error('The sound has gone');
    const { codecpar } = reader.stream;
    this.#reader = reader;
    this.#piece = piece;
    this.#ticks = codecpar.sampleRate;
    this.#track = output.addTrack(this.#ticks, (parameters) => describeSound(parameters, codecpar));
    // An MP4 says in its edit list how much of the first packet is not heard; Matroska cannot.
    this.#earliest = container === 'mp4' ? Number.NEGATIVE_INFINITY : 0;
  }

  *steps(): Generator<void> {
    const { fromMs, toMs } = this.#piece;
    this.#reader.seek(fromMs);
    while (this.#reader.read()) {
      const { packet } = this.#reader;
      const seconds = this.#reader.seconds(packet.pts);
      if (seconds === null) continue;
      const lasts = Number(packet.duration) * this.#reader.stream.timeBase.toDouble();
      if (seconds * 1000 >= toMs) break;
      const at = Math.round((seconds - fromMs / 1000) * this.#ticks);
      if ((seconds + lasts) * 1000 <= fromMs || at < this.#earliest) continue;
      packet.freeSideData();
      packet.clearFlags(AV_PKT_FLAG_DISCARD);
      this.#track.write(packet, { pts: at, dts: at, duration: Math.round(lasts * this.#ticks) });
      this.ms = seconds * 1000 - fromMs;
      yield;
    }
    this.ms = Number.POSITIVE_INFINITY;
  }
}
