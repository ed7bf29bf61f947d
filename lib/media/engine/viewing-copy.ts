import { mkdirSync, renameSync, rmSync, statSync } from 'node:fs';
import { dirname } from 'node:path';
import {
  AV_CHANNEL_ORDER_NATIVE,
  AV_CODEC_ID_AAC,
  AV_CODEC_ID_H264,
  AV_PIX_FMT_YUV420P,
  AV_SAMPLE_FMT_FLTP,
  AVMEDIA_TYPE_VIDEO,
} from 'node-av/constants';
import { Frame, Rational, type Stream } from 'node-av/lib';
import type { ViewingCopyResult } from '../results';
import { isSideways } from '../rotation';
import { fitHeight } from '../stills';
import { endSeconds } from './duration';
import { problems } from './errors';
import { FilterChain } from './filter-chain';
import { clockOf, type Input, withInput } from './input';
import { turns } from './jpeg';
import { Mp4Output, type Track } from './mp4-output';
import { decode, openDecoder } from './native';
import { Pace, type Watch } from './pace';
import { pixelAspect, rotationOf } from './stream-facts';

const mostLines = 720;
/** Ticks of the copy's picture clock each second (the usual clock of ISO/IEC 13818-1). */
const pictureTicks = 90_000;
const soundRateHz = 48_000;
/** Pictures between two places that can be sought, at the most. */
const keyEvery = 60;

/**
 * Writes a copy that common browsers play: H.264 and AAC in MP4, at most 720 lines, turned as it is shown. Its
 * clock starts at the first shown picture, so that take time is the same in both. Appears when it is whole.
 */
export function viewingCopy(
  path: string,
  to: string,
  watch: Watch<ViewingCopyResult>,
): Promise<ViewingCopyResult> {
  return withInput(path, async (input) => {
    const unfinished = `${to}.part`;
    mkdirSync(dirname(to), { recursive: true });
    try {
      await write(input, path, unfinished, new Pace(watch));
      renameSync(unfinished, to);
    } finally {
      rmSync(unfinished, { force: true });
    }
    return { sizeBytes: statSync(to).size };
  });
}

async function write(input: Input, path: string, to: string, pace: Pace<ViewingCopyResult>): Promise<void> {
  const totalSeconds = (await endSeconds(input, path, pace)) - input.zeroSeconds;
  const output = new Mp4Output(to);
  const copiers: Copier[] = [];
  try {
    if (input.video) copiers.push(...Copier.ofPicture(input.video, input.zeroSeconds, output));
    if (input.sound) copiers.push(...Copier.ofSound(input.sound, input.zeroSeconds, output));
    if (copiers.length === 0) throw problems.nothingDecodes();
    input.keepOnly(...copiers.map((copier) => copier.stream));
    output.begin();
    while (input.read()) {
      copiers.find((copier) => copier.stream.index === input.packet.streamIndex)?.take(input.packet);
      if (pace.due) await pace.rest(Math.max(...copiers.map((copier) => copier.seconds)) / totalSeconds || 0);
    }
    for (const copier of copiers) copier.take(null);
    output.end();
  } finally {
    for (const copier of copiers) copier.free();
    output.close();
  }
}

type Decoder = NonNullable<ReturnType<typeof openDecoder>>;

/** How frames of one stream are made ready for its track. */
interface Shaper {
  /** Ticks a second of the stamps that go into the chain. */
  ticks: number;
  chainFor(frame: Frame): FilterChain;
  track: Track;
}

/** Decodes one stream, shapes it and hands it to its track, with stamps counted from the first shown picture. */
class Copier {
  readonly stream: Stream;
  readonly #decoder: Decoder;
  readonly #shaper: Shaper;
  readonly #zeroSeconds: number;
  readonly #secondsAt: (stamp: bigint) => number | null;
  readonly #frame = new Frame();
  #chain: FilterChain | null = null;
  #lastStamp = -1n;
  seconds = 0;

  private constructor(stream: Stream, decoder: Decoder, zeroSeconds: number, shaper: Shaper) {
    this.stream = stream;
    this.#decoder = decoder;
    this.#zeroSeconds = zeroSeconds;
    this.#shaper = shaper;
    this.#secondsAt = clockOf(stream);
    this.#frame.alloc();
  }

  static ofPicture(stream: Stream, zeroSeconds: number, output: Mp4Output): Copier[] {
    const decoder = openDecoder(stream, 0);
    return decoder ? [new Copier(stream, decoder, zeroSeconds, pictureShaper(stream, output))] : [];
  }

