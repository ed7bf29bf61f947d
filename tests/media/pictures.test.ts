import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { fingerprint } from '@/lib/media/engine/fingerprint';
import { probe } from '@/lib/media/engine/probe';
import { soundPeaks } from '@/lib/media/engine/sound';
import { stillAt, stripStills } from '@/lib/media/engine/stills';
import { viewingCopy } from '@/lib/media/engine/viewing-copy';
import { aac, h264, made, recording, removeMade } from './make';
import { odd } from './odd-recordings';

const watch = { signal: new AbortController().signal, report: () => undefined };
afterAll(removeMade);

/** Brightness 10 × (whole half seconds so far) + 20, so that a picture tells its own time; a beep at each second. */
const clockPicture = [
  '-f',
  'lavfi',
  '-i',
  "color=black:s=64x36:r=10:d=6,geq=lum='20+10*floor(2*T)':cb=128:cr=128",
];
const beeps = ['-f', 'lavfi', '-i', "aevalsrc='0.8*sin(2*PI*1000*t)*lt(mod(t,1),0.02)*gte(t,1)':s=48000:d=6"];
const clockFilm = () =>
  recording('clock.mp4', ...clockPicture, ...beeps, ...h264, '-g', '50', '-bf', '2', ...aac);

/** What the clock picture shows at a moment, as a screen shows it (ITU-R BT.601: 16 is black, 235 white). */
function clockAt(ms: number): number {
  return ((4 + 10 * Math.floor(ms / 500)) * 255) / 219;
}

/** Mean brightness of a picture or film frame, read by Debian's ffmpeg. */
function brightness(path: string, ...before: string[]): number {
  const bytes = execFileSync('ffmpeg', [
    '-v',
    'error',
    ...before,
    '-i',
    `file:${path}`,
    '-frames:v',
    '1',
    '-vf',
    'format=rgb24',
    '-f',
    'rawvideo',
    '-',
  ]);
  return bytes.reduce((sum, value) => sum + value, 0) / bytes.length;
}

function sizeOf(path: string): string {
  return execFileSync(
    'ffprobe',
    ['-v', 'error', '-show_entries', 'stream=width,height', '-of', 'csv=p=0', path],
    { encoding: 'utf8' },
  ).trim();
}

async function still(path: string, ms: number): Promise<string> {
  const to = join(mkdtempSync(join(made, 'still-')), 'still.jpg');
  writeFileSync(to, await stillAt(path, ms, watch));
  return to;
}

describe('a still shows the very picture of its moment', () => {
  test.each([0, 400, 500, 1700, 2499, 2500, 4900, 5999])('at %i ms', async (ms) => {
    expect(Math.abs(brightness(await still(clockFilm(), ms)) - clockAt(ms))).toBeLessThan(5);
  });

  test('in a cut with an edit list, a stream and a Matroska file as well', async () => {
    const cut = recording('clock-cut.mp4', '-ss', '1.2', '-i', clockFilm(), '-c', 'copy');
    expect(Math.abs(brightness(await still(cut, 1000)) - clockAt(2200))).toBeLessThan(5);
    for (const name of ['clock.ts', 'clock.mkv', 'clock.avi']) {
      const path = recording(name, '-i', clockFilm(), '-c', 'copy');
      expect(Math.abs(brightness(await still(path, 3700)) - clockAt(3700))).toBeLessThan(5);
    }
  });

  test.each([
    ['turned by 90', '90,160'],
    ['turned by 180', '160,90'],
    ['turned by 270', '90,160'],
    ['pixels that are not square', '206,90'],
    ['HEVC of 10 bits in MOV', '160,90'],
    ['odd size', '160,90'],
  ])('%s: as it is shown', async (name, size) => {
    expect(sizeOf(await still(odd[name]?.() ?? '', 500))).toBe(size);
  });

  test('turned the right way round', async () => {
    const halves = recording(
      'halves.mp4',
      '-f',
      'lavfi',
      '-i',
      'color=black:s=128x64:d=1,drawbox=w=64:c=white:t=fill',
      ...h264,
    );
    const turned = recording('halves-90.mp4', '-i', halves, '-c', 'copy', '-metadata:s:v:0', 'rotate=90');
    // Debian's ffmpeg turns by itself; both must agree on where the white half went.
    const ours = await still(turned, 0);
    const theirs = join(made, 'theirs.png');
    execFileSync('ffmpeg', ['-v', 'error', '-y', '-i', turned, '-frames:v', '1', theirs]);
    const topOf = (path: string) =>
      execFileSync('ffmpeg', [
        '-v',
        'error',
        '-i',
        path,
        '-vf',
        'crop=iw:ih/4:0:0,scale=1:1:flags=area,format=gray',
        '-f',
        'rawvideo',
        '-',
      ])[0] ?? 0;
    expect(Math.abs(topOf(ours) - topOf(theirs))).toBeLessThan(20);
  });
});

