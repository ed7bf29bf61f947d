import type { Stream } from 'node-av/lib';
import type { Probe } from '@/shared/media';
import { isVariable, rateOf } from '../frame-times';
import { playableInBrowsers } from '../playable';
import { isSideways } from '../rotation';
import { hasDevice, hasPlace, recordedAtOf } from '../tags';
import { containerOf } from './container';
import { endSeconds } from './duration';
import { look } from './first-look';
import { type Input, withInput } from './input';
import { Pace, type Watch } from './pace';
import { codecName, pixelAspect, pixelFormatName, profileName, rotationOf, tagsOf } from './stream-facts';

/** Finds out what a recording is. Throws a DomainError for what cannot be read. */
export function probe(path: string, watch: Watch): Promise<Probe> {
  return withInput(path, async (input) => {
    const pictureTimes = look(input);
    const container = containerOf(input, path);
    const tags = tagsOf(input.format, ...input.streams);
    const tracks = input.streams.map((stream) => stream.codecpar.codecTagString ?? '');
    const video = input.video && videoOf(input.video, pictureTimes);
    const audio = input.audio.map(audioOf);
    const zero = input.zeroSeconds;
    return {
      container,
      sizeBytes: input.info.size,
      durationMs: Math.max(0, Math.round(((await endSeconds(input, path, new Pace(watch))) - zero) * 1000)),
      firstFrameMs: Math.round((zero - playerZero(input)) * 1000),
      video,
      audio,
      recordedAt: recordedAtOf(tags, input.info.mtimeMs, Date.now()),
      hasPlaceTags: hasPlace(tags, tracks),
      hasDeviceTags: hasDevice(tags),
      playable: playableInBrowsers(container, video, audio),
    };
  });
}

/**
 * Where a player's clock reads 0: at the 0 of the file's own clock, as Chromium plays it, also where picture and sound
 * both begin later. Only a picture from before 0 moves it; sound from before 0 is priming.
 */
function playerZero(input: Input): number {
  return Math.min(0, input.zeroSeconds);
}

function videoOf(stream: Stream, times: readonly number[]): NonNullable<Probe['video']> {
  const { width, height } = stream.codecpar;
  const rotation = rotationOf(stream);
  const wide = Math.round(width * pixelAspect(stream));
  const average = stream.avgFrameRate.toDouble();
  const single = times.length < 2 && stream.nbFrames < 2n;
  return {
    codec: codecName(stream),
    profile: profileName(stream),
    pixelFormat: pixelFormatName(stream),
    codedWidth: width,
    codedHeight: height,
    shownWidth: isSideways(rotation) ? height : wide,
    shownHeight: isSideways(rotation) ? wide : height,
    rotation,
    frameRate: single ? null : average > 0 ? average : rateOf(times),
    variableFrameRate: isVariable(times),
  };
}

function audioOf(stream: Stream): Probe['audio'][number] {
  const language = stream.metadata?.get('language') ?? null;
  return {
    codec: codecName(stream),
    profile: profileName(stream),
    channels: stream.codecpar.channels,
    sampleRateHz: stream.codecpar.sampleRate,
    language: language === 'und' ? null : language,
  };
}
