import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { serialPatternsSchema } from '@/shared/claims';
import { workshopSchema } from '@/shared/workshop';
import { type App, launchBrowser, startApp } from '../app';
import { addTake, ask, getJob, makeJob, nameFolder, settled } from '../http/client';
import { makeRecording } from '../recordings';
import { expectAccessible, expectNoSidewaysScroll, openPage, sizes } from './page';

let app: App;
let browser: Browser;
let folder: string;
let jobId: string;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'benchtake-claims-'));
  const take = makeRecording(folder, 'headstock.mp4', { seconds: 6, at: '2026-03-17T09:01:00Z' });
  app = await startApp();
  jobId = (await makeJob(app)).job.id;
  await nameFolder(app, folder);
  await addTake(app, jobId, take);
  await settled(app, jobId);
  browser = await launchBrowser();
});
afterAll(async () => {
  await browser.close();
  await app.clear();
  rmSync(folder, { recursive: true });
});

/** Tab until the wanted thing has the focus. */
async function tabTo(page: Page, wanted: Locator): Promise<void> {
  await wanted.waitFor();
  for (let presses = 0; presses < 150; presses++) {
    if (await wanted.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error('The keyboard does not reach it.');
}

async function expectFocus(wanted: Locator): Promise<void> {
  await expect
    .poll(() => wanted.evaluate((element) => element === document.activeElement), { timeout: 8_000 })
    .toBe(true);
}

async function typeInto(page: Page, wanted: Locator, text: string): Promise<void> {
  await tabTo(page, wanted);
  await page.keyboard.press('Control+a');
  await page.keyboard.type(text);
}

const patterns = async () =>
  serialPatternsSchema.parse((await ask(app, 'GET', '/api/serial-patterns')).body).patterns;
const workshop = async () => workshopSchema.parse((await ask(app, 'GET', '/api/workshop')).body);
const claims = async () => (await getJob(app, jobId)).claims;

describe('serial patterns and the workshop, in the settings', () => {
  let page: Page;
  let troubles: string[];
  beforeAll(async () => {
    ({ page, troubles } = await openPage(browser, `${app.url}/settings`));
  });
  const serials = () => page.getByRole('region', { name: 'Serial patterns' });

  it('says while it is typed which piece was not understood, and what was', async () => {
    const words = serials().getByRole('textbox', { name: 'In words, from left to right' });
    await typeInto(page, serials().getByRole('textbox', { name: 'Name of the pattern' }), 'year and month');
    await typeInto(page, words, 'two digits year, two fingers month');
    await serials().getByText('“fingers” in “two fingers month” was not understood.').waitFor();
    await page.keyboard.press('Enter');
    await typeInto(page, words, 'two digits year, two digits month');
    await serials().getByText('two digits: the month').waitFor();
    expect(await patterns()).toEqual([]);
  });

  it('tries the pattern on a serial and shows the century open', async () => {
    const tried = serials().getByRole('textbox', { name: 'Try it on a serial' });
    await typeInto(page, tried, '84-07');
    await serials().getByText('84 is the year (1884 or 1984), 07 the month (July).').waitFor();
    await typeInto(page, tried, '84-13');
    await serials().getByText('The pattern does not fit this serial.').waitFor();
  });

  it('keeps it, deletes it, and brings it back', async () => {
    const kept = [{ name: 'year and month', words: 'two digits year, two digits month' }];
    await tabTo(page, serials().getByRole('button', { name: 'Keep this pattern' }));
    await page.keyboard.press('Enter');
    await tabTo(page, serials().getByRole('button', { name: 'Delete year and month' }));
    expect(await patterns()).toEqual(kept);
    await page.keyboard.press('Enter');
    await expect.poll(patterns, { timeout: 8_000 }).toEqual([]);
    await page
      .getByRole('dialog')
      .filter({ hasText: 'Pattern deleted' })
      .getByRole('button', { name: 'Undo' })
      .click();
    await serials().getByRole('button', { name: 'Delete year and month' }).waitFor();
    expect(await patterns()).toEqual(kept);
  });

  it('keeps the workshop’s lines as they are left, and refuses a currency that is none', async () => {
    const sheet = page.getByRole('region', { name: 'Workshop', exact: true });
    await typeInto(page, sheet.getByRole('textbox', { name: 'Name of the workshop' }), 'Plainly Strings');
    await typeInto(page, sheet.getByRole('textbox', { name: 'Address' }), '1 Bench Lane\nNowhere');
    await typeInto(page, sheet.getByRole('textbox', { name: 'Currency' }), '12');
    await page.keyboard.press('Enter');
    await sheet.getByRole('alert').waitFor();
    await typeInto(page, sheet.getByRole('textbox', { name: 'Currency' }), 'jpy');
    await page.keyboard.press('Enter');
    // ISO 4217: the yen has no minor unit.
    await sheet.getByText(/Now: Japanese Yen, whole prices/).waitFor();
    expect(await workshop()).toEqual({
      name: 'Plainly Strings',
      address: '1 Bench Lane\nNowhere',
      currency: 'JPY',
    });
  });

  it('made no script error but for what was refused, and asked nobody else', () => {
    expect(troubles.filter((trouble) => !trouble.includes('422'))).toEqual([]);
  });
});

describe('the instrument and its claims, on the ticket by keyboard', () => {
  let page: Page;
  let troubles: string[];
  beforeAll(async () => {
    ({ page, troubles } = await openPage(browser, `${app.url}/jobs/${jobId}/ticket`));
  });
  const instrument = () => page.getByRole('region', { name: 'Instrument' });
  const claimed = () => page.getByRole('region', { name: 'Claims' });

  it('keeps a serial as it is left, and takes what it tells as a claim', async () => {
    await typeInto(page, instrument().getByRole('textbox', { name: 'Serial' }), '84-07');
    await page.keyboard.press('Tab');
    await instrument().getByText('84 is the year (1884 or 1984), 07 the month (July).').waitFor();
    await tabTo(page, instrument().getByRole('button', { name: 'Take the year 1884 or 1984 as a claim' }));
    await page.keyboard.press('Enter');
    await claimed().getByText('1884 or 1984').first().waitFor();
    expect(await claims()).toMatchObject([
      { kind: 'year', value: '1884 or 1984', basis: 'implied', sure: 'doubtful', jobId },
    ]);
  });

  it('adds two claims that disagree: they stand side by side, and it is said in words', async () => {
    await tabTo(page, claimed().getByRole('button', { name: 'Add a claim' }));
    await page.keyboard.press('Enter');
    await typeInto(page, claimed().getByRole('textbox', { name: 'It is' }), 'about 1983');
    await page.keyboard.press('Enter');
    await claimed().getByText('about 1983').waitFor();
    const add = claimed().getByRole('button', { name: 'Add a claim' });
    await expectFocus(add);
    expect(await claimed().getByText('These disagree:').count()).toBe(0);

    await tabTo(page, claimed().getByRole('button', { name: 'Add a claim' }));
    await page.keyboard.press('Enter');
    await typeInto(page, claimed().getByRole('textbox', { name: 'It is' }), 'late 70s');
    await typeInto(page, claimed().getByRole('textbox', { name: 'Evidence in words' }), 'the client says so');
    await tabTo(page, claimed().getByRole('button', { name: /^Pin to this moment/ }));
    await page.keyboard.press('Enter');
    await claimed().getByText('Pinned to 0:00.').waitFor();
    await tabTo(page, claimed().getByRole('button', { name: 'Keep this claim' }));
    await page.keyboard.press('Enter');

    const year = claimed().getByRole('group', { name: 'Year' });
    await year.getByText('These disagree:').waitFor();
    await year.getByText('“1884 or 1984” against “late 70s”').waitFor();
    expect(await claims()).toMatchObject([
      { value: '1884 or 1984' },
      { value: 'about 1983' },
      { value: 'late 70s', evidence: 'the client says so', moment: { ms: 0 } },
    ]);
    const [left, right] = await Promise.all(
      ['1884 or 1984', 'late 70s'].map((value) =>
        year.getByRole('listitem').filter({ hasText: value }).first().boundingBox(),
      ),
    );
    expect(left?.y).toBe(right?.y);
    expect((left?.x ?? 0) + (left?.width ?? 0)).toBeLessThanOrEqual(right?.x ?? 0);
    await expectAccessible(page);
  });

  it('brings the film to the evidence, with its still', async () => {
    const film = page.getByRole('slider', { name: 'Film position' });
    await film.focus();
    await page.keyboard.press('End');
    const seen = claimed().getByRole('button', { name: 'Go to the evidence for “late 70s”, 0:00' });
    await expect
      .poll(() => seen.locator('img').evaluate((still: HTMLImageElement) => still.naturalWidth), {
        timeout: 8_000,
      })
      .toBeGreaterThan(0);
    await tabTo(page, seen);
    await page.keyboard.press('Enter');
    await expect.poll(() => film.getAttribute('aria-valuenow'), { timeout: 8_000 }).toBe('0');
  });

  it('changes a claim so that both can be true, and undoes it', async () => {
    await tabTo(page, claimed().getByRole('button', { name: 'Change the claim “late 70s”' }));
    await page.keyboard.press('Enter');
    await typeInto(page, claimed().getByRole('textbox', { name: 'It is' }), '1984');
    await page.keyboard.press('Enter');
    await claimed().getByText('These disagree:').waitFor({ state: 'detached' });
    await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
    await page.keyboard.press('Control+z');
    await claimed().getByText('These disagree:').waitFor();
    expect((await claims()).at(-1)).toMatchObject({ value: 'late 70s' });
  });

  it('tells the later of two windows before it puts anything in place of the other’s words', async () => {
    const change = claimed().getByRole('button', { name: 'Change the claim “about 1983”' });
    await tabTo(page, change);
    await page.keyboard.press('Enter');
    const id = (await claims()).find(({ value }) => value === 'about 1983')?.id;
    await ask(app, 'PATCH', `/api/claims/${id}`, { value: 'about 1985' });
    await typeInto(page, claimed().getByRole('textbox', { name: 'It is' }), 'about 1982');
    await page.keyboard.press('Enter');
    await claimed().getByRole('alert').waitFor();
    expect((await claims()).map(({ value }) => value)).toContain('about 1985');
    await page.keyboard.press('Enter');
    await claimed().getByRole('button', { name: 'Change the claim “about 1982”' }).waitFor();
    await expectFocus(claimed().getByRole('listitem').filter({ hasText: 'about 1982' }));
  });

  it('deletes a claim, and a touch brings it back', async () => {
    await tabTo(page, claimed().getByRole('button', { name: 'Delete the claim “about 1982”' }));
    await page.keyboard.press('Enter');
    await expect.poll(async () => (await claims()).length, { timeout: 8_000 }).toBe(2);
    await page
      .getByRole('dialog')
      .filter({ hasText: 'Claim “about 1982” deleted' })
      .getByRole('button', { name: 'Undo' })
      .click();
    await expect.poll(async () => (await claims()).length, { timeout: 8_000 }).toBe(3);
  });

  it('made no script error but for what was refused, and asked nobody else', () => {
    expect(troubles.filter((trouble) => !trouble.includes('409'))).toEqual([]);
  });
});

describe('at every size', () => {
  for (const size of ['desktop', 'tablet', 'phone'] as const)
    for (const path of ['/settings', '/jobs/{job}/ticket'])
      it(`axe finds nothing and nothing sticks out: ${path}, ${size} (${sizes[size].width} px)`, async () => {
        const { page, context, troubles } = await openPage(
          browser,
          app.url + path.replace('{job}', jobId),
          size,
        );
        if (path === '/settings') {
          await page.getByText('What can be written').click();
          await page.getByRole('textbox', { name: 'In words, from left to right' }).fill('two hands');
          await page.getByText(/“hands” in/).waitFor();
        } else {
          await page.getByText('These disagree:').waitFor();
          await page.getByRole('button', { name: 'Add a claim' }).click();
        }
        await expectAccessible(page);
        await expectNoSidewaysScroll(page);
        expect(troubles).toEqual([]);
        await context.close();
      });
});
