import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdtempSync, readdirSync, readFileSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { Readable } from 'node:stream';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { mapped, UploadFiles } from '@/app/_server/tus';
import { enginePath, finishedUploadSchema, uploadsPath } from '@/shared/uploads';
import { type App, startApp } from '../app';
import { makeRecording } from '../recordings';
import { ask, getJob, makeJob, settled, until } from './client';

// Outside check: the requests are written by hand from the open protocol, tus 1.0.0
// (tus.io/protocols/resumable-upload): core, creation, termination, expiration.
let app: App;
let folder: string;
let film: Buffer;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'benchtake-uploads-'));
  film = readFileSync(makeRecording(folder, 'take.mp4', { seconds: 6, extra: ['-b:v', '2M'] }));
  app = await startApp();
});
afterAll(async () => {
  await app.clear();
  rmSync(folder, { recursive: true });
});

const hashOf = (bytes: Buffer) => createHash('sha256').update(bytes).digest('hex');
const tus = { 'tus-resumable': '1.0.0' };
const inBase64 = (text: string) => Buffer.from(text).toString('base64');

interface About {
  job: string;
  name?: string;
  length?: number;
  headers?: Record<string, string>;
}

function create({ job, name = 'take.mp4', length = film.length, headers = {} }: About): Promise<Response> {
  const metadata = `job ${inBase64(job)},filename ${inBase64(name)},lastModified ${inBase64('1750000000000')}`;
  return fetch(app.url + uploadsPath, {
    method: 'POST',
    headers: { ...tus, 'upload-length': String(length), 'upload-metadata': metadata, ...headers },
  });
}

async function created(about: About): Promise<string> {
  const answer = await create(about);
  expect(answer.status).toBe(201);
  return new URL(answer.headers.get('location') ?? '', app.url).href;
}

function patch(address: string, offset: number, bytes: Buffer): Promise<Response> {
  return fetch(address, {
    method: 'PATCH',
    headers: { ...tus, 'upload-offset': String(offset), 'content-type': 'application/offset+octet-stream' },
    body: new Uint8Array(bytes),
  });
}

const head = (address: string) => fetch(address, { method: 'HEAD', headers: tus });
const offsetOf = async (address: string) => Number((await head(address)).headers.get('upload-offset'));
const finish = (address: string, sha256: string) =>
  ask(app, 'POST', `${new URL(address).pathname}/finish`, { sha256 });

async function sendWhole(about: About) {
  const address = await created(about);
  expect((await patch(address, 0, film)).status).toBe(204);
  const { status, body } = await finish(address, hashOf(film));
  expect(status).toBe(202);
  return finishedUploadSchema.parse(body).take;
}

/** Begins a PATCH of everything and cuts the line after some bytes of it. */
function cutOff(address: string, bytes: Buffer): Promise<void> {
  return new Promise((resolve) => {
    const { hostname, port, pathname } = new URL(address);
    const call = request({
      ...{ hostname, port, path: pathname, method: 'PATCH' },
      headers: {
        ...tus,
        'upload-offset': '0',
        'content-type': 'application/offset+octet-stream',
        'content-length': film.length,
      },
    });
    call.on('error', () => resolve());
    call.write(bytes, () => setTimeout(() => call.destroy(new Error('the line is cut')), 100));
  });
}

const left = () => readdirSync(join(app.home, 'uploads')).filter((name) => !name.endsWith('.done'));

function expectProblem(answer: { status: number; headers: Headers }, status: number): void {
  expect(answer.status).toBe(status);
  // RFC 9457, section 3.
  expect(answer.headers.get('content-type')).toBe('application/problem+json');
}

