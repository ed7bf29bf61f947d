import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { archiveAnswerSchema } from '@/shared/archive';
import { type App, launchBrowser, startApp } from '../app';
import { ask, makeJob, settled, until } from '../http/client';
import { closeSheet, expectAccessible, expectNoSidewaysScroll, openPage, sizes, untilLive } from './page';

let app: App;
let browser: Browser;
let page: Page;
let troubles: string[];

beforeAll(async () => {
  app = await startApp();
  browser = await launchBrowser();
  ({ page, troubles } = await openPage(browser, `${app.url}/archive`));
});
afterAll(async () => {
  await browser.close();
  await app.clear();
});

const box = () => page.getByRole('searchbox', { name: 'Ask the archive' });
const answers = () => page.getByRole('region', { name: 'Answers' });
const understood = () => page.getByRole('region', { name: 'How the question was understood' });
const cards = () => answers().getByRole('article');
const playButton = () =>
  answers()
    .getByRole('button', { name: /^Play from/ })
    .first();
const query = () => new URL(page.url()).searchParams;
async function open(search: string): Promise<void> {
  await page.goto(`${app.url}/archive?${search}`);
  await untilLive(box());
}

/** Asks the route what the page must show. */
async function asked(search: string) {
  return archiveAnswerSchema.parse((await ask(app, 'GET', `/api/archive?${search}`)).body);
}

