import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { type JobRecord, jobRecordSchema, type NewJob, rackSchema } from '@/shared/jobs';
import { type App, launchBrowser, startApp } from '../app';
import { ask, getJob } from '../http/client';
import { closeSheet, expectAccessible, expectNoSidewaysScroll, openPage, sizes } from './page';

let app: App;
let browser: Browser;
let page: Page;
let troubles: string[];

beforeAll(async () => {
  app = await startApp();
  browser = await launchBrowser();
  ({ page, troubles } = await openPage(browser, app.url));
});
afterAll(async () => {
  await browser.close();
  await app.clear();
});

async function book(job: NewJob): Promise<JobRecord> {
  return jobRecordSchema.parse((await ask(app, 'POST', '/api/jobs', job)).body);
}
async function move(id: string, state: string): Promise<void> {
  const { status } = await ask(app, 'PATCH', `/api/jobs/${id}`, { state });
  expect(status).toBe(200);
}
const rack = async (find = '') =>
  rackSchema.parse((await ask(app, 'GET', `/api/jobs?${new URLSearchParams({ find })}`)).body);
const newest = async () => {
  const { jobs } = await rack();
  const [first] = jobs.toSorted((a, b) => b.number - a.number);
  if (!first) throw new Error('There is no job.');
  return getJob(app, first.id);
};
const titles = () => page.getByRole('heading', { level: 3 }).allTextContents();
const dayFromNow = (days: number) => {
  const at = new Date();
  at.setDate(at.getDate() + days);
  return at.toLocaleDateString('sv-SE');
};
const toBench = async () => {
  await page.goto(app.url);
  await page.getByRole('heading', { level: 1, name: 'Bench' }).waitFor();
};
const sheet = () => page.getByRole('dialog', { name: 'Book in a job' });
const openSheet = async () => {
  await page.getByRole('button', { name: 'Book in a job' }).click();
  await sheet().getByRole('textbox', { name: 'Title' }).waitFor();
};
const findBox = () => page.getByRole('searchbox', { name: 'Find a ticket' });

describe('an empty bench', () => {
  it('says what to do, at every size', async () => {
    await page.getByRole('heading', { name: 'The bench is clear.' }).waitFor();
    for (const size of Object.values(sizes)) {
      await page.setViewportSize(size);
      await expectNoSidewaysScroll(page);
      await expectAccessible(page);
    }
    await page.setViewportSize(sizes.desktop);
  });

  it('books in a job by keyboard with a title and a type', async () => {
    const began = Date.now();
    const title = 'Ukulele, action too high';
    const keys: string[] = [];
    const press = async (key: string) => {
      keys.push(key);
      await page.keyboard.press(key);
    };
    const button = page.getByRole('button', { name: 'Book in a job' });
    while (!(await button.evaluate((node) => node === document.activeElement))) await press('Tab');
    await press('Enter');
    await sheet().getByRole('textbox', { name: 'Title' }).waitFor();
    await page.keyboard.type(title);
    await press('Tab');
    await page.keyboard.type('uku');
    await press('Enter');
    await page.waitForURL(/\/jobs\/[0-9a-z]{20}$/);
    const record = await newest();
    expect([record.job.title, record.instrument.type, record.client]).toEqual([title, 'ukulele', null]);
    // The way there and two Enters; what is typed besides is the title and the start of the type.
    expect(keys.length).toBeLessThanOrEqual(12);
    console.info(
      `booked in with ${keys.length} keys beside the words, in ${Date.now() - began} ms by a machine`,
    );
  });
});