describe('a recording sent from another device', () => {
  it('arrives in parts, becomes a take of its job, and is the same byte for byte', async () => {
    const { job } = await makeJob(app);
    const address = await created({ job: job.id });
    expect(await offsetOf(address)).toBe(0);
    const middle = Math.floor(film.length / 2);
    const first = await patch(address, 0, film.subarray(0, middle));
    expect(first.status).toBe(204);
    expect(first.headers.get('upload-offset')).toBe(String(middle));
    expect(first.headers.get('upload-expires')).toMatch(/GMT$/);
    expect(await offsetOf(address)).toBe(middle);
    expectProblem(await finish(address, hashOf(film)), 409);
    expect((await patch(address, middle, film.subarray(middle))).status).toBe(204);
    const { status, headers, body } = await finish(address, hashOf(film));
    expect(status).toBe(202);
    const { take } = finishedUploadSchema.parse(body);
    expect(headers.get('location')).toBe(`/api/takes/${take.id}`);
    expect(take.path).toBe(join(app.home, 'received', String(job.number), 'take.mp4'));
    // Outside check: coreutils' sha256sum reads the file that lies there.
    expect(execFileSync('sha256sum', [take.path], { encoding: 'utf8' })).toContain(hashOf(film));
    const record = await settled(app, job.id);
    expect(record.takes.map(({ state, durationMs }) => ({ state, durationMs }))).toEqual([
      { state: 'ready', durationMs: expect.closeTo(6000, -2) },
    ]);
    expect((await head(address)).status).toBe(404);
    expect(left()).toEqual([]);
    // An answer that got lost can be asked for again, and nothing is added twice.
    expect((await finish(address, hashOf(film))).body).toEqual(body);
    expect((await getJob(app, job.id)).takes).toHaveLength(1);
  });

  it('goes on where the line was cut', async () => {
    const { job } = await makeJob(app);
    const address = await created({ job: job.id });
    const part = film.subarray(0, 200_000);
    await cutOff(address, part);
    const offset = await until(
      () => offsetOf(address),
      (bytes) => bytes > 0,
    );
    expect(offset).toBeLessThanOrEqual(part.length);
    expectProblem(await patch(address, offset + 1, film.subarray(offset + 1)), 409);
    expectProblem(await patch(address, 0, film), 409);
    expect(await offsetOf(address)).toBe(offset);
    expect((await patch(address, offset, film.subarray(offset))).status).toBe(204);
    const { status, body } = await finish(address, hashOf(film));
    expect(status).toBe(202);
    expect(readFileSync(finishedUploadSchema.parse(body).take.path).equals(film)).toBe(true);
  });

  it('goes on after the bench machine was switched off', async () => {
    const { job } = await makeJob(app);
    const address = await created({ job: job.id });
    await patch(address, 0, film.subarray(0, 100_000));
    await app.stop('SIGKILL');
    await app.restart();
    expect(await offsetOf(address)).toBe(100_000);
    expect((await patch(address, 100_000, film.subarray(100_000))).status).toBe(204);
    expect((await finish(address, hashOf(film))).status).toBe(202);
  });

  it('is not kept where its hash is another', async () => {
    const { job } = await makeJob(app);
    const address = await created({ job: job.id });
    const damaged = Buffer.from(film);
    damaged.writeUInt8(damaged.readUInt8(1000) ^ 1, 1000);
    await patch(address, 0, damaged);
    const refused = await finish(address, hashOf(film));
    expectProblem(refused, 422);
    expect(refused.body).toMatchObject({ detail: expect.stringContaining('None of it was kept') });
    expect((await getJob(app, job.id)).takes).toEqual([]);
    expect((await head(address)).status).toBe(404);
    expect(left()).toEqual([]);
    expectProblem(await finish(address, 'not a hash'), 422);
  });

  it('can be thrown away', async () => {
    const { job } = await makeJob(app);
    const address = await created({ job: job.id });
    await patch(address, 0, film.subarray(0, 1000));
    expect((await fetch(address, { method: 'DELETE', headers: tus })).status).toBe(204);
    expect((await head(address)).status).toBe(404);
    expect(left()).toEqual([]);
  });

  it('never lies over another, and takes its date along', async () => {
    const { job } = await makeJob(app);
    const names = [];
    for (let index = 0; index < 3; index++) names.push(basename((await sendWhole({ job: job.id })).path));
    expect(names).toEqual(['take.mp4', 'take (2).mp4', 'take (3).mp4']);
    const shown = execFileSync('stat', [
      '-c',
      '%Y',
      join(app.home, 'received', String(job.number), 'take.mp4'),
    ]);
    expect(Number(shown)).toBe(1_750_000_000);
  });

  it('gets a name that every file system takes', async () => {
    const { job } = await makeJob(app);
    const odd: [given: string, kept: string][] = [
      ['../../../etc/passwd.mp4', 'passwd.mp4'],
      ['..\\..\\windows\\bass.mp4', 'bass.mp4'],
      ['neck\u0000 pick\nup.mp4', 'neck pickup.mp4'],
      ['what: "neck" <or> bridge?.mp4', 'what- -neck- -or- bridge-.mp4'],
      ['CON.mp4', '_CON.mp4'],
      ['.hidden.mp4', 'hidden.mp4'],
      ['turned\u202e4pm.mp4', 'turned4pm.mp4'],
      ['...', 'recording'],
      ['Überschlag 🎸 χορδή.mp4', 'Überschlag 🎸 χορδή.mp4'],
      [`${'🎸'.repeat(300)}.mp4`, `${'🎸'.repeat(42)}.mp4`],
    ];
    for (const [given, kept] of odd) {
      const take = await sendWhole({ job: job.id, name: given });
      expect(take.path, given).toBe(join(app.home, 'received', String(job.number), kept));
    }
  });
});

