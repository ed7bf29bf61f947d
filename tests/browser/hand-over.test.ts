import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, BrowserContext, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import type { MadeCut } from '@/shared/cut';
import { type HandOverView, handOverViewSchema } from '@/shared/hand-over';
import { type JobRecord, jobRecordSchema } from '@/shared/jobs';
import { type App, launchBrowser, startApp } from '../app';
import { addTake, ask, getJob, nameFolder, settled } from '../http/client';
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

const talk = `WEBVTT

00:04.000 --> 00:07.000
this is Ottoline's guitar
`;

beforeAll(async () => {
  folder = realpathSync(mkdtempSync(join(tmpdir(), 'benchtake-hand-over-')));
  app = await startApp();
  await nameFolder(app, folder);
  jobId = await bookIn();
  address = `${app.url}/jobs/${jobId}/hand-over`;
  browser = await launchBrowser();
  ({ page, context, troubles } = await openPage(browser, address));
});
afterAll(async () => {
  await browser.close();
  await app.clear();
  rmSync(folder, { recursive: true });
});

/** A job with two short takes, four markers, and the client's name spoken once and written once. */
async function bookIn(): Promise<string> {
  const { job } = jobRecordSchema.parse(
    (
      await ask(app, 'POST', '/api/jobs', {
        title: 'Crackle on the neck pickup',
        instrument: { type: 'electric guitar' },
        client: { name: 'Ottoline Fernsby', alias: 'a returning client' },
        work: [{ what: 'Find the crackle', origin: 'asked' }],
      })
    ).body,
  );
  const takeIds: string[] = [];
  for (const [nth, at] of ['2026-03-17T09:00:00Z', '2026-03-17T09:05:00Z'].entries()) {
    const path = makeRecording(folder, `neck pickup ${nth + 1}.mp4`, { seconds: 12, at });
    takeIds.push((await addTake(app, job.id, path)).id);
  }
  await settled(app, job.id);
  const marks = [
    ['intake', 'Case open', 0, 0],
    ['diagnosis', 'Ottoline taps the neck pickup', 0, 5_000],
    ['work', 'New joint', 1, 1_000],
    ['result', 'Quiet', 1, 10_000],
  ] as const;
  for (const [kind, title, take, ms] of marks)
    await ask(app, 'POST', `/api/jobs/${job.id}/markers`, { kind, title, takeId: takeIds[take], ms });
  const said = await ask(app, 'POST', `/api/takes/${takeIds[0]}/narration?name=talk.vtt`, talk, {
    'content-type': 'text/vtt',
  });
  expect(said.status).toBeLessThan(300);
  return job.id;
}

/** The page keeps what was done after it showed it. */
const soon = <T>(get: () => T) => expect.poll(get, { timeout: 10_000 });
const record = (): Promise<JobRecord> => getJob(app, jobId);
const view = async (): Promise<HandOverView> =>
  handOverViewSchema.parse((await ask(app, 'GET', `/api/jobs/${jobId}/hand-over`)).body);
const part = (name: string, on: Page = page) => on.getByRole('region', { name, exact: true });
const open = async (name: string, on: Page = page) => {
  await on.getByRole('tab', { name: new RegExp(`^${name}`) }).click();
  await part(name, on).waitFor();
};
const button = (name: string | RegExp, within: Page | Locator = page) =>
  within.getByRole('button', { name, exact: typeof name === 'string' });
const has = (where: Locator) => where.evaluate((element) => element.contains(document.activeElement));
/** The film stands at a time, told by its slider in whole seconds. */
const filmAt = (seconds: number) =>
  soon(() => page.getByRole('slider', { name: 'Film position' }).getAttribute('aria-valuenow')).toBe(
    String(seconds),
  );
const stepOn = async (seconds: number, from: number) => {
  await page.evaluate(() => document.activeElement instanceof HTMLElement && document.activeElement.blur());
  for (let at = from; at < from + seconds; at++) {
    await page.keyboard.press('ArrowRight');
    await filmAt(at + 1);
  }
};

