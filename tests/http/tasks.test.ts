import { execFileSync } from 'node:child_process';
import {
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  realpathSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { takeSchema } from '@/shared/takes';
import { type Task, taskSchema } from '@/shared/tasks';
import { type App, startApp } from '../app';
import { makeRecording } from '../recordings';
import { addTake, ask, makeJob, nameFolder, settled, until } from './client';

let app: App;
let folder: string;

beforeAll(async () => {
  folder = realpathSync(mkdtempSync(join(tmpdir(), 'benchtake-tasks-')));
  app = await startApp();
  await nameFolder(app, folder);
});
afterAll(async () => {
  await app.clear();
  rmSync(folder, { recursive: true });
});

/** An old camera's recording, which no common browser plays: MPEG-4 Part 2 and MP3 in AVI. */
function makeAvi(name: string, seconds: number, size = '320x180'): string {
  mkdirSync(folder, { recursive: true });
  const path = join(folder, name);
  execFileSync('ffmpeg', [
    ...[
      '-v',
      'error',
      '-y',
      '-f',
      'lavfi',
      '-i',
      `testsrc2=s=${size}:r=25:d=${seconds}`,
      '-f',
      'lavfi',
      '-i',
      `sine=d=${seconds}`,
    ],
    ...['-c:v', 'mpeg4', '-q:v', '5', '-c:a', 'libmp3lame', path],
  ]);
  return path;
}

async function makeTake(path: string) {
  const { job } = await makeJob(app);
  const { id } = await addTake(app, job.id, path);
  await settled(app, job.id);
  return takeSchema.parse((await ask(app, 'GET', `/api/takes/${id}`)).body);
}

async function startCopy(takeId: string): Promise<Task> {
  const { status, body } = await ask(app, 'POST', `/api/takes/${takeId}/viewing-copy`);
  expect(status).toBe(202);
  return z.object({ task: taskSchema }).parse(body).task;
}

const taskNow = async (id: string) => taskSchema.parse((await ask(app, 'GET', `/api/tasks/${id}`)).body);

/** Reads a stream of server-sent events to its end (WHATWG HTML, section 9.2.6: fields, empty line). */
async function eventsOf(address: string, enough: (task: Task) => boolean): Promise<Task[]> {
  const leaving = new AbortController();
  const response = await fetch(address, { signal: leaving.signal, headers: { accept: 'text/event-stream' } });
  expect(response.headers.get('content-type')).toBe('text/event-stream');
  const told: Task[] = [];
  let text = '';
  for await (const piece of response.body?.pipeThrough(new TextDecoderStream()) ?? []) {
    const blocks = (text + piece).split('\n\n');
    text = blocks.pop() ?? '';
    for (const block of blocks.filter((one) => one.startsWith('event: task')))
      told.push(taskSchema.parse(JSON.parse(block.split('data: ')[1] ?? '')));
    const last = told.at(-1);
    if (last && enough(last)) break;
  }
  leaving.abort();
  return told;
}

describe('events', () => {
  it('of one task: its state, rising progress, the end, and then the stream closes', async () => {
    const take = await makeTake(makeAvi('events.avi', 30, '640x360'));
    const task = await startCopy(take.id);
    const told = await eventsOf(`${app.url}/api/tasks/${task.id}/events`, () => false);
    expect(told.every(({ id }) => id === task.id)).toBe(true);
    expect(told.at(-1)).toMatchObject({ state: 'done', progress: 1 });
    const progress = told.map((one) => one.progress);
    expect(progress).toEqual([...progress].sort((a, b) => a - b));
    expect(told.length).toBeGreaterThan(2);
  });

  it('of a task that is over: its state alone', async () => {
    const { job } = await makeJob(app);
    const path = makeRecording(folder, 'over.mp4', { seconds: 1 });
    const { body } = await ask(app, 'POST', `/api/jobs/${job.id}/takes`, { path });
    const { task } = z.looseObject({ task: taskSchema }).parse(body);
    await settled(app, job.id);
    const told = await eventsOf(`${app.url}/api/tasks/${task.id}/events`, () => false);
    expect(told.map(({ state }) => state)).toEqual(['done']);
  });

  it('of everything: an import is told from its probe to its pictures', async () => {
    const { job } = await makeJob(app);
    const telling = eventsOf(
      `${app.url}/api/events`,
      ({ kind, state }) => kind === 'pictures' && state === 'done',
    );
    await addTake(app, job.id, makeRecording(folder, 'told.mp4', { seconds: 2 }));
    const done = (await telling).filter(({ state }) => state === 'done').map(({ kind }) => kind);
    expect(done).toEqual(['probe', 'sound', 'pictures']);
  });

  it('are let go when the page leaves', async () => {
    const open = () => readdirSync(`/proc/${app.pid()}/fd`).length;
    const before = open();
    for (let index = 0; index < 40; index++) {
      const leaving = new AbortController();
      const response = await fetch(`${app.url}/api/events`, { signal: leaving.signal });
      await response.body?.getReader().read();
      leaving.abort();
    }
    await until(
      async () => open(),
      (now) => now <= before + 5,
      10_000,
    );
  });

  it('of a task that is not there: a problem', async () => {
    expect((await ask(app, 'GET', '/api/tasks/00000000000000000000/events')).status).toBe(404);
  });
});

const streamSchema = z.object({
  streams: z.array(
    z.looseObject({ codec_name: z.string(), height: z.number().optional(), pix_fmt: z.string().optional() }),
  ),
  format: z.object({ duration: z.coerce.number() }),
});

describe('a viewing copy', () => {
  it('is offered where browsers cannot play it, made, and then shown', async () => {
    const path = makeAvi('old camera.avi', 4, '1440x1080');
    const bytes = readFileSync(path);
    const take = await makeTake(path);
    expect(take.probe?.playable).toMatchObject({ ok: false, reason: expect.stringMatching(/AVI|MPEG-4/) });
    expect(take.viewingCopy).toBe(false);
    const { id } = await startCopy(take.id);
    expect((await startCopy(take.id)).id).toBe(id);
    await until(
      () => taskNow(id),
      ({ state }) => state === 'done',
    );
    expect(takeSchema.parse((await ask(app, 'GET', `/api/takes/${take.id}`)).body)).toMatchObject({
      viewingCopy: true,
      durationMs: take.durationMs,
    });
    const film = await fetch(`${app.url}/api/takes/${take.id}/film`);
    expect(film.headers.get('content-type')).toBe('video/mp4');
    const shown = join(folder, 'shown.mp4');
    writeFileSync(shown, Buffer.from(await film.arrayBuffer()));
    // Outside check: ffprobe reads what is served.
    const told = streamSchema.parse(
      JSON.parse(
        execFileSync('ffprobe', ['-v', 'error', '-show_streams', '-show_format', '-of', 'json', shown], {
          encoding: 'utf8',
        }),
      ),
    );
    expect(told.streams.map((stream) => stream.codec_name)).toEqual(['h264', 'aac']);
    expect(told.streams[0]).toMatchObject({ height: 720, pix_fmt: 'yuv420p' });
    expect(Math.abs(told.format.duration * 1000 - take.durationMs)).toBeLessThan(100);
    expect(readFileSync(path).equals(bytes)).toBe(true);
  });

  it('is called off; nothing half made is shown, and it can be made after all', async () => {
    const take = await makeTake(makeAvi('called off.avi', 60, '640x360'));
    const { id } = await startCopy(take.id);
    await until(
      () => taskNow(id),
      ({ state, progress }) => state === 'running' && progress > 0,
    );
    expect((await ask(app, 'DELETE', `/api/tasks/${id}`)).body).toMatchObject({ id, state: 'cancelled' });
    expect(takeSchema.parse((await ask(app, 'GET', `/api/takes/${take.id}`)).body)).toMatchObject({
      viewingCopy: false,
      problem: null,
      state: 'ready',
    });
    expect((await ask(app, 'DELETE', `/api/tasks/${id}`)).body).toMatchObject({ state: 'cancelled' });
    const again = await startCopy(take.id);
    expect(again.id).not.toBe(id);
    await until(
      () => taskNow(again.id),
      ({ state }) => state === 'done',
    );
    expect((await taskNow(id)).state).toBe('cancelled');
  });

  it('that waits is called off without having begun', async () => {
    const first = await startCopy((await makeTake(makeAvi('first.avi', 40, '640x360'))).id);
    const second = await makeTake(makeRecording(folder, 'second.mp4', { seconds: 1 }));
    const waiting = await startCopy(second.id);
    expect((await ask(app, 'DELETE', `/api/tasks/${waiting.id}`)).body).toMatchObject({ state: 'cancelled' });
    expect(
      await until(
        () => taskNow(first.id),
        ({ state }) => state === 'done',
      ),
    ).toMatchObject({ progress: 1 });
    expect((await taskNow(waiting.id)).state).toBe('cancelled');
  });
});