/** Tab until the wanted thing has the focus. */
async function tabTo(wanted: Locator): Promise<void> {
  await wanted.waitFor({ state: 'attached' });
  for (let presses = 0; presses < 120; presses++) {
    if (await wanted.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error('The keyboard does not reach it.');
}

/** The film stands near the moment, and goes on. */
async function expectPlaying(ms: number): Promise<void> {
  const video = page.locator('video');
  await video.waitFor();
  const at = () => video.evaluate((element: HTMLVideoElement) => element.currentTime * 1000);
  await expect.poll(at).toBeGreaterThan(ms + 200);
  const first = await at();
  expect(first).toBeLessThan(ms + 9_000);
  await expect.poll(at).toBeGreaterThan(first + 200);
  expect(await video.evaluate((element: HTMLVideoElement) => element.paused)).toBe(false);
}

describe('an archive without a job', () => {
  it('says what to do', async () => {
    await page.getByRole('heading', { name: 'Nothing is in the archive yet.' }).waitFor();
    await page.getByRole('link', { name: 'Import older recordings' }).waitFor();
    await expectAccessible(page);
  });

  it('is filled by the demonstration jobs', async () => {
    await page.getByRole('button', { name: /older jobs/ }).click();
    await page.getByRole('heading', { name: 'Such as' }).waitFor({ timeout: 60_000 });
    const { body } = await ask(app, 'POST', '/api/demo');
    const { job } = z.looseObject({ job: z.object({ id: z.string() }) }).parse(body);
    await settled(app, job.id);
    await until(
      () => asked('q=neck'),
      ({ waiting, answers: found }) => waiting === 0 && found.length > 1,
    );
  });
});

describe('a question', () => {
  it('is asked as it is typed, and its address is the question', async () => {
    await open('');
    await expectAccessible(page);
    await page.keyboard.press('/');
    await page.keyboard.type('8.1k neck');
    await cards().first().waitFor();
    expect(query().get('q')).toBe('8.1k neck');
    await understood().getByRole('button', { name: /8.1k/ }).waitFor();
    expect(await cards().first().locator('mark').first().textContent()).toMatch(/neck/i);
    await expectAccessible(page);
  });

  it('comes with its answer when it is opened by its address, also without scripts', async () => {
    const html = await (await fetch(`${app.url}/archive?q=8.1k+neck`)).text();
    const [first] = (await asked('q=8.1k+neck')).answers;
    expect(html).toContain(`/jobs/${first?.job.id}`);
  });

  it('is restored by Back, and asked again by Forward', async () => {
    await box().fill('hum');
    await page.keyboard.press('Enter');
    await expect.poll(() => query().get('q')).toBe('hum');
    await understood().getByRole('button', { name: /hum/ }).waitFor();
    await page.goBack();
    await expect.poll(() => box().inputValue()).toBe('8.1k neck');
    await understood().getByRole('button', { name: /8.1k/ }).waitFor();
    await page.goBack();
    await page.getByRole('heading', { name: 'Such as' }).waitFor();
    expect(await box().inputValue()).toBe('');
    await page.goForward();
    await page.goForward();
    await expect.poll(() => box().inputValue()).toBe('hum');
    await understood().getByRole('button', { name: /hum/ }).waitFor();
  });

  it('is not overwritten by a late answer to an older one', async () => {
    let letGo = () => {};
    const held = new Promise<void>((resolve) => {
      letGo = resolve;
    });
    await page.route(/api\/archive\?q=fret/, async (route) => {
      await held;
      await route.continue().catch(() => undefined);
    });
    await box().fill('fret');
    await page.keyboard.press('Enter');
    await answers().getByText('Looking …').waitFor();
    await box().fill('crackle');
    await page.keyboard.press('Enter');
    await understood()
      .getByRole('button', { name: /crackle/ })
      .waitFor();
    const late = page.waitForResponse(/api\/archive\?q=fret/);
    letGo();
    await late;
    await page.unroute(/api\/archive\?q=fret/);
    await understood()
      .getByRole('button', { name: /crackle/ })
      .waitFor();
    expect(await understood().getByRole('button', { name: /fret/ }).count()).toBe(0);
  });

  it('loses a part at a touch, and gets it back', async () => {
    await open('q=crackle+last+spring');
    await understood()
      .getByRole('button', { name: /^Take away: time last spring/ })
      .click();
    expect(query().get('without')).toMatch(/^time-/);
    const back = understood().getByRole('button', { name: 'Put back: last spring' });
    await back.click();
    await understood()
      .getByRole('button', { name: /^Take away: time last spring/ })
      .waitFor();
    expect(query().get('without')).toBeNull();
  });

  it('says when a word was taken for another', async () => {
    await open('q=sodler+joint');
    await understood()
      .getByText(/“sodler joint” occurs nowhere: .*“solder joint”/)
      .waitFor();
  });

  it('says when nothing answers', async () => {
    await open('q=theremin+antenna');
    await answers().getByRole('heading', { name: 'Nothing in the archive answers that.' }).waitFor();
    await expectAccessible(page);
  });

  it('keeps the last answers where the server is not heard', async () => {
    await open('q=neck');
    const before = await cards().count();
    await page.route(/api\/archive\?/, (route) => route.abort());
    await box().fill('bridge');
    await page.keyboard.press('Enter');
    await page.getByRole('alert').getByText('Benchtake does not answer.').waitFor();
    expect(await cards().count()).toBe(before);
    await page.unroute(/api\/archive\?/);
    await page.getByRole('button', { name: 'Ask again' }).click();
    await understood()
      .getByRole('button', { name: /bridge/ })
      .waitFor();
    await expect.poll(() => page.getByRole('button', { name: 'Ask again' }).count()).toBe(0);
  });
});

describe('the answers', () => {
  it('are narrowed, with counts, and widened again', async () => {
    await open('q=neck');
    const all = (await asked('q=neck')).filters.instruments.find(({ value }) => value === 'bass guitar');
    const bass = page.getByRole('button', { name: new RegExp(`bass guitar ${all?.count}`, 'i') });
    await bass.click();
    await expect.poll(() => query().get('instrument')).toBe('bass guitar');
    await expect.poll(() => cards().count()).toBe(all?.count);
    await understood().getByRole('button', { name: 'No longer narrowed to: bass guitar' }).click();
    await expect.poll(() => query().get('instrument')).toBeNull();
  });

  it('are narrowed to readings as they are typed', async () => {
    await page.getByRole('combobox', { name: 'Kind of reading' }).selectOption('resistance');
    const readings = page.getByRole('region', { name: 'Readings' });
    await readings.getByRole('textbox', { name: 'From' }).fill('seven');
    await page.keyboard.press('Enter');
    await readings.getByRole('alert').getByText('Write a number with its unit').waitFor();
    await readings.getByRole('textbox', { name: 'From' }).fill('7k');
    await readings.getByRole('textbox', { name: 'To' }).fill('9k');
    await page.keyboard.press('Enter');
    await expect.poll(() => query().toString()).toBe('q=neck&reading=resistance&low=7000&high=9000');
    await understood()
      .getByRole('button', { name: 'No longer narrowed to: Resistance, 7 kΩ to 9 kΩ' })
      .waitFor();
    await expectAccessible(page);
  });

  it('are narrowed to days', async () => {
    await open('q=neck');
    await page.getByRole('textbox', { name: 'From' }).or(page.getByLabel('From')).first().fill('2026-01-01');
    await expect.poll(() => query().get('from')).toBe('2026-01-01');
    await understood().getByRole('button', { name: 'No longer narrowed to: from 1 Jan 2026' }).click();
    await expect.poll(() => query().get('from')).toBeNull();
  });

  it('play at one touch at their moment', async () => {
    await open('q=8.1k+neck');
    const filmed = (await asked('q=8.1k+neck')).answers.find(({ best }) => best.moment !== null);
    await playButton().click();
    await expectPlaying(filmed?.best.moment?.ms ?? Number.NaN);
    await expectAccessible(page);
    await page.getByRole('button', { name: 'Close the film' }).click();
    await expect
      .poll(() => playButton().evaluate((element) => element === document.activeElement))
      .toBe(true);
  });

  it('lead to the job at their moment, and Back leads to them again', async () => {
    const best = (await asked('q=8.1k+neck')).answers[0]?.best;
    await cards().first().getByRole('heading', { level: 3 }).getByRole('link').click();
    await page.waitForURL(/\/jobs\/[0-9a-z]{20}\?take=/);
    expect(query().get('take')).toBe(best?.moment?.takeId);
    expect(query().get('ms')).toBe(String(best?.moment?.ms));
    await page.getByRole('slider', { name: 'Film position' }).waitFor();
    await page.goBack();
    await cards().first().waitFor();
    expect(await box().inputValue()).toBe('8.1k neck');
  });

  it('go on where there are more, and so does the focus', async () => {
    for (let index = 0; index < 45; index++) await makeJob(app, `Rattling tailpiece number ${index}`);
    await open('q=rattling+tailpiece');
    await until(
      () => asked('q=rattling+tailpiece'),
      ({ waiting }) => waiting === 0,
    );
    await page.reload();
    await expect.poll(() => cards().count()).toBe(20);
    await page.getByRole('button', { name: 'Further answers' }).click();
    await expect.poll(() => cards().count()).toBe(40);
    await expect
      .poll(() =>
        cards()
          .nth(20)
          .evaluate((card) => card.contains(document.activeElement)),
      )
      .toBe(true);
    await page.getByRole('button', { name: 'Further answers' }).click();
    await expect.poll(() => cards().count()).toBeGreaterThanOrEqual(45);
    expect(await page.getByRole('button', { name: 'Further answers' }).count()).toBe(0);
  });
});

it('keeps a question, asks it again, and takes it off with a way back', async () => {
  await open('q=neck&instrument=bass+guitar');
  await page.getByRole('button', { name: 'Keep this question' }).click();
  const dialog = page.getByRole('dialog', { name: 'Keep this question' });
  await dialog.getByRole('textbox', { name: 'Title' }).fill('Necks of basses');
  await page.keyboard.press('Enter');
  await answers().getByText('Kept as “Necks of basses”').waitFor();
  await page.goto(`${app.url}/archive`);
  await page.getByRole('link', { name: 'Necks of basses' }).click();
  await expect.poll(() => query().toString()).toBe('q=neck&instrument=bass+guitar');
  await page.goBack();
  await page.getByRole('button', { name: 'Remove Necks of basses' }).click();
  await expect.poll(() => page.getByRole('link', { name: 'Necks of basses' }).count()).toBe(0);
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByRole('link', { name: 'Necks of basses' }).waitFor();
});

it('is asked, narrowed, played and opened by keyboard only', async () => {
  await open('');
  await page.keyboard.press('/');
  await page.keyboard.type('8.1k neck');
  await page.keyboard.press('Enter');
  await cards().first().waitFor();
  await tabTo(page.getByRole('button', { name: /^electric guitar \d/i }));
  await page.keyboard.press('Space');
  await expect.poll(() => query().get('instrument')).toBe('electric guitar');
  await page.keyboard.press('/');
  await tabTo(page.getByRole('button', { name: 'To the answers' }));
  await page.keyboard.press('Enter');
  await tabTo(playButton());
  await page.keyboard.press('Enter');
  const filmed = (await asked('q=8.1k+neck&instrument=electric+guitar')).answers[0];
  await expectPlaying(filmed?.best.moment?.ms ?? Number.NaN);
  await page.keyboard.press('Escape');
  await expect.poll(() => playButton().evaluate((element) => element === document.activeElement)).toBe(true);
  await tabTo(cards().first().getByRole('heading', { level: 3 }).getByRole('link'));
  await page.keyboard.press('Enter');
  await page.waitForURL(/\/jobs\/[0-9a-z]{20}\?take=/);
});

it('fits a phone, light and dark, and is narrowed there behind one button', async () => {
  await page.setViewportSize(sizes.phone);
  for (const colorScheme of ['dark', 'light'] as const) {
    await page.emulateMedia({ colorScheme });
    for (const search of ['', 'q=8.1k+neck+hot+sodler']) {
      await open(search);
      await expectNoSidewaysScroll(page);
      await expectAccessible(page);
    }
  }
  await open('q=neck');
  await page.getByRole('button', { name: 'Narrow', exact: true }).click();
  const dialog = page.getByRole('dialog', { name: 'Narrow the answers' });
  await dialog.getByRole('button', { name: /^bass guitar/i }).click();
  await expect.poll(() => query().get('instrument')).toBe('bass guitar');
  await expectAccessible(page);
  await closeSheet(page);
  await page.getByRole('button', { name: 'Narrow (1)' }).waitFor();
  await expectNoSidewaysScroll(page);
  await open('q=8.1k+neck');
  const filmed = (await asked('q=8.1k+neck')).answers.find(({ best }) => best.moment !== null);
  await playButton().click();
  await expectPlaying(filmed?.best.moment?.ms ?? Number.NaN);
  await expectNoSidewaysScroll(page);
  await page.setViewportSize(sizes.desktop);
});

describe('the settings of the archive', () => {
  it('keep the hemisphere and a word of one’s own, with a way back', async () => {
    await page.goto(`${app.url}/settings`);
    const archive = page.getByRole('region', { name: 'Archive' });
    const hemisphere = archive.getByRole('combobox', { name: 'Hemisphere' });
    await untilLive(hemisphere);
    await hemisphere.selectOption('south');
    await expect
      .poll(async () => (await ask(app, 'GET', '/api/archive/calendar')).body)
      .toEqual({ hemisphere: 'south', firstDayOfWeek: 1 });
    await archive.getByRole('textbox', { name: 'Your word' }).fill('wobblestick');
    await archive.getByRole('textbox', { name: 'Means in the trade' }).fill('tailpiece');
    await page.keyboard.press('Enter');
    await archive.getByText('“wobblestick” means “tailpiece”').waitFor();
    await expectAccessible(page);
    await until(
      () => asked('q=wobblestick'),
      ({ answers: found }) => found.length > 0,
    );
    await archive.getByRole('button', { name: 'Remove wobblestick' }).click();
    await expect.poll(() => archive.getByText('“wobblestick”').count()).toBe(0);
    await page.getByRole('button', { name: 'Undo' }).first().click();
    await archive.getByText('“wobblestick” means “tailpiece”').waitFor();
  });

  it('keep a logo, and refuse what is none', async () => {
    const sheet = page.getByRole('region', { name: 'Logo' });
    const dot =
      'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNkYPhfDwAChwGA60e6kgAAAABJRU5ErkJggg==';
    const file = (name: string, buffer: Buffer) => ({ name, mimeType: 'image/png', buffer });
    await sheet.getByLabel('Picture of the logo').setInputFiles(file('note.png', Buffer.from('no picture')));
    await sheet.getByRole('alert').getByText('That is no logo').waitFor();
    await sheet.getByLabel('Picture of the logo').setInputFiles(file('dot.png', Buffer.from(dot, 'base64')));
    await sheet.getByRole('img', { name: 'The workshop’s logo' }).waitFor();
    await sheet.getByRole('button', { name: 'Remove the logo' }).click();
    await expect.poll(() => sheet.getByRole('img').count()).toBe(0);
  });
});

it('had no trouble on the way', () => {
  // The server that was not heard, and the logo that was none, are told in the console too.
  expect(troubles.filter((trouble) => !/ERR_FAILED|status of 422/.test(trouble))).toEqual([]);
});
