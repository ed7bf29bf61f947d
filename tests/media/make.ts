import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** One folder a test file: recordings are made once and read by many tests. */
export const made = mkdtempSync(join(tmpdir(), 'benchtake-recordings-'));

/** For the end of each test file. */
export function removeMade(): void {
  rmSync(made, { recursive: true, force: true });
}

/** Runs Debian's FFmpeg, the outside maker of all recordings here. */
export function ffmpeg(...args: string[]): void {
  execFileSync('ffmpeg', ['-v', 'error', '-nostdin', '-y', ...args]);
}

/** Makes a recording, unless this run has made it before. `args`: everything but the name of the output. */
export function recording(name: string, ...args: string[]): string {
  const path = join(made, name);
  if (existsSync(path)) return path;
  mkdirSync(made, { recursive: true });
  // A name such as "-dash.mp4" or "a:b.mp4" must not be read as an option or a protocol.
  ffmpeg(...args, `file:${path}`);
  return path;
}

export const picture = (seconds: number, size = '160x90', rate = 25): string[] => [
  '-f',
  'lavfi',
  '-i',
  `testsrc2=s=${size}:r=${rate}:d=${seconds}`,
];
export const tone = (seconds: number, hz = 440, rateHz = 48000): string[] => [
  '-f',
  'lavfi',
  '-i',
  `sine=f=${hz}:r=${rateHz}:d=${seconds}`,
];

/** H.264 as every camera writes it, made fast. */
export const h264 = ['-c:v', 'libx264', '-preset', 'ultrafast', '-pix_fmt', 'yuv420p', '-g', '25'];
export const aac = ['-c:a', 'aac', '-b:a', '96k'];

/** A plain recording: H.264 and AAC in MP4. */
export const plain = (seconds = 4): string =>
  recording(`plain-${seconds}.mp4`, ...picture(seconds), ...tone(seconds), ...h264, ...aac);
