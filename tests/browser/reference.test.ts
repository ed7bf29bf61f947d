import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type App, launchBrowser, startApp } from '../app';
import { ask, makeJob } from '../http/client';
import { expectAccessible, expectNoSidewaysScroll, openPage, sizes, untilLive } from './page';

let app: App;
let browser: Browser;
let page: Page;
let troubles: string[];
const there = '/archive/reference';

beforeAll(async () => {
  app = await startApp();
  browser = await launchBrowser();
  ({ page, troubles } = await openPage(browser, app.url + there));
});
afterAll(async () => {
  await browser.close();
  await app.clear();
});

async function trace(title: string, lines: string[]): Promise<void> {
  const { id } = (await makeJob(app, title)).job;
  const conductors = ['red', 'white', 'green', 'black'];
  await ask(app, 'POST', `/api/jobs/${id}/traces`, { subject: 'neck pickup', conductors });
  for (const text of lines) await ask(app, 'POST', `/api/jobs/${id}/readings/quick`, { text });
}

describe('the shop’s own reference', () => {
  it('says what comes to stand there while there is nothing', async () => {
    await page.getByRole('heading', { name: 'No pickup has been traced yet.' }).waitFor();
    await page.getByRole('link', { name: 'Readings' }).click();
    await page.getByRole('heading', { name: 'No reading has been noted yet.' }).waitFor();
    await page.getByRole('link', { name: 'Faults and fixes' }).click();
    await page.getByRole('heading', { name: /No fault is told of/ }).waitFor();
    await expectAccessible(page);
  });

  it('shows what cables with these colours were, and says to measure all the same; by keyboard', async () => {
    await trace('Hums', [
      'neck red-white 4.08k',
      'neck green-black 3.97k',
      'neck red-green open',
      'neck 8.05k',
    ]);
    for (const ohms of ['7.9k', '8.1k', '8.2k', '8.3k']) await trace(`Hums, ${ohms}`, [`neck ${ohms}`]);
    await page.goto(app.url + there);
    await untilLive(page.getByLabel('Colours in the hand'));
    await page.getByLabel('Colours in the hand').focus();
    await page.keyboard.type('bare r w g b');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: '5 earlier cables with just these colours' }).waitFor();
    await page.getByText('Measure this one before anything is joined.').waitFor();
    await page.getByText('“b” was taken for black', { exact: false }).waitFor();
    expect(await page.getByText('4.08 kΩ').count()).toBeGreaterThan(0);
    await expectAccessible(page);
  });

  it('sets a new reading among the earlier ones, drawn and in a table', async () => {
    await page.getByRole('link', { name: 'Readings' }).click();
    await page.getByLabel('A new reading').fill('neck 8.15k');
    await page.getByRole('button', { name: 'Look' }).click();
    await page.getByText('Higher than 60 % of the 5 readings of “neck pickup” measured here.').waitFor();
    const plot = page.getByRole('img', { name: 'Resistance by what was measured' });
    expect(await plot.locator('rect').count()).toBe(1);
    await page.getByRole('row', { name: /^neck pickup bass guitar 5 7.9 kΩ 8.05 kΩ 8.1 kΩ/ }).waitFor();
    await expectAccessible(page);
  });

  it('fits a phone, in the dark too', async () => {
    await page.setViewportSize(sizes.phone);
    await page.emulateMedia({ colorScheme: 'dark' });
    for (const path of ['?colours=r+w+g+b', '/readings?reading=neck+7k', '/faults']) {
      await page.goto(app.url + there + path);
      await expectNoSidewaysScroll(page);
      await expectAccessible(page);
    }
    expect(troubles).toEqual([]);
  });
});
