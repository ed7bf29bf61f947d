import { execFileSync } from 'node:child_process';
import { mkdtempSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { inspectCut, measureLoudness, writeCut } from '@/lib/media/engine/cut';
import { cutSpecSchema } from '@/shared/cut-engine';
import { aac, h264, made, picture, recording, removeMade, tone } from './make';

afterAll(removeMade);
const watch = { signal: new AbortController().signal, report: () => undefined };

/** Seconds of a sine of 1 kHz at a peak in dBFS, the same in all channels; 5.0: front, centre, surround. */
type Stage = [seconds: number, dbfs: number | [front: number, centre: number, surround: number]];

/**
 * EBU Tech 3341, table 1, cases 1 to 6, synthesised from their published description; levels are peak levels of each
 * channel. Expected loudness within 0.1 LU.
 */
const cases: [name: string, stages: Stage[], lufs: number][] = [
  ['1: −23 dBFS', [[20, -23]], -23],
  ['2: −33 dBFS', [[20, -33]], -33],
  [
    '3: −36, −23, −36 dBFS',
    [
      [10, -36],
      [60, -23],
      [10, -36],
    ],
    -23,
  ],
  [
    '4: −72, −36, −23, −36, −72 dBFS',
    [
      [10, -72],
      [10, -36],
      [60, -23],
      [10, -36],
      [10, -72],
    ],
    -23,
  ],
  [
    '5: −26, −20, −26 dBFS',
    [
      [20, -26],
      [20.1, -20],
      [20, -26],
    ],
    -23,
  ],
  ['6: five channels', [[20, [-28, -24, -30]]], -23],
];

function synthesised(name: string, stages: readonly Stage[]): string {
  const inputs = stages.flatMap(([seconds, level]) => {
    const levels =
      typeof level === 'number' ? [level, level] : [level[0], level[0], level[1], level[2], level[2]];
    const channels = levels.map((dbfs) => `${10 ** (dbfs / 20)}*sin(2*PI*1000*t)`).join('|');
    const layout = levels.length === 2 ? 'stereo' : '5.0';
    return ['-f', 'lavfi', '-i', `aevalsrc='${channels}':c=${layout}:s=48000:d=${seconds}`];
  });
  const joined = `concat=n=${stages.length}:v=0:a=1`;
  return recording(`${name.slice(0, 1)}.wav`, ...inputs, '-filter_complex', joined, '-c:a', 'pcm_f32le');
}

describe('EBU Tech 3341, integrated loudness', () => {
  test.each(cases)('case %s', async (name, stages, lufs) => {
    const { integratedLufs } = await measureLoudness(synthesised(name, stages), watch);
    expect(Math.abs((integratedLufs ?? 0) - lufs)).toBeLessThanOrEqual(0.1);
  });
});

test('the true peak of a sine is its peak', async () => {
  const { truePeakDbtp } = await measureLoudness(synthesised('1: again', [[20, -23]]), watch);
  expect(truePeakDbtp).toBeCloseTo(-23, 0);
});

/** Debian's `ebur128`. */
function integrated(path: string): number {
  const script = 'ffmpeg -nostdin -hide_banner -i "$0" -af ebur128 -f null - 2>&1';
  const words = execFileSync('sh', ['-c', script, path], { encoding: 'utf8' });
  return Number(/Integrated loudness:\s+I:\s+(-?[\d.]+) LUFS/.exec(words)?.[1]);
}

describe('a levelled cut', () => {
  const film = () =>
    recording('quiet.mp4', ...picture(6), ...tone(6), '-af', 'volume=-20dB', '-ac', '2', ...h264, ...aac);
  const cut = async (lufs: number) => {
    const workFolder = mkdtempSync(join(made, 'work-'));
    const output = join(workFolder, 'cut.mp4');
    const pieces = [{ path: film(), fromMs: 0, toMs: 5900, mutes: [{ fromMs: 1000, toMs: 2000 }] }];
    const spec = cutSpecSchema.parse({ pieces, output, workFolder, loudness: { lufs } });
    return { output, result: await writeCut(spec, watch) };
  };

  test('is as loud as it was asked to be, by the ffmpeg command line', async () => {
    const { output, result } = await cut(-23);
    expect(integrated(output)).toBeCloseTo(-23, 0);
    expect(Math.abs((await inspectCut(output, watch)).loudness?.integratedLufs ?? 0)).toBeCloseTo(23, 0);
    expect(result.measured?.integratedLufs).not.toBeCloseTo(-23, 0);
  });

  test('stays below full scale where it was asked to be louder than its peaks allow', async () => {
    const { output } = await cut(-5);
    expect((await inspectCut(output, watch)).loudness?.truePeakDbtp).toBeLessThan(-0.5);
  });
});
