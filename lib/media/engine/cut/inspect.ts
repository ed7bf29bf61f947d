import { AV_CODEC_ID_NONE, AVMEDIA_TYPE_AUDIO, AVMEDIA_TYPE_VIDEO } from 'node-av/constants';
import type { Stream } from 'node-av/lib';
import type { CutInspection } from '@/shared/cut-engine';
import { isSideways } from '../../rotation';
import { hasDevice, hasPlace } from '../../tags';
import { type Input, withInput } from '../input';
import type { Watch } from '../pace';
import { codecName, pixelAspect, rotationOf, tagsOf } from '../stream-facts';
import { chapterWriters } from './chapters';
import { containerOf } from './container';
import { StreamReader } from './film-reader';
import { measureLoudness } from './loudness';

/** What every file of its kind has: names of formats and tracks, and the length of each track. */
const ordinaryTags = new Set([
  'major_brand',
  'minor_version',
  'compatible_brands',
  'handler_name',
  'vendor_id',
  'language',
  'duration',
]);
/** The last pictures and sounds lie within this much of the end. */
const tailMs = 15_000;

/**
 * A fresh look at a written cut: what is in it, which tags are left, how loud it is, and whether picture and sound begin
 * and end together. Throws a DomainError where it cannot be read.
 */
export async function inspectCut(path: string, watch: Watch): Promise<CutInspection> {
  const found = await withInput(path, async (input) => lookAt(input, path));
  const hears = found.streams.some(({ kind }) => kind === 'sound');
  return { ...found, loudness: hears ? await measureLoudness(path, watch) : null };
}

function lookAt(input: Input, path: string): Omit<CutInspection, 'loudness'> {
  const tags = tagsOf(input.format, ...input.streams);
  const picture = input.video && spanOf(path, 'video');
  const sound = input.sound && spanOf(path, 'sound');
  const apart = (side: 'startMs' | 'endMs') =>
    picture && sound ? Math.round(sound[side] - picture[side]) : null;
  return {
    sizeBytes: input.info.size,
    durationMs: Math.round(Math.max(picture?.endMs ?? 0, sound?.endMs ?? 0)),
    streams: input.streams.map((stream) => described(stream, input)),
    chapters: chapterWriters[containerOf(path)].read(path),
    tags: Object.fromEntries(Object.entries(tags).filter(([name]) => !ordinaryTags.has(name))),
    hasPlaceTags: hasPlace(
      tags,
      input.streams.map(({ codecpar }) => codecpar.codecTagString ?? ''),
    ),
    hasDeviceTags: hasDevice(tags),
    soundStartsLaterMs: apart('startMs'),
    soundEndsLaterMs: apart('endMs'),
  };
}

function described(stream: Stream, input: Input): CutInspection['streams'][number] {
  const { codecType, codecId, width, height, sampleRate, channels } = stream.codecpar;
  const codec = codecId === AV_CODEC_ID_NONE ? 'unknown' : codecName(stream);
  const nothing = { width: null, height: null, sampleRateHz: null, channels: null };
  if (codecType === AVMEDIA_TYPE_AUDIO)
    return { kind: 'sound', codec, ...nothing, sampleRateHz: sampleRate, channels };
  if (codecType !== AVMEDIA_TYPE_VIDEO) return { kind: chaptersOrOther(input), codec, ...nothing };
  const wide = Math.round(width * pixelAspect(stream));
  const shown = isSideways(rotationOf(stream)) ? { width: height, height: wide } : { width: wide, height };
  return { kind: 'picture', codec, ...nothing, ...shown };
}

/** FFmpeg shows the chapter track of an MP4 as data; a cut has no other. */
function chaptersOrOther({ streams }: Input): 'chapters' | 'other' {
  const others = streams.filter(
    ({ codecpar: { codecType } }) => codecType !== AVMEDIA_TYPE_AUDIO && codecType !== AVMEDIA_TYPE_VIDEO,
  );
  return others.length === 1 ? 'chapters' : 'other';
}

interface Span {
  startMs: number;
  endMs: number;
}

/** From when to when a stream lasts, by its first and last packets, from take time 0. */
function spanOf(path: string, kind: 'video' | 'sound'): Span | null {
  const reader = StreamReader.open(path, kind);
  if (!reader) return null;
  try {
    const startMs = reader.read() ? Math.max(0, secondsShown(reader).from * 1000) : 0;
    const totalMs = Number(reader.input.format.duration) / 1000;
    reader.seek(Math.max(0, totalMs - tailMs));
    let endMs = startMs;
    while (reader.read()) endMs = Math.max(endMs, secondsShown(reader).to * 1000);
    return { startMs, endMs: Math.min(endMs, declaredEnd(reader) ?? endMs) };
  } finally {
    reader.close();
  }
}

function secondsShown(reader: StreamReader): { from: number; to: number } {
  const from = reader.seconds(reader.packet.pts) ?? 0;
  return { from, to: from + Number(reader.packet.duration) * reader.stream.timeBase.toDouble() };
}

/** An MP4 says in its edit list when the last packet is over; null where the stream does not say. */
function declaredEnd({ stream }: StreamReader): number | null {
  if (stream.duration <= 0n) return null;
  const ticks = Number(stream.duration) + Math.max(0, Number(stream.startTime));
  return ticks * stream.timeBase.toDouble() * 1000;
}
