import { closeSync, mkdirSync, openSync, writeSync } from 'node:fs';
import { join } from 'node:path';
import { AV_CHANNEL_ORDER_NATIVE, AV_CHANNEL_ORDER_UNSPEC, AV_SAMPLE_FMT_S16 } from 'node-av/constants';
import { type ChannelLayout, Frame, SoftwareResampleContext, type Stream } from 'node-av/lib';
import type { PeaksLevel } from '@/shared/media';
import { coarser, PeakCollector, peakLevels, peaksFileName, wholeGroups } from '../peaks';
import type { SoundResult } from '../results';
import { findSilences } from '../silences';
import { placeRun } from '../sound-timeline';
import { clockOf, type Input, withInput } from './input';
import { check, decode, openDecoder } from './native';
import { Pace, type Watch } from './pace';

/** Stamps that lie further than this beyond the end of the file are damaged ones. */
const beyondEndSeconds = 10;
/** Packets between two looks at the clock. */
const packetsPerLook = 16;

/**
 * Reads the whole sound into peaks files in `folder`, which grow as it goes, and finds the silences.
 * Several channels are mixed down to one as FFmpeg does by default; of several streams the one that players
 * start with is read. Without sound (or none that can be decoded) the answer is empty.
 */
export function soundPeaks(path: string, folder: string, watch: Watch<SoundResult>): Promise<SoundResult> {
  return withInput(path, async (input) => {
    const decoder = input.sound && openDecoder(input.sound, 1);
    if (!input.sound || !decoder) return { peaks: [], silences: [] };
    const files = new PeakFiles(folder);
    try {
      input.keepOnly(input.sound);
      return await read(input, input.sound, decoder, files, new Pace(watch));
    } finally {
      files.close();
      decoder.freeContext();
    }
  });
}

type Decoder = NonNullable<ReturnType<typeof openDecoder>>;

async function read(
  input: Input,
  stream: Stream,
  decoder: Decoder,
  files: PeakFiles,
  pace: Pace<SoundResult>,
): Promise<SoundResult> {
  const sampleRateHz = stream.codecpar.sampleRate || 48000;
  const totalSeconds = Math.max(0, Number(input.format.duration) / 1e6);
  const reader = new SoundReader(stream, sampleRateHz, input.zeroSeconds, totalSeconds);
  try {
    for (let packets = 1; input.read(); packets++) {
      decode(decoder, input.packet, reader.frame, reader.use);
      if (packets % packetsPerLook !== 0 || !pace.due) continue;
      files.bringUpTo(reader.collector, wholeGroups(reader.collector.pairs));
      await pace.rest(reader.seconds / (totalSeconds || Infinity), { peaks: files.levels(), silences: [] });
    }
    decode(decoder, null, reader.frame, reader.use);
  } finally {
    reader.free();
  }
  reader.collector.finish();
  files.bringUpTo(reader.collector, reader.collector.pairs);
  return { peaks: files.levels(), silences: findSilences(reader.collector.from(0)) };
}

/** Turns decoded frames of any kind into one channel of 16-bit samples on the take's clock. */
class SoundReader {
  readonly collector: PeakCollector;
  readonly frame = new Frame();
  readonly #secondsAt: (stamp: bigint) => number | null;
  readonly #sampleRateHz: number;
  readonly #zeroSeconds: number;
  readonly #limit: number;
  #shift = 0;
  #mixer: Mixer | null = null;

  constructor(stream: Stream, sampleRateHz: number, zeroSeconds: number, totalSeconds: number) {
    this.#secondsAt = clockOf(stream);
    this.#sampleRateHz = sampleRateHz;
    this.#zeroSeconds = zeroSeconds;
    this.#limit = (totalSeconds + beyondEndSeconds) * sampleRateHz;
    this.collector = new PeakCollector(sampleRateHz);
    this.frame.alloc();
  }

  get seconds(): number {
    return this.collector.cursor / this.#sampleRateHz;
  }

