import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { writeFileSync } from 'node:fs';
import { framesPerSecond } from './picture';
import type { TakeScript } from './takes/script';
import { sampleRateHz } from './voice';

const wantedLufs = -18;
/** Leaves 3 dB under full scale: the AAC encoder overshoots by up to 2. */
const peakLimit = 0.7;
/** Takes the sharp tops off the voice, so that the limiter has little left to do. */
const evenOut = 'acompressor=threshold=0.12:ratio=3:attack=4:release=150';

/** Integrated loudness of a sound file by EBU R 128, as FFmpeg's `ebur128` filter sums it up. */
function loudnessOf(input: string[]): number {
  const args = ['-hide_banner', '-nostats', ...input, '-filter:a', `${evenOut},ebur128`, '-f', 'null', '-'];
  const { stderr } = spawnSync('ffmpeg', args, { encoding: 'utf8' });
  const found = [...stderr.matchAll(/I:\s+(-?[\d.]+) LUFS/g)].at(-1)?.[1];
  if (found === undefined) throw new Error(`FFmpeg gave no loudness:\n${stderr}`);
  return Number(found);
}

/** Sound samples beside the pictures, and the filter that brings them to the wanted loudness. */
export function writeSound(samples: Float32Array, path: string): { input: string[]; level: string } {
  writeFileSync(path, new Uint8Array(samples.buffer));
  const input = ['-f', 'f32le', '-ar', String(sampleRateHz), '-ac', '1', '-i', path];
  const gain = wantedLufs - loudnessOf(input);
  return {
    input,
    level: `${evenOut},volume=${gain.toFixed(2)}dB,alimiter=limit=${peakLimit}:level=disabled`,
  };
}

/** A key frame each two and a half seconds: short steps for a scrubbing hand, still a small file. */
const keyEvery = 2.5 * framesPerSecond;

const pictureArgs = [
  ...['-vf', 'scale=out_range=tv:out_color_matrix=bt709,format=yuv420p'],
  ...['-c:v', 'libx264', '-profile:v', 'main', '-preset', 'veryslow', '-tune', 'animation', '-crf', '34'],
  ...['-g', String(keyEvery), '-keyint_min', String(keyEvery), '-sc_threshold', '0'],
  ...['-color_primaries', 'bt709', '-color_trc', 'bt709', '-colorspace', 'bt709'],
];

/** Encodes one take from JPEG pictures that come one by one. */
export async function encodeTake(
  take: TakeScript,
  pictures: AsyncIterable<Buffer>,
  sound: { input: string[]; level: string },
  path: string,
): Promise<void> {
  const input = ['-f', 'image2pipe', '-framerate', String(framesPerSecond), '-c:v', 'mjpeg', '-i', '-'];
  const soundArgs = [
    '-af',
    sound.level,
    '-c:a',
    'aac',
    '-b:a',
    '44k',
    '-ar',
    String(sampleRateHz),
    '-ac',
    '1',
  ];
  const about = [
    '-map_metadata',
    '-1',
    '-fflags',
    '+bitexact',
    '-metadata',
    `creation_time=${take.recordedAt}`,
  ];
  const ffmpeg = spawn(
    'ffmpeg',
    [
      '-v',
      'error',
      '-y',
      ...input,
      ...sound.input,
      ...pictureArgs,
      ...soundArgs,
      ...about,
      '-movflags',
      '+faststart',
      path,
    ],
    { stdio: ['pipe', 'inherit', 'inherit'] },
  );
  const ended = once(ffmpeg, 'exit');
  for await (const picture of pictures) {
    if (!ffmpeg.stdin.write(picture)) await once(ffmpeg.stdin, 'drain');
  }
  ffmpeg.stdin.end();
  const [code] = await ended;
  if (code !== 0) throw new Error(`FFmpeg ended with ${code} on ${path}`);
}
