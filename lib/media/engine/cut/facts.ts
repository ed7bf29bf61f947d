import { createHash } from 'node:crypto';
import { AV_PKT_DATA_NEW_EXTRADATA } from 'node-av/constants';
import type { Stream } from 'node-av/lib';
import type { CutFacts, CutPicture, CutPiece, CutPlanSpec, CutPoints, CutSource } from '@/shared/cut-engine';
import { endSeconds } from '../duration';
import { type Input, withInput } from '../input';
import { Pace, type Watch } from '../pace';
import { codecName, pixelFormatName, rotationOf } from '../stream-facts';
import { canMix } from './avc-settings';
import { ReaderPool, type StreamReader } from './film-reader';

/** Codecs of pictures that MP4 and Matroska both hold and that are meant for publishing. */
const copiedCodecs: readonly string[] = ['h264', 'hevc', 'av1', 'vp9'];
/** Packets looked at for one cut point: some minutes of film. */
const mostPackets = 20_000;

/**
 * Looks at every source once and at every piece's ends: what can be copied, and where key frames lie. Throws a
 * DomainError for a source that is missing or cannot be read.
 */
export async function cutFacts({ pieces }: Pick<CutPlanSpec, 'pieces'>, watch: Watch): Promise<CutFacts> {
  const pace = new Pace(watch);
  const sources: CutFacts['sources'] = {};
  for (const { path } of pieces) {
    sources[path] ??= await withInput(path, (input) => sourceOf(input, path, new Pace(watch)));
  }
  const pool = new ReaderPool('video');
  try {
    const points: CutPoints[] = [];
    for (const piece of pieces) {
      const copies = sources[piece.path]?.picture?.copies === true;
      points.push(pointsOf(copies ? pool.get(piece.path) : null, piece));
      if (pace.due) await pace.rest(points.length / pieces.length);
    }
    return { sources, points };
  } finally {
    pool.close();
  }
}

async function sourceOf(input: Input, path: string, pace: Pace): Promise<CutSource> {
  const { video, sound, zeroSeconds } = input;
  return {
    picture: video && pictureOf(video),
    sound: sound && sound.codecpar.sampleRate > 0 ? soundOf(sound) : null,
    durationMs: Math.max(0, Math.round(((await endSeconds(input, path, pace)) - zeroSeconds) * 1000)),
  };
}

function soundOf(stream: Stream): NonNullable<CutSource['sound']> {
  const { sampleRate, channels, extradata } = stream.codecpar;
  const codec = codecName(stream);
  // Without settings of its own, AAC has them in every packet, which MP4 and Matroska do not take.
  const copies = codec === 'aac' && extradata !== null;
  return { codec, sampleRateHz: sampleRate, channels: Math.max(1, channels), copies };
}

function pictureOf(stream: Stream): CutPicture | null {
  const { width, height, extradata } = stream.codecpar;
  if (width <= 0 || height <= 0) return null;
  const codec = codecName(stream);
  const pixelFormat = pixelFormatName(stream);
  const needsSettings = codec === 'h264' || codec === 'hevc';
  const average = stream.avgFrameRate.toDouble();
  return {
    codec,
    pixelFormat,
    width,
    height,
    rotation: rotationOf(stream),
    pixelAspect: aspectOf(stream),
    frameRate: average > 0 && Number.isFinite(average) ? average : null,
    settings: createHash('sha256')
      .update(extradata ?? '')
      .digest('hex'),
    copies: copiedCodecs.includes(codec) && (!needsSettings || extradata !== null),
    mixes: codec === 'h264' && pixelFormat === 'yuv420p' && extradata !== null && canMix(extradata),
  };
}

function aspectOf(stream: Stream): [number, number] {
  const known = [stream.sampleAspectRatio, stream.codecpar.sampleAspectRatio].find(
    ({ num, den }) => num > 0 && den > 0,
  );
  return known ? [known.num, known.den] : [1, 1];
}

const nowhere: CutPoints = { keyAtMs: null, nextKeyMs: null, closedAtMs: null };

function pointsOf(reader: StreamReader | null, { fromMs, toMs }: CutPiece): CutPoints {
  return reader ? { ...keysAround(reader, fromMs), closedAtMs: closedAt(reader, toMs) } : nowhere;
}

function keysAround(reader: StreamReader, fromMs: number): Pick<CutPoints, 'keyAtMs' | 'nextKeyMs'> {
  if (!reader.seekAtOrBefore(fromMs, () => reader.startsClean)) return { keyAtMs: null, nextKeyMs: null };
  let keyAtMs: number | null = null;
  let packets = 0;
  do {
    const { ms } = reader;
    // Pictures without a time, or whose settings change on the way, cannot be laid anywhere.
    if (ms === null || reader.packet.getSideData(AV_PKT_DATA_NEW_EXTRADATA)) break;
    if (!reader.startsClean) continue;
    if (ms > fromMs) return { keyAtMs, nextKeyMs: ms };
    // A key frame from before the first shown picture cannot be shown.
    if (ms >= 0) keyAtMs = Math.max(0, ms);
  } while (++packets < mostPackets && reader.read());
  return { keyAtMs, nextKeyMs: null };
}

/**
 * Where a copied piece may end: packets come in the order of decoding, so that one shown late may stand before ones that
 * are shown earlier and build on it.
 */
function closedAt(reader: StreamReader, toMs: number): number | null {
  if (!reader.seekAtOrBefore(Math.max(0, toMs - 1), () => reader.packet.isKeyframe)) return null;
  const times: number[] = [];
  do {
    const { ms } = reader;
    if (ms === null) return null;
    times.push(ms);
    // Nothing that is decoded later is shown earlier than this moment.
    const decoded = reader.seconds(reader.packet.dts);
    if (decoded !== null && decoded * 1000 >= toMs) break;
  } while (times.length < mostPackets && reader.read());
  return lastClosed(times, toMs);
}

/** @param times take times in the order of decoding, from a key frame on */
export function lastClosed(times: readonly number[], toMs: number): number | null {
  const earliestFrom = [...times, Number.POSITIVE_INFINITY];
  for (let i = times.length - 1; i >= 0; i--)
    earliestFrom[i] = Math.min(times[i] ?? 0, earliestFrom[i + 1] ?? 0);
  let latest = Number.NEGATIVE_INFINITY;
  let closed: number | null = null;
  for (const [i, ms] of times.entries()) {
    latest = Math.max(latest, ms);
    const next = earliestFrom[i + 1] ?? Number.POSITIVE_INFINITY;
    if (latest < toMs && latest < next) closed = Math.min(toMs, next);
  }
  return closed;
}
