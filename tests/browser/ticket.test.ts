import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type App, launchBrowser, startApp } from '../app';
import { addTake, ask, getJob, makeJob, nameFolder, settled } from '../http/client';
import { makeRecording } from '../recordings';
import { expectAccessible, expectNoSidewaysScroll, openPage, sizes } from './page';

let app: App;
let browser: Browser;
let page: Page;
let context: BrowserContext;
let folder: string;
let troubles: string[];
let jobId: string;
let address: string;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'benchtake-ticket-'));
  const path = makeRecording(folder, 'talk at the bench.mp4', { seconds: 6 });
  app = await startApp();
  await nameFolder(app, folder);
  jobId = (await makeJob(app)).job.id;
  const take = await addTake(app, jobId, path);
  await settled(app, jobId);
  await ask(app, 'POST', `/api/jobs/${jobId}/markers`, { kind: 'intake', takeId: take.id, ms: 0 });
  address = `${app.url}/jobs/${jobId}/ticket`;
  browser = await launchBrowser();
  ({ page, context, troubles } = await openPage(browser, address));
});
afterAll(async () => {
  await browser.close();
  await app.clear();
  rmSync(folder, { recursive: true });
});

const record = () => getJob(app, jobId);
const part = (name: string) => page.getByRole('region', { name });
const choice = (group: string, option: string, on: Page = page) =>
  on.getByRole('group', { name: group, exact: true }).getByRole('button', { name: option, exact: true });
const dialog = () => page.getByRole('dialog', { name: 'Look at these first' });

describe('something offered and forgotten', () => {
  it('is written down with one line, at the moment that the film shows', async () => {
    await page.getByRole('slider', { name: 'Film position' }).waitFor();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowRight');
    await part('Work').getByText('Enter adds it at 0:02 of the film.').waitFor();
    await part('Work').getByRole('button', { name: 'offered' }).click();
    await page.getByLabel('Add work').fill('Set-up with new strings');
    await page.keyboard.press('Enter');
    await part('Work')
      .getByRole('button', { name: /^Go to where it begins/ })
      .waitFor();
    const { work, takes } = await record();
    expect(work).toMatchObject([
      {
        what: 'Set-up with new strings',
        origin: 'offered',
        outcome: 'open',
        begun: { takeId: takes[0]?.id },
      },
    ]);
    expect(Math.abs((work[0]?.begun?.ms ?? 0) - 2_000)).toBeLessThanOrEqual(40);
    expect(await page.getByLabel('Add work').inputValue()).toBe('');
  });

  it('holds the job back: the list is shown before it is ready, and leads to the line', async () => {
    await choice('State', 'ready').click();
    await dialog()
      .getByText(/Set-up with new strings/)
      .first()
      .waitFor();
    expect((await record()).job.state).toBe('booked in');
    await expectAccessible(page);
    await dialog()
      .getByRole('link', { name: /Set-up with new strings/ })
      .first()
      .click();
    await dialog().waitFor({ state: 'hidden' });
    const item = (await record()).work[0];
    await page.waitForFunction((id) => document.activeElement?.id === id, item?.id);
    expect((await record()).job.state).toBe('booked in');
  });

  it('is tied up: declined, with why, at the moment', async () => {
    await choice('Outcome of: Set-up with new strings', 'declined').click();
    const why = page.getByLabel('Why it was declined');
    await why.waitFor();
    await expect.poll(() => why.evaluate((box) => box === document.activeElement)).toBe(true);
    await page.keyboard.type('Wants to do it himself');
    await page.keyboard.press('Enter');
    await expect
      .poll(async () => (await record()).work[0])
      .toMatchObject({
        outcome: 'declined',
        why: 'Wants to do it himself',
        ended: { ms: expect.any(Number) },
      });
    await part('Loose ends').getByText('Nothing is loose.').waitFor();
  });

  it('no longer holds it back', async () => {
    await choice('State', 'ready').click();
    await page.getByText('nothing was loose.').waitFor();
    expect((await record()).job).toMatchObject({ state: 'ready', readyLook: { looseEnds: [] } });
  });

  it('may be left loose: what was looked at is kept with the job', async () => {
    await choice('State', 'on the bench').click();
    await choice('It was', 'offered', page).first().click();
    await page.getByLabel('Add work').fill('Clean the pots');
    await page.keyboard.press('Enter');
    await page.getByRole('group', { name: 'Outcome of: Clean the pots' }).waitFor();
    await choice('State', 'ready').click();
    await dialog().getByRole('button', { name: 'Set to ready all the same' }).click();
    await dialog().waitFor({ state: 'hidden' });
    const { job, looseEnds } = await record();
    expect(job.state).toBe('ready');
    expect(job.readyLook?.looseEnds).toEqual(looseEnds);
    expect(looseEnds.map(({ kind }) => kind)).toContain('offered and open');
    await page.getByText(`and left loose: ${looseEnds.length}`).click();
    await page
      .getByRole('listitem')
      .getByText(looseEnds[0]?.sentence ?? '')
      .first()
      .waitFor();
  });
});

