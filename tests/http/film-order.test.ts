import { mkdtempSync, realpathSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type App, startApp } from '../app';
import { makeRecording } from '../recordings';
import { addTake, ask, getJob, makeJob, nameFolder, settled } from './client';

let app: App;
let top: string;
let job: string;
let camera: { id: string };

beforeAll(async () => {
  top = realpathSync(mkdtempSync(join(tmpdir(), 'benchtake-order-')));
  const [one, other] = [join(top, 'camera'), join(top, 'phone')];
  // The camera writes its local time, an hour ahead, as UTC; the phone is right.
  const paths = [
    makeRecording(other, 'b.mp4', { seconds: 4, at: '2026-03-17T09:10:00Z' }),
    makeRecording(one, 'take 10.mp4', { seconds: 4, at: '2026-03-17T10:15:00Z' }),
    makeRecording(one, 'take 2.mp4', { seconds: 4, at: '2026-03-17T10:05:00Z' }),
  ];
  app = await startApp();
  camera = await nameFolder(app, one);
  await nameFolder(app, other);
  job = (await makeJob(app)).job.id;
  for (const path of paths) await addTake(app, job, path);
  await settled(app, job);
});
afterAll(async () => {
  await app.clear();
  rmSync(top, { recursive: true });
});

const order = async () => (await getJob(app, job)).takes.map(({ name }) => name);
async function idOf(name: string): Promise<string> {
  const take = (await getJob(app, job)).takes.find((candidate) => candidate.name === name);
  if (!take) throw new Error(`No take is called ${name}`);
  return take.id;
}

describe('the order of takes', () => {
  it('follows the recorded-at times, with the camera’s clock set right', async () => {
    expect(await order()).toEqual(['b.mp4', 'take 2.mp4', 'take 10.mp4']);
    await ask(app, 'PATCH', `/api/folders/${camera.id}`, { clockOffsetMinutes: -60 });
    expect(await order()).toEqual(['take 2.mp4', 'b.mp4', 'take 10.mp4']);
    const { takes } = await getJob(app, job);
    expect(takes.map(({ recordedAt }) => recordedAt)).toEqual(
      ['09:05', '09:10', '09:15'].map((time) => Date.parse(`2026-03-17T${time}:00Z`)),
    );
  });

  it('is changed by hand, holds against the clock, and goes back to it', async () => {
    await ask(app, 'PATCH', `/api/takes/${await idOf('take 10.mp4')}`, { index: 0 });
    const byHand = ['take 10.mp4', 'take 2.mp4', 'b.mp4'];
    expect(await order()).toEqual(byHand);
    await ask(app, 'PATCH', `/api/folders/${camera.id}`, { clockOffsetMinutes: 60 });
    expect(await order()).toEqual(byHand);
    await ask(app, 'PATCH', `/api/folders/${camera.id}`, { clockOffsetMinutes: -60 });
    expect((await ask(app, 'DELETE', `/api/jobs/${job}/takes/order`)).status).toBe(200);
    expect(await order()).toEqual(['take 2.mp4', 'b.mp4', 'take 10.mp4']);
  });
});

describe('chapters', () => {
  const chapters = (as: string) => ask(app, 'GET', `/api/jobs/${job}/exports/chapters?as=${as}`);

  it('stand on the film’s clock, follow the takes, and leave out what is private', async () => {
    const mark = async (name: string, ms: number, title: string, isPublic = true) =>
      expect(
        (
          await ask(app, 'POST', `/api/jobs/${job}/markers`, {
            kind: 'work',
            title,
            takeId: await idOf(name),
            ms,
            public: isPublic,
          })
        ).status,
      ).toBe(201);
    await mark('b.mp4', 500, 'Pickup out & <measured>');
    await mark('take 10.mp4', 1000, 'Last chord');
    await mark('take 2.mp4', 1500, 'The client’s telephone rings', false);
    const { job: ticket, takes } = await getJob(app, job);
    const [first, second] = takes.map(({ durationMs }) => durationMs);
    expect([first, second]).toEqual([4000, 4000]);
    const text = await chapters('text');
    expect(text.headers.get('content-type')).toMatch(/^text\/plain/);
    expect(text.body).toBe(`0:00 ${ticket.title}\n0:04 Pickup out & <measured>\n0:09 Last chord\n`);
    const webvtt = await chapters('webvtt');
    expect(webvtt.headers.get('content-type')).toMatch(/^text\/vtt/);
    expect(webvtt.headers.get('content-disposition')).toContain('.vtt"');
    expect(webvtt.body).toBe(
      [
        'WEBVTT\n',
        `00:00:00.000 --> 00:00:04.500\n${ticket.title}\n`,
        '00:00:04.500 --> 00:00:09.000\nPickup out &amp; &lt;measured&gt;\n',
        '00:00:09.000 --> 00:00:12.000\nLast chord\n',
      ].join('\n'),
    );
    await ask(app, 'PATCH', `/api/takes/${await idOf('take 10.mp4')}`, { index: 0 });
    expect((await chapters('text')).body).toBe(`0:00 Last chord\n0:08 Pickup out & <measured>\n`);
  });

  it('of a job that is not there: a problem; an impossible camera clock too', async () => {
    expect((await ask(app, 'GET', '/api/jobs/00000000000000000000/exports/chapters')).status).toBe(404);
    expect((await ask(app, 'PATCH', `/api/folders/${camera.id}`, { clockOffsetMinutes: 5000 })).status).toBe(
      422,
    );
  });
});
