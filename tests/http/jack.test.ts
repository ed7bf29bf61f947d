import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { changeIdSchema } from '@/shared/ids';
import { type JackView, jackViewSchema } from '@/shared/jack-check';
import { readingSchema } from '@/shared/readings';
import { type App, startApp } from '../app';
import { doubleCoil, fourPots, threeWay, tone, volume } from '../wiring/jack-harnesses';
import { ask, getJob, makeJob } from './client';

const twoShared = {
  pickups: [doubleCoil('neck', 4080, 3971), doubleCoil('bridge', 4420, 4370)],
  volumes: [volume('all')],
  tones: [tone('all')],
  positions: threeWay,
};
const keptSchema = z.object({ change: changeIdSchema, view: jackViewSchema });

let app: App;
let job: string;
beforeAll(async () => {
  app = await startApp();
});
afterAll(() => app.clear());
beforeEach(async () => {
  job = (await makeJob(app)).job.id;
});

const path = () => `/api/jobs/${job}/harness`;
const view = async (): Promise<JackView> => jackViewSchema.parse((await ask(app, 'GET', path())).body);
const put = async (harness: unknown) => keptSchema.parse((await ask(app, 'PUT', path(), harness)).body);
const read = async (position: string, shown: { value: string; unit: string } | { open: true }) => {
  const { status, body } = await ask(app, 'POST', `/api/jobs/${job}/readings`, {
    kind: 'resistance',
    subject: 'output jack',
    between: ['tip', 'sleeve'],
    details: { jack: { position } },
    ...shown,
  });
  expect(status).toBe(201);
  return z.object({ reading: readingSchema }).parse(body).reading;
};

describe('the harness of a job', () => {
  it('is a suggestion until it is described', async () => {
    const { harness, expected, judgement, suggestion, cautions } = await view();
    expect({ harness, expected, judgement }).toEqual({ harness: null, expected: [], judgement: null });
    expect(suggestion.positions).toHaveLength(1);
    expect(cautions.join(' ')).toMatch(/no power/i);
  });

  it('is described, changed, deleted and undone', async () => {
    const { view: kept } = await put(twoShared);
    expect(await view()).toEqual(kept);
    await put(fourPots);
    expect((await getJob(app, job)).undo?.label).toBe('harness changed');
    await ask(app, 'POST', `/api/jobs/${job}/undo`);
    expect((await view()).harness).toEqual(kept.harness);
    const { status, body } = await ask(app, 'DELETE', path());
    expect(status).toBe(200);
    expect((await view()).harness).toBeNull();
    const { change } = z.object({ change: changeIdSchema }).parse(body);
    await ask(app, 'POST', `/api/changes/${change}/undo`);
    expect((await view()).harness).toEqual(kept.harness);
  });

  it('survives its job going into the bin and out again', async () => {
    const { view: kept } = await put(twoShared);
    await ask(app, 'DELETE', `/api/jobs/${job}`);
    await ask(app, 'POST', `/api/jobs/${job}/restore`);
    expect(await view()).toEqual(kept);
  });

  it.each([
    ['no pickup', { ...twoShared, pickups: [] }],
    ['a coil of nothing', { ...twoShared, pickups: [doubleCoil('neck', 0, 3971)] }],
    [
      'a position with a pickup that is not there',
      { ...twoShared, positions: [{ name: 'on', on: ['middle'] }] },
    ],
    ['two positions of one name', { ...twoShared, positions: [threeWay[0], threeWay[0]] }],
    ['words instead of a harness', 'two pickups'],
  ])('is refused with %s, and what was kept stays', async (_name, wanted) => {
    const { view: kept } = await put(twoShared);
    const { status, headers, body } = await ask(app, 'PUT', path(), wanted);
    expect([400, 422]).toContain(status);
    expect(headers.get('content-type')).toContain('application/problem+json');
    expect(body).toMatchObject({ title: expect.any(String), detail: expect.stringMatching(/\w/) });
    expect(await view()).toEqual(kept);
  });

  it('of a job that is not there is not found; one that was never described cannot be deleted', async () => {
    expect((await ask(app, 'GET', `/api/jobs/${'0'.repeat(20)}/harness`)).status).toBe(404);
    expect((await ask(app, 'PUT', `/api/jobs/${'0'.repeat(20)}/harness`, twoShared)).status).toBe(404);
    expect((await ask(app, 'DELETE', path())).status).toBe(404);
  });
});

describe('the check by readings', () => {
  it('passes when every position reads as it should', async () => {
    await put(twoShared);
    await read('neck', { value: '7.92', unit: 'kΩ' });
    await read('both', { value: '4.18', unit: 'kΩ' });
    await read('bridge', { value: '8.63', unit: 'kΩ' });
    const { judgement } = await view();
    expect(judgement).toMatchObject({ verdict: 'pass', explanations: [], missing: [] });
    expect(judgement?.invisible.join(' ')).toMatch(/phase/i);
  });

  it('ranks the faults when one does not, each with the reading that tells it apart', async () => {
    await put(twoShared);
    await read('neck', { open: true });
    const { judgement } = await view();
    expect(judgement?.verdict).toBe('fail');
    const likelihoods = judgement?.explanations.map(({ likelihood }) => likelihood) ?? [];
    expect(likelihoods.length).toBeGreaterThan(1);
    expect(likelihoods).toEqual([...likelihoods].sort((a, b) => b - a));
    expect(judgement?.explanations[0]?.next?.where).toMatch(/\w/);
  });

  it('keeps readings that come before the harness and judges them once it is described', async () => {
    const { id } = await read('neck', { value: '7.92', unit: 'kΩ' });
    expect((await view()).judgement).toBeNull();
    await put(twoShared);
    expect((await view()).judgement?.checks.map(({ readingId, verdict }) => [readingId, verdict])).toEqual([
      [id, 'pass'],
    ]);
  });

  it('answers the page of the check, and says so where there is no such job', async () => {
    const page = await ask(app, 'GET', `/jobs/${job}/jack`);
    expect(page.status).toBe(200);
    expect(page.body).toContain('Check at the jack');
    expect((await ask(app, 'GET', `/jobs/${'0'.repeat(20)}/jack`)).status).toBe(404);
  });
});
