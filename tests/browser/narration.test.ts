import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { narrationSchema } from '@/shared/narration-record';
import { type App, launchBrowser, startApp } from '../app';
import { addTake, ask, getJob, makeJob, nameFolder, settled } from '../http/client';
import { makeRecording } from '../recordings';
import { closeSheet, expectAccessible, expectNoSidewaysScroll, openPage, sizes } from './page';

let app: App;
let browser: Browser;
let page: Page;
let folder: string;
let troubles: string[];
let jobId: string;

const captions = `1
00:00:01,000 --> 00:00:04,000
so the neck pickup reads seven point nine k

2
00:00:05,000 --> 00:00:08,000
now let me take the control plate off and look for the crackle

3
00:00:09,000 --> 00:00:12,000
the bridge pickup is eight point eight k

4
00:00:13,000 --> 00:00:16,000
I will clean the pots for free
`;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'benchtake-talk-'));
  const path = makeRecording(folder, 'talk.mp4', { seconds: 20 });
  app = await startApp();
  await nameFolder(app, folder);
  jobId = (await makeJob(app, 'Bass, crackles')).job.id;
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

const startOfLast = async () => {
  const { body } = await ask(app, 'GET', `/api/jobs/${jobId}/narration`);
  return narrationSchema.parse(body).lines.at(-1)?.startMs;
};
const sheet = () => page.getByRole('region', { name: 'Running sheet' });

describe('narration', () => {
  it('comes in by dropping a captions file', async () => {
    await page.keyboard.press('v');
    const dialog = page.getByRole('dialog', { name: 'Narration' });
    const place = dialog.getByRole('button', { name: /Drop a captions file/ });
    await place.waitFor();
    const dropped = await page.evaluateHandle((text) => {
      const data = new DataTransfer();
      data.items.add(new File([text], 'talk.srt', { type: 'application/x-subrip' }));
      return data;
    }, captions);
    await place.dispatchEvent('drop', { dataTransfer: dropped });
    await dialog.getByText(/2 × reading/).waitFor();
    await expectAccessible(page);
    await closeSheet(page);
    await sheet().getByRole('button', { name: 'so the neck pickup reads seven point nine k' }).waitFor();
  });

  it('says plainly what is no captions file', async () => {
    await page.keyboard.press('v');
    const dialog = page.getByRole('dialog', { name: 'Narration' });
    await dialog
      .getByLabel('Captions file')
      .setInputFiles({ name: 'list.txt', mimeType: 'text/plain', buffer: Buffer.from('milk\neggs') });
    await dialog.getByText('list.txt is not a captions file that can be read.').waitFor();
    await closeSheet(page);
  });

  it('is gone through by keyboard: accept, the next is selected and the film is there; change; dismiss', async () => {
    await page.keyboard.press('Home');
    await page.keyboard.press('p');
    const chosen = () =>
      sheet()
        .locator('[data-selected]')
        .allTextContents()
        .then((all) => all[0] ?? '');
    const which = () =>
      sheet()
        .locator('[data-selected]')
        .evaluateAll((all) => all[0]?.getAttribute('data-line') ?? null);
    await expect.poll(chosen).toContain('?');
    const seen: string[] = [];
    for (let selected = await chosen(); selected.includes('?'); selected = await chosen()) {
      seen.push(selected);
      const line = await which();
      if (selected.includes('8.8') && selected.includes('reading?')) {
        await page.keyboard.press('e');
        await page.getByLabel('Digits').fill('8.85');
        await page.keyboard.press('Enter');
      } else await page.keyboard.press(/(reading|marker)\?/.test(selected) ? 'a' : 'x');
      await expect.poll(which, { timeout: 5000 }).not.toBe(line);
      if (seen.length > 12) throw new Error(`It does not end: ${seen.join('; ')}`);
    }
    const { readings } = await getJob(app, jobId);
    expect(readings.map(({ valueText, unit }) => [valueText, unit])).toEqual([
      ['7.9', 'kΩ'],
      ['8.85', 'kΩ'],
    ]);
    await sheet().getByText('8.85 kΩ').waitFor();
  });

  it('stands after a reload: lines, readings, decisions', async () => {
    const before = await getJob(app, jobId);
    await page.reload();
    await sheet().getByText('8.85 kΩ').waitFor();
    await sheet().getByRole('button', { name: 'I will clean the pots for free' }).waitFor();
    await page.keyboard.press('p');
    await page.waitForTimeout(300);
    expect(
      await sheet()
        .getByText(/reading\?/)
        .count(),
    ).toBe(0);
    expect(await getJob(app, jobId)).toEqual(before);
  });

  it('plays from a line that is touched, and its words are put right', async () => {
    await sheet().getByRole('button', { name: 'I will clean the pots for free' }).click();
    await expect
      .poll(() => page.getByRole('slider', { name: 'Film position' }).getAttribute('aria-valuenow'))
      .toBe('13');
    await sheet().getByRole('button', { name: 'Correct the words' }).click();
    await page.getByLabel('Words of this line').fill('I will clean the switch for free');
    await page.keyboard.press('Enter');
    await sheet().getByRole('button', { name: 'I will clean the switch for free' }).waitFor();
  });

  it('shows a correction that is no longer and no shorter than what was heard', async () => {
    const line = sheet().getByRole('button', { name: 'the bridge pickup is eight point eight k' });
    await line.click();
    await sheet().getByRole('button', { name: 'Correct the words' }).click();
    await page.getByLabel('Words of this line').fill('the middle pickup is eight point eight k');
    await page.keyboard.press('Enter');
    await sheet().getByRole('button', { name: 'the middle pickup is eight point eight k' }).waitFor();
    await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
    await page.keyboard.press('Control+z');
    await line.waitFor();
    await sheet().getByRole('button', { name: 'I will clean the switch for free' }).click();
  });

  it('is set by ear: with its line selected, one key on the word moves the take’s words there', async () => {
    await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('h');
    await expect.poll(startOfLast).toBe(14_000);
    await page.keyboard.press('Control+z');
    await expect.poll(startOfLast).toBe(13_000);
    // The page shows it as well before anything is looked for on it.
    await sheet()
      .getByRole('listitem')
      .filter({ hasText: 'I will clean the switch for free' })
      .getByText('0:13')
      .waitFor();
  });

  it('is searched in the open job', async () => {
    await page.keyboard.press('f');
    await page.keyboard.type('control plate');
    await page.getByText('1 of 1').waitFor();
    await page.keyboard.press('Enter');
    await expect
      .poll(() => page.getByRole('slider', { name: 'Film position' }).getAttribute('aria-valuenow'))
      .toBe('5');
    await closeSheet(page);
    // The list that was no captions file was refused, as it should be.
    expect(troubles.filter((trouble) => !trouble.includes('422'))).toEqual([]);
  });

  for (const size of ['desktop', 'tablet', 'phone'] as const) {
    it(`axe finds nothing and nothing sticks out: ${size} (${sizes[size].width} px)`, async () => {
      const opened = await openPage(browser, `${app.url}/jobs/${jobId}`, size);
      await opened.page.getByRole('button', { name: 'I will clean the switch for free' }).click();
      await expectAccessible(opened.page);
      await expectNoSidewaysScroll(opened.page);
      await opened.context.close();
    });
  }
});
