import { execFileSync } from 'node:child_process';
import { afterAll, describe, expect, test } from 'vitest';
import { z } from 'zod';
import { probe } from '@/lib/media/engine/probe';
import { removeMade } from './make';
import { odd } from './odd-recordings';

// Source: Debian's ffprobe (FFmpeg 5.1), a build and a version of its own beside the one inside the program.

const seconds = z.coerce.number();
const ratio = z
  .string()
  .transform((text) => text.split(/[/:]/).map(Number))
  .transform(([up = 0, down = 0]) => (down === 0 ? 0 : up / down));
const streamSchema = z.object({
  codec_type: z.string(),
  codec_name: z.string().optional(),
  profile: z.string().optional(),
  pix_fmt: z.string().optional(),
  width: z.number().optional(),
  height: z.number().optional(),
  sample_aspect_ratio: ratio.optional(),
  avg_frame_rate: ratio.optional(),
  start_time: seconds.optional(),
  channels: z.number().optional(),
  sample_rate: seconds.optional(),
  disposition: z.record(z.string(), z.number()),
  tags: z.record(z.string(), z.string()).optional(),
  side_data_list: z.array(z.object({ rotation: z.number().optional() })).optional(),
});
const reportSchema = z.object({
  format: z.object({ start_time: seconds.default(0), duration: seconds, size: seconds }),
  streams: z.array(streamSchema),
});

function ffprobe(path: string) {
  const text = execFileSync(
    'ffprobe',
    ['-v', 'error', '-show_format', '-show_streams', '-of', 'json', `file:${path}`],
    { encoding: 'utf8' },
  );
  const { format, streams } = reportSchema.parse(JSON.parse(text));
  const video = streams.find(
    (stream) => stream.codec_type === 'video' && stream.disposition.attached_pic !== 1,
  );
  const audio = streams.filter((stream) => stream.codec_type === 'audio');
  return { format, video, audio };
}

/** ffprobe writes the bare number of a profile without a name. */
function nameOf(profile: string | undefined): string | null {
  return profile === undefined || /^\d+$/.test(profile) ? null : profile;
}

const watch = { signal: new AbortController().signal, report: () => undefined };

afterAll(removeMade);

describe('a probe says what ffprobe says', () => {
  test.each(Object.entries(odd))('%s', async (_name, make) => {
    const path = make();
    const [ours, theirs] = [await probe(path, watch), ffprobe(path)];
    const { format, video, audio } = theirs;
    const start = video?.start_time ?? format.start_time;
    expect(ours.sizeBytes).toBe(format.size);
    // Within one frame of sound, by which the two versions differ at the end of some files.
    expect(Math.abs(ours.durationMs - (format.start_time + format.duration - start) * 1000)).toBeLessThan(45);
    // On the file's own clock: what comes before its 0 is not counted.
    expect(Math.abs(ours.firstFrameMs - Math.max(0, start) * 1000)).toBeLessThan(25);
    expect(
      ours.audio.map(({ codec, channels, sampleRateHz }) => ({ codec, channels, sampleRateHz })),
    ).toEqual(
      audio.map(({ codec_name, channels, sample_rate }) => ({
        codec: codec_name,
        channels,
        sampleRateHz: sample_rate,
      })),
    );
    expect(ours.video === null).toBe(video === undefined);
    if (!ours.video || !video) return;
    const clockwise =
      (360 - (video.side_data_list?.find((data) => data.rotation !== undefined)?.rotation ?? 0)) % 360;
    expect(ours.video.rotation).toBe(clockwise);
    expect(ours.video).toMatchObject({
      codec: video.codec_name,
      profile: nameOf(video.profile),
      pixelFormat: video.pix_fmt,
    });
    expect([ours.video.codedWidth, ours.video.codedHeight]).toEqual([video.width, video.height]);
    const wide = Math.round((video.width ?? 0) * (video.sample_aspect_ratio || 1));
    const shown = clockwise % 180 === 0 ? [wide, video.height] : [video.height, wide];
    expect([ours.video.shownWidth, ours.video.shownHeight]).toEqual(shown);
    if (ours.video.frameRate !== null) expect(ours.video.frameRate).toBeCloseTo(video.avg_frame_rate ?? 0, 1);
  });
});

describe('beyond ffprobe', () => {
  const probed = (name: keyof typeof odd & string) => probe(odd[name]?.() ?? '', watch);

  test.each([
    ['plain MP4', 'mp4'],
    ['HEVC of 10 bits in MOV', 'mov'],
    ['Matroska', 'matroska'],
    ['WebM with VP8 and Vorbis', 'webm'],
    ['AVI', 'avi'],
    ['MPEG-TS', 'mpegts'],
    ['sound only, WAV', 'wav'],
    ['sound only, Opus', 'ogg'],
  ])('%s is called %s', async (name, word) => {
    expect((await probed(name)).container).toBe(word);
  });

  test('pictures that come unevenly are noticed, and only those', async () => {
    for (const [name, variable] of [
      ['variable rate', true],
      ['plain MP4', false],
      ['Matroska', false],
      ['MPEG-TS', false],
      ['WebM with VP9 and Opus', false],
    ] as const) {
      expect([name, (await probed(name)).video?.variableFrameRate]).toEqual([name, variable]);
    }
  });

  test.each([
    ['plain MP4', null],
    ['turned by 90', null],
    ['sound only, MP3', null],
    ['WebM with VP9 and Opus', null],
    ['AV1', null],
    ['HEVC', /H\.265/],
    ['AVI', /AVI/],
    ['MPEG-TS', /transport stream/],
    ['Matroska', /Matroska/],
    ['ProRes', /ProRes/],
    ['10 bits of H.264', /more colour/],
    ['odd size', /more colour/],
  ])('whether browsers play it: %s', async (name, reason) => {
    const { playable } = await probed(name);
    expect(playable.ok).toBe(reason === null);
    if (reason) expect(playable.reason).toMatch(reason);
  });

  test('one frame has no rate', async () => {
    expect((await probed('one frame')).video?.frameRate).toBeNull();
  });
});
