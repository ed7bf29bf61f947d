import { mkdtempSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { writeCut } from '@/lib/media/engine/cut';
import { soundLine } from '@/lib/media/engine/cut/sound-line';
import { type CutSpec, cutSpecSchema } from '@/shared/cut-engine';
import { peakDb, samples } from './flash-and-beep';
import { aac, h264, made, picture, recording, removeMade } from './make';

afterAll(removeMade);
const watch = { signal: new AbortController().signal, report: () => undefined };

/** A steady hum that is never 0 for long, at about −6 dBFS. */
const hum = ['-f', 'lavfi', '-i', "aevalsrc='0.5*sin(2*PI*220*t)|0.5*sin(2*PI*220*t)':s=48000:d=6"];
const film = () => recording('hum.mp4', ...picture(6), ...hum, ...h264, ...aac);
const exactSound = () => recording('hum.mkv', ...picture(6), ...hum, ...h264, '-c:a', 'flac');
const frameMs = 40;

async function cut(more: Partial<CutSpec> & Pick<CutSpec, 'pieces'>) {
  const workFolder = mkdtempSync(join(made, 'work-'));
  const spec = cutSpecSchema.parse({ output: join(workFolder, 'cut.mp4'), workFolder, ...more });
  return { output: spec.output, result: await writeCut(spec, watch) };
}

/** All samples of the first channel, before they are encoded. */
function line(muteWith: 'silence' | 'tone', mutes: { fromMs: number; toMs: number }[]): Float32Array {
  const parts: Float32Array[] = [];
  const sink = {
    count: 0,
    add(planes: readonly Float32Array[], first: number, end: number) {
      parts.push(Float32Array.from(planes[0]?.subarray(first, end) ?? []));
    },
  };
  const piece = { path: exactSound(), fromMs: 500, toMs: 4500 };
  const planned = { ...piece, outMs: 0, startMovedMs: 0, endMovedMs: 0, parts: [] };
  const plan = { pieces: [planned], soundFormat: { sampleRateHz: 48000, channels: 2 as const } };
  for (const _ of soundLine(plan, { pieces: [{ ...piece, mutes, covers: [] }], muteWith }, sink));
  const all = new Float32Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}

describe('muted words, to the sample', () => {
  const mutes = [
    { fromMs: 1503, toMs: 1977 },
    { fromMs: 3001, toMs: 3002 },
  ];

  test('every sample of the spans is 0, and no other sample is touched', () => {
    const [plain, muted] = [line('silence', []), line('silence', mutes)];
    expect(plain).toHaveLength(4 * 48000);
    expect(muted).toHaveLength(plain.length);
    const isIn = (i: number) =>
      mutes.some(({ fromMs, toMs }) => i >= (fromMs - 500) * 48 && i < (toMs - 500) * 48);
    const wrong = plain.findIndex((value, i) => muted[i] !== (isIn(i) ? 0 : value));
    expect(wrong).toBe(-1);
  });

  test('a tone begins and ends softly, and stays within its span', () => {
    const [plain, toned] = [line('tone', []), line('tone', mutes)];
    const [from, to] = [1003 * 48, 1477 * 48];
    expect(toned.subarray(from - 2000, from)).toEqual(plain.subarray(from - 2000, from));
    expect(toned.subarray(to, to + 2000)).toEqual(plain.subarray(to, to + 2000));
    const top = toned.subarray(from, to).reduce((most, value) => Math.max(most, Math.abs(value)), 0);
    expect(top).toBeGreaterThan(0.03);
    expect(top).toBeLessThan(0.1);
    for (const place of [from, to - 1]) expect(Math.abs(toned[place] ?? 1)).toBeLessThan(0.001);
    // 1 kHz changes its sign 2000 times a second.
    const signs = toned
      .subarray(from + 480, from + 480 + 9600)
      .filter((value, i, all) => i > 0 && value * (all[i - 1] ?? 0) < 0);
    expect(Math.abs(signs.length - 400)).toBeLessThan(4);
  });
});

describe('muted words in the file, decoded by the ffmpeg command line', () => {
  const pieces = [
    { path: film(), fromMs: 1000, toMs: 5000, mutes: [{ fromMs: 2000, toMs: 2700 }], covers: [] },
  ];
  /** AAC blurs an edge over a block. */
  const blurMs = 45;

  test.each<['silence' | 'tone', number, number]>([
    ['silence', Number.NEGATIVE_INFINITY, -60],
    ['tone', -29, -24],
  ])('%s', async (muteWith, least, most) => {
    const { output } = await cut({ pieces, muteWith });
    const sound = samples(output);
    expect(sound.length / 48).toBeCloseTo(4000, -2);
    const level = peakDb(sound, 1000 + blurMs, 1700 - blurMs);
    expect(level).toBeGreaterThanOrEqual(least);
    expect(level).toBeLessThan(most);
    expect(peakDb(sound, 1000 - frameMs, 1000)).toBeGreaterThan(-9);
    expect(peakDb(sound, 1700, 1700 + frameMs)).toBeGreaterThan(-9);
  });
});

test('sound that is left as it is, in one piece, is copied; in two it is joined anew without a click', async () => {
  const one = await cut({ pieces: [{ path: film(), fromMs: 1000, toMs: 5000, mutes: [], covers: [] }] });
  expect(one.result.sound).toBe('copied');
  expect(samples(one.output).length / 48).toBeCloseTo(4000, -2);
  // A hum of 220 Hz is at the same place of its wave after every 50 ms.
  const halves = [1000, 3000].map((fromMs) => ({
    path: film(),
    fromMs,
    toMs: fromMs + 2000,
    mutes: [],
    covers: [],
  }));
  const two = await cut({ pieces: halves });
  expect(two.result.sound).toBe('encoded');
  const sound = samples(two.output).subarray(4800, -9600);
  const steepest = sound.reduce(
    (most, value, i) => Math.max(most, Math.abs(value - (sound[i - 1] ?? value))),
    0,
  );
  expect(steepest / 32768).toBeLessThan(0.5 * 2 * Math.sin((Math.PI * 220) / 48000) * 1.3);
});
