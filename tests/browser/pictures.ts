/** Takes the README's pictures of the real pages: `npm run pictures`, after a build. */
import { mkdirSync } from 'node:fs';
import { z } from 'zod';
import { launchBrowser, startApp } from '../app';
import { ask, getJob, settled } from '../http/client';
import { sizes } from './page';

const folder = 'app/_pictures';
const app = await startApp();
const browser = await launchBrowser();
try {
  mkdirSync(folder, { recursive: true });
  const { job } = z
    .object({ job: z.object({ id: z.string() }) })
    .parse((await ask(app, 'POST', '/api/demo')).body);
  for (const title of [
    'Four-string bass, crackles on the neck pickup',
    'Ukulele, action too high',
    'Fiddle, open seam',
  ]) {
    await ask(app, 'POST', '/api/jobs', {
      title,
      instrument: {
        type:
          title.startsWith('F') && title.includes('bass')
            ? 'bass guitar'
            : title.startsWith('U')
              ? 'ukulele'
              : 'violin family',
      },
    });
  }
  await settled(app, job.id);
  const trace = (await getJob(app, job.id)).traces[0];
  await take('job', `/jobs/${job.id}`, 'desktop', 'light', [
    'ArrowDown',
    'ArrowDown',
    'ArrowDown',
    'ArrowDown',
    'ArrowDown',
  ]);
  await take('trace', `/jobs/${job.id}/trace/${trace?.id}`, 'desktop', 'light', []);
  await take('jack', `/jobs/${job.id}/jack`, 'desktop', 'light', []);
  await take('bench', '/', 'desktop', 'light', []);
  await ask(app, 'POST', '/api/demo/older');
  const question = 'how did I trace that four-conductor last spring';
  await take('archive', `/archive?q=${encodeURIComponent(question)}`, 'desktop', 'light', []);
  const colours = 'red white green black bare';
  await take(
    'reference',
    `/archive/reference?colours=${encodeURIComponent(colours)}`,
    'desktop',
    'light',
    [],
  );
  await take('phone', `/jobs/${job.id}`, 'phone', 'dark', []);
} finally {
  await browser.close();
  await app.clear();
}

async function take(
  name: string,
  path: string,
  size: keyof typeof sizes,
  colorScheme: 'light' | 'dark',
  keys: string[],
): Promise<void> {
  const context = await browser.newContext({ viewport: sizes[size], colorScheme });
  const page = await context.newPage();
  await page.goto(app.url + path);
  await page.waitForLoadState('networkidle');
  for (const key of keys) await page.keyboard.press(key);
  await page.waitForTimeout(1500);
  await page.screenshot({ path: `${folder}/${name}.png` });
  await context.close();
}
