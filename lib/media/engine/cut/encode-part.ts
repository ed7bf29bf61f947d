import { AV_PIX_FMT_YUV420P } from 'node-av/constants';
import { Frame } from 'node-av/lib';
import type { CutCover, CutPicture } from '@/shared/cut-engine';
import type { CutPart } from '../../cut';
import { problems } from '../errors';
import { check, decode, openDecoder } from '../native';
import type { StreamReader } from './film-reader';
import { type EncoderSettings, PictureEncoder } from './picture-encoder';
import { pictureTicks } from './picture-line';
import { Shaper } from './shaping';

const ticksPerMs = pictureTicks / 1000;
/** Black need not change often. */
const blackEveryMs = 200;

/**
 * Encodes the pictures of one stretch of a take, each at its own time. The one that stands when the stretch begins is
 * its first. Tells with each step how far it is, in milliseconds of the stretch.
 */
export function* encodePart(
  reader: StreamReader,
  picture: CutPicture,
  part: CutPart,
  covers: readonly CutCover[],
  settings: EncoderSettings,
  to: string,
): Generator<number> {
  const decoder = openDecoder(reader.stream, 0);
  if (!decoder) throw problems.nothingDecodes();
  const encoder = new PictureEncoder(to, settings);
  const hold = new Hold(part, covers, new Shaper(picture, settings.format), encoder);
  const frame = new Frame();
  frame.alloc();
  const use = (decoded: Frame) => hold.take(decoded, reader.seconds(decoded.bestEffortTimestamp));
  try {
    if (!reader.seekAtOrBefore(part.fromMs, () => reader.packet.isKeyframe)) reader.seek(0);
    do {
      decode(decoder, reader.packet, frame, use);
      yield hold.doneMs;
    } while (!hold.full && reader.read());
    if (!hold.full) decode(decoder, null, frame, use);
    hold.finish();
    encoder.end();
  } finally {
    frame.free();
    hold.free();
    encoder.close();
    decoder.freeContext();
  }
}

/** Holds each picture until the next one tells how long it stands: only then is known which covers it needs. */
class Hold {
  readonly #part: CutPart;
  readonly #covers: readonly CutCover[];
  readonly #shaper: Shaper;
  readonly #encoder: PictureEncoder;
  readonly #held = new Frame();
  #heldSeconds: number | null = null;
  #lastTicks = -1;
  full = false;
  doneMs = 0;

  constructor(part: CutPart, covers: readonly CutCover[], shaper: Shaper, encoder: PictureEncoder) {
    this.#part = part;
    this.#covers = covers;
    this.#shaper = shaper;
    this.#encoder = encoder;
    this.#held.alloc();
  }

  take(frame: Frame, seconds: number | null): void {
    if (this.full || seconds === null) return;
    // Damaged films may step back in time.
    if (this.#heldSeconds !== null && seconds <= this.#heldSeconds) return;
    this.#emit(Math.round(seconds * 1000));
    this.full = Math.round(seconds * 1000) >= this.#part.toMs;
    this.#held.unref();
    check(this.#held.ref(frame), 'keeping a picture');
    this.#heldSeconds = seconds;
  }

  finish(): void {
    if (!this.full) this.#emit(this.#part.toMs);
    if (this.#lastTicks < 0) throw problems.nothingDecodes();
  }

  free(): void {
    this.#held.free();
    this.#shaper.free();
  }

  /** @param untilMs when the next picture is shown */
  #emit(untilMs: number): void {
    if (this.#heldSeconds === null) return;
    const { fromMs, toMs } = this.#part;
    const startMs = Math.round(this.#heldSeconds * 1000);
    const first = this.#lastTicks < 0;
    // The first picture of the recording may come after the stretch begins; it then stands from its start on.
    if (untilMs <= fromMs || (startMs >= toMs && !first)) return;
    const ticks = first ? 0 : Math.round(this.#heldSeconds * pictureTicks) - fromMs * ticksPerMs;
    if (ticks <= this.#lastTicks) return;
    this.#lastTicks = ticks;
    const active = this.#covers.filter((cover) => cover.fromMs < untilMs && cover.toMs > startMs);
    const endMs = Math.min(untilMs, toMs) - fromMs;
    this.#held.pts = BigInt(ticks);
    this.#shaper.shape(this.#held, active, (shaped) =>
      this.#encoder.add(shaped, ticks, Math.max(1, endMs * ticksPerMs - ticks)),
    );
    this.doneMs = endMs;
  }
}

/** Black, for a stretch of a take without picture. */
export function* encodeBlack(part: CutPart, settings: EncoderSettings, to: string): Generator<number> {
  const encoder = new PictureEncoder(to, settings);
  const frame = new Frame();
  frame.alloc();
  try {
    for (let ms = 0; ms < part.toMs - part.fromMs; ms += blackEveryMs) {
      fillBlack(frame, settings);
      encoder.add(frame, ms * ticksPerMs, blackEveryMs * ticksPerMs);
      yield ms;
    }
    encoder.end();
  } finally {
    frame.free();
    encoder.close();
  }
}

function fillBlack(frame: Frame, { format }: EncoderSettings): void {
  frame.unref();
  Object.assign(frame, { width: format.width, height: format.height, format: AV_PIX_FMT_YUV420P });
  check(frame.getBuffer(0), 'room for a picture');
  // ITU-R BT.709: 16 is black, 128 no colour.
  for (const [plane, value] of [16, 128, 128].entries()) frame.data?.[plane]?.fill(value);
}