describe('booking in with more', () => {
  it('tells what is missing at its field and goes there', async () => {
    await toBench();
    await openSheet();
    await page.keyboard.press('Enter');
    await sheet().getByText('Give the job a title').waitFor();
    await sheet().getByText('Choose what kind of instrument it is.').waitFor();
    expect(
      await sheet()
        .getByRole('textbox', { name: 'Title' })
        .evaluate((box) => box === document.activeElement),
    ).toBe(true);
  });

  it('keeps a new client, a promise, what was asked, the place and what it came with', async () => {
    await page.keyboard.type('Mandolin, buzzes');
    await sheet().getByRole('combobox', { name: 'Instrument' }).selectOption('mandolin');
    await sheet().getByText('More: client').click();
    await sheet().getByRole('combobox', { name: 'Client' }).fill('Pernilla Quagswell');
    await sheet().getByRole('textbox', { name: 'What to call the client in public' }).fill('a folk player');
    await sheet().getByLabel('Promised for').fill(dayFromNow(3));
    await sheet().getByLabel('What was asked').fill('level the frets\n\n new strings ');
    await sheet().getByRole('checkbox', { name: 'strap' }).check();
    await sheet().getByLabel('Anything else').fill('two picks, a tuner');
    await sheet().getByLabel('Where it stands').fill('rack by the door');
    await expectAccessible(page);
    await sheet().getByRole('button', { name: 'Book in' }).click();
    await page.waitForURL(/\/jobs\/[0-9a-z]{20}$/);
    const { job, client, instrument, work } = await newest();
    expect(job).toMatchObject({
      title: 'Mandolin, buzzes',
      promisedOn: dayFromNow(3),
      place: 'rack by the door',
      cameWith: ['strap', 'two picks', 'a tuner'],
    });
    expect(client).toMatchObject({ name: 'Pernilla Quagswell', alias: 'a folk player' });
    expect(instrument.clientId).toBe(client?.id);
    expect(work.map(({ what, origin, outcome }) => [what, origin, outcome])).toEqual([
      ['level the frets', 'asked', 'open'],
      ['new strings', 'asked', 'open'],
    ]);
  });

  it('finds the client again by keyboard, and the instrument that comes back', async () => {
    const before = await newest();
    await toBench();
    await openSheet();
    await page.keyboard.type('Mandolin again');
    await sheet().getByText('More: client').click();
    await sheet().getByRole('combobox', { name: 'Client' }).focus();
    await page.keyboard.type('quags');
    await page.getByRole('option', { name: /Pernilla Quagswell/ }).waitFor();
    await expectAccessible(page);
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    await sheet().getByText('A client you know.').waitFor();
    expect(await sheet().getByRole('combobox', { name: 'Client' }).inputValue()).toBe('Pernilla Quagswell');
    await sheet().getByLabel('One that was here before?').selectOption({ index: 1 });
    expect(await sheet().getByRole('combobox', { name: 'Instrument' }).inputValue()).toBe('mandolin');
    await sheet().getByRole('textbox', { name: 'Title' }).press('Enter');
    await page.waitForURL((url) => /^\/jobs\/[0-9a-z]{20}$/.test(url.pathname));
    const after = await newest();
    expect(after.job.title).toBe('Mandolin again');
    expect(after.client?.id).toBe(before.client?.id);
    expect(after.instrument.id).toBe(before.instrument.id);
  });

  it('takes another name for somebody else', async () => {
    await toBench();
    await openSheet();
    await page.keyboard.type('Banjo, loose head');
    await sheet().getByRole('combobox', { name: 'Instrument' }).selectOption('banjo');
    await sheet().getByText('More: client').click();
    await sheet().getByRole('combobox', { name: 'Client' }).focus();
    await page.keyboard.type('Pernilla');
    await page.getByRole('option', { name: /Pernilla Quagswell/ }).click();
    await sheet().getByText('A client you know.').waitFor();
    await page.keyboard.type(' the Younger');
    await sheet().getByRole('textbox', { name: 'What to call the client in public' }).waitFor();
    await sheet().getByRole('button', { name: 'Book in' }).click();
    await page.waitForURL(/\/jobs\/[0-9a-z]{20}$/);
    const { client, instrument } = await newest();
    expect([client?.name, instrument.type]).toEqual(['Pernilla Quagswell the Younger', 'banjo']);
  });

  it('tells at the field what the server refuses, and books nothing in', async () => {
    await toBench();
    const { total } = await rack();
    await openSheet();
    await page.keyboard.type('Cello bow');
    await sheet().getByRole('combobox', { name: 'Instrument' }).selectOption('violin family');
    await sheet().getByText('More: client').click();
    await sheet().getByLabel('Promised for').fill(dayFromNow(-5));
    await sheet().getByText('More: client').click();
    await sheet().getByRole('button', { name: 'Book in' }).click();
    const note = sheet().getByText('It would be promised for a day before it was received.');
    await note.waitFor();
    const said = await sheet().getByLabel('Promised for').getAttribute('aria-describedby');
    expect(await note.getAttribute('id')).toBe(said);
    expect((await rack()).total).toBe(total);
  });

  it('keeps what was written when the sheet is put away, and refuses a day that does not exist', async () => {
    await page.keyboard.press('Escape');
    await sheet().waitFor({ state: 'hidden' });
    await openSheet();
    expect(await sheet().getByRole('textbox', { name: 'Title' }).inputValue()).toBe('Cello bow');
    await sheet().getByLabel('Promised for').fill('');
    await sheet().getByLabel('Promised for').focus();
    await page.keyboard.type('02302027');
    await sheet().getByRole('button', { name: 'Book in' }).click();
    await sheet().getByText('There is no such day.').waitFor();
    await closeSheet(page);
  });
});

