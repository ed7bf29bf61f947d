import { execFileSync } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import {
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  readlinkSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { broughtInSchema } from '@/shared/bundle';
import type { JobRecord } from '@/shared/jobs';
import { type App, startApp } from '../app';
import { zipOf } from '../handover/bundle-records';
import { makeRecording } from '../recordings';
import { addTake, ask, getJob, makeJob, nameFolder, settled, until } from './client';

let here: App;
let there: App;
let folder: string;
let job: JobRecord;
let zip: Buffer;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'benchtake-bundle-'));
  [here, there] = await Promise.all([startApp(), startApp()]);
  job = await filmedJob();
  zip = await bundleOf('all');
});
afterAll(async () => {
  await Promise.all([here.clear(), there.clear()]);
  rmSync(folder, { recursive: true });
});

async function filmedJob(): Promise<JobRecord> {
  makeRecording(folder, 'łódź 琴.mp4', { seconds: 6 });
  await nameFolder(here, folder);
  const { id } = (await makeJob(here, 'Four-string bass 🎸, crackles')).job;
  const take = await addTake(here, id, join(folder, 'łódź 琴.mp4'));
  await settled(here, id);
  const at = { takeId: take.id, ms: 2000 };
  await ask(here, 'POST', `/api/jobs/${id}/markers`, { kind: 'work', title: 'Joint: red/white?', ...at });
  await ask(here, 'POST', `/api/jobs/${id}/readings/quick`, { text: 'neck red-white 4.08k', ...at });
  await ask(here, 'POST', `/api/jobs/${id}/traces`, { subject: 'neck', conductors: ['red', 'white'] });
  await ask(here, 'POST', `/api/jobs/${id}/work`, { what: 'Mend the crackle', begun: at });
  const captions =
    'WEBVTT\n\n00:01.000 --> 00:03.000\nI measure four point zero eight kilohms on the neck.\n';
  await ask(here, 'POST', `/api/takes/${take.id}/narration`, captions, { 'content-type': 'text/vtt' });
  return settled(here, id);
}

async function bundleOf(recordings: 'none' | 'all'): Promise<Buffer> {
  const answer = await fetch(`${here.url}/api/jobs/${job.job.id}/bundle?recordings=${recordings}`);
  expect(answer.status).toBe(200);
  expect(answer.headers.get('content-type')).toBe('application/zip');
  expect(answer.headers.get('content-disposition')).toBe('attachment; filename="job-0001.zip"');
  return Buffer.from(await answer.arrayBuffer());
}

function bringIn(app: App, body: Buffer): Promise<Response> {
  return fetch(`${app.url}/api/bundles`, {
    method: 'POST',
    headers: { 'content-type': 'application/zip' },
    body: Uint8Array.from(body),
  });
}

/** What a person sees of a record, without ids, days and where files lie. */
function seen({
  job: { title, state, receivedOn },
  instrument,
  takes,
  markers,
  readings,
  work,
  traces,
}: JobRecord) {
  return {
    ...{ title, state, receivedOn, type: instrument.type },
    takes: takes.map(({ name, durationMs, recordedAt, probe, stills }) => ({
      name,
      durationMs,
      recordedAt,
      probe,
      stills,
    })),
    markers: markers.map(({ kind, title: name, ms }) => [kind, name, ms]),
    readings: readings.map(({ valueText, unit, between, ms }) => [valueText, unit, between, ms]),
    work: work.map(({ what, begun }) => [what, begun?.ms]),
    traces: traces.map(({ subject, conductors }) => [subject, conductors]),
  };
}

/** Files of the data folder that are no database. */
const filesIn = (app: App) =>
  readdirSync(app.home, { recursive: true })
    .map(String)
    .filter((name) => /^(uploads|received)./.test(name));
const openFiles = (app: App) =>
  readdirSync(`/proc/${app.pid()}/fd`).flatMap((fd) => {
    try {
      return readlinkSync(`/proc/${app.pid()}/fd/${fd}`);
    } catch {
      return []; // Closed since it was listed.
    }
  });

