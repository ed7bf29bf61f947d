import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { jobRecordSchema, type NewJob } from '@/shared/jobs';
import { looseEndsSchema } from '@/shared/loose-ends';
import type { NewPart } from '@/shared/work';
import { type App, launchBrowser, startApp } from '../app';
import { ask } from '../http/client';
import { expectAccessible, expectNoSidewaysScroll, openPage } from './page';

let app: App;
let browser: Browser;
let folder: string;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'benchtake-print-'));
  app = await startApp();
  browser = await launchBrowser();
});
afterAll(async () => {
  await browser.close();
  await app.clear();
  rmSync(folder, { recursive: true });
});

/** Outside: ISO 216 (A4 is 210 mm × 297 mm) and US Letter (8.5 in × 11 in), in points of 1/72 inch. */
const papers = { a4: [595.28, 841.89], letter: [612, 792] } as const;
type Paper = keyof typeof papers;
const everyPaper: readonly Paper[] = ['a4', 'letter'];

const ordinary: NewJob = {
  title: 'Crackles on the neck pickup',
  receivedOn: '2026-11-20',
  promisedOn: '2026-12-04',
  place: 'rail by the window',
  cameWith: ['hard case', 'two cables'],
  instrument: {
    type: 'electric guitar',
    maker: 'unknown',
    model: 'six-string, bolt-on',
    serial: '84 07 1234',
    features: 'three pickups, tremolo without its arm',
  },
  client: { name: 'Łucja Invented', reach: 'lucja@invented.example\n0000 111 222, evenings' },
  work: [
    { what: 'Find and mend the crackle', charge: 'agreed', priceMinor: 4550, currency: 'EUR' },
    { what: 'Set-up', origin: 'offered', charge: 'free' },
    { what: 'New output jack', origin: 'found', charge: 'reduced', priceMinor: 1250, currency: 'EUR' },
    { what: 'Level the frets', outcome: 'declined', why: 'next year' },
  ],
};

const doubtfulPart: NewPart = {
  what: 'Bridge pickup',
  deed: 'reused',
  source: 'instrument',
  doubt: 'its joints are not the first ones',
  doubtBasis: 'assumed',
};

async function book(job: NewJob, parts: readonly NewPart[] = [], at: App = app): Promise<string> {
  const { job: made } = jobRecordSchema.parse((await ask(at, 'POST', '/api/jobs', job)).body);
  for (const part of parts)
    expect((await ask(at, 'POST', `/api/jobs/${made.id}/parts`, part)).status).toBe(201);
  return made.id;
}

const addressOf = (id: string, paper: string, at: App = app) => `${at.url}/jobs/${id}/print?paper=${paper}`;

/** The page as it goes to the printer, and what independent programs read in it. */
async function printed(page: Page, name: string) {
  const pdf = join(folder, `${name}.pdf`);
  await page.pdf({ path: pdf, preferCSSPageSize: true });
  // Outside check: poppler's pdfinfo and pdftotext.
  const info = execFileSync('pdfinfo', [pdf], { encoding: 'utf8' });
  const text = execFileSync('pdftotext', ['-layout', pdf, '-'], { encoding: 'utf8' });
  return {
    pdf,
    pages: Number(/^Pages:\s+(\d+)/m.exec(info)?.[1]),
    size: /^Page size:\s+([\d.]+) x ([\d.]+) pts/m.exec(info)?.slice(1).map(Number) ?? [],
    text: text.replace(/[ \n\f]+/g, ' '),
  };
}

function expectOnePage(print: Awaited<ReturnType<typeof printed>>, paper: Paper): void {
  expect(print.pages).toBe(1);
  for (const [at, points] of papers[paper].entries())
    expect(Math.abs((print.size[at] ?? 0) - points)).toBeLessThan(1);
}

/** Outside check: the printed page as a picture (poppler), read by ZBar, an independent reader of codes. */
function codeIn(pdf: string): string {
  const picture = pdf.replace(/\.pdf$/, '');
  execFileSync('pdftoppm', ['-r', '150', '-png', '-singlefile', pdf, picture]);
  const onlyQr = ['--quiet', '--raw', '--nodbus', '-Sdisable', '-Sqrcode.enable'];
  return execFileSync('zbarimg', [...onlyQr, `${picture}.png`], { encoding: 'utf8' }).trim();
}

