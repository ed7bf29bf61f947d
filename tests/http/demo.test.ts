import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { archiveAnswerSchema } from '@/shared/archive';
import { jobRecordSchema, jobSchema, rackSchema } from '@/shared/jobs';
import { looseEndsSchema } from '@/shared/loose-ends';
import { traceViewSchema } from '@/shared/traces';
import { type App, startApp } from '../app';
import { ask, getJob, until } from './client';

let app: App;
beforeAll(async () => {
  app = await startApp();
});
afterAll(() => app.clear());

const get = async (path: string) => {
  const { status, body } = await ask(app, 'GET', path);
  expect(status).toBe(200);
  return body;
};
const loadOlder = async () => {
  const { status, body } = await ask(app, 'POST', '/api/demo/older');
  expect(status).toBe(201);
  return z.strictObject({ jobs: z.int() }).parse(body).jobs;
};
const loadDemonstration = async () => {
  const { status, body } = await ask(app, 'POST', '/api/demo');
  expect(status).toBe(201);
  return z.strictObject({ job: jobSchema }).parse(body).job;
};
const rack = async () => rackSchema.parse(await get('/api/jobs')).jobs;

describe('the older jobs over HTTP', () => {
  it('are loaded once, as demonstration, and gone from the workshop', async () => {
    expect(await loadOlder()).toBe(28);
    expect(await loadOlder()).toBe(28);
    const tickets = await rack();
    expect(tickets).toHaveLength(28);
    for (const { demo, state } of tickets) {
      expect(demo).toBe(true);
      expect(['collected', 'returned undone']).toContain(state);
    }
  });

  it('can each be read, with its loose ends and its traces', async () => {
    for (const { id } of await rack()) {
      const record = jobRecordSchema.parse(await get(`/api/jobs/${id}`));
      expect(record.work.length).toBeGreaterThan(0);
      const { looseEnds } = looseEndsSchema.parse(await get(`/api/jobs/${id}/loose-ends`));
      for (const { kind } of looseEnds) expect(kind).toBe('assumed conductor');
      for (const { id: trace } of record.traces) {
        const { analysis } = traceViewSchema.parse(await get(`/api/traces/${trace}`));
        expect(analysis.contradictions).toEqual([]);
      }
    }
  });

  it('answer in the archive', async () => {
    const search = async () => archiveAnswerSchema.parse(await get('/api/archive?q=soundpost'));
    const answer = await until(search, ({ waiting }) => waiting === 0);
    expect(answer.answers[0]?.job.title).toMatch(/^Violin/);
  });
});

describe('the demonstration job beside them', () => {
  it('is its own, whichever was loaded first, and found again', async () => {
    const job = await loadDemonstration();
    expect((await getJob(app, job.id)).takes).toHaveLength(3);
    expect((await loadDemonstration()).id).toBe(job.id);
    expect(await loadOlder()).toBe(28);
    expect(await rack()).toHaveLength(29);
  });

  it('goes and comes without them', async () => {
    const { id } = await loadDemonstration();
    expect((await ask(app, 'DELETE', `/api/jobs/${id}`)).status).toBe(200);
    const again = await loadDemonstration();
    expect(again.id).not.toBe(id);
    expect((await getJob(app, again.id)).takes).toHaveLength(3);
  });

  it('stays when one of them is deleted, and they are counted without it', async () => {
    const older = (await rack()).find(({ takes }) => takes === 0);
    expect((await ask(app, 'DELETE', `/api/jobs/${older?.id}`)).status).toBe(200);
    expect(await loadOlder()).toBe(27);
    expect(await rack()).toHaveLength(28);
  });
});
