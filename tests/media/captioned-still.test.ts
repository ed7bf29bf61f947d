import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { captionStrip } from '@/lib/media/engine/caption-strip';
import { captionedStill } from '@/lib/media/engine/captioned-still';
import { h264, made, picture, recording, removeMade, tone } from './make';

afterAll(removeMade);
const watch = { signal: new AbortController().signal, report: () => undefined };
const fonts = 'node_modules/@expo-google-fonts';
const sofia = `${fonts}/sofia-sans/400Regular/SofiaSans_400Regular.ttf`;
const signs = `${fonts}/noto-sans-math/400Regular/NotoSansMath_400Regular.ttf`;
const words = (text: string) => [{ text, font: sofia }];

/** Counts its seconds in brightness: 20 a second, from 20 on. */
const steps = (name: string, ...more: string[]) =>
  recording(
    name,
    ...['-f', 'lavfi', '-i', "color=gray:s=320x180:r=25:d=6,geq=lum='20+20*floor(T)':cb=128:cr=128"],
    ...h264,
    ...more,
  );
const plainSteps = () => steps('steps.mp4');

interface Wanted {
  path: string;
  ms?: number;
  caption?: { text: string; font: string }[];
  covers?: { fromMs: number; toMs: number; x: number; y: number; width: number; height: number }[];
}

let count = 0;
/** Takes a still and writes it down for the programs outside. */
async function still({ path, ms = 2500, caption = words('Neck pickup'), covers = [] }: Wanted) {
  const folder = mkdtempSync(join(made, "it's 50%: [a,b];"));
  const jpeg = await captionedStill({ path, ms, covers, caption, folder }, watch);
  const file = join(made, `still-${++count}.jpg`);
  writeFileSync(file, jpeg);
  return { file, ...sizeOf(file), written: readdirSync(folder) };
}

/** Debian's ffprobe. */
function sizeOf(file: string): { width: number; height: number } {
  const shown = ['-show_entries', 'stream=width,height', '-of', 'csv=p=0'];
  const [width = 0, height = 0] = execFileSync('ffprobe', ['-v', 'error', ...shown, file], {
    encoding: 'utf8',
  })
    .split(',')
    .map(Number);
  return { width, height };
}