/** What is drawn lies on the sheet, with room left to write on. */
async function expectAllOnSheet(page: Page): Promise<void> {
  const sheet = page.locator('[data-paper]');
  expect(await sheet.evaluate((one) => one.scrollHeight - one.clientHeight)).toBeLessThanOrEqual(0);
  const notes = await page.getByRole('region', { name: 'Notes' }).boundingBox();
  const pixelsInMm = 96 / 25.4;
  expect((notes?.height ?? 0) / pixelsInMm).toBeGreaterThan(20);
}

describe('the ticket on paper', () => {
  let id: string;
  beforeAll(async () => {
    id = await book(ordinary, [doubtfulPart, { what: 'Output jack', deed: 'fitted', source: 'stock' }]);
  });

  for (const paper of everyPaper)
    it(`is one page with all of an ordinary job, and a code that opens it: ${paper}`, async () => {
      const { page, context, troubles } = await openPage(browser, addressOf(id, paper));
      await expectAllOnSheet(page);
      const print = await printed(page, `ordinary-${paper}`);
      expectOnePage(print, paper);
      for (const words of [
        'For the workshop only',
        '0001',
        'Crackles on the neck pickup',
        'Łucja Invented',
        'lucja@invented.example',
        '0000 111 222, evenings',
        'Fri, 20 Nov 2026',
        'Fri, 4 Dec 2026',
        'rail by the window',
        'hard case, two cables',
        'electric guitar',
        'six-string, bolt-on',
        '84 07 1234',
        'three pickups, tremolo without its arm',
        'Find and mend the crackle',
        '€45.50',
        'free',
        'reduced €12.50',
        'Level the frets (next year)',
        'its joints are not the first ones',
        'soldering:',
      ])
        expect(print.text.toLowerCase()).toContain(words.toLowerCase());
      expect(print.text).not.toMatch(/Settings|Back to the job|more on the job/);
      expect(codeIn(print.pdf)).toBe(`${app.url}/jobs/${id}`);
      expect(troubles).toEqual([]);
      await context.close();
    });

  it('crosses the outcome that is on the record, and leaves the others to the hand', async () => {
    const { page, context } = await openPage(browser, addressOf(id, 'a4'));
    const crosses = async (what: string) =>
      (await page.getByRole('row', { name: what }).getByText('×').count()) > 0;
    expect(await crosses('Level the frets')).toBe(true);
    expect(await crosses('Find and mend the crackle')).toBe(false);
    await context.close();
  });

  it('goes to the printer by its button, on the paper that was chosen', async () => {
    const { page, context, troubles } = await openPage(browser, `${app.url}/jobs/${id}/print`);
    const chosen = page.getByRole('navigation', { name: 'Paper' }).locator('[aria-current=page]');
    expect(await chosen.textContent()).toBe('A4');
    await page.getByRole('link', { name: 'Letter' }).click();
    await page.locator('[data-paper=letter]').waitFor();
    expect(await chosen.textContent()).toBe('Letter');
    expectOnePage(await printed(page, 'after-a-change'), 'letter');
    await page.evaluate(() => {
      window.print = () => document.body.setAttribute('data-went', 'to the printer');
    });
    await page.getByRole('button', { name: 'Print', exact: true }).click();
    await page.locator('body[data-went]').waitFor();
    expect(troubles).toEqual([]);
    await context.close();
  });

  for (const size of ['desktop', 'tablet', 'phone'] as const)
    it(`axe finds nothing and nothing sticks out on screen: ${size}`, async () => {
      const { page, context, troubles } = await openPage(browser, addressOf(id, 'letter'), size);
      await page.getByText('For a phone to open it').waitFor();
      await expectAccessible(page);
      await expectNoSidewaysScroll(page);
      await page.emulateMedia({ colorScheme: 'dark' });
      await expectAccessible(page);
      expect(troubles).toEqual([]);
      await context.close();
    });

  it('is not there for a job that is not, or that lies in the bin', async () => {
    expect((await fetch(addressOf('0'.repeat(20), 'a4'))).status).toBe(404);
    expect((await fetch(addressOf('nonsense', 'a4'))).status).toBe(404);
    const gone = await book({ title: 'Gone', instrument: { type: 'banjo' } });
    expect((await fetch(addressOf(gone, 'a4'))).status).toBe(200);
    await ask(app, 'DELETE', `/api/jobs/${gone}`);
    expect((await fetch(addressOf(gone, 'a4'))).status).toBe(404);
  });
});