describe('what stands in the way', () => {
  const way = () => part('What stands in the way');

  it('holds the public documents back', async () => {
    await way().getByText('Said on film').waitFor();
    expect((await view()).cut.findings.map(({ what, decision }) => [what, decision])).toEqual([
      ['written', 'open'],
      ['spoken', 'open'],
    ]);
    await part('Chapter list').getByText('1 private finding stands in the way').waitFor();
    expect(await button('Copy the list').count()).toBe(0);
    await open('Public cut');
    await part('Make it').getByText('2 private findings stand in the way').waitFor();
    expect(await button('Make the public cut').count()).toBe(0);
    expect((await ask(app, 'POST', `/api/jobs/${jobId}/exports/cut`, {})).status).toBe(409);
    await expectAccessible(page);
  });

  it('leads to where the words stand', async () => {
    await button(/^Go there: Ottoline/, way()).click();
    await filmAt(4);
    await button('See what stands in the way', part('Make it')).click();
    expect(await has(way())).toBe(true);
  });

  it('is decided by keyboard, the focus going on to the next', async () => {
    await button(/^Allow on purpose: Ottoline/, way()).focus();
    await page.keyboard.press('Enter');
    await soon(async () => (await view()).cut.findings.map(({ decision }) => decision)).toEqual([
      'allowed',
      'open',
    ]);
    await soon(() => has(way())).toBe(true);
    await button(/^Mute: Ottoline/, way()).focus();
    await page.keyboard.press('Enter');
    await way().getByText('All that is private was decided.').waitFor();
    await soon(() => has(way())).toBe(true);
    expect((await view()).cut.findings.map(({ decision }) => decision)).toEqual(['allowed', 'held back']);
  });

  it('is changed again, and the notice takes a step back', async () => {
    await way().getByText('2 findings decided').click();
    await button(/^Leave it in: Ottoline/, way()).click();
    await soon(async () => (await view()).cut.findings[1]?.decision).toBe('allowed');
    await page.getByText('Left in on purpose: Ottoline').waitFor();
    await button('Undo').first().click();
    await soon(async () => (await view()).cut.findings[1]?.decision).toBe('held back');
  });
});

describe('the chapter list', () => {
  const list = () => part('Chapter list');

  it('is copied as it is exported', async () => {
    await open('Chapter list');
    await button('Copy the list', list()).click();
    await button('Copied', list()).waitFor();
    const copied = await page.evaluate(() => navigator.clipboard.readText());
    expect(copied.split('\n').slice(0, 2)).toEqual(['0:00 Case open', '0:05 Ottoline taps the neck pickup']);
    expect(copied).toBe((await ask(app, 'GET', `/api/jobs/${jobId}/exports/chapters?as=text`)).body);
  });

  it('says where hosts would refuse it, and mends a copy; the markers stay', async () => {
    const before = (await record()).markers;
    await list().getByText('“Case open” lasts 5 seconds').waitFor();
    await button('Fix for me', list()).click();
    await list().getByText('so two chapters become one').first().waitFor();
    await button('Copy the mended list', list()).click();
    const copied = await page.evaluate(() => navigator.clipboard.readText());
    expect(copied.split('\n')[0]).toMatch(/^0:00 /);
    expect(copied.trim().split('\n').length).toBeLessThan(4);
    const saving = page.waitForEvent('download');
    await button('Save the mended list as WebVTT', list()).click();
    const saved = await saving;
    expect(saved.suggestedFilename()).toBe('job-1-chapters.vtt');
    expect(readFileSync(await saved.path(), 'utf8')).toMatch(/^WEBVTT\n/);
    expect((await record()).markers).toEqual(before);
    await button('Close the preview', list()).click();
  });
});

