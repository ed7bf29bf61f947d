import { AV_CHANNEL_ORDER_NATIVE, AV_CHANNEL_ORDER_UNSPEC, AV_SAMPLE_FMT_FLTP } from 'node-av/constants';
import { type ChannelLayout, Frame, SoftwareResampleContext } from 'node-av/lib';
import { check } from '../native';

export interface SoundFormat {
  sampleRateHz: number;
  channels: 1 | 2;
}

/** Room for the longest frames that decoders give (FLAC: 65 535 samples), also at a higher rate. */
const roomSamples = 1 << 19;

export function layoutOf({ channels }: Pick<SoundFormat, 'channels'>): ChannelLayout {
  return { nbChannels: channels, order: AV_CHANNEL_ORDER_NATIVE, mask: channels === 1 ? 4n : 3n };
}

/** What `abuffer` is told of planar 32-bit samples. */
export function samplesSource({ sampleRateHz, channels }: SoundFormat): string {
  const layout = channels === 1 ? 'mono' : 'stereo';
  return `time_base=1/${sampleRateHz}:sample_rate=${sampleRateHz}:sample_fmt=fltp:channel_layout=${layout}`;
}

/** Decoded frames of one kind as 32-bit samples of the wanted rate and channels, in planes that are mapped once. */
export class SoundMixer {
  readonly planes: Float32Array[];
  readonly #resampler = new SoftwareResampleContext();
  readonly #mixed = new Frame();
  readonly #key: string;
  readonly #rateHz: number;
  readonly #layout: ChannelLayout | null;

  constructor(frame: Frame, format: SoundFormat) {
    this.#key = keyOf(frame);
    this.#rateHz = format.sampleRateHz;
    this.#layout = missingLayout(frame);
    if (this.#layout) frame.channelLayout = this.#layout;
    this.#mixed.alloc();
    this.#mixed.format = AV_SAMPLE_FMT_FLTP;
    this.#mixed.sampleRate = format.sampleRateHz;
    this.#mixed.channelLayout = layoutOf(format);
    this.#mixed.nbSamples = roomSamples;
    check(this.#mixed.getBuffer(0), 'room for the sound');
    this.planes = planesOf(this.#mixed, format.channels, roomSamples);
    this.#resampler.alloc();
    check(this.#resampler.configFrame(this.#mixed, frame), 'mixing the sound');
    check(this.#resampler.init(), 'mixing the sound');
  }

  fits(frame: Frame): boolean {
    return this.#key === keyOf(frame);
  }

  /** Samples that went in and have not come out yet. */
  get held(): number {
    return Number(this.#resampler.getDelay(BigInt(this.#rateHz)));
  }

  /** Leaves samples in `planes`; null asks for those that were held. Returns how many. */
  mix(frame: Frame | null): number {
    this.#mixed.nbSamples = roomSamples;
    if (frame && this.#layout) frame.channelLayout = this.#layout;
    check(this.#resampler.convertFrame(this.#mixed, frame), 'mixing the sound');
    return this.#mixed.nbSamples;
  }

  free(): void {
    this.#mixed.free();
    this.#resampler.free();
  }
}

/** The samples of a frame of planar floats, one array a channel. */
export function planesOf(frame: Frame, channels: number, samples: number): Float32Array[] {
  const buffers = frame.data ?? [];
  return Array.from({ length: channels }, (_, channel) => {
    const plane = buffers[channel];
    if (!plane) throw new Error('FFmpeg gave a sound buffer without memory');
    return new Float32Array(plane.buffer, plane.byteOffset, samples);
  });
}

/** Some sound says how many channels it has, but not which: then the first ones of the usual order. */
function missingLayout({ channelLayout: { order, nbChannels } }: Frame): ChannelLayout | null {
  if (order !== AV_CHANNEL_ORDER_UNSPEC) return null;
  return nbChannels === 1
    ? layoutOf({ channels: 1 })
    : { nbChannels, order: AV_CHANNEL_ORDER_NATIVE, mask: (1n << BigInt(nbChannels)) - 1n };
}

function keyOf(frame: Frame): string {
  return `${frame.format}/${frame.sampleRate}/${frame.channels}`;
}
