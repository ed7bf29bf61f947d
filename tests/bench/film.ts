import { execFileSync, spawn } from 'node:child_process';
import { once } from 'node:events';
import { readFileSync, rmSync, statSync } from 'node:fs';
import { Agent, get } from 'node:http';
import { join } from 'node:path';
import type { App } from '../app';
import { addTake, getJob, makeJob, settled } from '../http/client';
import { cache, halfHour, threeHours } from './recordings';
import { best, type Row, time } from './table';

const mebibyte = 1 << 20;

/** From the moment a recording is added until it can be played; the film over HTTP; how large the processes grow. */
export async function film(app: App): Promise<Row[]> {
  return [await adding(app), ...(await serving(app)), ...(await residents(app))];
}

/** Each run adds a file that the app has not seen: a hard link would be the same size, but a path of its own. */
async function adding(app: App): Promise<Row> {
  const original = threeHours();
  const runs = [1, 2, 3].map((run) => join(cache, `added-${run}.mp4`));
  let best = Number.POSITIVE_INFINITY;
  let reference = Number.POSITIVE_INFINITY;
  for (const path of runs) {
    rmSync(path, { force: true });
    execFileSync('ln', [original, path]);
    reference = Math.min(
      reference,
      await time(() => execFileSync('ffprobe', ['-v', 'error', '-show_format', '-show_streams', path])),
    );
    const { job } = await makeJob(app);
    best = Math.min(best, await time(() => untilPlayable(app, job.id, path)));
    await settled(app, job.id);
  }
  for (const path of runs) rmSync(path);
  return {
    name: 'add to playable, 3 hours',
    ours: best,
    reference,
    referenceName: 'ffprobe alone',
    unit: 'ms',
    target: 'under 1000 ms',
  };
}

async function untilPlayable(app: App, jobId: string, path: string): Promise<void> {
  const { id } = await addTake(app, jobId, path);
  await read(`${app.url}/api/takes/${id}/film`, { range: 'bytes=0-65535' });
  while ((await getJob(app, jobId)).takes[0]?.state !== 'ready')
    await new Promise((resolve) => setTimeout(resolve, 5));
}

async function serving(app: App): Promise<Row[]> {
  const path = halfHour();
  const { size } = statSync(path);
  const { job } = await makeJob(app);
  const { id } = await addTake(app, job.id, path);
  await settled(app, job.id);
  const address = `${app.url}/api/takes/${id}/film`;
  const cat = () => execFileSync('sh', ['-c', 'cat "$0" > /dev/null', path]);
  const rate = (ms: number) => size / 1e6 / (ms / 1000);
  const row = (name: string, times: { ours: number; reference: number }): Row => ({
    name,
    ours: rate(times.ours),
    reference: rate(times.reference),
    referenceName: 'cat FILE > /dev/null',
    unit: 'MB/s',
    target: 'more is better',
  });
  const whole = await best(3, () => read(address, {}), cat);
  const parts = await best(
    3,
    async () => {
      for (let at = 0; at < size; at += mebibyte)
        await read(address, { range: `bytes=${at}-${at + mebibyte - 1}` });
    },
    cat,
  );
  return [row('/film, whole', whole), row('/film, in 1 MiB ranges', parts)];
}

const agent = new Agent({ keepAlive: true });

function read(address: string, headers: Record<string, string>): Promise<void> {
  return new Promise((resolve, reject) => {
    get(address, { headers, agent }, (response) => {
      response.on('error', reject);
      response.on('end', resolve);
      response.resume();
    }).on('error', reject);
  });
}

/** Resident size after all of the above. */
async function residents(app: App): Promise<Row[]> {
  const children = readFileSync(`/proc/${app.pid()}/task/${app.pid()}/children`, 'utf8');
  const workers = children.trim().split(' ').filter(Boolean).map(Number);
  const reference = await emptyNode();
  const row = (name: string, ours: number): Row => ({
    name,
    ours,
    reference,
    referenceName: 'an empty node process',
    unit: 'MB',
    target: 'less is better',
  });
  return [
    row('resident size: server', resident(app.pid())),
    ...workers.map((pid, index) => row(`resident size: worker ${index + 1}`, resident(pid))),
  ];
}

async function emptyNode(): Promise<number> {
  const child = spawn(process.execPath, ['-e', 'console.log("up"); setInterval(() => {}, 1000)']);
  await once(child.stdout, 'data');
  const megabytes = resident(child.pid ?? 0);
  child.kill();
  return megabytes;
}

function resident(pid: number): number {
  return Number(/VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1]) / 1000;
}