describe('a bundle', () => {
  it('is a ZIP that other programs read, with stills, tables and documents', () => {
    const path = join(folder, 'out.zip');
    writeFileSync(path, zip);
    const env = { ...process.env, LC_ALL: 'C.UTF-8' };
    // Outside check: Debian's unzip.
    expect(execFileSync('unzip', ['-t', path], { encoding: 'utf8', env })).toContain('No errors detected');
    const names = execFileSync('unzip', ['-Z1', path], { encoding: 'utf8', env }).trim().split('\n');
    for (const name of [
      'chapters.txt',
      'chapters.vtt',
      'chapters.xml',
      'episode-notes.md',
      'client-summary.pdf',
    ])
      expect(names).toContain(`documents/${name}`);
    for (const name of ['markers', 'readings', 'work', 'parts', 'narration'])
      expect(names).toContain(`tables/${name}.csv`);
    expect(names).toContain('recordings/01 łódź 琴.mp4');
    const still = names.find((name) => name.startsWith('stills/')) ?? '';
    expect(still).toBe('stills/001 Joint- red-white-.jpg');
    const jpeg = execFileSync('unzip', ['-p', path, still]);
    expect(jpeg.subarray(0, 3)).toEqual(Buffer.from([0xff, 0xd8, 0xff]));
    const film = execFileSync('unzip', ['-p', path, 'recordings/01 łódź 琴.mp4'], {
      env,
      maxBuffer: 1 << 28,
    });
    expect(film.equals(readFileSync(join(folder, 'łódź 琴.mp4')))).toBe(true);
  });

  it('becomes the same job on another machine, recording and all', async () => {
    const answer = await bringIn(there, zip);
    expect(answer.status).toBe(201);
    const { job: made, report } = broughtInSchema.parse(await answer.json());
    expect(report).toMatchObject({
      before: [],
      client: 'none',
      instrument: 'new',
      recordings: [{ how: 'brought' }],
    });
    const record = await settled(there, made.id);
    expect(record.takes[0]?.state).toBe('ready');
    expect(seen(record)).toEqual(seen(job));
    const film = await fetch(`${there.url}/api/takes/${record.takes[0]?.id}/film`);
    expect(Buffer.from(await film.arrayBuffer()).equals(readFileSync(join(folder, 'łódź 琴.mp4')))).toBe(
      true,
    );
    const narration = (app: App, id: string) => ask(app, 'GET', `/api/jobs/${id}/narration`);
    const lines = ({ body }: { body: unknown }) => JSON.stringify(body).match(/"text":"[^"]+"/g);
    expect(lines(await narration(there, made.id))).toEqual(lines(await narration(here, job.job.id)));
    expect(filesIn(there).filter((name) => name.startsWith('uploads/'))).toEqual([]);
  });

  it('brought back where it comes from stands beside the job, with the recording that lies there', async () => {
    const { job: made, report } = broughtInSchema.parse(await (await bringIn(here, zip)).json());
    expect(report.before.map(({ id }) => id)).toEqual([job.job.id]);
    expect(report.recordings.map(({ how, path }) => [how, path])).toEqual([
      ['found', join(folder, 'łódź 琴.mp4')],
    ]);
    expect(made.number).toBe(job.job.number + 1);
    expect(seen(await getJob(here, made.id))).toEqual(seen(job));
    await ask(here, 'DELETE', `/api/jobs/${made.id}`);
  });

  it('of many megabytes arrives whole', async () => {
    const path = join(folder, 'bare.zip');
    writeFileSync(path, await bundleOf('none'));
    const record = execFileSync('unzip', ['-p', path, 'record.json']);
    const answer = await bringIn(
      there,
      await zipOf({ 'record.json': record, 'noise.bin': randomBytes(60_000_000) }),
    );
    const { report } = broughtInSchema.parse(await answer.json());
    expect(report.before).toHaveLength(1);
    expect(report.passedOver).toBe(1);
  });
});

describe('what goes wrong', () => {
  it('is told as a problem, and nothing stays', async () => {
    const before = filesIn(there);
    const answer = await bringIn(
      there,
      await zipOf({ 'record.json': '{"format":"benchtake job","version":99}' }),
    );
    expect(answer.status).toBe(422);
    expect(answer.headers.get('content-type')).toContain('application/problem+json');
    expect(await answer.json()).toMatchObject({
      wrong: 'version',
      detail: expect.stringContaining('up to date'),
    });
    expect((await bringIn(there, Buffer.from('no zip'))).status).toBe(422);
    expect(filesIn(there)).toEqual(before);
  });

  it('a sender that goes away in the middle leaves nothing', async () => {
    const before = filesIn(there);
    const jobs = (await ask(there, 'GET', '/api/jobs')).body;
    const sending = request(`${there.url}/api/bundles`, {
      method: 'POST',
      headers: { 'content-length': zip.length },
    });
    sending.on('error', () => {});
    sending.write(zip.subarray(0, zip.length / 2));
    await until(
      async () => filesIn(there).length,
      (count) => count > before.length,
    );
    sending.destroy();
    await until(
      async () => filesIn(there).length,
      (count) => count === before.length,
    );
    expect((await ask(there, 'GET', '/api/jobs')).body).toEqual(jobs);
  });

  it('a reader that goes away in the middle leaves no file open', async () => {
    const path = join(folder, 'long.mp4');
    writeFileSync(path, Buffer.concat([readFileSync(join(folder, 'łódź 琴.mp4')), randomBytes(64_000_000)]));
    const { id } = (await makeJob(here, 'Long')).job;
    await addTake(here, id, path);
    await settled(here, id);
    const stopper = new AbortController();
    const answer = await fetch(`${here.url}/api/jobs/${id}/bundle?recordings=all`, {
      signal: stopper.signal,
    });
    await answer.body?.getReader().read();
    await until(
      async () => openFiles(here),
      (files) => files.includes(path),
    );
    stopper.abort();
    await until(
      async () => openFiles(here),
      (files) => !files.includes(path),
    );
  });

  it('a recording that is gone is told, and the bundle is made', async () => {
    const path = join(folder, 'gone.mp4');
    makeRecording(folder, 'gone.mp4', { seconds: 2, hz: 500 });
    const { id } = (await makeJob(here, 'Gone')).job;
    await addTake(here, id, path);
    await settled(here, id);
    rmSync(path);
    const answer = await fetch(`${here.url}/api/jobs/${id}/bundle?recordings=all`);
    const { report } = broughtInSchema.parse(
      await (await bringIn(there, Buffer.from(await answer.arrayBuffer()))).json(),
    );
    expect(report.recordings.map(({ how }) => how)).toEqual(['missing']);
    expect(report.said.join(' ')).toContain('Put what is missing into');
    expect(existsSync(path)).toBe(false);
  });
});
