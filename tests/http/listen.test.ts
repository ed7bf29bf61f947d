import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { taskSchema } from '@/shared/tasks';
import { type App, startApp } from '../app';
import { writeWeightlessModel } from '../media/speech-model';
import { makeRecording } from '../recordings';
import { addTake, ask, getJob, makeJob, nameFolder, settled, until } from './client';

let app: App;
let folder: string;
let jobId: string;
let takeId: string;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'benchtake-listen-'));
  app = await startApp();
  await nameFolder(app, folder);
  jobId = (await makeJob(app)).job.id;
  takeId = (await addTake(app, jobId, makeRecording(folder, 'talk.mp4', { seconds: 45 }))).id;
  await settled(app, jobId);
});
afterAll(async () => {
  await app.clear();
  rmSync(folder, { recursive: true });
});

const listen = async (body: object = {}) => ask(app, 'POST', `/api/takes/${takeId}/listen`, body);
const task = async (id: string) => taskSchema.parse((await ask(app, 'GET', `/api/tasks/${id}`)).body);
const started = (body: unknown) => z.object({ task: taskSchema }).parse(body).task;

describe('without a speech model', () => {
  it('says how to get one, and fetches nothing', async () => {
    const { status, body } = await listen();
    expect(status).toBe(404);
    expect(body).toMatchObject({ detail: expect.stringContaining(join(app.home, 'models')) });
  });

  it('takes no other file for one', async () => {
    mkdirSync(join(app.home, 'models'), { recursive: true });
    writeFileSync(join(app.home, 'models', 'notes.bin'), 'notes');
    expect((await ask(app, 'GET', '/api/models')).body).toEqual({
      folder: join(app.home, 'models'),
      models: [],
    });
  });
});

describe('with a speech model (one without weights: it hears nothing)', () => {
  beforeAll(() => writeWeightlessModel(join(app.home, 'models', 'weightless.bin')));

  it('is found', async () => {
    expect((await ask(app, 'GET', '/api/models')).body).toMatchObject({
      models: [{ name: 'weightless.bin' }],
    });
    expect((await listen({ model: '../../etc/passwd' })).status).toBe(404);
  });

  it('is called off, and leaves nothing', async () => {
    const { id } = started((await listen()).body);
    await until(
      () => task(id),
      ({ state }) => state === 'running',
    );
    await ask(app, 'DELETE', `/api/tasks/${id}`);
    expect(
      (
        await until(
          () => task(id),
          ({ state }) => state !== 'running',
        )
      ).state,
    ).toBe('cancelled');
    const { undo, tasks } = await getJob(app, jobId);
    expect(tasks).toEqual([]);
    expect(undo?.label).not.toContain('narration');
  });

  it('listens to the end in its own process, and puts in what it heard: nothing', async () => {
    const { id } = started((await listen()).body);
    const over = await until(
      () => task(id),
      ({ state }) => state === 'done' || state === 'failed',
      110_000,
    );
    expect(over).toMatchObject({ state: 'done', progress: 1, message: 'No words were heard.' });
    expect((await ask(app, 'GET', `/api/jobs/${jobId}/narration`)).body).toEqual({
      lines: [],
      proposals: [],
    });
  });
});