  readonly use = (frame: Frame): void => {
    const seconds = this.#secondsAt(frame.pts);
    const stamp =
      seconds === null ? null : Math.round((seconds - this.#zeroSeconds) * this.#sampleRateHz) + this.#shift;
    const { gap, skip, shift } = placeRun(this.collector.cursor, stamp, this.#limit, this.#sampleRateHz);
    this.#shift += shift;
    this.collector.addSilence(gap);
    const { samples, count } = this.#mixerFor(frame).mix(frame);
    this.collector.add(samples, Math.min(skip, count), count);
  };

  free(): void {
    this.frame.free();
    this.#mixer?.free();
  }

  /** Rate and channels may change in the middle of a stream. */
  #mixerFor(frame: Frame): Mixer {
    if (this.#mixer?.fits(frame)) return this.#mixer;
    this.#mixer?.free();
    this.#mixer = new Mixer(frame, this.#sampleRateHz);
    return this.#mixer;
  }
}

const mono: ChannelLayout = { nbChannels: 1, order: AV_CHANNEL_ORDER_NATIVE, mask: 4n };
/** Room for the longest frames that decoders give (FLAC: 65 535 samples). */
const mixedSamples = 1 << 17;

/** libswresample into one buffer that is mapped once: mapping every frame would cost a third of the time. */
class Mixer {
  readonly #resampler = new SoftwareResampleContext();
  readonly #mixed = new Frame();
  readonly #samples: Int16Array;
  readonly #key: string;
  readonly #layout: ChannelLayout | null;

  constructor(frame: Frame, sampleRateHz: number) {
    this.#key = keyOf(frame);
    this.#layout = missingLayout(frame);
    if (this.#layout) frame.channelLayout = this.#layout;
    this.#mixed.alloc();
    this.#mixed.format = AV_SAMPLE_FMT_S16;
    this.#mixed.sampleRate = sampleRateHz;
    this.#mixed.channelLayout = mono;
    this.#mixed.nbSamples = mixedSamples;
    check(this.#mixed.getBuffer(0), 'room for the sound');
    const plane = this.#mixed.data?.[0];
    if (!plane) throw new Error('FFmpeg gave a sound buffer without memory');
    this.#resampler.alloc();
    check(this.#resampler.configFrame(this.#mixed, frame), 'mixing the sound');
    check(this.#resampler.init(), 'mixing the sound');
    this.#samples = new Int16Array(plane.buffer, plane.byteOffset, mixedSamples);
  }

  fits(frame: Frame): boolean {
    return this.#key === keyOf(frame);
  }

  mix(frame: Frame): { samples: Int16Array; count: number } {
    this.#mixed.nbSamples = mixedSamples;
    if (this.#layout) frame.channelLayout = this.#layout;
    check(this.#resampler.convertFrame(this.#mixed, frame), 'mixing the sound');
    return { samples: this.#samples, count: this.#mixed.nbSamples };
  }

  free(): void {
    this.#mixed.free();
    this.#resampler.free();
  }
}

/** Some sound says how many channels it has, but not which: then the first ones of the usual order. */
function missingLayout({ channelLayout: { order, nbChannels } }: Frame): ChannelLayout | null {
  if (order !== AV_CHANNEL_ORDER_UNSPEC) return null;
  return nbChannels === 1
    ? mono
    : { nbChannels, order: AV_CHANNEL_ORDER_NATIVE, mask: (1n << BigInt(nbChannels)) - 1n };
}

function keyOf(frame: Frame): string {
  return `${frame.format}/${frame.sampleRate}/${frame.channels}`;
}

/** The peaks files of one recording, from nothing. */
class PeakFiles {
  readonly #files: { pairsPerSecond: number; file: number; pairs: number }[];
  #written = 0;

  constructor(folder: string) {
    mkdirSync(folder, { recursive: true });
    this.#files = peakLevels.map((pairsPerSecond) => ({
      pairsPerSecond,
      file: openSync(join(folder, peaksFileName(pairsPerSecond)), 'w'),
      pairs: 0,
    }));
  }

  /** @param pairs of the finest level: whole groups, but at the end */
  bringUpTo(collector: PeakCollector, pairs: number): void {
    const fresh = collector.from(this.#written).subarray(0, (pairs - this.#written) * 2);
    for (const level of this.#files) {
      const bytes = coarser(fresh, level.pairsPerSecond);
      writeSync(level.file, bytes);
      level.pairs += bytes.length / 2;
    }
    this.#written = pairs;
  }

  levels(): PeaksLevel[] {
    return this.#files.map(({ pairsPerSecond, pairs }) => ({ pairsPerSecond, pairs }));
  }

  close(): void {
    for (const { file } of this.#files) closeSync(file);
  }
}