describe('a rack with a few tickets', () => {
  let loose: JobRecord;
  let gone: JobRecord;

  beforeAll(async () => {
    await book({
      title: 'Due late',
      instrument: { type: 'banjo' },
      receivedOn: dayFromNow(-9),
      promisedOn: dayFromNow(-2),
    });
    const bench = await book({ title: 'In the vice', instrument: { type: 'bass guitar' } });
    const ready = await book({ title: 'Strung up', instrument: { type: 'classical guitar' } });
    gone = await book({ title: 'Gone home', instrument: { type: 'electric guitar', maker: 'unknown' } });
    loose = await book({
      title: 'Many wishes',
      instrument: { type: 'electric guitar', serial: 'QX-771' },
      client: { name: 'Ödön Brambleworth' },
      work: ['one', 'two', 'three', 'four', 'five'].map((what) => ({ what: `wish ${what}` })),
    });
    await move(bench.job.id, 'on the bench');
    await move(ready.job.id, 'ready');
    await move(gone.job.id, 'collected');
  });

  it('hangs them in groups, in the order of the server', async () => {
    await toBench();
    const headings = await page.getByRole('heading', { level: 2 }).allTextContents();
    expect(headings.map((words) => words.replace(/\s+/g, ' ').trim())).toEqual([
      'On the bench (1)',
      'Due (6) 1 overdue',
      'Ready to be collected (1)',
      'Collected (1)',
    ]);
    expect((await titles()).slice(0, 2)).toEqual(['In the vice', 'Due late']);
    const overdue = page.getByRole('link', { name: /^overdue: promised for/ });
    expect(await overdue.getAttribute('href')).toMatch(/^\/jobs\/[0-9a-z]{20}\/ticket#/);
    const shown = await titles();
    expect(shown).toEqual(
      (await rack()).jobs.filter(({ state }) => state !== 'collected').map(({ title }) => title),
    );
  });

  it('unfolds those gone on demand', async () => {
    const fold = page.getByRole('button', { name: /Collected/ });
    expect(await fold.getAttribute('aria-expanded')).toBe('false');
    await fold.press('Enter');
    await page.getByText('collected today').waitFor();
    expect(await titles()).toEqual((await rack()).jobs.map(({ title }) => title));
    await fold.press('Enter');
    expect(await titles()).not.toContain('Gone home');
  });

  it('finds as it is typed: by client, instrument, words, number and what is to be done', async () => {
    const finds = async (question: string, ...wanted: string[]) => {
      await findBox().fill(question);
      await expect.poll(titles).toEqual(wanted);
    };
    await finds('odon', 'Many wishes');
    await finds('qx-771', 'Many wishes');
    await finds('bass', 'In the vice');
    await finds('gone home', 'Gone home');
    await finds(String(gone.job.number).padStart(4, '0'), 'Gone home');
    await finds('wish three', 'Many wishes');
    await page.getByText('1 ticket found').waitFor();
    await findBox().fill('no such words at all');
    await page.getByText('No ticket holds all of these words.').waitFor();
    await page.getByRole('button', { name: 'Show all tickets' }).click();
    expect(await findBox().inputValue()).toBe('');
    await expect.poll(titles).toContain('Strung up');
  });

  it('opens the first on Enter, and the ticket of a number', async () => {
    await findBox().fill('vice');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { level: 1, name: 'In the vice' }).waitFor();
    await toBench();
    await findBox().fill(String(gone.job.number));
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { level: 1, name: 'Gone home' }).waitFor();
    await toBench();
    await findBox().pressSequentially('wish four');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { level: 1, name: 'Many wishes' }).waitFor();
  });

  it('tells loose ends in whole sentences, each leading to where it is tied up', async () => {
    await toBench();
    const ends = page.getByRole('list', {
      name: `Loose ends of ticket ${String(loose.job.number).padStart(4, '0')}`,
    });
    const { looseEnds } = z
      .object({ looseEnds: z.array(z.object({ sentence: z.string() })) })
      .parse((await ask(app, 'GET', `/api/jobs/${loose.job.id}/loose-ends`)).body);
    const told = await ends.getByRole('link').allTextContents();
    expect(told).toEqual([
      ...looseEnds.slice(0, 2).map(({ sentence }) => sentence),
      `and ${looseEnds.length - 2} more`,
    ]);
    const first = ends.getByRole('link').first();
    const address = await first.getAttribute('href');
    expect(address).toMatch(new RegExp(`^/jobs/${loose.job.id}[/?]`));
    await first.click();
    await page.waitForURL((url) => url.pathname + url.search + url.hash === address);
    // What the address points at is there.
    await page.locator(`[id="${address?.split('#')[1]}"]`).waitFor();
  });

  it('opens the job wherever else the ticket is touched, and a loose end by keyboard', async () => {
    await toBench();
    const ticket = page
      .getByRole('listitem')
      .filter({ has: page.getByRole('heading', { name: 'Many wishes' }) });
    await ticket.getByText('for Ödön Brambleworth').click({ position: { x: 5, y: 5 }, force: true });
    await page.getByRole('heading', { level: 1, name: 'Many wishes' }).waitFor();
    await toBench();
    await ticket.getByRole('link', { name: 'Many wishes' }).focus();
    await page.keyboard.press('Tab');
    expect(await page.evaluate(() => document.activeElement?.textContent)).toContain('wish one');
  });

  it('opens at the last moment, where there is one', async () => {
    expect(await page.getByRole('link', { name: /Open at the last moment/ }).count()).toBe(0);
    const { job } = z
      .object({ job: z.object({ id: z.string() }) })
      .parse((await ask(app, 'POST', '/api/demo')).body);
    await toBench();
    const ticket = (await rack()).jobs.find(({ id }) => id === job.id);
    const link = page.getByRole('link', { name: /Open at the last moment/ });
    const address = `/jobs/${job.id}?take=${ticket?.lastMoment?.takeId}&ms=${ticket?.lastMoment?.ms}`;
    expect(await link.getAttribute('href')).toBe(address);
    await link.click();
    await page.waitForURL((url) => url.pathname + url.search === address);
  });

  it('is accessible and never scrolls sideways, folded and unfolded', async () => {
    await toBench();
    await page.getByRole('button', { name: /Collected/ }).click();
    for (const size of Object.values(sizes)) {
      await page.setViewportSize(size);
      await expectNoSidewaysScroll(page);
      await expectAccessible(page);
    }
    await page.setViewportSize(sizes.phone);
    await openSheet();
    await sheet().getByText('More: client').click();
    await expectNoSidewaysScroll(page);
    await expectAccessible(page);
    await closeSheet(page);
    await page.setViewportSize(sizes.desktop);
  });
});

