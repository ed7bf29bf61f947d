import type { Browser, Page } from 'playwright-core';
import { type App, launchBrowser } from '../app';
import { addTake, ask, makeJob, settled } from '../http/client';
import { threeHours } from './recordings';
import { best, type Row } from './table';

const markers = 500;
const jobsOnRack = 200;
const zooms = 100;
/** A page that has not answered by then will not. */
const mostZoomMs = 20_000;
const view = { width: 1440, height: 900 };

/** The Job page over a 3-hour film with 500 markers, and the rack with 200 jobs. */
export async function page(app: App): Promise<Row[]> {
  const jobId = await bigJob(app);
  const rows = [
    await data(app, `/api/jobs/${jobId}`, `job data, 3 hours, ${markers} markers`),
    await withBrowser((browser) => painting(app, jobId, browser)),
  ];
  for (let made = await countJobs(app); made < jobsOnRack; made++) await makeJob(app, `Job ${made}`);
  return [...rows, await data(app, '/api/jobs', `tickets of ${jobsOnRack} jobs`)];
}

/** What the same page holds after much zooming. */
export async function zoom(app: App): Promise<Row[]> {
  const jobId = await bigJob(app);
  return [await withBrowser((browser) => zooming(app, jobId, browser))];
}

async function bigJob(app: App): Promise<string> {
  const { job } = await makeJob(app, 'Three hours at the bench');
  const { id: takeId } = await addTake(app, job.id, threeHours());
  await settled(app, job.id);
  const kinds = ['intake', 'diagnosis', 'measurement', 'work', 'result'];
  for (let index = 0; index < markers; index++) {
    await ask(app, 'POST', `/api/jobs/${job.id}/markers`, {
      kind: kinds[index % kinds.length],
      title: `Moment ${index}`,
      takeId,
      ms: index * 21_000,
    });
  }
  return job.id;
}

async function countJobs(app: App): Promise<number> {
  const { body } = await ask(app, 'GET', '/api/jobs');
  return JSON.stringify(body).match(/"number":/g)?.length ?? 0;
}

async function data(app: App, path: string, name: string): Promise<Row> {
  const times = await best(
    20,
    () => ask(app, 'GET', path),
    () => ask(app, 'GET', '/api/health'),
  );
  return { name, ...times, referenceName: 'GET /api/health', unit: 'ms', target: 'less is better' };
}

async function withBrowser<T>(work: (browser: Browser) => Promise<T>): Promise<T> {
  const browser = await launchBrowser();
  try {
    return await work(browser);
  } finally {
    await browser.close();
  }
}

async function painting(app: App, jobId: string, browser: Browser): Promise<Row> {
  const { job: empty } = await makeJob(app, 'Nothing yet');
  const paint = async (id: string) => {
    const context = await browser.newContext({ viewport: view });
    const opened = await context.newPage();
    await opened.goto(`${app.url}/jobs/${id}`);
    const ms = await firstPaint(opened);
    await context.close();
    return ms;
  };
  await paint(empty.id);
  const times = { ours: Number.POSITIVE_INFINITY, reference: Number.POSITIVE_INFINITY };
  for (let run = 0; run < 4; run++) {
    times.reference = Math.min(times.reference, await paint(empty.id));
    times.ours = Math.min(times.ours, await paint(jobId));
  }
  return {
    name: 'first paint, Job page',
    ...times,
    referenceName: 'the same page of an empty job',
    unit: 'ms',
    target: 'less is better',
  };
}

/** Draws the strip out as far as it goes and back, again and again. @throws when the page does not outlive it */
async function zooming(app: App, jobId: string, browser: Browser): Promise<Row> {
  const opened = await browser.newPage({ viewport: view });
  await opened.goto(`${app.url}/jobs/${jobId}`);
  await opened.getByRole('button', { name: 'Draw the strip out' }).waitFor();
  const before = await heap(opened);
  for (let index = 0; index < zooms; index++) {
    await within(
      mostZoomMs,
      opened.keyboard.press(index % 20 < 10 ? '+' : '-'),
      `The page hung at zoom ${index + 1} of ${zooms}`,
    );
    await within(
      mostZoomMs,
      opened.evaluate(() => new Promise((resolve) => requestAnimationFrame(resolve))),
      `The page hung after zoom ${index + 1} of ${zooms}`,
    );
  }
  const after = await heap(opened);
  return {
    name: `page's heap after ${zooms} zooms`,
    ours: after,
    reference: before,
    referenceName: 'before them',
    unit: 'MB',
    target: 'near 1 ×',
  };
}

async function within<T>(ms: number, work: Promise<T>, otherwise: string): Promise<T> {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new Error(otherwise)), ms);
  });
  try {
    return await Promise.race([work, late]);
  } finally {
    clearTimeout(timer);
  }
}

/** W3C Paint Timing: first contentful paint, in milliseconds from the start of navigation. */
async function firstPaint(opened: Page): Promise<number> {
  for (;;) {
    const ms = await opened.evaluate(
      () => performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? null,
    );
    if (ms !== null) return ms;
    await opened.waitForTimeout(20);
  }
}

/** Megabytes of JavaScript heap in use once rubbish has been collected. */
async function heap(opened: Page): Promise<number> {
  const session = await opened.context().newCDPSession(opened);
  await session.send('HeapProfiler.collectGarbage');
  const { usedSize } = await session.send('Runtime.getHeapUsage');
  await session.detach();
  return usedSize / 1e6;
}
