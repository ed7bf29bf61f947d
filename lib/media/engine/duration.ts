import { AV_NOPTS_VALUE } from 'node-av/constants';
import type { Stream } from 'node-av/lib';
import { clockOf, Input, startOf } from './input';
import type { Pace } from './pace';

/** Bare streams without a container have no length written; FFmpeg guesses it from the bit rate. */
const bare = new Set(['aac', 'mp3', 'ac3', 'h264', 'hevc', 'm4v', 'mjpeg', 'amr', 'dts']);

/** Second on the file's own clock at which picture and sound are over. */
export async function endSeconds(input: Input, path: string, pace: Pace): Promise<number> {
  const written = bare.has(input.format.iformat?.name ?? '') ? null : writtenEnd(input);
  return written ?? (await readEnd(path, pace));
}

function writtenEnd({ video, sound, format, startSeconds }: Input): number | null {
  const ends = [video, sound].filter((stream) => stream !== null).map(endOf);
  if (ends.length > 0 && ends.every((end) => end !== null)) return Math.max(...ends);
  return format.duration > 0n && format.duration !== AV_NOPTS_VALUE
    ? (startSeconds ?? 0) + Number(format.duration) / 1e6
    : null;
}

function endOf(stream: Stream): number | null {
  const start = startOf(stream);
  return start === null || stream.duration <= 0n
    ? null
    : start + Number(stream.duration) * stream.timeBase.toDouble();
}

/** Reads every packet, in a handle of its own, for the end of the last one. */
async function readEnd(path: string, pace: Pace): Promise<number> {
  const input = new Input(path);
  try {
    const clocks = input.streams.map((stream) => ({ at: clockOf(stream), tick: stream.timeBase.toDouble() }));
    let end = 0;
    while (input.read()) {
      const clock = clocks[input.packet.streamIndex];
      const at = clock?.at(input.packet.pts) ?? null;
      if (clock && at !== null) end = Math.max(end, at + Number(input.packet.duration) * clock.tick);
      if (pace.due) await pace.rest(0);
    }
    return end;
  } finally {
    input.close();
  }
}
