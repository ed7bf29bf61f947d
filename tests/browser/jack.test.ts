import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { jackViewSchema } from '@/shared/jack-check';
import { type App, launchBrowser, startApp } from '../app';
import { addTake, ask, getJob, makeJob, nameFolder, settled } from '../http/client';
import { makeRecording } from '../recordings';
import { expectAccessible, expectNoSidewaysScroll, openPage, sizes } from './page';

let app: App;
let browser: Browser;
let page: Page;
let troubles: string[];
let folder: string;
let jobId: string;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'benchtake-jack-'));
  const take = makeRecording(folder, 'at the jack.mp4', { seconds: 6, at: '2026-03-17T09:01:00Z' });
  app = await startApp();
  jobId = (await makeJob(app, 'Six-string, new harness')).job.id;
  await nameFolder(app, folder);
  await addTake(app, jobId, take);
  await settled(app, jobId);
  await ask(app, 'POST', `/api/jobs/${jobId}/readings/quick`, { text: 'neck total 8.08k' });
  browser = await launchBrowser();
  ({ page, troubles } = await openPage(browser, `${app.url}/jobs/${jobId}/jack`));
});
afterAll(async () => {
  await browser.close();
  await app.clear();
  rmSync(folder, { recursive: true });
});

const view = async () => jackViewSchema.parse((await ask(app, 'GET', `/api/jobs/${jobId}/harness`)).body);
const line = (label: string) => page.getByRole('row', { name: new RegExp(`^${label}`) });
const entry = (label: string) => page.getByRole('textbox', { name: `The meter shows, ${label}` });