describe('the episode notes', () => {
  const words = (on: Page = page) => on.getByLabel('Words of “What came in”');
  const cameIn = async () => (await view()).notes.sections.find(({ id }) => id === 'came in');

  it('are written over and kept as the section is left', async () => {
    await open('Episode notes');
    await words().fill('A guitar that crackles came in.');
    await page.keyboard.press('Tab');
    await part('Episode notes').getByText('in your words').waitFor();
    expect(await cameIn()).toMatchObject({ text: 'A guitar that crackles came in.', edited: true });
  });

  it('are marked as behind when the facts change, with what came', async () => {
    await ask(app, 'POST', `/api/jobs/${jobId}/work`, { what: 'Polish the frets', origin: 'asked' });
    await page.reload();
    await part('Episode notes').getByText('Behind the record.').waitFor();
    expect(await part('Episode notes').locator('ins').allTextContents()).toContainEqual(
      expect.stringMatching(/^added: .*Polish the frets/s),
    );
    expect(await words().inputValue()).toBe('A guitar that crackles came in.');
    await expectAccessible(page);
  });

  it('keep mine: it is behind no more, and mine stands', async () => {
    await button('Keep mine: What came in').click();
    await part('Episode notes').getByText('in your words').waitFor();
    expect(await cameIn()).toMatchObject({ text: 'A guitar that crackles came in.', behind: false });
  });

  it('take the new draft: it follows the record again', async () => {
    await ask(app, 'POST', `/api/jobs/${jobId}/work`, { what: 'New strings', origin: 'asked' });
    await page.reload();
    await button('Take the new draft: What came in').click();
    await soon(async () => (await cameIn())?.edited).toBe(false);
    await soon(() => words().inputValue()).toContain('New strings');
  });

  it('are put in order and switched off by keyboard', async () => {
    const order = async () => (await view()).notes.sections.map(({ id }) => id);
    const before = await order();
    expect(before[0]).toBe('came in');
    const down = button('Move down: What came in');
    await down.focus();
    await page.keyboard.press('Enter');
    await soon(order).toEqual([before[1], before[0], ...before.slice(2)]);
    await soon(() => has(down)).toBe(true);
    const tick = page.getByRole('checkbox', { name: 'What came in' });
    await tick.focus();
    await page.keyboard.press('Space');
    await words().waitFor({ state: 'hidden' });
    const { body } = await ask(app, 'GET', `/api/jobs/${jobId}/exports/notes?as=markdown`);
    expect(body).not.toContain('## What came in');
    await page.keyboard.press('Space');
    await words().waitFor();
  });

  it('tell the later of two windows, and both texts are still there', async () => {
    const other = await context.newPage();
    await other.goto(`${address}#notes`);
    await words(other).waitFor();
    await words(other).focus();
    await words().fill('Written first.');
    await page.keyboard.press('Tab');
    await soon(async () => (await cameIn())?.text).toBe('Written first.');
    await words(other).fill('Written second.');
    await other.keyboard.press('Tab');
    await other.getByText('There it says:').getByText('Written first.').waitFor();
    expect(await words(other).inputValue()).toBe('Written second.');
    expect((await cameIn())?.text).toBe('Written first.');
    await button('Keep mine', other).click();
    await soon(async () => (await cameIn())?.text).toBe('Written second.');
    await other.close();
  });

  it('are copied as Markdown, with times that lead into the video', async () => {
    await page.reload();
    await page.getByLabel('Where the video will be seen').fill('nowhere');
    await page.keyboard.press('Enter');
    await page.getByText('It must be: an address that begins with').waitFor();
    await page.getByLabel('Where the video will be seen').fill('https://video.example/crackle');
    await page.keyboard.press('Enter');
    await soon(async () => (await view()).notes.videoAddress).toBe('https://video.example/crackle');
    await button('Copy the notes').click();
    await button('Copied').waitFor();
    const copied = await page.evaluate(() => navigator.clipboard.readText());
    expect(copied).toContain('https://video.example/crackle#t=');
    expect(copied).not.toContain('Fernsby');
  });
});

describe('the client summary', () => {
  it('is typed, pictures are chosen, and the PDF holds it', async () => {
    await open('Client summary');
    await page.getByLabel('Greeting').fill('Thank you for waiting.');
    await page.getByLabel('Closing words').fill('See you at the autumn market.');
    await page.keyboard.press('Tab');
    await page.getByRole('checkbox', { name: 'Case open' }).click();
    await soon(async () => (await view()).summary.kept.stills?.length).toBeGreaterThan(0);
    await button('Letter', part('Client summary')).click();
    await soon(async () => (await view()).summary.kept).toMatchObject({
      paper: 'letter',
      greeting: 'Thank you for waiting.',
      closing: 'See you at the autumn market.',
    });
    const link = part('Client summary').getByRole('link', { name: /Open the PDF/ });
    const answer = await fetch(`${app.url}${await link.getAttribute('href')}`);
    expect(answer.headers.get('content-type')).toBe('application/pdf');
    const pdf = join(folder, 'summary.pdf');
    writeFileSync(pdf, Buffer.from(await answer.arrayBuffer()));
    // Outside check: poppler reads what was written.
    const text = execFileSync('pdftotext', [pdf, '-'], { encoding: 'utf8' });
    expect(text).toContain('Thank you for waiting.');
    expect(text).toContain('See you at the autumn market.');
    expect(execFileSync('pdfinfo', [pdf], { encoding: 'utf8' })).toMatch(/Page size:\s+612 x 792/);
  });
});

