import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type App, launchBrowser, startApp } from '../app';
import { getJob, settled } from '../http/client';
import { makeRecording } from '../recordings';
import { closeSheet, expectAccessible, expectNoSidewaysScroll, openPage, sizes } from './page';

let app: App;
let browser: Browser;
let page: Page;
let folder: string;
let troubles: string[];
let jobId: string;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'benchtake-story-'));
  for (const index of [1, 2, 3]) {
    makeRecording(folder, `bass take ${index}.mp4`, {
      seconds: 4,
      hz: 220 * index,
      at: `2026-03-17T09:0${index}:00Z`,
    });
  }
  app = await startApp();
  browser = await launchBrowser();
  ({ page, troubles } = await openPage(browser, app.url));
});
afterAll(async () => {
  await browser.close();
  await app.clear();
  rmSync(folder, { recursive: true });
});

const sheet = () => page.getByRole('region', { name: 'Running sheet' });
const filmMs = () =>
  page.evaluate(
    () => Number(document.querySelector('[role="slider"]')?.getAttribute('aria-valuenow')) * 1000,
  );
const record = () => getJob(app, jobId);

describe('the whole story of a job, by keyboard', () => {
  it('books in a job with a title and a type', async () => {
    await page
      .getByRole('button', { name: /book in/i })
      .first()
      .click();
    await page.keyboard.type('Four-string bass, crackles on the neck pickup');
    const dialog = page.getByRole('dialog', { name: 'Book in a job' });
    await dialog.getByRole('combobox').selectOption('bass guitar');
    await page.keyboard.press('Enter');
    await page.waitForURL(/\/jobs\/[0-9a-z]{20}$/);
    jobId = page.url().split('/').at(-1) ?? '';
    expect(await page.getByRole('heading', { level: 1 }).textContent()).toBe(
      'Four-string bass, crackles on the neck pickup',
    );
  });

  it('names a folder, picks three takes, and they are there at once', async () => {
    await page.getByRole('button', { name: 'Add takes' }).click();
    const dialog = page.getByRole('dialog', { name: 'Add takes' });
    await dialog.getByRole('textbox').first().fill(folder);
    await page.keyboard.press('Enter');
    for (const index of [1, 2, 3])
      await dialog.getByRole('checkbox', { name: new RegExp(`bass take ${index}`) }).check();
    await dialog.getByRole('button', { name: /add 3 takes/i }).click();
    await dialog.waitFor({ state: 'hidden' });
    await page.getByRole('button', { name: 'Takes (3)' }).waitFor();
    const { takes } = await settled(app, jobId);
    expect(takes.map((take) => [take.name, take.state])).toEqual(
      [1, 2, 3].map((index) => [`bass take ${index}.mp4`, 'ready']),
    );
    await page.getByRole('slider', { name: 'Film position' }).waitFor();
  });

  it('plays on over the end of a take', async () => {
    await page.keyboard.press('Home');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Space');
    await page.waitForFunction(
      () => Number(document.querySelector('[role="slider"]')?.getAttribute('aria-valuenow')) >= 5,
      undefined,
      { timeout: 20_000 },
    );
    await page.keyboard.press('Space');
    await page.getByRole('button', { name: 'Play', exact: true }).waitFor();
  });

  it('scrubs and steps', async () => {
    await page.keyboard.press('End');
    expect(await filmMs()).toBeGreaterThanOrEqual(11_000);
    await page.keyboard.press('Shift+ArrowLeft');
    await page.waitForFunction(
      () => Number(document.querySelector('[role="slider"]')?.getAttribute('aria-valuenow')) <= 2,
    );
    const box = await page.getByRole('slider', { name: 'Film position' }).boundingBox();
    if (!box) throw new Error('The strip is not on the page.');
    await page.mouse.click(box.x + box.width * 0.5, box.y + box.height / 2);
    await page.waitForFunction(
      () =>
        Math.abs(Number(document.querySelector('[role="slider"]')?.getAttribute('aria-valuenow')) - 6) <= 1,
    );
  });

  it('drops a marker of each kind with one key, and names it', async () => {
    const titles = {
      i: 'Case open',
      d: 'It crackles',
      m: 'Meter on the neck pickup',
      w: 'New lead',
      r: 'Quiet',
    };
    await page.keyboard.press('Home');
    await page.waitForFunction(
      () => document.querySelector('[role="slider"]')?.getAttribute('aria-valuenow') === '0',
    );
    for (const [key, title] of Object.entries(titles)) {
      await page.keyboard.press(key);
      await page.getByRole('textbox', { name: 'Title of this marker' }).waitFor();
      await page.keyboard.type(title);
      await page.keyboard.press('Enter');
      await sheet().getByRole('button', { name: title, exact: true }).waitFor();
      await page.keyboard.press('ArrowRight');
      await page.keyboard.press('ArrowRight');
    }
    expect((await record()).markers.map((marker) => [marker.kind, marker.title]).sort()).toEqual(
      [
        ['diagnosis', 'It crackles'],
        ['intake', 'Case open'],
        ['measurement', 'Meter on the neck pickup'],
        ['result', 'Quiet'],
        ['work', 'New lead'],
      ].sort(),
    );
  });

  it('notes a reading at the measurement with one typed line', async () => {
    await sheet().getByRole('button', { name: 'Meter on the neck pickup', exact: true }).click();
    await page.keyboard.press('n');
    await page.keyboard.type('neck 7.9k');
    await page.getByText('7.9 kΩ').first().waitFor();
    await page.keyboard.press('Enter');
    await sheet().getByText('7.9 kΩ').waitFor();
    const { readings, markers } = await record();
    const marker = markers.find((candidate) => candidate.kind === 'measurement');
    expect(readings).toMatchObject([
      {
        kind: 'resistance',
        valueText: '7.9',
        unit: 'kΩ',
        baseValue: 7900,
        subject: 'neck pickup',
        basis: 'measured',
      },
    ]);
    expect(readings[0]?.takeId).toBe(marker?.takeId);
    expect(Math.abs((readings[0]?.ms ?? 0) - (marker?.ms ?? 0))).toBeLessThanOrEqual(40);
  });

  it('asks instead of guessing when a value is out of the ordinary', async () => {
    await page.keyboard.press('Escape');
    await page.keyboard.press('Escape');
    await page.keyboard.press('n');
    await page.keyboard.type('neck 8 ohm');
    await page.getByText(/outside what is usual/).waitFor();
    await page.keyboard.press('Enter');
    expect((await record()).readings).toHaveLength(1);
    await page.keyboard.press('Escape');
    await page.keyboard.press('Escape');
  });

  it('nudges a marker, moves it by hand, deletes it and undoes', async () => {
    const find = async () => (await record()).markers.find((marker) => marker.title === 'It crackles');
    await sheet().getByRole('button', { name: 'It crackles', exact: true }).click();
    await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
    const before = await find();
    await page.keyboard.press(']');
    await expect.poll(async () => (await find())?.ms).toBe((before?.ms ?? 0) + 100);
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('h');
    await expect.poll(async () => (await find())?.ms).not.toBe((before?.ms ?? 0) + 100);
    await page.keyboard.press('Delete');
    await expect.poll(find).toBeUndefined();
    await page.keyboard.press('Control+z');
    await expect.poll(async () => (await find())?.title).toBe('It crackles');
    await page.keyboard.press('Control+z');
    await page.keyboard.press('Control+z');
    await expect.poll(async () => (await find())?.ms).toBe(before?.ms);
    await page.keyboard.press('Control+Shift+z');
    await expect.poll(async () => (await find())?.ms).toBe((before?.ms ?? 0) + 100);
  });

  it('moves a marker along the scale with the mouse', async () => {
    const marker = page.getByRole('button', { name: /^Result: Quiet/ });
    const box = await marker.boundingBox();
    if (!box) throw new Error('The marker is not on the scale.');
    const before = (await record()).markers.find((candidate) => candidate.title === 'Quiet');
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    await page.mouse.down();
    await page.mouse.move(box.x + box.width / 2 + 120, box.y + box.height / 2, { steps: 5 });
    await page.mouse.up();
    await expect
      .poll(async () => {
        const after = (await record()).markers.find((candidate) => candidate.title === 'Quiet');
        return after && before ? after.takeId !== before.takeId || after.ms > before.ms : false;
      })
      .toBe(true);
  });

  it('shows the sheet following the film', async () => {
    await closeSheet(page);
    await page.keyboard.press('Home');
    const now = () => page.locator('[data-now] ').first().textContent();
    await expect.poll(now).toContain('Case open');
    await page.keyboard.press('End');
    await expect.poll(now).toContain('Quiet');
  });

  it('copies the chapter list', async () => {
    await page.keyboard.press('c');
    const dialog = page.getByRole('dialog', { name: 'Chapter list' });
    await dialog.getByRole('button', { name: 'Copy' }).click();
    await dialog.getByRole('button', { name: 'Copied' }).waitFor();
    const copied = await page.evaluate(() => navigator.clipboard.readText());
    expect(copied.split('\n')[0]).toBe('0:00 Case open');
    expect(copied).toContain('Meter on the neck pickup');
    expect(copied).toBe(await (await fetch(`${app.url}/api/jobs/${jobId}/exports/chapters?as=text`)).text());
    await closeSheet(page);
  });

  it('has everything after the lid was closed and the plug pulled', async () => {
    const before = await record();
    await app.stop('SIGKILL');
    await app.restart();
    await page.reload();
    await sheet().getByRole('button', { name: 'Case open', exact: true }).waitFor();
    const after = await record();
    expect({ ...after, job: null }).toEqual({ ...before, job: null });
  });

  it('tells its keys on ?', async () => {
    await page.keyboard.press('?');
    await page.getByRole('dialog', { name: 'Keys' }).getByText('Play or pause').waitFor();
    await expectAccessible(page);
    await closeSheet(page);
  });

  it('opens where its address points: at a moment, or at a line of the sheet', async () => {
    const { takes, markers } = await record();
    const job = `${app.url}/jobs/${jobId}`;
    const chosen = page.locator('[data-selected]');
    await page.goto(`${job}?take=${takes[1]?.id}&ms=2000`);
    await expect.poll(filmMs).toBe(6_000);
    expect(await chosen.count()).toBe(0);

    const marker = markers.find(({ title }) => title === 'Meter on the neck pickup');
    await page.goto(`${job}?line=${marker?.id}`);
    await chosen.getByText('Meter on the neck pickup').waitFor();
    await expect.poll(filmMs).toBe(4_000);
    // It went there once: what is sought afterwards stays.
    await page.keyboard.press('End');
    await page.keyboard.press('ArrowLeft');
    await expect.poll(filmMs).toBe(11_000);

    await page.goto(`${job}?line=nothing&take=${takes[1]?.id}&ms=-1`);
    await page.getByRole('slider', { name: 'Film position' }).waitFor();
    expect([await filmMs(), await chosen.count()]).toEqual([0, 0]);
  });

  it('made no script error and asked nobody else', () => {
    // The page was open while the server was killed: those failed calls are the only ones allowed.
    expect(
      troubles.filter(
        (trouble) =>
          !/ERR_CONNECTION_REFUSED|ERR_INCOMPLETE_CHUNKED|ERR_CONNECTION_RESET|Failed to fetch|ERR_EMPTY/.test(
            trouble,
          ),
      ),
    ).toEqual([]);
  });
});

