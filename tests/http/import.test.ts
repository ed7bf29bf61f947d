import { execFileSync } from 'node:child_process';
import {
  chmodSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  realpathSync,
  renameSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { problemSchema } from '@/shared/problem';
import { foundRecordingSchema, type Take } from '@/shared/takes';
import { type App, startApp } from '../app';
import { makeRecording } from '../recordings';
import { addTake, ask, getJob, makeJob, nameFolder, settled, until } from './client';

let app: App;
let top: string;
let folder: string;
let sound: string;

beforeAll(async () => {
  top = realpathSync(mkdtempSync(join(tmpdir(), 'benchtake-import-')));
  folder = join(top, 'recordings');
  sound = makeRecording(folder, 'whole.mp4', { seconds: 6 });
  app = await startApp();
  await nameFolder(app, folder);
});
afterAll(async () => {
  await app.clear();
  rmSync(top, { recursive: true });
});

/** What the repairer is told of a file once it has been looked at. */
async function look(path: string): Promise<Take> {
  const { job } = await makeJob(app);
  const { id } = await addTake(app, job.id, path);
  const record = await settled(app, job.id);
  const take = record.takes.find((candidate) => candidate.id === id);
  if (!take) throw new Error('The take is not in its job');
  return take;
}

async function refused(path: string) {
  const { job } = await makeJob(app);
  const { body } = await ask(app, 'POST', `/api/jobs/${job.id}/takes`, { path });
  expect((await getJob(app, job.id)).takes).toEqual([]);
  return problemSchema.parse(body);
}

async function listed(under: string): Promise<string[]> {
  const { id } = await nameFolder(app, under);
  const { body } = await ask(app, 'GET', `/api/folders/${id}/recordings`);
  return z
    .object({ recordings: z.array(foundRecordingSchema) })
    .parse(body)
    .recordings.map(({ path }) => path);
}

const stillServes = async () => expect((await ask(app, 'GET', '/api/health')).status).toBe(200);

describe('damaged files', () => {
  /** The same recording, spoilt. */
  function spoilt(name: string, spoil: (bytes: Buffer) => Uint8Array): string {
    const path = join(folder, name);
    writeFileSync(path, spoil(readFileSync(sound)));
    return path;
  }

  it.each([
    ['empty', () => Buffer.alloc(0), /empty: 0 bytes.*copy/i],
    [
      'text renamed',
      () => Buffer.from('Pick up strings on Tuesday.\n'.repeat(400)),
      /not a film or sound recording/i,
    ],
    [
      'nothing but zeros',
      (bytes: Buffer) => Buffer.alloc(bytes.length),
      /not a film|neither picture nor sound|damaged/i,
    ],
    [
      'cut within its index',
      (bytes: Buffer) => bytes.subarray(0, 900),
      /breaks off|damaged|not a film|neither/i,
    ],
  ])('%s: said in plain words, and the app goes on', async (name, spoil, words) => {
    const take = await look(spoilt(`${name}.mp4`, spoil));
    expect(take.state).toBe('failed');
    expect(take.problem).toMatch(words);
    expect(take.problem).toMatch(/copy it again|check that/i);
    expect(take.durationMs).toBe(0);
    await stillServes();
  });

  it('without its index at the end: the camera lost power', async () => {
    const late = makeRecording(folder, 'index at the end.mp4', {
      seconds: 4,
      extra: ['-movflags', '-faststart'],
    });
    writeFileSync(late, readFileSync(late).subarray(0, 40_000));
    const take = await look(late);
    expect(take.state).toBe('failed');
    expect(take.problem).toMatch(/index.*missing/i);
  });

  it('cut in the middle: what is there can be used', async () => {
    const take = await look(spoilt('cut.mp4', (bytes) => bytes.subarray(0, bytes.length >> 1)));
    expect(take.state).toBe('ready');
    expect(take.durationMs).toBeGreaterThan(0);
    expect(take.stills.length).toBeGreaterThan(0);
    expect((await ask(app, 'GET', `/api/takes/${take.id}/film`)).status).toBe(200);
  });

  it('bits flipped all over: used as far as it goes, or a clear word; never a fall', async () => {
    for (const every of [97, 1009, 20_011]) {
      const take = await look(
        spoilt(`flipped every ${every}.mp4`, (bytes) =>
          bytes.map((byte, at) => (at > 4000 && at % every === 0 ? byte ^ 0x10 : byte)),
        ),
      );
      if (take.state === 'failed') expect(take.problem).toMatch(/damaged|could not be read/i);
      else expect(take.state).toBe('ready');
      await stillServes();
    }
  });

  it('a failed file that has been copied again is looked at again', async () => {
    const path = spoilt('copied again.mp4', () => Buffer.alloc(0));
    const { id, jobId } = await look(path);
    writeFileSync(path, readFileSync(sound));
    expect((await ask(app, 'POST', `/api/takes/${id}/look`)).status).toBe(202);
    const [take] = (await settled(app, jobId)).takes;
    expect(take).toMatchObject({ state: 'ready', problem: null });
    expect(take?.durationMs).toBeGreaterThan(5_900);
  });
});

describe('what is no file', () => {
  it('a folder named like a film is refused as a take and is not listed', async () => {
    const path = join(folder, 'a folder.mp4');
    mkdirSync(path);
    const inside = makeRecording(path, 'inside.mp4', { seconds: 1 });
    expect(await refused(path)).toMatchObject({ status: 422, title: expect.stringMatching(/folder/i) });
    const paths = await listed(folder);
    expect(paths).toContain(inside);
    expect(paths).not.toContain(path);
  });

  it('a pipe named like a film is refused and does not hang', async () => {
    const path = join(folder, 'pipe.mp4');
    execFileSync('mkfifo', [path]);
    expect(await refused(path)).toMatchObject({
      status: 422,
      title: expect.stringMatching(/pipe, not a recording/i),
    });
    expect(await listed(folder)).not.toContain(path);
  });
});

/**
 * Root may read everything, so under root the workers alone give up being root (65534: nobody). The home
 * folder of a checkout may be closed to others; then nothing can be shown here.
 */
const isRoot = process.getuid?.() === 0;
const nobodyCanRun = (() => {
  if (!isRoot) return true;
  try {
    execFileSync(
      process.execPath,
      ['-e', 'require("node:fs").readFileSync(process.argv[1])', resolve('dist/worker.js')],
      { uid: 65534, stdio: 'ignore' },
    );
    return true;
  } catch {
    return false;
  }
})();

it.skipIf(!nobodyCanRun)('an unreadable file: said so, and read once it may be', async () => {
  const asNobody = join(top, 'as-nobody.cjs');
  writeFileSync(asNobody, 'if (process.send) process.setuid(65534);');
  const other = await startApp(isRoot ? { NODE_OPTIONS: `--require ${asNobody}` } : {});
  try {
    chmodSync(top, 0o755);
    const path = makeRecording(join(top, 'locked'), 'locked.mp4', { seconds: 1 });
    chmodSync(path, 0o000);
    await nameFolder(other, join(top, 'locked'));
    const { job } = await makeJob(other);
    const { id } = await addTake(other, job.id, path);
    const [locked] = (await settled(other, job.id)).takes;
    expect(locked?.state).toBe('failed');
    expect(locked?.problem).toMatch(/may not be read.*right to read/i);
    chmodSync(path, 0o644);
    await ask(other, 'POST', `/api/takes/${id}/look`);
    const found = await until(
      () => getJob(other, job.id),
      ({ takes }) => takes[0]?.state !== 'failed' && takes[0]?.state !== 'new',
    );
    expect(found.takes[0]).toMatchObject({ state: 'ready', problem: null });
  } finally {
    await other.clear();
  }
});

describe('names', () => {
  it.each([
    '  two  spaces .mp4',
    `"double" and 'single'.mp4`,
    'fret 🎸 job – größe.mp4',
    'two\nlines.mp4',
    '-i.mp4',
    '100% #1 ?a=b&c.mp4',
    'back\\slash.mp4',
    '$(echo x);`y`.mp4',
    'file:whole.mp4',
    `${'é'.repeat(100)}.mp4`,
  ])('%j is listed, read and played', async (name) => {
    const path = makeRecording(join(folder, 'names'), 'plain.mp4', { seconds: 1 });
    const named = join(folder, 'names', name);
    renameSync(path, named);
    expect(await listed(folder)).toContain(named);
    const take = await look(named);
    expect(take).toMatchObject({ state: 'ready', name, path: named });
    expect(take.peaks.length).toBeGreaterThan(0);
    expect(take.stills.length).toBeGreaterThan(0);
    const film = await fetch(`${app.url}/api/takes/${take.id}/film`);
    expect(Buffer.from(await film.arrayBuffer()).equals(readFileSync(named))).toBe(true);
    expect((await fetch(`${app.url}/api/takes/${take.id}/still?ms=500`)).headers.get('content-type')).toBe(
      'image/jpeg',
    );
  });
});

describe('no way out of the recordings folder', () => {
  let outside: string;
  beforeAll(() => {
    outside = makeRecording(join(top, 'outside'), 'secret.mp4', { seconds: 1 });
    symlinkSync(outside, join(folder, 'file link.mp4'));
    symlinkSync(join(top, 'outside'), join(folder, 'folder link'));
    symlinkSync(join(top, 'nowhere.mp4'), join(folder, 'link to nothing.mp4'));
    symlinkSync('loop.mp4', join(folder, 'loop.mp4'));
    symlinkSync(sound, join(folder, 'link within.mp4'));
    makeRecording(join(top, 'recordings and more'), 'neighbour.mp4', { seconds: 1 });
  });

  it('by links, dots, a neighbour’s name or a path from nowhere', async () => {
    const ways: [string, number][] = [
      [join(folder, 'file link.mp4'), 403],
      [join(folder, 'folder link', 'secret.mp4'), 403],
      [`${folder}/../outside/secret.mp4`, 403],
      [`${folder}/./../outside/../outside/secret.mp4`, 403],
      [join(top, 'recordings and more', 'neighbour.mp4'), 403],
      [outside, 403],
      ['/etc/passwd', 403],
      [join(folder, 'link to nothing.mp4'), 404],
      [join(folder, 'loop.mp4'), 404],
      [join(folder, 'not there.mp4'), 404],
      [`${sound}\0.mp4`, 404],
      ['whole.mp4', 422],
      ['../outside/secret.mp4', 422],
      [`file://${sound}`, 422],
    ];
    for (const [path, status] of ways) {
      const problem = await refused(path);
      expect(problem.status, path).toBe(status);
      expect(problem.detail.length, path).toBeGreaterThan(10);
    }
  });

  it('such links are not listed; a link within the folder is', async () => {
    const paths = await listed(folder);
    expect(paths).toContain(join(folder, 'link within.mp4'));
    for (const name of ['file link.mp4', 'folder link/secret.mp4', 'link to nothing.mp4', 'loop.mp4']) {
      expect(paths).not.toContain(join(folder, name));
    }
  });

  it('nor by a link put in its place afterwards', async () => {
    const path = makeRecording(folder, 'swapped.mp4', { seconds: 1 });
    const take = await look(path);
    rmSync(path);
    symlinkSync(outside, path);
    expect((await ask(app, 'GET', `/api/takes/${take.id}/film`)).status).toBe(403);
    expect((await ask(app, 'GET', `/api/takes/${take.id}/still?ms=0`)).status).toBe(403);
  });
});