const probedSchema = z.object({
  format: z.object({ duration: z.coerce.number() }),
  chapters: z.array(z.object({ tags: z.object({ title: z.string() }) })),
});

describe('the public cut', () => {
  const settings = async () => (await view()).cut.settings;
  let written: MadeCut | undefined;

  it('leaves out what is marked on the film', async () => {
    await page.goto('about:blank');
    await page.goto(`${address}#cut`);
    await page.getByRole('slider', { name: 'Film position' }).waitFor();
    await stepOn(1, 0);
    await button('Leave out from here').click();
    await stepOn(2, 1);
    await button(/^… to here/).click();
    await page.getByRole('list', { name: 'Left out: 1 part' }).waitFor();
    const [span] = (await settings()).cutAway;
    expect(Math.abs((span?.fromMs ?? 0) - 1_000)).toBeLessThanOrEqual(40);
    expect(Math.abs((span?.toMs ?? 0) - 3_000)).toBeLessThanOrEqual(40);
    await part('Public cut').getByText('0:22 of 0:24 will be shown').waitFor();
  });

  it('its times can be typed, to the millisecond', async () => {
    await button(/^Change: left out/).click();
    await page.getByLabel('Ends at').fill('0:00.5');
    await page.keyboard.press('Enter');
    await page.getByText('It would end before it starts.').waitFor();
    await page.getByLabel('Ends at').fill('0:02.250');
    await page.keyboard.press('Enter');
    await soon(async () => (await settings()).cutAway[0]?.toMs).toBe(2_250);
    await page.getByLabel('Starts at').fill('0:00.750');
    await page.keyboard.press('Enter');
    await soon(async () => (await settings()).cutAway[0]?.fromMs).toBe(750);
    await button(/^Close: left out/).click();
  });

  it('goes over a seam between takes', async () => {
    await stepOn(8, 3);
    await button('Mute from here').click();
    await stepOn(2, 11);
    await button(/^… to here/).click();
    await page.getByRole('list', { name: 'Muted by hand: 2 spans' }).waitFor();
    const { muted } = await settings();
    const { takes } = await record();
    const [first, second] = takes.map(({ id }) => muted.find(({ takeId }) => takeId === id));
    expect(first?.toMs).toBe(takes[0]?.durationMs);
    expect(second?.fromMs).toBe(0);
  });

  it('covers what is drawn over with the pointer, or typed', async () => {
    await button('Cover from here').click();
    await stepOn(2, 13);
    await button(/^… to here/).click();
    await button(/^Change: covered/).click();
    const drawing = page.locator('[data-drawing]');
    await drawing.locator('img').evaluate((still: HTMLImageElement) => still.decode());
    await drawing.scrollIntoViewIfNeeded();
    const box = await drawing.boundingBox();
    if (!box) throw new Error('There is nothing to draw on.');
    await page.mouse.move(box.x + box.width * 0.1, box.y + box.height * 0.2);
    await page.mouse.down();
    await page.mouse.move(box.x + box.width * 0.6, box.y + box.height * 0.5, { steps: 4 });
    await page.mouse.up();
    await soon(async () => (await settings()).covers[0]?.width).toBeCloseTo(0.5, 2);
    const [cover] = (await settings()).covers;
    expect(cover?.x).toBeCloseTo(0.1, 2);
    expect(cover?.y).toBeCloseTo(0.2, 2);
    await page.getByLabel('Width, %').fill('95');
    await page.keyboard.press('Enter');
    await page.getByText('It lies outside of the picture.').waitFor();
    await page.getByLabel('Width, %').fill('25.5');
    await page.keyboard.press('Enter');
    await soon(async () => (await settings()).covers[0]?.width).toBe(0.255);
    await button(/^Take off: covered/).click();
    await soon(async () => (await settings()).covers).toEqual([]);
  });

  it('says how the cuts would fall', async () => {
    await button('Show how the cuts would fall').click();
    const table = page.getByRole('table', { name: 'Pieces of the cut' });
    await table.waitFor();
    expect(await table.getByRole('row').count()).toBe(1 + 3);
    await part('How it is made').getByText('Matroska').click();
    await soon(async () => (await settings()).format).toBe('mkv');
    await part('How it is made').getByText('MP4').click();
    await soon(async () => (await settings()).format).toBe('mp4');
    await button('−16 LUFS').click();
    await soon(async () => (await settings()).lufs).toBe(-16);
  });

  it('is made, looked at afresh, and played', async () => {
    await button('Make the public cut').click();
    const made = page.getByRole('list', { name: 'Public cuts that were made' });
    await made.waitFor({ timeout: 90_000 });
    const [cut] = (await view()).cut.made;
    if (!cut) throw new Error('No cut is on the list.');
    written = cut;
    await made.getByText('in step:').waitFor();
    await made.getByText('no place, no device.').waitFor();
    // Outside check: Debian's ffprobe reads the file.
    const probed = probedSchema.parse(
      JSON.parse(
        execFileSync('ffprobe', ['-v', 'error', '-of', 'json', '-show_format', '-show_chapters', cut.path], {
          encoding: 'utf8',
        }),
      ),
    );
    expect(Math.abs(probed.format.duration * 1000 - cut.inspection.durationMs)).toBeLessThanOrEqual(100);
    expect(probed.chapters.map(({ tags }) => tags.title)).toEqual(
      cut.inspection.chapters.map(({ title }) => title),
    );
    await button(/^Play public-cut/, made).click();
    const film = made.locator('video');
    await soon(() => film.evaluate((video: HTMLVideoElement) => video.duration)).toBeCloseTo(
      probed.format.duration,
      0,
    );
    await film.evaluate((video: HTMLVideoElement) => {
      video.muted = true;
      return video.play();
    });
    await soon(() => film.evaluate((video: HTMLVideoElement) => video.currentTime)).toBeGreaterThan(0);
    await expectAccessible(page);
    const saving = page.waitForEvent('download');
    await made.getByRole('link', { name: /^Save a copy/ }).click();
    expect(readFileSync(await (await saving).path())).toEqual(readFileSync(cut.path));
  });

  it('is taken off the list and put back; its file stays', async () => {
    await button(/^Take off the list/).click();
    await soon(async () => (await view()).cut.made).toEqual([]);
    expect(readFileSync(written?.path ?? '').length).toBe(written?.inspection.sizeBytes);
    await button('Undo').first().click();
    await soon(async () => (await view()).cut.made.length).toBe(1);
  });
});

