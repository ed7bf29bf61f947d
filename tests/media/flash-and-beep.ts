import { execFileSync } from 'node:child_process';
import { aac, h264, recording } from './make';

/** Takes in which, every second, half a second in, the picture turns white and a beep of 1 kHz sounds, for 100 ms. */
const lastsSeconds = 0.1;
export const lateSoundMs = 700;
const within = `between(mod(t,1),0.5,${0.5 + lastsSeconds})`;

export const flashes = (seconds: number, size = '160x90', rate = 25): string[] => [
  ...['-f', 'lavfi', '-i'],
  `color=c=0x202020:s=${size}:r=${rate}:d=${seconds},drawbox=c=white:t=fill:enable='${within}'`,
];
export const beeps = (seconds: number, rateHz = 48000, channels = 2): string[] => {
  const one = `0.5*sin(2*PI*1000*t)*${within}`;
  return ['-f', 'lavfi', '-i', `aevalsrc='${Array(channels).fill(one).join('|')}':s=${rateHz}:d=${seconds}`];
};

const both = (seconds: number, size?: string, rate?: number, rateHz?: number) => [
  ...flashes(seconds, size, rate),
  ...beeps(seconds, rateHz),
];
/** B-frames and a key frame each second, as cameras have it. */
const camera = [
  '-c:v',
  'libx264',
  '-preset',
  'veryfast',
  '-pix_fmt',
  'yuv420p',
  '-g',
  '25',
  '-sc_threshold',
  '0',
];

export const flashTake = (name = 'flash.mp4', seconds = 6): string =>
  recording(name, ...both(seconds), ...camera, ...aac);

/** Takes as they come from all kinds of cameras, named for what is odd about them. */
export const odd: Readonly<Record<string, () => string>> = {
  'H.264 of 25 pictures': () => flashTake(),
  'HEVC of 30 pictures, 44.1 kHz': () =>
    recording(
      'flash-hevc.mp4',
      ...both(4, '128x96', 30, 44100),
      ...[
        '-c:v',
        'libx265',
        '-x265-params',
        'log-level=none',
        '-preset',
        'ultrafast',
        '-pix_fmt',
        'yuv420p',
        ...aac,
      ],
    ),
  'MPEG-4 and MP2 in AVI': () =>
    recording('flash.avi', ...both(4, '96x64'), '-c:v', 'mpeg4', '-g', '25', '-c:a', 'pcm_s16le'),
  'a phone held upright': () => {
    const flat = recording('flash-flat.mp4', ...both(4, '320x180', 30), ...h264, ...aac);
    return recording('flash-turned.mp4', '-i', flat, '-c', 'copy', '-metadata:s:v:0', 'rotate=90');
  },
  'variable rate, Opus': () =>
    recording(
      'flash-variable.mkv',
      ...both(4, '160x90', 50),
      ...['-vf', "select='lt(mod(n,100),60)+not(mod(n,2))'", '-vsync', 'vfr', ...h264, '-c:a', 'libopus'],
    ),
  'sound starts late': () => {
    const whole = recording('flash-whole.mkv', ...both(4), ...camera, '-c:a', 'flac');
    // The beginning of the sound is missing; the rest is where it was.
    return recording(
      'flash-late.mkv',
      ...['-i', whole, '-ss', String(lateSoundMs / 1000), '-copyts', '-i', whole],
      ...['-map', '0:v', '-map', '1:a', '-c:v', 'copy', '-c:a', 'flac'],
    );
  },
  'no sound': () => recording('flash-silent.mp4', ...flashes(3), ...h264),
  'no picture': () => recording('flash-memo.m4a', ...beeps(3, 48000, 1), ...aac),
  'MPEG-TS, its clock at one hour': () =>
    recording('flash.ts', '-i', flashTake(), '-c', 'copy', '-output_ts_offset', '3600'),
};

const picturesPerSecond = 200;

/** When the picture turns white, in milliseconds on the clock of the file: decoded by Debian's FFmpeg. */
export function flashTimes(path: string): number[] {
  const filter = 'crop=iw/8:ih/8,scale=1:1:flags=area,format=gray';
  const timing = ['-vsync', 'cfr', '-r', String(picturesPerSecond)];
  const pictures = run('-i', path, '-map', '0:v:0', '-vf', filter, ...timing, '-f', 'rawvideo', '-');
  return rises(pictures, (luma) => luma > 128).map((i) => (i * 1000) / picturesPerSecond);
}

/** When a beep begins. */
export function beepTimes(path: string): number[] {
  const sound = samples(path);
  const millisecond = rateHz / 1000;
  const levels = Array.from({ length: Math.floor(sound.length / millisecond) }, (_, ms) =>
    sound
      .subarray(ms * millisecond, (ms + 1) * millisecond)
      .reduce((top, value) => Math.max(top, Math.abs(value)), 0),
  );
  // A beep may dip between two waves.
  const loud = levels.map((_, ms) =>
    levels.slice(Math.max(0, ms - 20), ms + 1).some((level) => level > 4000),
  );
  return rises(loud, (is) => is);
}

const rateHz = 48_000;

/** All samples of the sound, mixed to one channel, from time 0 of the file on. */
export function samples(path: string): Int16Array {
  const line = ['-af', 'aresample=48000:async=1:first_pts=0', '-ac', '1', '-f', 's16le', '-'];
  const bytes = run('-i', path, '-map', '0:a:0', ...line);
  return new Int16Array(bytes.buffer, bytes.byteOffset, bytes.length >> 1);
}

/** Highest sample of a span, in dBFS. */
export function peakDb(sound: Int16Array, fromMs: number, toMs: number): number {
  const span = sound.subarray(Math.round(fromMs * 48), Math.round(toMs * 48));
  return 20 * Math.log10(span.reduce((top, value) => Math.max(top, Math.abs(value)), 0) / 32768);
}

/** Places at which something begins to hold; at the very start it does not count. */
function rises<T>(values: ArrayLike<T>, holds: (value: T) => boolean): number[] {
  const found: number[] = [];
  let before = true;
  for (let i = 0; i < values.length; i++) {
    const value = values[i];
    const now = value !== undefined && holds(value);
    if (now && !before) found.push(i);
    before = now;
  }
  return found;
}

function run(...args: string[]): Buffer {
  const bytes = execFileSync('ffmpeg', ['-v', 'error', '-nostdin', ...args], { maxBuffer: 1 << 28 });
  return Buffer.from(bytes);
}