describe('what is refused before a byte is sent', () => {
  it('a job that is not there, or lies in the bin; a file without bytes, metadata or length', async () => {
    const { job } = await makeJob(app);
    expectProblem(await create({ job: '00000000000000000000' }), 404);
    expectProblem(await create({ job: 'no id' }), 422);
    expectProblem(await create({ job: job.id, length: 0 }), 422);
    expectProblem(await create({ job: job.id, headers: { 'upload-metadata': '' } }), 400);
    expectProblem(
      await fetch(app.url + uploadsPath, { method: 'POST', headers: { ...tus, 'upload-length': '5' } }),
      422,
    );
    expectProblem(await create({ job: job.id, headers: { 'upload-length': 'much' } }), 400);
    expectProblem(await fetch(app.url + uploadsPath, { method: 'POST' }), 412);
    expectProblem(await fetch(app.url + uploadsPath), 404);
    await ask(app, 'DELETE', `/api/jobs/${job.id}`);
    expectProblem(await create({ job: job.id }), 409);
    expect(left()).toEqual([]);
  });

  it('more than the disk has room for', async () => {
    const { job } = await makeJob(app);
    const answer = await create({ job: job.id, length: 2 ** 52 });
    expectProblem(answer, 507);
    expect(await answer.json()).toMatchObject({ title: expect.stringContaining('disk is full') });
  });

  it('more than the disk takes on the way', async () => {
    // Linux, full(4): every write to /dev/full fails as on a full disk.
    const full = new UploadFiles({ directory: '/dev' }).write(
      Readable.from([Buffer.from('film')]),
      'full',
      0,
    );
    const error: unknown = await full.catch((reason: unknown) => reason);
    expect(error).toMatchObject({ code: 'ENOSPC' });
    expect(mapped(error)).toMatchObject({ status_code: 507, body: expect.stringContaining('disk is full') });
  });

  it('another page, and another name of this server', async () => {
    const { job } = await makeJob(app);
    expect((await create({ job: job.id, headers: { origin: 'http://evil.example' } })).status).toBe(403);
    const address = await created({ job: job.id });
    const foreign = await fetch(address, {
      method: 'DELETE',
      headers: { ...tus, origin: 'http://evil.example' },
    });
    expect(foreign.status).toBe(403);
    const mine = await head(address);
    expect(mine.status).toBe(200);
    expect(mine.headers.get('access-control-allow-origin')).toBeNull();
  });

  it('ids that are no ids', async () => {
    for (const id of ['..%2F..%2Fbenchtake.sqlite', 'benchtake', `${'a'.repeat(32)}.json`, 'a'.repeat(32)])
      expect((await head(`${app.url}${uploadsPath}/${id}`)).status, id).toBe(404);
  });

  it('more bytes than were announced', async () => {
    const { job } = await makeJob(app);
    const address = await created({ job: job.id, length: 1000 });
    expectProblem(await patch(address, 0, film.subarray(0, 1001)), 413);
  });
});

describe('a job that goes into the bin while its recording arrives', () => {
  it('gets no take, and the recording waits for it', async () => {
    const { job } = await makeJob(app);
    const address = await created({ job: job.id });
    await patch(address, 0, film);
    await ask(app, 'DELETE', `/api/jobs/${job.id}`);
    expectProblem(await finish(address, hashOf(film)), 409);
    await ask(app, 'POST', `/api/jobs/${job.id}/restore`);
    expect((await finish(address, hashOf(film))).status).toBe(202);
  });
});

describe('unfinished uploads', () => {
  it('are cleared after a week, at the next start', async () => {
    const { job } = await makeJob(app);
    const [old, young] = [await created({ job: job.id }), await created({ job: job.id })];
    await patch(old, 0, film.subarray(0, 1000));
    const eightDaysAgo = Date.now() / 1000 - 8 * 86_400;
    const note = join(app.home, 'uploads', `${basename(old)}.json`);
    utimesSync(note, eightDaysAgo, eightDaysAgo);
    writeFileSync(join(app.home, 'uploads', `${'f'.repeat(32)}.done`), '{}');
    await app.stop();
    await app.restart();
    expect((await head(old)).status).toBe(404);
    expect((await head(young)).status).toBe(200);
    expect(left().filter((name) => name.startsWith(basename(old)))).toEqual([]);
  });
});

describe('the files of ffmpeg.wasm', () => {
  it('come from here, by their types, and may compile in their worker alone', async () => {
    const versions = ['ffmpeg', 'core'].map(
      (name) => JSON.parse(readFileSync(`node_modules/@ffmpeg/${name}/package.json`, 'utf8')).version,
    );
    expect(enginePath).toBe(`/engine/${versions.join('-')}`);
    const worker = await fetch(`${app.url}${enginePath}/ffmpeg/worker.js`);
    expect(worker.headers.get('content-type')).toContain('text/javascript');
    expect(worker.headers.get('content-security-policy')).toContain("'wasm-unsafe-eval'");
    expect(worker.headers.get('cache-control')).toContain('immutable');
    const core = await fetch(`${app.url}${enginePath}/core/ffmpeg-core.wasm`, { method: 'HEAD' });
    expect(core.headers.get('content-type')).toBe('application/wasm');
    for (const path of ['core/package.json', 'core/..%2f..%2fpackage.js', 'other/index.js'])
      expect((await fetch(`${app.url}${enginePath}/${path}`)).status).toBe(404);
    expect((await fetch(app.url)).headers.get('content-security-policy')).not.toContain('wasm');
  });
});
