import { Frame } from 'node-av/lib';
import type { CutPlanSpec, CutSpan } from '@/shared/cut-engine';
import type { CutPlan, PlannedPiece } from '../../cut';
import { placeRun } from '../../sound-timeline';
import { decode, openDecoder } from '../native';
import { ReaderPool, type StreamReader } from './film-reader';
import { Muting, sampleAt } from './muting';
import { type SoundFormat, SoundMixer } from './sound-mixer';

/** Where samples go, in order and without a gap. */
export interface SampleSink {
  add(planes: readonly Float32Array[], first: number, end: number): void;
  readonly count: number;
}

/** Decoded before a piece begins, so that the decoder has settled (Opus asks for 80 ms, MP3 for some frames). */
const settleMs = 500;
const beyondEndSeconds = 10;

/**
 * The sound of the whole cut as one line of samples, mutes in: every piece takes exactly its own time, so that nothing
 * adds up. Where a take has no sound there is silence. Each step does a little and then yields.
 */
export function* soundLine(
  plan: Pick<CutPlan, 'pieces' | 'soundFormat'>,
  spec: Pick<CutPlanSpec, 'pieces' | 'muteWith'>,
  sink: SampleSink,
): Generator<void> {
  const { soundFormat } = plan;
  const pool = new ReaderPool('sound');
  try {
    for (const [place, piece] of plan.pieces.entries()) {
      const rate = soundFormat.sampleRateHz;
      const reader = pool.get(piece.path);
      const muting = new Muting(mutesOf(spec, place), spec.muteWith, rate);
      // Rounded on the clock of the cut, so that rates that are no whole samples a millisecond do not drift.
      const length = sampleAt(piece.outMs + piece.toMs - piece.fromMs, rate) - sampleAt(piece.outMs, rate);
      const window = new Window(sink, muting, sampleAt(piece.fromMs, rate), length);
      if (reader) yield* takeSound(reader, piece, window, soundFormat);
      window.finish();
      yield;
    }
  } finally {
    pool.close();
  }
}

function mutesOf({ pieces }: Pick<CutPlanSpec, 'pieces'>, place: number): readonly CutSpan[] {
  return pieces[place]?.mutes ?? [];
}

/** Lets through the samples of one piece. Places are counted in samples from take time 0. */
class Window {
  readonly #sink: SampleSink;
  readonly #muting: Muting;
  readonly #end: number;
  /** Place of the next sample that the sink wants. */
  #wanted: number;

  constructor(sink: SampleSink, muting: Muting, start: number, length: number) {
    this.#sink = sink;
    this.#muting = muting;
    this.#wanted = start;
    this.#end = start + length;
  }

  get start(): number {
    return this.#wanted;
  }

  get full(): boolean {
    return this.#wanted >= this.#end;
  }

  add(planes: readonly Float32Array[], at: number, count: number): void {
    this.#fillUpTo(Math.min(at, this.#end));
    const first = Math.max(0, this.#wanted - at);
    const end = Math.min(count, this.#end - at);
    if (first >= end) return;
    this.#muting.apply(planes, at, count);
    this.#sink.add(planes, first, end);
    this.#wanted = at + end;
  }

  finish(): void {
    this.#fillUpTo(this.#end);
  }

  /** What is missing is silent, but where a tone is to sound. */
  #fillUpTo(place: number): void {
    while (this.#wanted < place) {
      const length = Math.min(place - this.#wanted, emptySamples);
      for (const plane of empty) plane.fill(0, 0, length);
      this.#muting.apply(empty, this.#wanted, length);
      this.#sink.add(empty, 0, length);
      this.#wanted += length;
    }
  }
}

const emptySamples = 4096;
const empty = [new Float32Array(emptySamples), new Float32Array(emptySamples)];

function* takeSound(
  reader: StreamReader,
  piece: PlannedPiece,
  window: Window,
  format: SoundFormat,
): Generator<void> {
  const decoder = openDecoder(reader.stream, 1);
  if (!decoder) return;
  const run = new Run(reader, window, format);
  try {
    reader.seek(piece.fromMs - settleMs);
    while (!window.full && reader.read()) {
      decode(decoder, reader.packet, run.frame, run.use);
      yield;
    }
    if (!window.full) decode(decoder, null, run.frame, run.use);
    run.finish();
  } finally {
    run.free();
    decoder.freeContext();
  }
}

/** Lays decoded frames on the take's clock. */
class Run {
  readonly frame = new Frame();
  readonly #reader: StreamReader;
  readonly #window: Window;
  readonly #format: SoundFormat;
  /** Stamps that lie far beyond the end of the file are damaged ones. */
  readonly #limit: number;
  #mixer: SoundMixer | null = null;
  /** Place of the next sample, once there was one. */
  #cursor: number | null = null;
  #shift = 0;

  constructor(reader: StreamReader, window: Window, format: SoundFormat) {
    this.#reader = reader;
    this.#window = window;
    this.#format = format;
    const totalSeconds = Math.max(0, Number(reader.input.format.duration) / 1e6);
    this.#limit = (totalSeconds + beyondEndSeconds) * format.sampleRateHz;
    this.frame.alloc();
  }

  readonly use = (frame: Frame): void => {
    const rate = this.#format.sampleRateHz;
    const mixer = this.#mixerFor(frame);
    const seconds = this.#reader.seconds(frame.pts);
    const stamp = seconds === null ? null : Math.round(seconds * rate) + this.#shift;
    const expected = (this.#cursor ?? stamp ?? this.#window.start) + mixer.held;
    const { gap, skip, shift } = placeRun(expected, stamp, this.#limit, rate);
    this.#shift += shift;
    // A step back is an overlap: what comes later counts.
    this.#cursor = expected - mixer.held + gap - skip;
    this.#hand(mixer.mix(frame), mixer);
  };

  /** What the resampler still holds. */
  finish(): void {
    if (this.#mixer && !this.#window.full) this.#hand(this.#mixer.mix(null), this.#mixer);
  }

  free(): void {
    this.frame.free();
    this.#mixer?.free();
  }

  #hand(count: number, mixer: SoundMixer): void {
    const at = this.#cursor ?? this.#window.start;
    this.#window.add(mixer.planes, at, count);
    this.#cursor = at + count;
  }

  /** Rate and channels may change in the middle of a stream. */
  #mixerFor(frame: Frame): SoundMixer {
    if (this.#mixer?.fits(frame)) return this.#mixer;
    this.finish();
    this.#mixer?.free();
    this.#mixer = new SoundMixer(frame, this.#format);
    return this.#mixer;
  }
}
