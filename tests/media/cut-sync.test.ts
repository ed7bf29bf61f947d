import { mkdtempSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { writeCut } from '@/lib/media/engine/cut';
import { type CutResult, cutSpecSchema } from '@/shared/cut-engine';
import { beeps, beepTimes, flashes, flashTake, flashTimes, lateSoundMs, odd } from './flash-and-beep';
import { made, recording, removeMade } from './make';

afterAll(removeMade);
const watch = { signal: new AbortController().signal, report: () => undefined };
/** What viewers take for being in step: ITU-R BT.1359 (from memory) sees 45 ms early as just noticed. */
const mostApartMs = 40;

interface Kept {
  path: string;
  fromMs: number;
  toMs: number;
}

function cut(name: string, pieces: readonly Kept[], more: Record<string, unknown> = {}) {
  const workFolder = mkdtempSync(join(made, 'work-'));
  const output = join(workFolder, name);
  return { output, result: writeCut(cutSpecSchema.parse({ pieces, output, workFolder, ...more }), watch) };
}

/** Half a second into every second of a take, on the clock of the cut. */
function expected(result: CutResult, there: (path: string, ms: number) => boolean): number[] {
  return result.pieces.flatMap(({ path, fromMs, toMs, outMs }) => {
    const seconds = Array.from({ length: 60 }, (_, second) => second * 1000 + 500);
    const kept = seconds.filter((ms) => ms > fromMs && ms < toMs - 20 && there(path, ms));
    return kept.map((ms) => outMs + ms - fromMs);
  });
}

const isSeen = (path: string) => path !== odd['no picture']?.();
const isHeard = (path: string, ms: number) =>
  path !== odd['no sound']?.() && (path !== odd['sound starts late']?.() || ms > lateSoundMs);

function nearest(times: readonly number[], wanted: number): number {
  return times.reduce(
    (best, ms) => (Math.abs(ms - wanted) < Math.abs(best - wanted) ? ms : best),
    Number.POSITIVE_INFINITY,
  );
}

function inStep(path: string, result: CutResult): void {
  const flashes = flashTimes(path);
  const beeps = beepTimes(path);
  const seen = expected(result, isSeen);
  const heard = expected(result, isHeard);
  expect(flashes).toHaveLength(seen.length);
  expect(beeps).toHaveLength(heard.length);
  for (const ms of seen)
    expect(Math.abs(nearest(flashes, ms) - ms), `flash at ${ms}`).toBeLessThanOrEqual(mostApartMs);
  for (const ms of beeps)
    expect(Math.abs(nearest(heard, ms) - ms), `beep at ${ms}`).toBeLessThanOrEqual(mostApartMs);
  for (const ms of flashes.filter((at) => heard.some((one) => Math.abs(one - at) <= mostApartMs)))
    expect(Math.abs(nearest(beeps, ms) - ms), `flash and beep at ${ms}`).toBeLessThanOrEqual(mostApartMs);
}

const takes = Object.entries(odd).map(([name, make]) => ({ name, make }));

describe('flash and beep, decoded by the ffmpeg command line, stay together', () => {
  test.each(['mp4', 'mkv'])('takes that differ in everything, as %s', async (kind) => {
    const pieces = takes.map(({ make }, i) => ({ path: make(), fromMs: 237 * (i % 3), toMs: 2840 + 7 * i }));
    const { output, result } = cut(`all.${kind}`, pieces);
    const made = await result;
    expect(made).toMatchObject({ picture: 'mixed', sound: 'encoded' });
    inStep(output, made);
  });

  test('the largest picture cannot be copied', async () => {
    const larger = recording(
      'larger.mov',
      ...flashes(3, '336x192'),
      ...beeps(3),
      '-c:v',
      'mjpeg',
      '-c:a',
      'pcm_s16le',
    );
    const pieces = [flashTake(), larger, flashTake()].map((path) => ({ path, fromMs: 300, toMs: 2900 }));
    const { output, result } = cut('larger.mp4', pieces);
    const made = await result;
    expect(made).toMatchObject({ picture: 'encoded', sound: 'encoded' });
    inStep(output, made);
  });

  test.each(['key-frames', 'exact'])('many short pieces of one take, %s', async (cutting) => {
    const path = flashTake('flash-long.mp4', 12);
    const pieces = Array.from({ length: 11 }, (_, i) => ({
      path,
      fromMs: i * 1000 + 130,
      toMs: i * 1000 + 990,
    }));
    const { output, result } = cut('many.mp4', pieces, { cutting });
    inStep(output, await result);
  });
});
