import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { narrationSchema } from '@/shared/narration-record';
import { type App, startApp } from '../app';
import { makeRecording } from '../recordings';
import { addTake, ask, getJob, makeJob, nameFolder, settled } from './client';

let app: App;
let folder: string;
let jobId: string;
let takeIds: string[];

const captions = `WEBVTT

00:00.000 --> 00:03.000
Right so this is Wilhelmina's bass, ring her on oh one six three two, nine six oh, double one three

00:03.500 --> 00:06.500
I promised her a free set-up as well

00:07.000 --> 00:11.000
neck pickup red to white reads four point oh eight k

00:12.000 --> 00:15.000
white and green are soldered together
`;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'benchtake-narration-'));
  app = await startApp();
  await nameFolder(app, folder);
  jobId = (await makeJob(app)).job.id;
  takeIds = [];
  for (const [index, name] of ['one.mp4', 'two.mp4'].entries()) {
    const path = makeRecording(folder, name, { seconds: 20, at: `2026-03-17T09:0${index}:00Z` });
    takeIds.push((await addTake(app, jobId, path)).id);
  }
  await settled(app, jobId);
});
afterAll(async () => {
  await app.clear();
  rmSync(folder, { recursive: true });
});

const narration = async () =>
  narrationSchema.parse((await ask(app, 'GET', `/api/jobs/${jobId}/narration`)).body);
const send = (path: string, text: string) => ask(app, 'POST', path, text, { 'content-type': 'text/vtt' });
const open = async (type: string) =>
  (await narration()).proposals.filter(({ heard, decision }) => heard.type === type && decision === 'open');

describe('captions over HTTP', () => {
  it('are put into a take, with what they propose; nothing is recorded', async () => {
    const { status, body } = await send(`/api/takes/${takeIds[0]}/narration?name=talk.vtt`, captions);
    expect(status).toBe(201);
    expect(body).toMatchObject({ format: 'webvtt', lines: 4, outside: 0, unread: [] });
    const { lines, proposals } = await narration();
    expect(lines.map(({ startMs }) => startMs)).toEqual([0, 3500, 7000, 12_000]);
    const types = proposals.map(({ heard }) => heard.type);
    for (const type of ['reading', 'joint', 'work', 'private']) expect(types).toContain(type);
    const { readings, markers } = await getJob(app, jobId);
    expect([...readings, ...markers]).toEqual([]);
  });

  it('record what is accepted, at its moment, with the words it came from', async () => {
    const [reading] = await open('reading');
    const { status } = await ask(app, 'POST', `/api/proposals/${reading?.id}`, { decision: 'accept' });
    expect(status).toBe(200);
    const { readings, undo } = await getJob(app, jobId);
    expect(readings).toMatchObject([
      {
        kind: 'resistance',
        valueText: '4.08',
        unit: 'kΩ',
        between: ['red', 'white'],
        takeId: takeIds[0],
        ms: reading?.startMs,
      },
    ]);
    expect(readings[0]?.note).toContain('four point oh eight');
    expect(undo?.label).toBe('reading accepted');
    expect((await ask(app, 'POST', `/api/proposals/${reading?.id}`, { decision: 'accept' })).status).toBe(
      409,
    );
  });

  it('are taken back in one step: the reading goes, the proposal waits again', async () => {
    await ask(app, 'POST', `/api/jobs/${jobId}/undo`);
    expect((await getJob(app, jobId)).readings).toEqual([]);
    expect(await open('reading')).toHaveLength(1);
    await ask(app, 'POST', `/api/jobs/${jobId}/redo`);
    expect((await getJob(app, jobId)).readings).toHaveLength(1);
  });

  it('can be put right before they are accepted', async () => {
    const [joint] = await open('joint');
    await ask(app, 'POST', `/api/proposals/${joint?.id}`, {
      decision: 'accept',
      change: { conductors: ['white', 'green', 'blue'] },
    });
    const kept = (await narration()).proposals.find(({ id }) => id === joint?.id);
    expect(kept).toMatchObject({
      decision: 'accepted',
      heard: { payload: { conductors: ['white', 'green', 'blue'] } },
    });
    const bad = await ask(app, 'POST', `/api/proposals/${(await open('work'))[0]?.id}`, {
      decision: 'accept',
      change: { charge: 'sometimes' },
    });
    expect(bad.status).toBe(422);
  });

  it('put in again propose nothing twice and keep every decision', async () => {
    const [dismissed] = await open('work');
    await ask(app, 'POST', `/api/proposals/${dismissed?.id}`, { decision: 'dismiss' });
    const before = (await narration()).proposals;
    const { body } = await send(`/api/takes/${takeIds[0]}/narration`, captions);
    expect(body).toMatchObject({ proposed: 0 });
    expect((await narration()).proposals).toEqual(before);
    expect((await getJob(app, jobId)).readings).toHaveLength(1);
  });

  it('stay with their take when takes are re-ordered', async () => {
    const before = (await narration()).proposals;
    await ask(app, 'PATCH', `/api/takes/${takeIds[0]}`, { index: 1 });
    expect(await send(`/api/takes/${takeIds[0]}/narration`, captions)).toMatchObject({
      body: { proposed: 0 },
    });
    expect((await narration()).proposals.map(({ id }) => id)).toEqual(before.map(({ id }) => id));
    await ask(app, 'DELETE', `/api/jobs/${jobId}/takes/order`);
  });

  it('are decided all of a kind at once', async () => {
    const count = (await open('private')).length;
    expect(count).toBeGreaterThan(0);
    const { body } = await ask(app, 'POST', `/api/jobs/${jobId}/proposals`, {
      type: 'private',
      decision: 'accept',
    });
    expect(body).toMatchObject({ decided: count, left: 0 });
    expect(await open('private')).toEqual([]);
  });

  it('are corrected by hand: the time stays, and what was heard at first', async () => {
    const line = (await narration()).lines[3];
    await ask(app, 'PATCH', `/api/narration/${line?.id}`, { text: 'white and grey are soldered together' });
    const after = (await narration()).lines[3];
    expect(after).toEqual({ ...line, text: 'white and grey are soldered together', heardText: line?.text });
    expect((await open('joint'))[0]?.heard.payload).toEqual({ conductors: ['white', 'grey'] });
  });

  it('are moved when they run early, and off the record when they are deleted', async () => {
    await ask(app, 'PATCH', `/api/takes/${takeIds[0]}/narration`, { byMs: 250 });
    expect((await narration()).lines.map(({ startMs }) => startMs)).toEqual([250, 3750, 7250, 12_250]);
    await ask(app, 'DELETE', `/api/takes/${takeIds[0]}/narration`);
    const { lines, proposals } = await narration();
    expect(lines).toEqual([]);
    expect(proposals.every(({ decision }) => decision !== 'open')).toBe(true);
  });

  it('of the whole film are split over its takes', async () => {
    const film =
      'WEBVTT\n\n00:05.000 --> 00:07.000\nfirst take\n\n00:25.000 --> 00:27.000\nsecond take\n\n09:00.000 --> 09:02.000\nafter the end\n';
    const { body } = await send(`/api/jobs/${jobId}/narration`, film);
    expect(body).toMatchObject({ lines: 2, outside: 1 });
    const { lines } = await narration();
    expect(lines.map(({ takeId, startMs }) => [takeId, startMs])).toEqual([
      [takeIds[0], 5000],
      [takeIds[1], 5000],
    ]);
  });
});