describe('at every size', () => {
  for (const size of ['desktop', 'tablet', 'phone'] as const) {
    it(`axe finds nothing and nothing sticks out: ${size} (${sizes[size].width} px)`, async () => {
      const opened = await openPage(browser, `${app.url}/jobs/${jobId}`, size);
      await opened.page.getByRole('region', { name: 'Running sheet' }).waitFor();
      await opened.page.getByRole('button', { name: 'Meter on the neck pickup', exact: true }).click();
      await expectAccessible(opened.page);
      await expectNoSidewaysScroll(opened.page);
      for (const path of ['/', '/settings']) {
        await opened.page.goto(app.url + path);
        await opened.page.getByRole('main').waitFor();
        await expectAccessible(opened.page);
        await expectNoSidewaysScroll(opened.page);
      }
      expect(opened.troubles).toEqual([]);
      await opened.context.close();
    });
  }
});

describe('the demonstration job', () => {
  it('is loaded with one button and is whole', async () => {
    await page.goto(`${app.url}/settings`);
    await page.getByRole('button', { name: /demonstration/i }).click();
    await page.waitForURL(/\/jobs\/[0-9a-z]{20}$/);
    const { takes, markers, readings } = await settled(app, page.url().split('/').at(-1) ?? '');
    expect(takes).toHaveLength(3);
    expect(markers.length).toBeGreaterThan(10);
    expect(readings.length).toBeGreaterThan(8);
    for (const take of takes) {
      expect(take).toMatchObject({ state: 'ready', problem: null });
      expect(take.stills.length).toBeGreaterThan(3);
    }
  });
});
