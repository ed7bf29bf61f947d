import {
  mkdirSync,
  mkdtempSync,
  readFileSync,
  realpathSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { problemSchema } from '@/shared/problem';
import { type Take, takeSchema } from '@/shared/takes';
import { type App, startApp } from '../app';
import { makeRecording } from '../recordings';
import { addTake, ask, makeJob, nameFolder, settled } from './client';

let app: App;
let top: string;
let folder: string;

beforeAll(async () => {
  top = realpathSync(mkdtempSync(join(tmpdir(), 'benchtake-moved-')));
  folder = join(top, 'recordings');
  mkdirSync(folder);
  app = await startApp();
  await nameFolder(app, folder);
});
afterAll(async () => {
  await app.clear();
  rmSync(top, { recursive: true });
});

/** The take once its recording has been looked at. */
async function look(path: string): Promise<Take> {
  const { job } = await makeJob(app);
  const { id } = await addTake(app, job.id, path);
  await settled(app, job.id);
  return takeSchema.parse((await ask(app, 'GET', `/api/takes/${id}`)).body);
}

describe('a recording that was moved', () => {
  const state = async (id: string) =>
    takeSchema.parse((await ask(app, 'GET', `/api/takes/${id}`)).body).state;

  it('is noticed, and found again in another folder, past a file of the same size', async () => {
    const path = makeRecording(folder, 'moved.mp4', { seconds: 2, hz: 311 });
    const take = await look(path);
    const elsewhere = join(top, 'archive', '2026');
    mkdirSync(elsewhere, { recursive: true });
    const size = readFileSync(path).length;
    renameSync(path, join(elsewhere, 'renamed.mp4'));
    expect((await ask(app, 'GET', `/api/takes/${take.id}/film`)).status).toBe(410);
    expect(await state(take.id)).toBe('missing');
    expect(problemSchema.parse((await ask(app, 'POST', `/api/takes/${take.id}/look`)).body)).toMatchObject({
      status: 404,
      detail: expect.stringMatching(/settings/i),
    });
    writeFileSync(join(folder, 'aaa same size.mp4'), Buffer.alloc(size, 'x'));
    await nameFolder(app, join(top, 'archive'));
    expect((await ask(app, 'POST', `/api/takes/${take.id}/look`)).status).toBe(202);
    const [found] = (await settled(app, take.jobId)).takes;
    expect(found).toMatchObject({
      id: take.id,
      state: 'ready',
      problem: null,
      path: join(elsewhere, 'renamed.mp4'),
      durationMs: take.durationMs,
      peaks: take.peaks,
    });
    expect((await ask(app, 'GET', `/api/takes/${take.id}/film`)).status).toBe(200);
  });

  it('is pointed to by hand', async () => {
    const path = makeRecording(folder, 'by hand.mp4', { seconds: 1, hz: 222 });
    const take = await look(path);
    const now = join(folder, 'by hand, renamed.mp4');
    renameSync(path, now);
    expect((await ask(app, 'GET', `/api/takes/${take.id}/film`)).status).toBe(410);
    expect((await ask(app, 'PATCH', `/api/takes/${take.id}`, { path: outsideOf() })).status).toBe(403);
    expect((await ask(app, 'PATCH', `/api/takes/${take.id}`, { path: now })).status).toBe(200);
    const [found] = (await settled(app, take.jobId)).takes;
    expect(found).toMatchObject({ state: 'ready', path: now, durationMs: take.durationMs });
    expect((await ask(app, 'GET', `/api/takes/${take.id}/film`)).status).toBe(200);
  });

  it('and put back is simply there again', async () => {
    const path = makeRecording(folder, 'put back.mp4', { seconds: 1, hz: 233 });
    const take = await look(path);
    renameSync(path, `${path}.away`);
    expect((await ask(app, 'GET', `/api/takes/${take.id}/film`)).status).toBe(410);
    renameSync(`${path}.away`, path);
    expect((await ask(app, 'GET', `/api/takes/${take.id}/film`)).status).toBe(200);
    expect(await state(take.id)).toBe('ready');
  });

  it('pointed to a different recording shows what that one is, not what the old one was', async () => {
    const take = await look(makeRecording(folder, 'first pick.mp4', { seconds: 1, hz: 244 }));
    const other = makeRecording(folder, 'second pick.mp4', { seconds: 3, hz: 255 });
    await ask(app, 'PATCH', `/api/takes/${take.id}`, { path: other });
    const [now] = (await settled(app, take.jobId)).takes;
    expect(now?.durationMs).toBeGreaterThan(2_900);
    expect(now?.peaks[0]?.pairs).toBeGreaterThan(290);
  });

  it('copied again whole, it is read anew', async () => {
    const path = makeRecording(folder, 'broke off.mp4', { seconds: 1, hz: 266 });
    const take = await look(path);
    makeRecording(folder, 'broke off.mp4', { seconds: 3, hz: 266 });
    await ask(app, 'POST', `/api/takes/${take.id}/look`);
    const [now] = (await settled(app, take.jobId)).takes;
    expect(now?.durationMs).toBeGreaterThan(2_900);
    expect(now?.peaks[0]?.pairs).toBeGreaterThan(290);
  });

  function outsideOf(): string {
    return makeRecording(join(top, 'outside'), 'not ours.mp4', { seconds: 1 });
  }
});