/** Tab until the wanted thing has the focus. */
async function tabTo(wanted: Locator): Promise<void> {
  await wanted.waitFor();
  for (let presses = 0; presses < 120; presses++) {
    if (await wanted.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error('The keyboard does not reach it.');
}

const typeOver = async (text: string) => {
  await page.keyboard.press('Control+a');
  await page.keyboard.type(text);
};

describe('the check at the jack, by keyboard', () => {
  it('describes two pickups from an arrangement, with what was measured put in', async () => {
    await tabTo(page.getByRole('button', { name: 'Two pickups, a volume and a tone each, three positions' }));
    await page.keyboard.press('Enter');
    const neck = page
      .getByRole('group', { name: 'neck pickup' })
      .getByRole('textbox', { name: /Resistance/ });
    expect(await neck.inputValue()).toBe('8.08 kΩ');
    // The one coil that nobody has measured takes the focus.
    const bridge = page
      .getByRole('group', { name: 'bridge pickup' })
      .getByRole('textbox', { name: /Resistance/ });
    await expect.poll(() => bridge.evaluate((element) => element === document.activeElement)).toBe(true);
    await page.keyboard.press('Enter');
    await page
      .getByRole('alert')
      .getByText(/bridge pickup/)
      .waitFor();
    expect((await view()).harness).toBeNull();
    await expectAccessible(page);
    await tabTo(bridge);
    await page.keyboard.type('8.8k');
    await tabTo(
      page.getByRole('group', { name: 'neck volume' }).getByRole('textbox', { name: 'Resistance' }),
    );
    await typeOver('470k');
    await tabTo(page.getByRole('button', { name: 'Keep this harness' }));
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Change the harness' }).waitFor();
    expect((await view()).harness).toMatchObject({
      pickups: [
        { id: 'neck', coils: [{ ohms: 8080 }] },
        { id: 'bridge', coils: [{ ohms: 8800 }] },
      ],
      volumes: [
        { serves: 'neck', ohms: 470_000 },
        { serves: 'bridge', ohms: 500_000 },
      ],
      positions: [{ on: ['neck'] }, { on: ['neck', 'bridge'] }, { on: ['bridge'] }],
    });
  });

  it('notes what passes at the moment the film shows, and goes on to the next line by itself', async () => {
    await page.getByRole('slider', { name: 'Film position' }).waitFor();
    await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('n');
    await page.keyboard.type('7.95k');
    await page.keyboard.press('Enter');
    await line('neck, pots up').getByText('fits', { exact: true }).waitFor();
    await expect
      .poll(() => entry('both, pots up').evaluate((one) => one === document.activeElement))
      .toBe(true);
    const [, noted] = (await getJob(app, jobId)).readings;
    expect(noted).toMatchObject({
      valueText: '7.95',
      unit: 'kΩ',
      subject: 'output jack',
      between: ['tip', 'sleeve'],
      details: { jack: { position: 'neck', thrown: [], down: [] } },
      ms: 2000,
    });
  });

  it('asks for the unit of a bare number instead of guessing it', async () => {
    await page.keyboard.type('4.14');
    await page.keyboard.press('Enter');
    await tabTo(line('both, pots up').getByRole('button', { name: '4.14 kΩ' }));
    expect((await getJob(app, jobId)).readings).toHaveLength(2);
    await page.keyboard.press('Enter');
    await line('both, pots up').getByText('fits', { exact: true }).waitFor();
  });

  it('ranks what explains a reading that fails, and leads to the one that tells it apart', async () => {
    await tabTo(entry('bridge, pots up'));
    await page.keyboard.type('0.3 ohm');
    await page.keyboard.press('Enter');
    await line('bridge, pots up').getByText('does not fit', { exact: true }).waitFor();
    await tabTo(entry('both, pots up'));
    await page.keyboard.type('0.3 ohm');
    await page.keyboard.press('Enter');
    const follows = page.getByRole('region', { name: 'What follows' });
    await follows
      .getByText(/To tell it apart/)
      .first()
      .waitFor();
    const { judgement } = await view();
    const [first] = judgement?.explanations ?? [];
    expect(first).toMatchObject({ explainsAll: true });
    expect(first?.title).toMatch(/bridge/);
    await follows
      .getByRole('listitem')
      .first()
      .getByText(first?.title ?? '')
      .waitFor();
    const next = judgement?.explanations.find((one) => one.next?.kind === 'jack')?.next;
    expect(next).toBeTruthy();
    await tabTo(follows.getByRole('button', { name: 'Read it there' }).first());
    await page.keyboard.press('Enter');
    const asked = entry((next?.where ?? '').replace('At the jack: ', ''));
    await expect.poll(() => asked.evaluate((one) => one === document.activeElement)).toBe(true);
    await expectAccessible(page);
  });

  it('passes when what was mended is read again, and undoes by key', async () => {
    for (const [label, value] of [
      ['bridge, pots up', '8.65k'],
      ['both, pots up', '4.14k'],
    ] as const) {
      await entry(label).focus();
      await page.keyboard.type(value);
      await page.keyboard.press('Enter');
      await line(label).getByText('fits', { exact: true }).waitFor();
    }
    await page.getByText('Every setting with the pots up was read and fits.').waitFor();
    await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
    await page.keyboard.press('Control+z');
    await line('both, pots up').getByText('does not fit', { exact: true }).waitFor();
  });

  it('changes the harness: a second coil, a split switch, and a position taken away', async () => {
    await tabTo(page.getByRole('button', { name: 'Change the harness' }));
    await page.keyboard.press('Enter');
    await tabTo(page.getByRole('button', { name: 'Add a coil to neck pickup' }));
    await page.keyboard.press('Enter');
    await tabTo(page.getByRole('textbox', { name: 'Resistance of second coil' }));
    await page.keyboard.type('3.9k');
    await tabTo(page.getByRole('button', { name: 'Take position both away' }));
    await page.keyboard.press('Enter');
    await tabTo(page.getByRole('button', { name: 'Add a split switch' }));
    await page.keyboard.press('Enter');
    await tabTo(page.getByRole('button', { name: 'Keep this harness' }));
    await page.keyboard.press('Enter');
    await page
      .getByRole('rowheader', { name: /^neck, split switch thrown/ })
      .first()
      .waitFor();
    // Readings of the position that is gone are told, not lost.
    await page
      .getByText(/has no position "both"/)
      .first()
      .waitFor();
    expect((await view()).harness).toMatchObject({
      pickups: [{ coils: [{ ohms: 8080 }, { ohms: 3900 }] }, {}],
      switches: [{ kind: 'split', splits: [{ pickup: 'neck', keeps: 'whole' }] }],
    });
  });

  it('made no script error and asked nobody else', () => {
    expect(troubles).toEqual([]);
  });
});

describe('at every size', () => {
  for (const size of ['desktop', 'tablet', 'phone'] as const) {
    it(`axe finds nothing and nothing sticks out: ${size} (${sizes[size].width} px)`, async () => {
      const opened = await openPage(browser, `${app.url}/jobs/${jobId}/jack`, size);
      await opened.page
        .getByText(/^With pots down/)
        .first()
        .click();
      await opened.page
        .getByRole('rowheader', { name: /all pots down/ })
        .first()
        .waitFor();
      await expectAccessible(opened.page);
      await expectNoSidewaysScroll(opened.page);
      await opened.page.getByRole('button', { name: 'Change the harness' }).click();
      await opened.page.getByRole('button', { name: 'Keep this harness' }).waitFor();
      await expectAccessible(opened.page);
      await expectNoSidewaysScroll(opened.page);
      expect(opened.troubles).toEqual([]);
      await opened.context.close();
    });
  }
});