describe('a promise and its end', () => {
  it('belong together over takes: the end points at the moment of the promise', async () => {
    await send(`/api/takes/${takeIds[0]}/narration`, '[0:02] I promised him a free set up');
    await send(`/api/takes/${takeIds[1]}/narration`, '[0:04] the set up is not done, I ran out of time');
    const end = (await narration()).proposals.find(
      ({ heard }) => heard.type === 'work' && heard.payload.outcome === 'not done',
    );
    expect(end).toMatchObject({ takeId: takeIds[1], promisedAt: { takeId: takeIds[0] } });
    expect(Math.abs((end?.promisedAt?.ms ?? 0) - 2000)).toBeLessThan(1500);
  });
});

describe('what is no captions file', () => {
  it('is refused with the first line that could not be read', async () => {
    for (const text of ['', 'just some words\nand more', '\u0000\u0001\u0002', '{"json": true}']) {
      const { status, body } = await send(`/api/takes/${takeIds[0]}/narration?name=shopping.txt`, text);
      expect(status, text).toBe(422);
      expect(body).toMatchObject({
        title: expect.stringContaining('shopping.txt'),
        detail: expect.any(String),
      });
    }
    expect((await narration()).lines).toHaveLength(2);
  });
});

describe('words of the repairer’s own', () => {
  it('are kept, and the next narration is read with them', async () => {
    await ask(app, 'PUT', '/api/slang', { slang: [{ said: 'whatsit', means: 'neck pickup' }] });
    expect((await ask(app, 'GET', '/api/slang')).body).toEqual({
      slang: [{ said: 'whatsit', means: 'neck pickup' }],
    });
    await send(`/api/takes/${takeIds[1]}/narration`, '[0:03] the whatsit reads seven point nine k');
    const [reading] = await open('reading');
    expect(reading?.heard).toMatchObject({ type: 'reading', payload: { digits: '7.9', unit: 'kΩ' } });
    expect(JSON.stringify(reading?.heard)).toContain('neck');
  });
});