describe('two windows on one ticket', () => {
  it('the later one is told; both titles are still there, and one is chosen', async () => {
    const other = await context.newPage();
    await other.goto(address);
    await other.getByLabel('Title').waitFor();
    await page.getByLabel('Title').fill('Bass, crackles when the volume is turned');
    await page.keyboard.press('Enter');
    await expect
      .poll(async () => (await record()).job.title)
      .toBe('Bass, crackles when the volume is turned');

    await other.getByLabel('Title').fill('Bass, loose jack');
    await other.keyboard.press('Enter');
    await other.getByText('changed in another window').waitFor();
    await other.getByText('Bass, crackles when the volume is turned').first().waitFor();
    expect(await other.getByLabel('Title').inputValue()).toBe('Bass, loose jack');
    expect((await record()).job.title).toBe('Bass, crackles when the volume is turned');
    await expectAccessible(other);

    await other.getByRole('button', { name: 'Keep mine' }).click();
    await expect.poll(async () => (await record()).job.title).toBe('Bass, loose jack');
    await other.getByRole('button', { name: 'Keep mine' }).waitFor({ state: 'hidden' });
    await other.close();
  });

  it('a choice made in the later window is told too, and can be given up', async () => {
    await page.reload();
    const { id } = (await record()).work[1] ?? {};
    await ask(app, 'PATCH', `/api/work/${id}`, { outcome: 'done' });
    await choice('Outcome of: Clean the pots', 'not done').click();
    await page.getByText('changed in another window').waitFor();
    await page.getByRole('button', { name: 'Take that one' }).click();
    expect((await record()).work[1]?.outcome).toBe('done');
    expect(await choice('Outcome of: Clean the pots', 'done').getAttribute('aria-pressed')).toBe('true');
  });
});

describe('what is typed wrongly', () => {
  it('a price that is none is told, and stays to be corrected', async () => {
    await part('Work').getByRole('button', { name: 'Change: Clean the pots' }).click();
    const price = page.getByLabel('Price in EUR');
    await price.fill('45-50');
    await page.keyboard.press('Enter');
    await page.getByText('is not a price').waitFor();
    expect(await price.inputValue()).toBe('45-50');
    await price.fill('45,50');
    await page.keyboard.press('Enter');
    await part('Work').getByText('agreed price · €45.50').waitFor();
    expect((await record()).work[1]).toMatchObject({ priceMinor: 4550, currency: 'EUR', charge: 'agreed' });
    await part('Work').getByRole('button', { name: 'Close: Clean the pots' }).click();
  });

  it('an enormous text is refused with its words kept', async () => {
    const enormous = 'All of it, told again. '.repeat(20_000);
    const before = (await record()).job.title;
    await page.getByLabel('Title').fill(enormous);
    await page.keyboard.press('Enter');
    await page.getByText(/at most 200 letters fit/).waitFor();
    expect(await page.getByLabel('Title').inputValue()).toBe(enormous);
    expect((await record()).job.title).toBe(before);
    await page.getByLabel('Title').focus();
    await page.keyboard.press('Escape');
    expect(await page.getByLabel('Title').inputValue()).toBe(before);
    await page.getByLabel('Add work').fill(enormous);
    await page.keyboard.press('Enter');
    await page.getByText(/At most 300 letters fit/).waitFor();
    expect(await page.getByLabel('Add work').inputValue()).toBe(enormous);
    await page.getByLabel('Add work').fill('');
  });

  it('a day before it was received, and one that no calendar has', async () => {
    const promised = page.getByLabel('Promised for');
    await page.getByLabel('Received').fill('2026-03-17');
    await page.keyboard.press('Enter');
    await promised.fill('2026-03-16');
    await page.keyboard.press('Enter');
    await page.getByText('promised for a day before it was received').waitFor();
    expect(await promised.inputValue()).toBe('2026-03-16');
    await promised.fill('');
    await page.keyboard.type('02302026');
    await page.getByRole('heading', { name: 'Parts' }).click();
    await page.getByText('There is no such day.').waitFor();
    expect((await record()).job.promisedOn).toBeNull();
    await promised.fill('2026-03-24');
    await page.keyboard.press('Enter');
    await expect.poll(async () => (await record()).job.promisedOn).toBe('2026-03-24');
  });
});