describe('the page', () => {
  it('made no script error and asked nobody else', () => {
    // Refused on purpose above: an address that is none, and a section that another window had changed.
    expect(troubles.filter((trouble) => !/status of 4(00|09|22)/.test(trouble))).toEqual([]);
  });

  for (const size of ['desktop', 'tablet', 'phone'] as const) {
    it(`axe finds nothing and nothing sticks out: ${size} (${sizes[size].width} px)`, async () => {
      const opened = await openPage(browser, address, size);
      for (const name of ['Chapter list', 'Episode notes', 'Client summary', 'Public cut']) {
        await open(name, opened.page);
        await expectAccessible(opened.page);
        await expectNoSidewaysScroll(opened.page);
      }
      expect(opened.troubles).toEqual([]);
      await opened.context.close();
    });
  }

  it('says what to do on a job without a film', async () => {
    const { job } = jobRecordSchema.parse(
      (await ask(app, 'POST', '/api/jobs', { title: 'Nothing yet', instrument: { type: 'ukulele' } })).body,
    );
    await page.goto(`${app.url}/jobs/${job.id}/hand-over`);
    await part('Chapter list').getByText('Public markers become chapters.').waitFor();
    await open('Public cut');
    await part('Public cut').getByText('There is no film yet').waitFor();
    await expectAccessible(page);
  });
});
