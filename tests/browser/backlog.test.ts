import { mkdtempSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type App, launchBrowser, startApp } from '../app';
import { makeRecording } from '../recordings';
import { expectAccessible, expectNoSidewaysScroll, openPage } from './page';

let app: App;
let browser: Browser;
let folder: string;

beforeAll(async () => {
  folder = realpathSync(mkdtempSync(join(tmpdir(), 'benchtake-backlog-page-')));
  const bass = join(folder, 'bass rewire');
  makeRecording(bass, 'one.mp4', { seconds: 1, at: '2019-03-14T10:00:00Z' });
  writeFileSync(join(bass, 'one.vtt'), 'WEBVTT\n\n00:00.100 --> 00:00.900\nthe zebrawood veneer lifts\n');
  makeRecording(join(folder, 'DCIM'), 'two.mp4', { seconds: 1, hz: 500, at: '2019-05-02T10:00:00Z' });
  makeRecording(join(folder, 'DCIM'), 'three.mp4', { seconds: 1, hz: 600, at: '2019-05-03T10:00:00Z' });
  writeFileSync(join(folder, 'DCIM', 'broken.mp4'), 'no film at all');
  app = await startApp();
  browser = await launchBrowser();
});
afterAll(async () => {
  await browser.close();
  await app.clear();
  rmSync(folder, { recursive: true });
});

describe('older recordings', () => {
  it('are named, looked through, put right, imported, found and undone, by keyboard on a phone', async () => {
    const { page, context, troubles } = await openPage(browser, `${app.url}/archive/backlog`, 'phone');
    await page.getByLabel('Recordings folder').focus();
    await page.keyboard.type(folder);
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Look through' }).focus();
    await page.keyboard.press('Enter');
    const jobs = page.getByRole('list', { name: 'Proposed jobs' }).locator('> li');
    await expect.poll(() => jobs.count()).toBe(3);
    await expectAccessible(page);
    await expectNoSidewaysScroll(page);

    await page.getByRole('checkbox', { name: 'Take in: 3 May 2019' }).focus();
    await page.keyboard.press('Space');
    await page.getByLabel('Title: 2 May 2019').fill('Banjo head');
    await page.getByLabel('Instrument: 2 May 2019').selectOption('banjo');
    await page.getByRole('button', { name: 'Import 2 jobs with 2 takes' }).focus();
    await page.keyboard.press('Enter');
    await page.getByText('2 jobs are in the archive.').waitFor();
    await expectAccessible(page);
    await expectNoSidewaysScroll(page);
    // What was left out is still there to be imported.
    await expect.poll(() => jobs.count()).toBe(1);

    await page.getByRole('link', { name: 'Ask the archive' }).click();
    await page.waitForURL(`${app.url}/archive`);
    await page.goto(`${app.url}/archive?q=zebrawood+veneer`);
    await page.getByText('Bass rewire').first().waitFor();
    await page.goto(`${app.url}/archive/backlog`);
    await page.getByText('Looked through before').click();
    await page.getByRole('link', { name: folder }).click();
    await page.getByRole('button', { name: 'Undo the import' }).click();
    await page.getByText('The import was undone.').waitFor();
    await expect.poll(() => jobs.count()).toBe(3);
    expect(troubles).toEqual([]);
    await context.close();
  });

  it('go by another rule', async () => {
    const { page, context, troubles } = await openPage(browser, `${app.url}/archive/backlog`);
    await page.getByRole('button', { name: 'Look through' }).click();
    await page.getByLabel('What becomes a job').selectOption('One job a folder');
    const jobs = page.getByRole('list', { name: 'Proposed jobs' }).locator('> li');
    await expect.poll(() => jobs.count()).toBe(2);
    await page.getByText('1 file: cannot be read').click();
    await page.getByText('DCIM/broken.mp4').waitFor();
    await page.getByRole('button', { name: 'Leave all out' }).click();
    await page.getByRole('button', { name: 'Import 0 jobs with 0 takes' }).waitFor();
    await expectAccessible(page);
    expect(troubles).toEqual([]);
    await context.close();
  });
});
