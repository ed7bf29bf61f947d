import { execFileSync } from 'node:child_process';
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';

/** Makes a recording with Debian's FFmpeg: moving picture, a tone, a date. */
export function makeRecording(
  folder: string,
  name: string,
  { seconds = 4, hz = 440, at = '2026-03-17T09:00:00Z', extra = [] as string[] } = {},
): string {
  mkdirSync(folder, { recursive: true });
  const path = join(folder, name);
  execFileSync('ffmpeg', [
    ...['-v', 'error', '-y', '-f', 'lavfi', '-i', `testsrc2=s=320x180:r=25:d=${seconds}`],
    ...['-f', 'lavfi', '-i', `sine=f=${hz}:d=${seconds}`],
    ...[
      '-c:v',
      'libx264',
      '-preset',
      'ultrafast',
      '-pix_fmt',
      'yuv420p',
      '-g',
      '25',
      '-c:a',
      'aac',
      '-shortest',
    ],
    ...['-movflags', '+faststart', '-metadata', `creation_time=${at}`, ...extra, path],
  ]);
  return path;
}