describe('stills for the strip', () => {
  test('one for each ten seconds, small, with changes of view', async () => {
    const path = recording(
      'views.mp4',
      ...[
        '-f',
        'lavfi',
        '-i',
        'testsrc2=s=320x180:r=5:d=40',
        '-f',
        'lavfi',
        '-i',
        'color=gray:s=320x180:r=5:d=40',
      ],
      ...['-filter_complex', '[0][1]concat=n=2:v=1', ...h264],
    );
    const folder = mkdtempSync(join(made, 'strip-'));
    const { stills, viewChanges } = await stripStills(path, folder, watch);
    expect(stills).toEqual([0, 10_000, 20_000, 30_000, 40_000, 50_000, 60_000, 70_000]);
    expect(readdirSync(join(folder, 'stills')).sort()).toEqual(stills.map((ms) => `${ms}.jpg`).sort());
    expect(sizeOf(join(folder, 'stills', '0.jpg'))).toBe('284,160');
    expect(viewChanges).toEqual([{ ms: 40_000 }]);
  });

  test('three hours give no more than fit', async () => {
    const { stills } = await stripStills(
      odd['three hours']?.() ?? '',
      mkdtempSync(join(made, 'strip-')),
      watch,
    );
    expect(stills.length).toBeLessThanOrEqual(240);
    expect(stills.length).toBeGreaterThan(230);
  });
});

describe('a viewing copy', () => {
  async function copied(path: string) {
    const to = join(mkdtempSync(join(made, 'copy-')), 'viewing.mp4');
    await viewingCopy(path, to, watch);
    return { to, probe: await probe(to, watch) };
  }

  test.each([
    'AVI',
    'MPEG-TS',
    'HEVC of 10 bits in MOV',
    'ProRes',
    'turned by 90',
    'variable rate',
    'odd size',
    '5.1 sound',
    'pixels that are not square',
    'starts at one hour',
  ])('%s: browsers play it, and it is as long and as large as the recording', async (name) => {
    const path = odd[name]?.() ?? '';
    const [original, copy] = [await probe(path, watch), await copied(path)];
    expect(copy.probe.playable).toEqual({ ok: true, reason: null });
    expect(copy.probe.firstFrameMs).toBe(0);
    expect(Math.abs(copy.probe.durationMs - original.durationMs)).toBeLessThan(60);
    expect(Math.abs((copy.probe.video?.shownWidth ?? 0) - (original.video?.shownWidth ?? 0))).toBeLessThan(2);
    expect(copy.probe.video?.rotation).toBe(0);
    expect(copy.probe.audio.length).toBe(Math.min(1, original.audio.length));
  });

  test.each<[string, () => string, number]>([
    ['in step', clockFilm, 0],
    [
      'picture late',
      () =>
        recording(
          'clock-late.mkv',
          '-itsoffset',
          '0.5',
          '-i',
          clockFilm(),
          '-i',
          clockFilm(),
          '-map',
          '0:v',
          '-map',
          '1:a',
          '-c',
          'copy',
        ),
      -500,
    ],
    [
      'sound late',
      () =>
        recording(
          'clock-sound-late.mkv',
          '-itsoffset',
          '0.5',
          '-i',
          clockFilm(),
          '-i',
          clockFilm(),
          '-map',
          '1:v',
          '-map',
          '0:a',
          '-c',
          'copy',
        ),
      500,
    ],
  ])('picture and sound keep their take times: %s', async (_name, make, soundShiftMs) => {
    const { to } = await copied(make());
    for (const seconds of [0.2, 2.2, 4.7]) {
      expect(Math.abs(brightness(to, '-ss', String(seconds)) - clockAt(seconds * 1000))).toBeLessThan(5);
    }
    const folder = mkdtempSync(join(made, 'peaks-'));
    await soundPeaks(to, folder, watch);
    const pairs = new Int8Array(readFileSync(join(folder, 'peaks-100.bin')));
    const loudAt = (ms: number) => Math.max(...pairs.subarray((ms / 10) * 2 - 2, (ms / 10) * 2 + 6));
    for (const beep of [1000, 2000, 3000]) {
      expect(loudAt(beep + soundShiftMs)).toBeGreaterThan(60);
      expect(loudAt(beep + soundShiftMs + 300)).toBeLessThan(10);
    }
  });

  test('its index stands before the film, so that it starts at once', async () => {
    const bytes = readFileSync((await copied(odd.AVI?.() ?? '')).to);
    expect(bytes.indexOf('moov')).toBeLessThan(bytes.indexOf('mdat'));
  });

  test('called off, nothing of it is left', async () => {
    const off = new AbortController();
    const to = join(mkdtempSync(join(made, 'copy-')), 'viewing.mp4');
    const work = viewingCopy(odd['three hours']?.() ?? '', to, {
      signal: off.signal,
      report: () => off.abort(),
    });
    await expect(work).rejects.toThrow('aborted');
    expect([existsSync(to), existsSync(`${to}.part`)]).toEqual([false, false]);
  });
});

test('a fingerprint knows a copy again, and tells a changed file apart', async () => {
  const bytes = readFileSync(odd['three hours']?.() ?? '');
  const [same, other] = [join(made, 'same.bin'), join(made, 'other.bin')];
  writeFileSync(same, bytes);
  bytes[bytes.length - 1] = (bytes.at(-1) ?? 0) ^ 1;
  writeFileSync(other, bytes);
  const original = await fingerprint(odd['three hours']?.() ?? '');
  expect(await fingerprint(same)).toEqual(original);
  expect((await fingerprint(other)).sha256).not.toBe(original.sha256);
});