describe('a rack with more than the page comes with', () => {
  it('shows two hundred, looks through all, and brings more', async () => {
    const { total } = await rack();
    for (let number = total; number < 230; number++)
      await book({
        title: `Refret of number ${number}`,
        instrument: { type: number % 2 ? 'ukulele' : 'mandolin' },
        promisedOn: dayFromNow(number % 9),
      });
    await toBench();
    await page.getByText('230 tickets').waitFor();
    const all = (await rack()).jobs.map(({ title }) => title);
    expect(await titles()).toEqual(all.slice(0, 200));
    const last = all.at(-1) ?? '';
    await findBox().fill(last);
    await expect.poll(titles).toContain(last);
    await findBox().fill('refret');
    const found = 230 - total;
    await page.getByText(`${found} tickets found, the first 200 shown`).waitFor();
    await page.getByRole('button', { name: `Show more (${found - 200} to come)` }).click();
    await expect.poll(async () => (await titles()).length).toBe(found);
    await findBox().fill('');
    await page.getByRole('button', { name: 'Show more (30 to come)' }).click();
    await page.getByRole('button', { name: /Collected/ }).click();
    await expect.poll(titles).toEqual(all);
    await expectNoSidewaysScroll(page);
  });

  it('made no script error and asked nobody else', () => {
    // A refused booking is the only failed call.
    expect(troubles.filter((trouble) => !trouble.includes('422'))).toEqual([]);
  });
});
