import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { buffer } from 'node:stream/consumers';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { fromBufferPromise } from 'yauzl';
import { type App, launchBrowser, startApp } from '../app';
import { ask, makeJob } from '../http/client';
import { expectAccessible, expectNoSidewaysScroll, openPage, sizes } from './page';

let app: App;
let browser: Browser;
let page: Page;
let troubles: string[];
let folder: string;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'benchtake-give-out-'));
  app = await startApp();
  browser = await launchBrowser();
  await ask(app, 'POST', '/api/demo/older');
  await makeJob(app, 'Bass of Ottoline Fernsby, 07700 900133');
  ({ page, troubles } = await openPage(browser, `${app.url}/archive/give-out`));
});
afterAll(async () => {
  await browser.close();
  await app.clear();
  rmSync(folder, { recursive: true });
});

const told = () => page.getByRole('status').filter({ hasText: /go(es)? out/ });
const goingOut = async () => Number(/^(\d+) jobs? go/.exec((await told().textContent()) ?? '')?.[1]);

describe('giving out', () => {
  it('shows what goes out, what stands in the way, and lets a finding through on purpose', async () => {
    await told().waitFor();
    const before = await goingOut();
    await expectAccessible(page);
    const held = page.getByRole('list', { name: 'Jobs held back' });
    expect(await held.textContent()).toContain('07700 900133');
    await held.getByRole('button', { name: /^Allow on purpose/ }).focus();
    await page.keyboard.press('Enter');
    await held.waitFor({ state: 'detached' });
    await expect.poll(goingOut).toBe(before + 1);
    await page.getByText('1 job with words allowed on purpose').click();
    await expectAccessible(page);
    await page.getByRole('button', { name: /^Decide again/ }).click();
    await held.waitFor();
    await expect.poll(goingOut).toBe(before);
  });

  it('narrows to a part and leaves a job out; the address holds what was chosen', async () => {
    await page.getByLabel('Instrument').selectOption('electric guitar');
    await page.waitForURL(/instrument=electric\+guitar/);
    await told().waitFor();
    const before = await goingOut();
    const line = page.getByRole('list', { name: 'Jobs of this part' }).getByRole('listitem').first();
    await line.getByRole('button', { name: /^Leave out/ }).click();
    await expect.poll(goingOut).toBe(before - 1);
    await page.reload();
    await told().waitFor();
    expect(await goingOut()).toBe(before - 1);
    await line.getByRole('button', { name: /^Take in/ }).click();
    await expect.poll(goingOut).toBe(before);
    await page.getByRole('button', { name: 'Take the whole archive' }).click();
    await page.waitForURL((url) => url.search === '');
  });

  it('fits a phone, in the dark too', async () => {
    await page.setViewportSize(sizes.phone);
    await page.emulateMedia({ colorScheme: 'dark' });
    await page.getByText('Everything, private').first().click();
    await expectNoSidewaysScroll(page);
    await expectAccessible(page);
    await page.setViewportSize(sizes.desktop);
    await page.emulateMedia({ colorScheme: 'light' });
  });

  it('hands the pages over', async () => {
    const arriving = page.waitForEvent('download');
    await page.getByRole('link', { name: 'Pages for the web (ZIP)' }).click();
    const download = await arriving;
    expect(download.suggestedFilename()).toMatch(/^archive-pages-\d{4}-\d\d-\d\d\.zip$/);
    await unpack(readFileSync(await download.path()));
    expect(troubles).toEqual([]);
  });
});

async function unpack(zip: Buffer): Promise<void> {
  const archive = await fromBufferPromise(zip);
  for await (const entry of archive.eachEntry()) {
    const path = join(folder, entry.fileName);
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, await buffer(await archive.openReadStreamPromise(entry)));
  }
}

describe('the pages, opened from a disk', () => {
  const address = (name = 'index.html') => pathToFileURL(join(folder, name)).href;

  it('answer in the words of the trade, by keyboard, and lead to the moment', async () => {
    const set = await openPage(browser, address());
    await set.page.getByRole('searchbox', { name: 'Find a moment' }).focus();
    await set.page.keyboard.type('four wire in series');
    await set.page.keyboard.press('Enter');
    const found = set.page.locator('#found > li');
    expect(await found.count()).toBeGreaterThan(0);
    await found.first().locator('ul a').first().focus();
    await set.page.keyboard.press('Enter');
    await set.page.waitForURL(/jobs\/\d{4}\.html#/);
    expect(await set.page.locator(':target').count()).toBe(1);
    await set.page.getByRole('link', { name: 'Pickups traced' }).click();
    await set.page.getByText('must still be measured').waitFor();
    expect(set.troubles).toEqual([]);
    await set.context.close();
  });

  it.each(['light', 'dark'] as const)('fit a phone and reach everybody, in the %s', async (colorScheme) => {
    const job = readdirSync(join(folder, 'jobs')).map((name) => `jobs/${name}`);
    for (const name of ['index.html?q=neck', 'conductors.html', ...job.slice(0, 1)]) {
      const [file = '', search = ''] = name.split('?');
      const set = await openPage(browser, `${address(file)}?${search}`, 'phone');
      await set.page.emulateMedia({ colorScheme });
      await expectNoSidewaysScroll(set.page);
      expect(set.troubles).toEqual([]);
      // It reads the style again, which the page’s policy refuses: what it says after that is no trouble.
      await expectAccessible(set.page);
      await set.context.close();
    }
  });

  it('are there without scripts', async () => {
    const context = await browser.newContext({ javaScriptEnabled: false });
    const plain = await context.newPage();
    await plain.goto(address());
    expect(await plain.getByRole('searchbox').count()).toBe(0);
    expect(await plain.locator('.jobs a').count()).toBeGreaterThan(10);
    await plain.locator('.jobs a').first().click();
    await plain.waitForURL(/jobs\/\d{4}\.html$/);
    await context.close();
  });
});