describe('whatever stands on the record', () => {
  const enormous = 'W'.repeat(200);
  const worst: NewJob = {
    title: enormous.slice(0, 120),
    receivedOn: '2020-01-01',
    promisedOn: '2020-01-10',
    place: enormous,
    cameWith: Array.from({ length: 30 }, () => enormous.slice(0, 80)),
    instrument: {
      type: 'valve amplifier',
      maker: enormous,
      model: enormous,
      serial: enormous,
      features: 'Ungeheuer '.repeat(400),
    },
    client: { name: enormous, reach: Array.from({ length: 60 }, (_, at) => `way ${at}`).join('\n') },
    work: Array.from({ length: 40 }, (_, at) => ({
      what: at % 2 === 0 ? enormous : `Rewire, refret, refinish, restring, battery pack ${at}`,
      origin: 'offered',
      charge: 'reduced',
      priceMinor: 999_999_999,
      currency: 'EUR',
      why: 'because '.repeat(200),
    })),
  };
  const manyParts = Array.from(
    { length: 40 },
    (): NewPart => ({
      what: enormous,
      deed: 'removed',
      source: 'instrument',
      fate: 'returned',
      doubt: enormous.repeat(4),
      doubtBasis: 'assumed',
    }),
  );

  it('is one page, and says what is left on the job’s page', async () => {
    const id = await book(worst, manyParts);
    const { body } = await ask(app, 'GET', `/api/jobs/${id}/loose-ends`);
    const passed = looseEndsSchema.parse(body).looseEnds.find(({ kind }) => kind === 'promise passed');
    for (const paper of everyPaper) {
      const { page, context, troubles } = await openPage(browser, addressOf(id, paper));
      await expectAllOnSheet(page);
      const print = await printed(page, `worst-${paper}`);
      expectOnePage(print, paper);
      expect(codeIn(print.pdf)).toBe(`${app.url}/jobs/${id}`);
      for (const name of ['Work', 'Parts']) {
        const section = page.getByRole('region', { name, exact: true });
        const rows = (await section.getByRole('row').count()) - 1;
        expect(rows).toBeGreaterThan(0);
        await section.getByText(`and ${40 - rows} more on the job’s page`).waitFor();
        expect(print.text).toContain(`and ${40 - rows} more on the job’s page`);
      }
      expect(print.text).toContain(passed?.sentence);
      expect(print.text).toMatch(/valve amplifier: Valve amplifiers hold lethal voltage.*come first\./i);
      expect(troubles).toEqual([]);
      await context.close();
    }
  });

  it('forty short items lose only as many as the page cannot hold', async () => {
    const id = await book({
      title: 'Everything at once',
      instrument: { type: 'banjo' },
      work: Array.from({ length: 40 }, (_, at) => ({ what: `Small thing ${at}` })),
    });
    const { page, context } = await openPage(browser, addressOf(id, 'letter'));
    await expectAllOnSheet(page);
    const print = await printed(page, 'forty');
    expectOnePage(print, 'letter');
    const shown = print.text.match(/Small thing \d+/g) ?? [];
    expect(shown.length).toBeGreaterThan(15);
    expect(print.text).toContain(`and ${40 - shown.length} more on the job’s page`);
    await context.close();
  });

  it('a job of which only a title and a type are known leaves the rest to be written', async () => {
    const id = await book({ title: 'New strings', instrument: { type: 'ukulele' } });
    const { page, context, troubles } = await openPage(browser, addressOf(id, 'a4'));
    const print = await printed(page, 'bare');
    expectOnePage(print, 'a4');
    expect(print.text).toContain('No client named');
    expect(print.text).not.toContain('it names the client');
    expect(print.text).toMatch(/Serial unknown/);
    expect(await page.getByRole('region', { name: 'Work', exact: true }).count()).toBe(0);
    expect(troubles).toEqual([]);
    await context.close();
  });
});

describe('on a network', () => {
  let open: App;
  beforeAll(async () => {
    open = await startApp({ HOST: '0.0.0.0' });
  });
  afterAll(() => open.clear());

  it('holds an address at which the job answers, also where it was printed on the machine itself', async () => {
    const id = await book({ title: 'New strings', instrument: { type: 'ukulele' } }, [], open);
    const { page, context } = await openPage(browser, addressOf(id, 'a4', open));
    const code = codeIn((await printed(page, 'network')).pdf);
    expect(new URL(code).pathname).toBe(`/jobs/${id}`);
    expect(new URL(code).port).toBe(String(open.port));
    expect(await (await fetch(code)).text()).toContain('New strings');
    // It stays on the machine only where the machine has no card that leads outward.
    const stays = await page.getByText('For a phone to open it').count();
    expect(new URL(code).hostname === '127.0.0.1').toBe(stays > 0);
    await context.close();
  });
});