  static ofSound(stream: Stream, zeroSeconds: number, output: Mp4Output): Copier[] {
    const decoder = openDecoder(stream, 1);
    return decoder ? [new Copier(stream, decoder, zeroSeconds, soundShaper(stream, output))] : [];
  }

  take(packet: Input['packet'] | null): void {
    decode(this.#decoder, packet, this.#frame, (frame) => this.#shape(frame));
    if (packet !== null) return;
    this.#chain?.push(null, (frame) => this.#shaper.track.add(frame));
    this.#shaper.track.add(null);
  }

  free(): void {
    this.#chain?.free();
    this.#frame.free();
    this.#decoder.freeContext();
  }

  #shape(frame: Frame): void {
    const seconds = this.#secondsAt(frame.bestEffortTimestamp);
    if (seconds === null) return;
    const stamp = BigInt(Math.round((seconds - this.#zeroSeconds) * this.#shaper.ticks));
    // Damaged films may step back in time, and pictures from before the first shown one are not shown.
    if (this.stream.codecpar.codecType === AVMEDIA_TYPE_VIDEO && stamp <= this.#lastStamp) return;
    this.#lastStamp = stamp;
    this.seconds = seconds - this.#zeroSeconds;
    frame.pts = stamp;
    this.#chain ??= this.#shaper.chainFor(frame);
    this.#chain.push(frame, (shaped) => this.#shaper.track.add(shaped));
  }
}

function pictureShaper(stream: Stream, output: Mp4Output): Shaper {
  const { width, height } = stream.codecpar;
  const rotation = rotationOf(stream);
  const wide = { width: Math.round(width * pixelAspect(stream)), height };
  const turned = isSideways(rotation) ? { width: wide.height, height: wide.width } : wide;
  const size = fitHeight(turned, mostLines);
  const [w, h] = isSideways(rotation) ? [size.height, size.width] : [size.width, size.height];
  const track = output.addTrack(AV_CODEC_ID_H264, { preset: 'veryfast', crf: '23' }, (encoder) =>
    Object.assign(encoder, {
      ...size,
      pixelFormat: AV_PIX_FMT_YUV420P,
      timeBase: new Rational(1, pictureTicks),
      gopSize: keyEvery,
      threadCount: 0,
    }),
  );
  return {
    ticks: pictureTicks,
    track,
    chainFor: (frame) =>
      new FilterChain(
        'buffer',
        `video_size=${frame.width}x${frame.height}:pix_fmt=${frame.format}:time_base=1/${pictureTicks}`,
        `scale=${w}:${h}${turns[rotation]},format=yuv420p,setsar=1`,
      ),
  };
}

function soundShaper(stream: Stream, output: Mp4Output): Shaper {
  const layout = stream.codecpar.channels === 1 ? mono : stereo;
  const track = output.addTrack(AV_CODEC_ID_AAC, { b: '128k' }, (encoder) =>
    Object.assign(encoder, {
      sampleRate: soundRateHz,
      sampleFormat: AV_SAMPLE_FMT_FLTP,
      channelLayout: layout.value,
      timeBase: new Rational(1, soundRateHz),
    }),
  );
  return {
    ticks: soundRateHz,
    track,
    chainFor: (frame) =>
      new FilterChain(
        'abuffer',
        soundSource(frame, `1/${soundRateHz}`),
        // Fills gaps, and starts at 0: what sounds before the first picture is cut off, what starts later is led in.
        `aresample=${soundRateHz}:async=1:first_pts=0,aformat=sample_fmts=fltp:channel_layouts=${layout.name},asetnsamples=n=1024:p=0`,
      ),
  };
}

const mono = { name: 'mono', value: { nbChannels: 1, order: AV_CHANNEL_ORDER_NATIVE, mask: 4n } };
const stereo = { name: 'stereo', value: { nbChannels: 2, order: AV_CHANNEL_ORDER_NATIVE, mask: 3n } };

/** What a chain of sound filters is told of the frames that go in. */
export function soundSource(frame: Frame, timeBase: string): string {
  return `time_base=${timeBase}:sample_rate=${frame.sampleRate}:sample_fmt=${frame.format}:${layoutArgument(frame)}`;
}

function layoutArgument(frame: Frame): string {
  const { mask, nbChannels } = frame.channelLayout;
  return mask > 0n ? `channel_layout=0x${mask.toString(16)}` : `channels=${nbChannels}`;
}
