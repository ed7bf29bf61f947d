import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { fromBufferPromise } from 'yauzl';
import { giveOutPreviewSchema, publicArchiveSchema } from '@/shared/archive-exports';
import { problemSchema } from '@/shared/problem';
import { type App, startApp } from '../app';
import { ask, makeJob } from './client';

let app: App;
let bass: string;

beforeAll(async () => {
  app = await startApp();
  bass = (await makeJob(app, 'Bass of Ottoline Fernsby, 07700 900133')).job.id;
  await ask(app, 'POST', '/api/demo/older');
});
afterAll(() => app.clear());

const exportOf = (path: string) => fetch(`${app.url}/api/archive/exports/${path}`);
const preview = async (search = '') => {
  const { status, body } = await ask(app, 'GET', `/api/archive/exports/preview${search}`);
  expect(status).toBe(200);
  return giveOutPreviewSchema.parse(body);
};

describe('giving the archive out over HTTP', () => {
  it('says what would go out and what stands in the way, and takes a decision of the hand-over', async () => {
    const held = await preview();
    expect(held.counts.inTheWay).toBe(1);
    expect(held.counts.jobs).toBeGreaterThan(10);
    const [job] = held.jobs.filter(({ state }) => state === 'in the way');
    expect(job).toMatchObject({ id: bass, findings: [{ decision: 'open', place: { on: 'ticket' } }] });
    const decision = { id: job?.findings[0]?.id, decision: 'allowed' };
    expect((await ask(app, 'POST', `/api/jobs/${bass}/findings`, decision)).status).toBe(200);
    expect((await preview()).counts).toMatchObject({ inTheWay: 0, jobs: held.counts.jobs + 1 });
    await ask(app, 'POST', `/api/jobs/${bass}/findings`, { ...decision, decision: 'open' });
    expect((await preview('?instrument=bass+guitar')).jobs.map(({ instrument }) => instrument)).toContain(
      'bass guitar',
    );
  });

  it('gives the pages as a ZIP that holds no word of what stands in the way', async () => {
    const response = await exportOf('pages?made=2026-11-25');
    expect(response.status).toBe(200);
    expect(response.headers.get('content-type')).toBe('application/zip');
    expect(response.headers.get('content-disposition')).toBe(
      'attachment; filename="archive-pages-2026-11-25.zip"',
    );
    const archive = await fromBufferPromise(Buffer.from(await response.arrayBuffer()));
    const sizes = new Map<string, number>();
    for await (const { fileName, uncompressedSize } of archive.eachEntry())
      sizes.set(fileName, uncompressedSize);
    const { counts } = await preview();
    expect([...sizes.keys()].filter((name) => name.startsWith('jobs/'))).toHaveLength(counts.jobs);
    expect(sizes.get('search.js')).toBeGreaterThan(10_000);
    for (const name of ['index.html', 'data.js', 'style.css', 'conductors.html', 'archive.json'])
      expect(sizes.get(name), name).toBeGreaterThan(100);
    // Nothing of the making is left behind.
    expect(readdirSync(join(app.home, 'give-out'))).toEqual([]);
  });

  it('leaves nothing behind where whoever reads goes away', async () => {
    const leaving = new AbortController();
    const response = await fetch(`${app.url}/api/archive/exports/pages`, { signal: leaving.signal });
    await response.body?.getReader().read();
    leaving.abort();
    await expect.poll(() => readdirSync(join(app.home, 'give-out'))).toEqual([]);
  });

  it.each(['moments', 'readings', 'conductors'])(
    'gives %s as CSV, public unless all is asked for',
    async (which) => {
      const open = await exportOf(`csv?which=${which}`);
      expect(open.headers.get('content-type')).toBe('text/csv; charset=utf-8; header=present');
      expect(open.headers.get('content-disposition')).toBe(`attachment; filename="archive-${which}.csv"`);
      const table = await open.text();
      expect(table).not.toContain('Fernsby');
      const whole = await exportOf(`csv?which=${which}&scope=everything`);
      expect(whole.headers.get('content-disposition')).toBe(
        `attachment; filename="archive-everything-private-${which}.csv"`,
      );
      const [head] = parse(await whole.text(), { bom: true });
      expect(head).toEqual([...(parse(table, { bom: true })[0] ?? []), 'client', 'serial']);
    },
  );

  it('gives JSON, public unless all is asked for', async () => {
    const open = await exportOf('json?instrument=bass+guitar');
    expect(open.headers.get('content-disposition')).toMatch(/filename="archive-\d{4}-\d\d-\d\d\.json"/);
    const { jobs } = publicArchiveSchema.parse(await open.json());
    expect(new Set(jobs.map(({ instrument }) => instrument.type))).toEqual(new Set(['bass guitar']));
    const whole = await (await exportOf('json?scope=everything')).text();
    expect(whole).toContain('Ottoline Fernsby, 07700 900133');
  });

  it.each([
    'pages?client=x',
    'csv',
    'csv?which=prices',
    'json?scope=all',
    'preview?low=3',
    'pages?made=today',
  ])('refuses %s with a problem', async (path) => {
    const response = await exportOf(path);
    expect(response.status).toBe(422);
    expect(problemSchema.parse(await response.json()).detail).not.toBe('');
  });
});