describe('the rest of the ticket', () => {
  it('a client is found by typing, or written down anew', async () => {
    await part('Client').getByRole('combobox').fill('Wendeline Plankwright');
    await page.getByRole('option', { name: /^New client/ }).click();
    await page.getByLabel('In public called').fill('a returning client');
    await page.keyboard.press('Enter');
    await part('Client').getByRole('link', { name: 'Wendeline Plankwright' }).waitFor();
    expect((await record()).client).toMatchObject({
      name: 'Wendeline Plankwright',
      alias: 'a returning client',
    });
    await part('Client').getByRole('button', { name: 'Take off' }).click();
    await part('Client').getByRole('combobox').fill('plankw');
    await page.getByRole('option', { name: /^Wendeline Plankwright/ }).waitFor();
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    await expect.poll(async () => (await record()).client?.name).toBe('Wendeline Plankwright');
  });

  it('what came in with it: ticks, and words', async () => {
    await page.getByRole('checkbox', { name: 'case' }).click();
    await expect.poll(async () => (await record()).job.cameWith).toEqual(['case']);
    await expect.poll(() => page.getByRole('textbox', { name: 'Came in with' }).inputValue()).toBe('case');
    await page.getByRole('textbox', { name: 'Came in with' }).fill('case, spare strings');
    await page.keyboard.press('Enter');
    await expect.poll(async () => (await record()).job.cameWith).toEqual(['case', 'spare strings']);
  });

  it('a part with a doubt about its origin; deleted, and brought back by the notice', async () => {
    await page.getByLabel('Add a part').fill('Volume pot, 250 kΩ');
    await page.keyboard.press('Enter');
    await part('Parts').getByRole('button', { name: 'Change: Volume pot, 250 kΩ' }).click();
    await page.getByLabel('Doubt about its origin').fill('The date code is younger than the instrument');
    await page.keyboard.press('Enter');
    await choice('How that is known', 'measured').click();
    await part('Parts').getByText('(measured)').waitFor();
    await part('Parts').getByRole('button', { name: 'Delete this part' }).click();
    await part('Parts').getByText('In doubt:').waitFor({ state: 'hidden' });
    await page.getByRole('button', { name: 'Undo', exact: true }).last().click();
    await part('Parts').getByText('In doubt:').waitFor();
    expect((await record()).parts).toMatchObject([
      { doubt: 'The date code is younger than the instrument', doubtBasis: 'measured', deed: 'fitted' },
    ]);
  });

  it('a change is taken back from the history, unless something newer stands on it', async () => {
    const place = page.getByLabel('Where it stands');
    for (const words of ['shelf 2', 'hook by the window']) {
      await place.fill(words);
      await page.keyboard.press('Enter');
      await expect.poll(async () => (await record()).job.place).toBe(words);
    }
    const undo = part('History').getByRole('button', { name: 'Undo: place changed' });
    await undo.nth(1).click();
    await part('History').getByText('It has been changed since').waitFor();
    expect((await record()).job.place).toBe('hook by the window');
    await undo.first().click();
    await expect.poll(() => place.inputValue()).toBe('shelf 2');
    await part('History').getByText('undone', { exact: true }).first().waitFor();
  });

  it('is reached from the job’s page, which says how far it is', async () => {
    await page.goto(`${app.url}/jobs/${jobId}`);
    const head = page.locator('header').filter({ hasText: 'Bass, loose jack' });
    await head.getByText('ready', { exact: true }).waitFor();
    await head.getByText(/promised for/).waitFor();
    await head.getByRole('link', { name: 'Ticket', exact: true }).click();
    await page.waitForURL(/\/ticket$/);
    await page.getByLabel('Add work').waitFor();
  });

  it('made no script error and asked nobody else', () => {
    // What the server refused on purpose is told in the console by the browser itself.
    expect(troubles.filter((trouble) => !/status of 4(09|22)/.test(trouble))).toEqual([]);
  });
});

describe('at every size', () => {
  for (const size of ['desktop', 'tablet', 'phone'] as const) {
    it(`axe finds nothing and nothing sticks out: ${size} (${sizes[size].width} px)`, async () => {
      const what = `A very long word: ${'Unabschneidbar'.repeat(12)}`;
      await ask(app, 'POST', `/api/jobs/${jobId}/work`, { what, origin: 'found' });
      const opened = await openPage(browser, address, size);
      await opened.page.getByRole('button', { name: /^Change: Clean the pots/ }).click();
      await opened.page.getByRole('button', { name: /^Change: Volume pot/ }).click();
      await opened.page.getByLabel('Doubt about its origin').waitFor();
      await expectAccessible(opened.page);
      await expectNoSidewaysScroll(opened.page);
      expect(opened.troubles).toEqual([]);
      await opened.context.close();
    });
  }
});
