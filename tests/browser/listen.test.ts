import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type App, launchBrowser, startApp } from '../app';
import { addTake, makeJob, nameFolder, settled } from '../http/client';
import { writeWeightlessModel } from '../media/speech-model';
import { makeRecording } from '../recordings';
import { expectAccessible, openPage } from './page';

let app: App;
let browser: Browser;
let folder: string;
let jobId: string;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'benchtake-listen-page-'));
  app = await startApp();
  browser = await launchBrowser();
  await nameFolder(app, folder);
  jobId = (await makeJob(app)).job.id;
  for (const [name, hour] of [
    ['first.mp4', '09'],
    ['second.mp4', '10'],
  ] as const)
    await addTake(
      app,
      jobId,
      makeRecording(folder, name, { seconds: 45, hz: 300 + Number(hour), at: `2026-03-17T${hour}:00:00Z` }),
    );
  await settled(app, jobId);
});
afterAll(async () => {
  await browser.close();
  await app.clear();
  rmSync(folder, { recursive: true });
});

const openNarration = async () => {
  const opened = await openPage(browser, `${app.url}/jobs/${jobId}`);
  await opened.page.getByRole('button', { name: 'Narration' }).first().click();
  return { ...opened, sheet: opened.page.getByRole('dialog', { name: 'Narration' }) };
};

it('says how to get a speech model where there is none', async () => {
  const { sheet, context, troubles } = await openNarration();
  await sheet.getByText(join(app.home, 'models')).waitFor();
  await sheet.getByText('Nothing is downloaded by itself').waitFor();
  expect(await sheet.getByRole('button', { name: 'Listen to it' }).count()).toBe(0);
  expect(troubles).toEqual([]);
  await context.close();
});

it('listens to the takes that are chosen, can be stopped, and tells how it ended', async () => {
  writeWeightlessModel(join(app.home, 'models', 'weightless.bin'));
  const { page, sheet, context, troubles } = await openNarration();
  await sheet.getByRole('button', { name: 'Listen to it' }).click();
  await sheet.getByText('2 takes to go').waitFor();
  await expectAccessible(page);
  await sheet.getByRole('button', { name: 'Stop listening' }).click();

  await sheet.getByLabel('Listen to').selectOption({ index: 2 });
  await sheet.getByRole('button', { name: 'Listen to it' }).click();
  await sheet.getByText('1 take to go').waitFor();
  await sheet.getByRole('button', { name: 'Close' }).click();
  await page.getByText('No words were heard.').waitFor({ timeout: 60_000 });
  expect(await page.getByText('Something went wrong').count()).toBe(0);
  expect(troubles).toEqual([]);
  await context.close();
});
