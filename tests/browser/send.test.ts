import { execFileSync } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { type App, launchBrowser, startApp } from '../app';
import { getJob, makeJob, settled, until } from '../http/client';
import { makeRecording } from '../recordings';
import { expectAccessible, expectNoSidewaysScroll, openPage, type sizes, untilLive } from './page';

let app: App;
let browser: Browser;
let folder: string;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'benchtake-send-'));
  app = await startApp();
  browser = await launchBrowser();
});
afterAll(async () => {
  await browser.close();
  await app.clear();
  rmSync(folder, { recursive: true });
});

const place = '+48.2082+016.3738/';

const device = 'an invented phone';

/** As a phone writes it: turned by a quarter, with place and device, a key frame every four seconds. */
function fromPhone(): string {
  const tags = ['-metadata', `location=${place}`, '-metadata', `comment=${device}`];
  const upright = makeRecording(folder, 'upright.mp4', { seconds: 12, extra: ['-g', '100', ...tags] });
  const path = join(folder, 'phone.mp4');
  execFileSync('ffmpeg', [
    ...['-v', 'error', '-y', '-i', upright, '-c', 'copy', '-metadata:s:v', 'rotate=90'],
    // A copy forgets it.
    ...['-metadata', 'creation_time=2026-03-17T09:00:00Z', '-movflags', 'use_metadata_tags', path],
  ]);
  return path;
}

const probed = z.object({
  format: z.object({ duration: z.coerce.number(), tags: z.record(z.string(), z.string()) }),
  streams: z.array(
    z.object({
      codec_type: z.string(),
      tags: z.record(z.string(), z.string()).default({}),
      side_data_list: z.array(z.object({ rotation: z.number().optional() })).default([]),
    }),
  ),
});

/** Outside check: Debian's ffprobe reads what lies on the bench machine. */
function ffprobe(path: string) {
  return probed.parse(
    JSON.parse(
      execFileSync('ffprobe', ['-v', 'error', '-show_format', '-show_streams', '-of', 'json', path], {
        encoding: 'utf8',
      }),
    ),
  );
}

async function openSend(jobId: string, size: keyof typeof sizes = 'phone') {
  return openPage(browser, `${app.url}/send?job=${jobId}`, size);
}

async function pick(page: Page, path: string): Promise<void> {
  const field = page.getByLabel('Pick a recording');
  await untilLive(field);
  await field.setInputFiles(path);
  await page.getByRole('heading', { name: 'Prepare and send' }).waitFor();
}

const arrived = (page: Page) => page.getByText('Arrived whole.').waitFor({ timeout: 60_000 });
const unfinished = () => readdirSync(join(app.home, 'uploads')).filter((name) => /^[0-9a-f]{32}$/.test(name));

/** As slow as a workshop's network at its worst, so that there is a middle to be cut in. */
async function slowDown(page: Page, bytesPerSecond: number): Promise<void> {
  const control = await page.context().newCDPSession(page);
  await control.send('Network.enable');
  await control.send('Network.emulateNetworkConditions', {
    offline: false,
    latency: 0,
    downloadThroughput: -1,
    uploadThroughput: bytesPerSecond,
  });
}

const sentShare = (page: Page) =>
  page.getByLabel('Sent', { exact: true }).evaluate((bar) => {
    if (!(bar instanceof HTMLProgressElement)) throw new Error('no bar');
    return bar.position;
  });

