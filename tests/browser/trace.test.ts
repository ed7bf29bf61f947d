import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type App, launchBrowser, startApp } from '../app';
import { addTake, getJob, makeJob, nameFolder, settled } from '../http/client';
import { makeRecording } from '../recordings';
import { expectAccessible, expectNoSidewaysScroll, openPage, sizes } from './page';

let app: App;
let browser: Browser;
let page: Page;
let folder: string;
let troubles: string[];
let jobId: string;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'benchtake-trace-'));
  const path = makeRecording(folder, 'trace.mp4', { seconds: 20 });
  app = await startApp();
  await nameFolder(app, folder);
  jobId = (await makeJob(app, 'Guitar, four unlabelled conductors')).job.id;
  await addTake(app, jobId, path);
  await settled(app, jobId);
  browser = await launchBrowser();
  ({ page, troubles } = await openPage(browser, `${app.url}/jobs/${jobId}`));
  await page.getByRole('slider', { name: 'Film position' }).waitFor();
});
afterAll(async () => {
  await browser.close();
  await app.clear();
  rmSync(folder, { recursive: true });
});

/** Goes by Tab, as a hand without a mouse does, until the focus is on what is wanted. */
async function tabTo(name: RegExp, most = 120): Promise<void> {
  const at = () =>
    page.evaluate(() => {
      const it = document.activeElement;
      const label =
        it instanceof HTMLInputElement || it instanceof HTMLSelectElement
          ? it.labels?.[0]?.textContent
          : null;
      return it?.getAttribute('aria-label') ?? label ?? it?.textContent ?? '';
    });
  for (let steps = 0; steps < most; steps++) {
    if (name.test(await at())) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`Tab never reached ${name}; it is at “${await at()}”.`);
}

const letGo = () => page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
const follows = () => page.getByRole('region', { name: 'What follows' });
const onFilm = async (seconds: number) => {
  await letGo();
  for (let step = 0; step < seconds; step++) await page.keyboard.press('ArrowRight');
};

/** Notes whatever the worksheet asks for next, with the value given. */
async function noteNext(values: Record<string, string>): Promise<string> {
  await onFilm(1);
  const asked = (await page.getByRole('region', { name: 'What to measure next' }).textContent()) ?? '';
  const pair = Object.keys(values).find((key) => key.split('-').every((colour) => asked.includes(colour)));
  if (!pair) throw new Error(`It asks for something else: ${asked}`);
  await page.keyboard.press('n');
  await page.keyboard.type(values[pair] ?? '');
  await page.keyboard.press('Enter');
  return pair;
}

// The values: common practice, no source.
describe('a pickup traced from nothing to a passed check, by keyboard only', () => {
  it('begins a trace from the wiring list', async () => {
    await page.keyboard.press('g');
    await page.getByRole('dialog', { name: 'Wiring' }).waitFor();
    await tabTo(/^Bare shield/);
    await page.keyboard.press('Space');
    await tabTo(/^Begin the trace/);
    await page.keyboard.press('Enter');
    await page.waitForURL(/\/trace\//);
    await page.getByRole('heading', { name: 'Trace: neck pickup' }).waitFor();
    await page.getByRole('slider', { name: 'Film position' }).waitFor();
  });

  it('finds both coils by the readings that it asks for', async () => {
    const values: Record<string, string> = {
      'red-white': '4.08k',
      'green-black': '3.971k',
      'red-green': 'open',
      'red-black': 'open',
      'white-green': 'open',
      'white-black': 'open',
    };
    for (let turn = 0; turn < 6; turn++) {
      const text = (await follows().textContent()) ?? '';
      if (text.includes('4.08 kΩ') && text.includes('3.971 kΩ')) break;
      const before = (await getJob(app, jobId)).readings.length;
      const pair = await noteNext(values);
      delete values[pair];
      await expect.poll(async () => (await getJob(app, jobId)).readings.length).toBe(before + 1);
      await page.waitForTimeout(150);
    }
    await follows().getByText('Red and white are the two ends of a winding of 4.08 kΩ.').waitFor();
    await follows()
      .getByText(/Green and black are the two ends of a winding of 3.971 kΩ/)
      .waitFor();
  });

  it('finds rows and positive ends by the kick of the needle', async () => {
    const kick = async (red: string, black: string, row: string) => {
      await onFilm(1);
      await tabTo(/^Red lead on/);
      await page.keyboard.type(red);
      await tabTo(/^Black lead on/);
      await page.keyboard.type(black);
      await tabTo(/^Row/);
      await page.keyboard.type(row);
      await tabTo(/^\+ positive/);
      await page.keyboard.press('Enter');
      await page.waitForTimeout(300);
    };
    await kick('red', 'white', 'slug');
    await follows().getByText('Red is the positive end under the slug row.').waitFor();
    await kick('green', 'black', 'screw');
    await follows().getByText('Green is the positive end under the screw row.').waitFor();
  });

  it('plans the joints: hot red, white and green joined, ground black', async () => {
    await tabTo(/^Series/);
    await page.keyboard.press('Space');
    const drawing = page.getByRole('img', { name: /^Series\./ });
    await drawing.waitFor();
    const description = (await drawing.getAttribute('aria-label')) ?? '';
    expect(description).toMatch(/hot: red/);
    expect(description).toMatch(/joined: (white and green|green and white|white \+ green|green \+ white)/);
    expect(description).toMatch(/ground: black/);
  });

  it('records the joint at its moment and passes the check with 8.08 kΩ', async () => {
    await onFilm(1);
    await tabTo(/^Joined like this/);
    await page.keyboard.press('Enter');
    await page.getByRole('region', { name: 'What was joined' }).getByText('red').first().waitFor();
    await onFilm(1);
    await tabTo(/^Of the neck pickup/);
    await page.keyboard.type('total 8.08k');
    await page.keyboard.press('Enter');
    await page.getByText('pass', { exact: true }).waitFor();
    const { readings, outcomes } = await getJob(app, jobId);
    expect(outcomes).toHaveLength(1);
    expect(outcomes[0]?.outcome).toMatchObject({ hot: ['red'], ground: ['black'], basis: 'measured' });
    for (const pinned of [...readings, ...outcomes]) {
      expect(pinned.takeId).not.toBeNull();
      expect(pinned.ms).toBeGreaterThan(0);
    }
  });

  it('stands on the running sheet of the job', async () => {
    await page.goto(`${app.url}/jobs/${jobId}`);
    const sheet = page.getByRole('region', { name: 'Running sheet' });
    await sheet
      .getByText(/joined/)
      .first()
      .waitFor();
    await sheet.getByText('8.08 kΩ').waitFor();
    expect(troubles).toEqual([]);
  });
});

describe('the worksheet at every size', () => {
  for (const size of ['desktop', 'tablet', 'phone'] as const) {
    it(`axe finds nothing and nothing sticks out: ${size} (${sizes[size].width} px)`, async () => {
      const { traces } = await getJob(app, jobId);
      const opened = await openPage(browser, `${app.url}/jobs/${jobId}/trace/${traces[0]?.id}`, size);
      await opened.page.getByRole('region', { name: 'What follows' }).waitFor();
      await expectAccessible(opened.page);
      await expectNoSidewaysScroll(opened.page);
      expect(opened.troubles).toEqual([]);
      await opened.context.close();
    });
  }
});
