import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type App, launchBrowser, startApp } from '../app';
import { addTake, makeJob, nameFolder, settled } from '../http/client';
import { openPage } from './page';

let app: App;
let browser: Browser;
let folder: string;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'benchtake-clock-'));
  app = await startApp();
  await nameFolder(app, folder);
  browser = await launchBrowser();
});
afterAll(async () => {
  await browser.close();
  await app.clear();
  rmSync(folder, { recursive: true });
});

const picture = ['-f', 'lavfi', '-i', 'testsrc2=s=320x180:r=25:d=6'];
const sound = ['-f', 'lavfi', '-i', 'sine=f=330:d=8'];
// Without filling up with pictures what comes before the first.
const coding = [
  '-fps_mode',
  'passthrough',
  '-c:v',
  'libx264',
  '-preset',
  'ultrafast',
  '-g',
  '25',
  '-pix_fmt',
  'yuv420p',
  '-c:a',
  'aac',
];

/** Recordings whose own clock does not begin with the picture. */
const odd: Record<string, string[]> = {
  'plain.mp4': [...picture, ...sound, ...coding],
  'picture-starts-at-1400ms.mp4': ['-itsoffset', '1.4', ...picture, ...sound, ...coding],
  'sound-starts-at-900ms.mp4': [...picture, '-itsoffset', '0.9', ...sound, ...coding],
  'clock-starts-at-2000ms.mp4': [...picture, ...sound, ...coding, '-output_ts_offset', '2'],
  'edit-list-cuts-700ms.mp4': [...picture, ...sound, ...coding, '-ss', '0.7'],
};

describe('the picture that plays and the still of the same moment are one', () => {
  for (const [name, options] of Object.entries(odd)) {
    it(name, async () => {
      const path = join(folder, name);
      execFileSync('ffmpeg', ['-v', 'error', '-y', ...options, path]);
      const { job } = await makeJob(app, name);
      const take = await addTake(app, job.id, path);
      await settled(app, job.id);
      const { page, context } = await openPage(browser, `${app.url}/jobs/${job.id}`);
      await page.getByRole('slider', { name: 'Film position' }).waitFor();
      await page.keyboard.press('Home');
      for (let step = 0; step < 2; step++) await page.keyboard.press('ArrowRight');
      await page.waitForTimeout(400);
      const differences = await page.evaluate(async (takeId) => {
        const video = document.querySelector<HTMLVideoElement>('video[data-showing="yes"]');
        if (!video) throw new Error('No picture is showing.');
        const size = { width: 80, height: 45 };
        const pixels = (source: CanvasImageSource) => {
          const canvas = Object.assign(document.createElement('canvas'), size);
          const ink = canvas.getContext('2d');
          ink?.drawImage(source, 0, 0, size.width, size.height);
          return ink?.getImageData(0, 0, size.width, size.height).data ?? new Uint8ClampedArray();
        };
        const shown = pixels(video);
        const still = async (ms: number) => {
          const image = new Image();
          image.src = `/api/takes/${takeId}/still?ms=${ms}`;
          await image.decode();
          const other = pixels(image);
          return (
            shown.reduce((sum, value, index) => sum + Math.abs(value - (other[index] ?? 0)), 0) / shown.length
          );
        };
        return { same: await still(2000), before: await still(1600), after: await still(2400) };
      }, take.id);
      expect(differences.same).toBeLessThan(differences.before / 2);
      expect(differences.same).toBeLessThan(differences.after / 2);
      await context.close();
    });
  }
});