describe('sending from the device that holds the recording', () => {
  it('prepares the part that matters with ffmpeg.wasm, without place and device', async () => {
    const path = fromPhone();
    const known = [place, '48.2082', device];
    for (const word of known) expect(readFileSync(path).includes(word), word).toBe(true);
    const { job } = await makeJob(app, 'Bass, prepared on a phone');
    const { page, context, troubles } = await openPage(browser, `${app.url}/send`, 'phone');
    await page.waitForLoadState('networkidle');
    await expectAccessible(page);
    await page.getByLabel('Find a job').fill('prepared phone');
    await page.getByRole('button', { name: /Bass, prepared on a phone/ }).click();
    await pick(page, path);
    const preview = page.getByLabel('Preview of phone.mp4');
    await until(
      () => preview.evaluate((video) => (video instanceof HTMLVideoElement ? video.videoHeight : 0)),
      (height) => height === 320,
    );
    await preview.evaluate((video) => {
      if (video instanceof HTMLVideoElement) video.currentTime = 5.5;
    });
    await page.getByRole('button', { name: 'Start here' }).click();
    await until(
      () => page.getByLabel('From').inputValue(),
      (typed) => typed === '0:05.500',
      5_000,
    );
    await page.getByLabel('To').fill('0:05');
    await page.getByText('It would end before it starts.').waitFor();
    expect(await page.getByRole('button', { name: 'Prepare' }).isDisabled()).toBe(true);
    await page.getByLabel('To').fill('0:09');
    await expectAccessible(page);
    await expectNoSidewaysScroll(page);
    await page.getByRole('button', { name: 'Prepare' }).click();
    await page.getByText(/^Prepared:/).waitFor({ timeout: 60_000 });
    await page.getByText(/It starts 1\.[4-6] s before the moment/).waitFor();
    await expectAccessible(page);
    await page.getByRole('button', { name: 'Send it' }).click();
    await arrived(page);
    await expectAccessible(page);
    await page.getByRole('link', { name: 'To the job' }).click();
    await page.waitForURL(`**/jobs/${job.id}`);
    expect(troubles).toEqual([]);
    await context.close();

    const { takes } = await settled(app, job.id);
    expect(takes.map(({ state, name }) => `${name} ${state}`)).toEqual(['phone.mp4 ready']);
    const sent = takes[0]?.path ?? '';
    const { format, streams } = ffprobe(sent);
    // From the key frame at 4 s to 9 s.
    expect(format.duration).toBeGreaterThan(4.9);
    expect(format.duration).toBeLessThan(5.2);
    expect(format.tags.creation_time).toBe('2026-03-17T09:00:00.000000Z');
    const names = [format.tags, ...streams.map(({ tags }) => tags)].flatMap((tags) => Object.keys(tags));
    expect(names.filter((name) => /location|make|model|comment|encoder/i.test(name))).toEqual([]);
    const bytes = readFileSync(sent);
    for (const word of known) expect(bytes.includes(word), word).toBe(false);
    expect(streams.map(({ codec_type: type }) => type)).toEqual(['video', 'audio']);
    const turns = (of: typeof streams) => of.flatMap((stream) => stream.side_data_list);
    expect(turns(streams)).toEqual(turns(ffprobe(path).streams));
  });

  it('goes on where it stopped when the bench machine goes off, and after the page is loaded again', async () => {
    const path = join(folder, 'long.mp4');
    const bytes = randomBytes(12_000_000);
    writeFileSync(path, bytes);
    const { job } = await makeJob(app);
    const { page, context } = await openSend(job.id);
    const offsets: number[] = [];
    page.on('request', (request) => {
      if (request.method() === 'PATCH') offsets.push(Number(request.headers()['upload-offset']));
    });
    page.on('dialog', (dialog) => dialog.accept());
    await slowDown(page, 2_000_000);
    await pick(page, path);
    await page.getByRole('button', { name: 'Send as it is' }).click();
    await until(
      () => sentShare(page),
      (share) => share > 0.15,
    );
    await app.stop('SIGKILL');
    await page.getByText('goes on by itself').waitFor();
    await app.restart();
    const shareAtCut = await sentShare(page);
    await until(
      () => sentShare(page),
      (share) => share > shareAtCut + 0.15,
    );
    await page.reload();
    await pick(page, path);
    await page.getByRole('button', { name: 'Send as it is' }).click();
    await arrived(page);
    await context.close();
    expect(offsets).toHaveLength(3);
    const [first = -1, second = -1, third = -1] = offsets;
    expect(first).toBe(0);
    expect(second).toBeGreaterThan(0);
    expect(third).toBeGreaterThan(second);
    const [take] = (await getJob(app, job.id)).takes;
    expect(readFileSync(take?.path ?? '').equals(bytes)).toBe(true);
    expect(unfinished()).toEqual([]);
  });

  it('can be paused, gone on with and cancelled', async () => {
    const path = join(folder, 'paused.mp4');
    writeFileSync(path, randomBytes(12_000_000));
    const { job } = await makeJob(app);
    const { page, context, troubles } = await openSend(job.id);
    await slowDown(page, 2_000_000);
    await pick(page, path);
    await page.getByRole('button', { name: 'Send as it is' }).click();
    await until(
      () => sentShare(page),
      (share) => share > 0.1,
    );
    await page.getByRole('button', { name: 'Pause' }).click();
    await page.getByText('Paused. What has arrived is kept.').waitFor();
    const paused = await sentShare(page);
    await page.waitForTimeout(500);
    expect(await sentShare(page)).toBe(paused);
    await page.getByRole('button', { name: 'Go on' }).click();
    await until(
      () => sentShare(page),
      (share) => share > paused,
    );
    expect(unfinished()).toHaveLength(1);
    await page.getByRole('button', { name: 'Cancel sending' }).click();
    await page.getByRole('heading', { name: 'Prepare and send' }).waitFor();
    await until(
      async () => unfinished(),
      (files) => files.length === 0,
    );
    expect((await getJob(app, job.id)).takes).toEqual([]);
    expect(troubles).toEqual([]);
    await context.close();
  });

  it('sends as it is what ffmpeg.wasm cannot open', async () => {
    const path = join(folder, 'noise.mov');
    const bytes = randomBytes(300_000);
    writeFileSync(path, bytes);
    const { job } = await makeJob(app);
    const { page, context } = await openSend(job.id, 'tablet');
    await pick(page, path);
    await page.getByText('This browser does not play the recording.').waitFor();
    await page.getByRole('button', { name: 'Prepare' }).click();
    await page.getByText('“noise.mov” cannot be opened here.').waitFor({ timeout: 60_000 });
    await expectAccessible(page);
    await page.getByRole('button', { name: 'Send as it is' }).click();
    await arrived(page);
    await context.close();
    const [take] = (await settled(app, job.id)).takes;
    expect(take?.state).toBe('failed');
    expect(readFileSync(take?.path ?? '').equals(bytes)).toBe(true);
  });

  it('gives up preparing when it is told to, and says what to do when ffmpeg.wasm does not come', async () => {
    const path = makeRecording(folder, 'plain.mp4', { seconds: 2 });
    const { job } = await makeJob(app);
    const { page, context } = await openSend(job.id, 'desktop');
    await page.emulateMedia({ colorScheme: 'dark' });
    await page.route('**/ffmpeg-core.wasm', () => {});
    await pick(page, path);
    await page.getByRole('button', { name: 'Prepare' }).click();
    await page.getByRole('button', { name: 'Cancel preparing' }).click();
    await page.getByRole('button', { name: 'Prepare' }).waitFor();
    await page.route('**/engine/**/index.js', (route) => route.abort());
    await page.reload();
    await pick(page, path);
    await page.getByRole('button', { name: 'Prepare' }).click();
    await page.getByText('could not be loaded').waitFor();
    await expectAccessible(page);
    await expectNoSidewaysScroll(page);
    await context.close();
  });
});
