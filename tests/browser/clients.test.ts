import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { type Client, clientLinesSchema, clientSchema, type NewClient } from '@/shared/clients';
import { type App, launchBrowser, startApp } from '../app';
import { ask, getJob } from '../http/client';
import { expectAccessible, expectNoSidewaysScroll, openPage, sizes } from './page';

let app: App;
let browser: Browser;
let page: Page;
let troubles: string[];

beforeAll(async () => {
  app = await startApp();
  browser = await launchBrowser();
  ({ page, troubles } = await openPage(browser, `${app.url}/clients`));
});
afterAll(async () => {
  await browser.close();
  await app.clear();
});

const write = async (client: NewClient): Promise<Client> =>
  z.object({ client: clientSchema }).parse((await ask(app, 'POST', '/api/clients', client)).body).client;
const all = async () => clientLinesSchema.parse((await ask(app, 'GET', '/api/clients')).body).clients;
const heading = (name: string) => page.getByRole('heading', { level: 1, name });

/** Tab until the wanted thing has the focus. */
async function tabTo(wanted: Locator): Promise<void> {
  await wanted.waitFor();
  for (let presses = 0; presses < 80; presses++) {
    if (await wanted.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error('The keyboard does not reach it.');
}

describe('the clients, by keyboard', () => {
  it('says what to do while there are none, and writes the first down', async () => {
    await heading('No clients yet.').waitFor();
    await expectAccessible(page);
    await tabTo(page.getByRole('button', { name: 'Write down a client' }));
    await page.keyboard.press('Enter');
    await page.getByRole('dialog', { name: 'Write down a client' }).waitFor();
    await page.keyboard.press('Enter');
    await page.getByRole('alert').getByText('Write the name').waitFor();
    await expectAccessible(page);
    await page.keyboard.type('Ada Plainly');
    await page.keyboard.press('Enter');
    await heading('Ada Plainly').waitFor();
    await expectAccessible(page);
  });

  it('keeps each line of the entry when it is left, and takes it back', async () => {
    const reach = page.getByRole('textbox', { name: 'How to reach them' });
    await tabTo(reach);
    await page.keyboard.type('555-0123');
    await page.keyboard.press('Enter');
    await page.keyboard.type('by post');
    await page.keyboard.press('Tab');
    await expect.poll(async () => (await all())[0]?.reach).toBe('555-0123\nby post');
    const name = page.getByRole('textbox', { name: 'Name' });
    await name.fill('Ada P. Plainly');
    await name.press('Enter');
    await heading('Ada P. Plainly').waitFor();
    await page.getByRole('button', { name: 'Undo' }).first().click();
    await heading('Ada Plainly').waitFor();
    expect(await name.inputValue()).toBe('Ada Plainly');
  });

  it('says beside the line when another window was faster', async () => {
    const [ada] = await all();
    const notes = page.getByRole('textbox', { name: 'Notes' });
    await notes.fill('likes light strings');
    await ask(app, 'PATCH', `/api/clients/${ada?.id}`, { notes: 'likes heavy strings' });
    await notes.press('Tab');
    await page.getByText('likes heavy strings').waitFor();
    await page.getByRole('button', { name: 'Keep mine' }).click();
    await expect.poll(async () => (await all())[0]?.notes).toBe('likes light strings');
  });

  it('hands everything out as one file', async () => {
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('link', { name: 'Export all of it' }).click(),
    ]);
    expect(file.suggestedFilename()).toMatch(/^client-.*\.json$/);
  });

  it('finds one among 300 as it is typed, and Enter opens it', async () => {
    for (let index = 0; index < 300; index++)
      await write({ name: `${'ABCDEFGHIJ'[index % 10]}nders Filler ${index}`, reach: `555-${9000 + index}` });
    await page.goto(`${app.url}/clients`);
    await page.getByText('301 clients').waitFor();
    await expectAccessible(page);
    await tabTo(page.getByRole('searchbox', { name: 'Find a client' }));
    await page.keyboard.type('nobody at all');
    await page.getByText('No client’s card holds all of these words.').waitFor();
    await page.keyboard.press('Control+a');
    await page.keyboard.type('555-9123');
    await page.getByText('1 of 301 clients').waitFor();
    await page.keyboard.press('Enter');
    await heading('Dnders Filler 123').waitFor();
  });

  it('makes one of two entries, told what will happen first', async () => {
    const into = await write({ name: 'Bo Marrowby' });
    const other = await write({ name: 'B. Marrowby', reach: 'by post' });
    const { body } = await ask(app, 'POST', '/api/jobs', {
      title: 'Marrowby mandolin',
      instrument: { type: 'mandolin' },
      client: { id: other.id },
    });
    const { job } = z.looseObject({ job: z.object({ id: z.string() }) }).parse(body);
    await page.goto(`${app.url}/clients/${into.id}`);
    await tabTo(page.getByRole('button', { name: 'Make one of two entries' }));
    await page.keyboard.press('Enter');
    const dialog = page.getByRole('dialog', { name: 'Make one of two entries' });
    // The like name comes first.
    await tabTo(dialog.getByRole('radio').first());
    await page.keyboard.press('Space');
    await dialog.getByText('1 job and 1 instrument of B. Marrowby go to Bo Marrowby.').waitFor();
    await expectAccessible(page);
    await tabTo(dialog.getByRole('button', { name: 'Make one entry' }));
    await page.keyboard.press('Enter');
    await dialog.waitFor({ state: 'hidden' });
    await page.getByRole('link', { name: 'Marrowby mandolin' }).waitFor();
    expect((await getJob(app, job.id)).client?.id).toBe(into.id);
    await expectAccessible(page);
  });

  it('takes an entry off, with a way back', async () => {
    const { name } = await write({ name: 'Cato Underleaf' });
    await page.goto(`${app.url}/clients`);
    await page.getByRole('link', { name, exact: true }).click();
    await page.getByRole('button', { name: 'Take the entry off' }).click();
    await page.waitForURL(/\/clients$/);
    await expect.poll(async () => (await all()).some((line) => line.name === name)).toBe(false);
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByRole('link', { name, exact: true }).waitFor();
  });

  it('erases a person only when the name is typed, and says what stays', async () => {
    const { id } = await write({ name: 'Dot Wicklow' });
    await ask(app, 'POST', '/api/jobs', {
      title: 'Mandolin of Dot Wicklow',
      instrument: { type: 'mandolin' },
      client: { id },
    });
    await page.goto(`${app.url}/clients/${id}`);
    await tabTo(page.getByRole('button', { name: 'Erase this person' }));
    await page.keyboard.press('Enter');
    const dialog = page.getByRole('dialog', { name: 'Erase this person' });
    await dialog.getByText('It cannot be undone.').waitFor();
    await dialog.getByText('1 job and the instruments').waitFor();
    await expectAccessible(page);
    await page.keyboard.type('Dot');
    await page.keyboard.press('Enter');
    await dialog.getByRole('alert').waitFor();
    expect((await all()).some((line) => line.id === id)).toBe(true);
    await page.keyboard.type(' Wicklow');
    await page.keyboard.press('Enter');
    await page.getByRole('dialog', { name: 'Erased' }).getByText('told of them').waitFor();
    await expectAccessible(page);
    await page.keyboard.press('Escape');
    await page.waitForURL(/\/clients$/);
    expect((await all()).some((line) => line.id === id)).toBe(false);
    await page.goto(`${app.url}/clients/${id}`);
    await heading('There is no such client.').waitFor();
  });
});

it('fits a phone, light and dark', async () => {
  const [first] = await all();
  await page.setViewportSize(sizes.phone);
  for (const colorScheme of ['dark', 'light'] as const) {
    await page.emulateMedia({ colorScheme });
    for (const path of ['/clients', `/clients/${first?.id}`]) {
      await page.goto(app.url + path);
      await page.getByRole('heading', { level: 1 }).waitFor();
      await expectNoSidewaysScroll(page);
      await expectAccessible(page);
    }
  }
});

it('had no trouble on the way', () => {
  // A refused change and a page that is not there are told in the console too.
  expect(troubles.filter((trouble) => !/status of (?:404|409)/.test(trouble))).toEqual([]);
});
