import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, renameSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Large recordings are kept between runs; the folder may be deleted at any time. */
export const cache = join(tmpdir(), 'benchtake-bench-recordings');

/** 30 minutes, 1280 × 720, H.264 and AAC, about 1.4 GB, as a camera at 6 Mbit/s writes it. */
export const halfHour = () => repeated('half-hour.mp4', { minutes: 30, kbits: 6200, keyEvery: 25 });

/** Three hours in one file, at a low rate. */
export const threeHours = () => repeated('three-hours.mp4', { minutes: 180, kbits: 900, keyEvery: 50 });

/** One minute is made and written over and over, without decoding it again. */
function repeated(
  name: string,
  { minutes, kbits, keyEvery }: { minutes: number; kbits: number; keyEvery: number },
): string {
  const path = join(cache, name);
  if (existsSync(path)) return path;
  mkdirSync(cache, { recursive: true });
  const minute = join(cache, `minute-of-${name}`);
  ffmpeg(
    ...[
      '-f',
      'lavfi',
      '-i',
      'testsrc2=s=1280x720:r=25:d=60,noise=alls=20:allf=t',
      '-f',
      'lavfi',
      '-i',
      'anoisesrc=d=60:a=0.3:r=48000',
    ],
    ...['-c:v', 'libx264', '-preset', 'ultrafast', '-pix_fmt', 'yuv420p', '-g', String(keyEvery)],
    ...[
      '-b:v',
      `${kbits}k`,
      '-minrate',
      `${kbits}k`,
      '-maxrate',
      `${kbits}k`,
      '-bufsize',
      `${kbits}k`,
      '-x264-params',
      'nal-hrd=cbr',
    ],
    ...['-c:a', 'aac', '-b:a', '128k', '-ac', '2', '-shortest', minute],
  );
  const list = join(cache, `${name}.txt`);
  writeFileSync(list, `file '${minute}'\n`.repeat(minutes));
  const unfinished = join(cache, `unfinished-${name}`);
  ffmpeg('-f', 'concat', '-safe', '0', '-i', list, '-c', 'copy', '-movflags', '+faststart', unfinished);
  renameSync(unfinished, path);
  return path;
}

/** Debian's FFmpeg, the outside maker and the reference. */
export function ffmpeg(...args: string[]): void {
  execFileSync('ffmpeg', ['-v', 'error', '-nostdin', '-y', ...args]);
}