/** Brightness of a region as Debian's ffmpeg decodes it. */
function brightness(file: string, { x = 0, y = 0, w = 0, h = 0 }): number[] {
  const crop = `crop=${w}:${h}:${x}:${y},format=gray`;
  return [
    ...execFileSync('ffmpeg', ['-v', 'error', '-i', file, '-vf', crop, '-f', 'rawvideo', '-'], {
      maxBuffer: 1 << 26,
    }),
  ];
}
const mean = (values: number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
const dark = (values: number[]) => values.filter((value) => value < 110).length;

/** Studio range to full range (ITU-R BT.601, section 2.5.1: black at 16, white at 235). */
const full = (luma: number) => ((luma - 16) * 255) / 219;

describe('a still with its caption', () => {
  test('is as large as the recording, with a strip of words below', async () => {
    const { file, width, height } = await still({ path: plainSteps() });
    expect(width).toBe(320);
    expect(height).toBeGreaterThan(180 + 12);
    const strip = brightness(file, { y: 180, w: 320, h: height - 180 });
    expect(mean(strip)).toBeGreaterThan(215);
    expect(dark(strip)).toBeGreaterThan(40);
  });

  test.each([500, 2960, 3000, 5999])('shows the very picture of %i ms', async (ms) => {
    const { file } = await still({ path: plainSteps(), ms });
    const seen = mean(brightness(file, { x: 10, y: 10, w: 300, h: 160 }));
    expect(Math.abs(seen - full(20 + 20 * Math.floor(ms / 1000)))).toBeLessThan(3);
  });

  test('stands upright, with square pixels', async () => {
    const turned = recording(
      'turned.mp4',
      ...['-i', plainSteps(), '-c', 'copy', '-metadata:s:v:0', 'rotate=90'],
    );
    const { width, height } = await still({ path: turned });
    expect(width).toBe(180);
    expect(height).toBeGreaterThan(320);
    const wide = recording('anamorphic.mp4', ...[...picture(1, '720x576'), '-vf', 'setsar=64/45', ...h264]);
    expect((await still({ path: wide, ms: 0 })).width).toBe(1024);
  });

  test('covers what is covered in the public cut, and nothing after it', async () => {
    const covers = [{ fromMs: 2000, toMs: 3000, x: 0.5, y: 0, width: 0.5, height: 1 }];
    const halves = (file: string) =>
      [20, 180].map((x) => mean(brightness(file, { x, y: 10, w: 120, h: 160 })));
    const [left = 0, right = 0] = halves((await still({ path: plainSteps(), covers })).file);
    expect(left).toBeGreaterThan(40);
    expect(right).toBeLessThan(3);
  });
});

describe('the words', () => {
  test('are broken into lines that fit, and so is a word without an end', async () => {
    const short = await still({ path: plainSteps() });
    const sentence = 'Four conductors, and not one of them where the drawing has it. ';
    const long = await still({ path: plainSteps(), caption: words(sentence.repeat(4)) });
    const endless = await still({ path: plainSteps(), caption: words('x'.repeat(200)) });
    for (const { file, width, height } of [long, endless]) {
      expect(height).toBeGreaterThan(short.height + 30);
      expect(width).toBe(320);
      // Nothing runs over the edge.
      expect(dark(brightness(file, { x: 316, y: 182, w: 4, h: height - 184 }))).toBe(0);
      expect(dark(brightness(file, { x: 200, y: 182, w: 110, h: height - 184 }))).toBeGreaterThan(20);
    }
  });

  test('say nothing to libavfilter', async () => {
    const caption = words("100% 'a':b, [c];\\d %{pts} {e} drawbox=w=9");
    const { height, file } = await still({ path: plainSteps(), caption });
    expect(dark(brightness(file, { y: 182, w: 320, h: height - 184 }))).toBeGreaterThan(200);
  });

  test.each([
    ['Greek', 'Μαγνήτης λαιμού'],
    ['Cyrillic', 'Звукосниматель'],
    ['Latin', 'Größe, łącznik, ţărm'],
  ])('in %s are drawn letter by letter, no two alike', async (_name, text) => {
    const ofLetters = await Promise.all(
      [...new Set(text.replaceAll(/[\s,]/g, ''))].map(async (letter) => {
        const { file, height } = await still({ path: plainSteps(), caption: words(letter) });
        const strip = brightness(file, { y: 182, w: 40, h: height - 184 });
        expect(dark(strip), letter).toBeGreaterThan(4);
        return strip.map((value) => (value < 128 ? 1 : 0)).join('');
      }),
    );
    // A font without the letters would draw the same empty box for each.
    expect(new Set(ofLetters).size).toBe(ofLetters.length);
  });

  test('of two fonts stand beside each other on one base line', () => {
    const strip = captionStrip([...words('E '), { text: '♭ ', font: signs }, ...words('on the 3rd string')], {
      width: 640,
      height: 360,
    });
    expect(strip.runs.map(({ text }) => text.trim())).toEqual(['E', '♭', 'on the 3rd string']);
    expect(new Set(strip.runs.map(({ y }) => y)).size).toBe(1);
    const [first = 0, second = 0, third = 0] = strip.runs.map(({ x }) => x);
    expect(first < second && second < third).toBe(true);
  });

  test('that are none leave a blank strip', async () => {
    const { height } = await still({ path: plainSteps(), caption: [] });
    expect(height).toBeGreaterThan(180);
  });
});

test('a recording without picture is refused in words', async () => {
  const sound = recording('sound.m4a', ...tone(1), '-c:a', 'aac');
  await expect(still({ path: sound })).rejects.toThrow('no picture');
});
