import { execFile } from 'node:child_process';
import { mkdtempSync, readFileSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type App, startApp } from '../app';
import { makeRecording } from '../recordings';
import { addTake, ask, getJob, makeJob, nameFolder, settled, until } from './client';

const run = promisify(execFile);
let app: App;
let top: string;
/** Long enough that its sound and pictures are still being read when the blow falls. */
let long: string;

beforeAll(async () => {
  top = realpathSync(mkdtempSync(join(tmpdir(), 'benchtake-plug-')));
  const piece = makeRecording(join(top, 'pieces'), 'piece.mp4', { seconds: 120, extra: ['-g', '5'] });
  const list = join(top, 'pieces', 'list.txt');
  writeFileSync(list, `file '${piece}'\n`.repeat(45));
  long = join(top, 'pieces', 'long.mp4');
  await run('ffmpeg', ['-v', 'error', '-y', '-f', 'concat', '-safe', '0', '-i', list, '-c', 'copy', long]);
  app = await startApp();
  await nameFolder(app, top);
});
afterAll(async () => {
  await app.clear();
  rmSync(top, { recursive: true });
});

/** Process ids of the workers, as the kernel tells them. */
const workersOf = (pid: number) =>
  readFileSync(`/proc/${pid}/task/${pid}/children`, 'utf8').trim().split(/\s+/).filter(Boolean).map(Number);

function runs(pid: number): boolean {
  try {
    return !readFileSync(`/proc/${pid}/stat`, 'utf8').includes(') Z ');
  } catch {
    return false;
  }
}

const longTask = async (jobId: string) =>
  (await getJob(app, jobId)).tasks.find((task) => task.state === 'running' && task.kind !== 'probe');

/** Starts an import and comes back in the middle of it, when a worker is at it. */
async function begin(name: string): Promise<string> {
  const path = join(top, name);
  await run('cp', [long, path]);
  const { job } = await makeJob(app);
  await addTake(app, job.id, path);
  await until(
    () => longTask(job.id),
    (task) => task !== undefined && task.progress > 0,
  );
  return job.id;
}

async function expectWhole(jobId: string): Promise<void> {
  const [take] = (await settled(app, jobId)).takes;
  expect(take).toMatchObject({ state: 'ready', problem: null });
  expect(take?.durationMs).toBeGreaterThan(5_390_000);
  expect(take?.peaks.find((level) => level.pairsPerSecond === 4)?.pairs).toBeGreaterThan(4 * 5390);
  expect(take?.stills.length).toBeGreaterThan(10);
  expect(take?.hints).not.toBeNull();
}

describe('the plug is pulled', () => {
  it('on the workers in the middle of an import: another takes over', async () => {
    const jobId = await begin('workers.mp4');
    const before = workersOf(app.pid());
    expect(before.length).toBeGreaterThan(0);
    for (const pid of before) process.kill(pid, 'SIGKILL');
    expect((await ask(app, 'GET', '/api/health')).status).toBe(200);
    await expectWhole(jobId);
    expect(workersOf(app.pid()).some((pid) => before.includes(pid))).toBe(false);
  });

  it('on the server in the middle of an import: the next start goes on, and no worker is left over', async () => {
    const jobId = await begin('server.mp4');
    const orphans = workersOf(app.pid());
    await app.stop('SIGKILL');
    await app.restart();
    await expectWhole(jobId);
    await until(
      async () => orphans.filter(runs),
      (left) => left.length === 0,
      20_000,
    );
  });

  it('on the workers twice over one recording: it is left alone with a clear word, until somebody asks', async () => {
    const jobId = await begin('twice.mp4');
    for (let blow = 0; blow < 2; blow++) {
      await until(
        () => longTask(jobId),
        (task) => task !== undefined && task.progress > 0,
      );
      for (const pid of workersOf(app.pid())) process.kill(pid, 'SIGKILL');
      await until(
        () => longTask(jobId),
        (task) => task === undefined || task.progress === 0,
      );
    }
    const [take] = (await settled(app, jobId)).takes;
    expect(take?.problem).toMatch(/left alone/);
    await ask(app, 'POST', `/api/takes/${take?.id}/look`);
    await expectWhole(jobId);
  });
});
