import { AV_BUFFERSRC_FLAG_KEEP_REF, AV_OPT_SEARCH_CHILDREN, AV_OPT_TYPE_DOUBLE } from 'node-av/constants';
import { type FilterContext, FilterGraph, Frame } from 'node-av/lib';
import type { CutLoudness } from '@/shared/cut-engine';
import { problems } from '../errors';
import { check, decode, openDecoder } from '../native';
import { Pace, type Watch } from '../pace';
import { soundSource } from '../viewing-copy';
import { StreamReader } from './film-reader';

/** What ITU-R BS.1770 gates out altogether. */
const silentLufs = -70;

/** Measures sound by ITU-R BS.1770 and EBU R 128, with FFmpeg's `ebur128`. */
export class LoudnessMeter {
  readonly #graph = new FilterGraph();
  readonly #source: FilterContext;
  readonly #meter: FilterContext;
  readonly #sink: FilterContext;
  readonly #out = new Frame();

  /** @param source what `abuffer` is told of the frames */
  constructor(source: string) {
    this.#graph.alloc();
    const chain = `abuffer@in=${source},ebur128@meter=peak=true:framelog=quiet,abuffersink@out`;
    check(this.#graph.parsePtr(chain), 'setting the meter up');
    check(this.#graph.configSync(), 'setting the meter up');
    this.#source = this.#named('abuffer@in');
    this.#meter = this.#named('ebur128@meter');
    this.#sink = this.#named('abuffersink@out');
    this.#out.alloc();
  }

  push(frame: Frame): void {
    check(this.#source.buffersrcAddFrameSync(frame, AV_BUFFERSRC_FLAG_KEEP_REF), 'measuring');
    while (this.#sink.buffersinkGetFrameSync(this.#out) >= 0) this.#out.unref();
  }

  /** Ends the measuring. */
  result(): CutLoudness {
    const lufs = this.#read('integrated');
    const peak = this.#read('true_peak');
    return {
      integratedLufs: lufs === null || lufs <= silentLufs ? null : lufs,
      truePeakDbtp: peak !== null && Number.isFinite(peak) ? peak : null,
    };
  }

  free(): void {
    this.#out.free();
    this.#graph.free();
  }

  #read(name: string): number | null {
    return this.#meter.getOption(name, AV_OPT_TYPE_DOUBLE, AV_OPT_SEARCH_CHILDREN);
  }

  #named(name: string): FilterContext {
    const filter = this.#graph.getFilter(name);
    if (!filter) throw new Error(`libavfilter has no ${name}`);
    return filter;
  }
}

/** Integrated loudness and true peak of a recording's sound. Throws a DomainError where it has none. */
export async function measureLoudness(path: string, watch: Watch): Promise<CutLoudness> {
  const reader = StreamReader.open(path, 'sound');
  if (!reader) throw problems.noSound();
  try {
    return await measure(reader, new Pace(watch));
  } finally {
    reader.close();
  }
}

async function measure(reader: StreamReader, pace: Pace): Promise<CutLoudness> {
  const decoder = openDecoder(reader.stream, 1);
  if (!decoder) throw problems.nothingDecodes();
  const frame = new Frame();
  frame.alloc();
  const totalSeconds = Number(reader.input.format.duration) / 1e6;
  const meters: LoudnessMeter[] = [];
  const use = (decoded: Frame) => {
    if (meters.length === 0) meters.push(meterFor(decoded));
    meters[0]?.push(decoded);
  };
  try {
    while (reader.read()) {
      decode(decoder, reader.packet, frame, use);
      if (pace.due) await pace.rest((reader.seconds(reader.packet.pts) ?? 0) / totalSeconds);
    }
    decode(decoder, null, frame, use);
    return meters[0]?.result() ?? { integratedLufs: null, truePeakDbtp: null };
  } finally {
    meters[0]?.free();
    frame.free();
    decoder.freeContext();
  }
}

function meterFor(frame: Frame): LoudnessMeter {
  return new LoudnessMeter(soundSource(frame, `1/${frame.sampleRate}`));
}
