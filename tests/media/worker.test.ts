import { fork } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, readdirSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { eq } from 'drizzle-orm';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import { z } from 'zod';
import { newId } from '@/db/ids';
import { folders, recordings } from '@/db/schema';
import { getTask } from '@/lib/tasks/store';
import { Supervisor, type TaskOptions } from '@/lib/tasks/supervisor-store';
import { folderIdSchema, type RecordingId, recordingIdSchema, type TaskId } from '@/shared/ids';
import type { Task, TaskState } from '@/shared/tasks';
import { openTestDatabase } from '../open-test-database';
import { made, plain, removeMade } from './make';
import { bundleWorker } from './worker-bundle';

let bundle: Awaited<ReturnType<typeof bundleWorker>>;
let opened: ReturnType<typeof openTestDatabase>;
let supervisor: Supervisor;
let results: Record<string, unknown>[];
let failures: string[];
const paths = new Map<RecordingId, string>();
const folderId = newId(folderIdSchema);

beforeAll(async () => {
  bundle = await bundleWorker();
  plain(60);
});
beforeEach(() => {
  opened = openTestDatabase();
  opened.db.insert(folders).values({ id: folderId, path: made, createdAt: 0 }).run();
  results = [];
  failures = [];
});
afterEach(async () => {
  await supervisor.stop();
  opened.close();
});
afterAll(() => {
  bundle.remove();
  removeMade();
});

function start(limits: TaskOptions['limits'] = {}): Supervisor {
  const handler = {
    prepare: (id: RecordingId) => ({
      path: paths.get(id),
      folder: folderOf(id),
      to: join(folderOf(id), 'viewing.mp4'),
    }),
    onResult: (_id: RecordingId, result: unknown) => void results.push(Object(result)),
    onFailure: (_id: RecordingId, title: string, detail: string) => void failures.push(`${title} ${detail}`),
  };
  const handlers = {
    probe: handler,
    sound: handler,
    pictures: handler,
    'viewing-copy': handler,
    listen: handler,
    cut: { prepare: () => ({}), onResult: () => undefined },
  };
  supervisor = new Supervisor({ db: opened.db, worker: bundle.worker, handlers, limits });
  return supervisor;
}

function folderOf(id: RecordingId): string {
  return join(opened.home, 'recordings', id);
}

/** Puts a recording on the record, yet to be looked at. */
function known(path: string): RecordingId {
  const id = newId(recordingIdSchema);
  paths.set(id, path);
  opened.db
    .insert(recordings)
    .values({ id, folderId, path: id, sizeBytes: 0, modifiedAt: 0, state: 'new', createdAt: 0 })
    .run();
  return id;
}

function crashesOf(id: RecordingId): number | undefined {
  return opened.db.select().from(recordings).where(eq(recordings.id, id)).get()?.crashes;
}

/** Waits until a task is, or tells that it was, in a state with some of its work done. */
async function reaches(id: TaskId, state: TaskState, progress = 0): Promise<Task> {
  const fits = (task: Task) => task.id === id && task.state === state && task.progress >= progress;
  const now = getTask(opened.db, id);
  if (fits(now)) return now;
  return new Promise((resolve) => {
    const hear = (task: Task) => {
      if (!fits(task)) return;
      supervisor.off('task', hear);
      resolve(task);
    };
    supervisor.on('task', hear);
  });
}

/** The process id of the only worker that was started. */
function onlyWorker(): number {
  expect(supervisor.workers).toHaveLength(1);
  return supervisor.workers[0] ?? 0;
}

test('every kind of work gives its result, files included', async () => {
  start();
  const id = known(plain());
  const kinds = ['probe', 'sound', 'pictures', 'viewing-copy'] as const;
  for (const task of kinds.map((kind) => supervisor.enqueue({ kind, recordingId: id })))
    await reaches(task.id, 'done');
  const all = Object.assign({}, ...results);
  expect(all.probe).toMatchObject({ container: 'mp4', durationMs: 4000 });
  expect(all.fingerprint).toMatchObject({ sizeBytes: statSync(plain()).size });
  expect(all.peaks).toContainEqual({ pairsPerSecond: 100, pairs: 400 });
  expect(statSync(join(folderOf(id), 'peaks-100.bin')).size).toBe(800);
  expect(all.stills).toEqual([0]);
  expect(readdirSync(join(folderOf(id), 'stills'))).toEqual(['0.jpg']);
  expect(all.sizeBytes).toBe(statSync(join(folderOf(id), 'viewing.mp4')).size);
});

test('a still is given to whoever asks', async () => {
  start();
  const jpeg = await supervisor.ask('still', { path: plain(), ms: 1000 });
  expect(Buffer.from(z.instanceof(Uint8Array).parse(jpeg)).subarray(0, 3).toString('hex')).toBe('ffd8ff');
});

test('what cannot be read is said in words', async () => {
  start();
  const path = join(made, 'notes.mp4');
  writeFileSync(path, 'Neck pickup: 7.9k\n'.repeat(100));
  const task = supervisor.enqueue({ kind: 'probe', recordingId: known(path) });
  await reaches(task.id, 'failed');
  expect(getTask(opened.db, task.id).message).toContain('not a film or sound recording');
  expect(failures).toHaveLength(1);
  await expect(supervisor.ask('still', { path, ms: 0 })).rejects.toThrow('not a film or sound recording');
});

test('adding does not wait behind long work', async () => {
  start();
  const long = supervisor.enqueue({ kind: 'viewing-copy', recordingId: known(plain(60)) });
  await reaches(long.id, 'running', 0.01);
  const probe = supervisor.enqueue({ kind: 'probe', recordingId: known(plain()) });
  await reaches(probe.id, 'done');
  expect(getTask(opened.db, long.id).state).toBe('running');
});

test('the same work is queued once, and sound comes before pictures', async () => {
  start();
  const busy = supervisor.enqueue({ kind: 'viewing-copy', recordingId: known(plain(60)) });
  const id = known(plain());
  const pictures = supervisor.enqueue({ kind: 'pictures', recordingId: id });
  const sound = supervisor.enqueue({ kind: 'sound', recordingId: id });
  expect(supervisor.enqueue({ kind: 'sound', recordingId: id }).id).toBe(sound.id);
  supervisor.cancel(busy.id);
  await reaches(sound.id, 'done');
  expect(getTask(opened.db, pictures.id).state).not.toBe('done');
  await reaches(pictures.id, 'done');
});

test('work whose worker is killed is tried once more', async () => {
  start();
  const id = known(plain(60));
  const task = supervisor.enqueue({ kind: 'viewing-copy', recordingId: id });
  await reaches(task.id, 'running', 0.01);
  process.kill(onlyWorker(), 'SIGKILL');
  await reaches(task.id, 'queued');
  await reaches(task.id, 'done');
  expect(crashesOf(id)).toBe(1);
});

test('a recording that took the worker down twice is left alone', async () => {
  start();
  const id = known(plain(60));
  const task = supervisor.enqueue({ kind: 'viewing-copy', recordingId: id });
  for (const next of ['queued', 'failed'] as const) {
    await reaches(task.id, 'running', 0.01);
    process.kill(onlyWorker(), 'SIGKILL');
    await reaches(task.id, next);
  }
  expect(crashesOf(id)).toBe(2);
  expect(getTask(opened.db, task.id).message).toContain('tried twice');
  const again = supervisor.enqueue({ kind: 'sound', recordingId: id });
  await reaches(again.id, 'failed');
  expect(getTask(opened.db, again.id).message).toContain('left alone');
  const other = supervisor.enqueue({ kind: 'sound', recordingId: known(plain()) });
  await reaches(other.id, 'done');
});

test('a worker that does not stir is ended', async () => {
  start({ mostSilentMs: 1500 });
  const id = known(plain(60));
  const task = supervisor.enqueue({ kind: 'viewing-copy', recordingId: id });
  await reaches(task.id, 'running', 0.01);
  process.kill(onlyWorker(), 'SIGSTOP');
  expect((await reaches(task.id, 'queued')).message).toContain('stuck');
  await reaches(task.id, 'done');
});

test('a worker that grows too large is ended', async () => {
  start({ mostResidentBytes: 1_000_000 });
  const task = supervisor.enqueue({ kind: 'sound', recordingId: known(plain()) });
  await reaches(task.id, 'failed');
  expect(failures[0]).toContain('too much memory');
});

test('work that is called off stops, leaves nothing half done, and makes room', async () => {
  start();
  const id = known(plain(60));
  const long = supervisor.enqueue({ kind: 'viewing-copy', recordingId: id });
  await reaches(long.id, 'running', 0.01);
  const waiting = supervisor.enqueue({ kind: 'viewing-copy', recordingId: known(plain(60)) });
  const next = supervisor.enqueue({ kind: 'pictures', recordingId: known(plain()) });
  expect(supervisor.cancel(waiting.id).state).toBe('cancelled');
  expect(supervisor.cancel(long.id).state).toBe('cancelled');
  await reaches(next.id, 'done');
  expect(readdirSync(folderOf(id))).toEqual([]);
  expect(crashesOf(id)).toBe(0);
  expect(supervisor.cancel(next.id).state).toBe('done');
});

test('after a restart the queue goes on where it was', async () => {
  start();
  const long = supervisor.enqueue({ kind: 'viewing-copy', recordingId: known(plain(60)) });
  const waiting = supervisor.enqueue({ kind: 'sound', recordingId: known(plain()) });
  await reaches(long.id, 'running', 0.01);
  await supervisor.stop();
  expect(supervisor.workers).toEqual([]);
  expect(getTask(opened.db, long.id).state).toBe('running');
  start();
  await reaches(waiting.id, 'done');
  await reaches(long.id, 'done');
});

test('the worker ends when the server is gone', async () => {
  start();
  const worker = fork(bundle.worker, { serialization: 'advanced', execArgv: [] });
  await once(worker, 'message');
  worker.disconnect();
  expect(await once(worker, 'exit')).toEqual([0, null]);
});

test('a worker that does not start is told of, and is not the recording’s fault', async () => {
  const broken = join(opened.home, 'broken.mjs');
  writeFileSync(broken, 'process.exit(3);');
  const id = known(plain());
  const handler = { prepare: () => ({}), onResult: () => undefined };
  supervisor = new Supervisor({
    db: opened.db,
    worker: broken,
    handlers: {
      probe: handler,
      sound: handler,
      pictures: handler,
      'viewing-copy': handler,
      listen: handler,
      cut: handler,
    },
  });
  const task = supervisor.enqueue({ kind: 'probe', recordingId: id });
  await reaches(task.id, 'failed');
  expect(getTask(opened.db, task.id).message).toContain('does not start');
  expect(crashesOf(id)).toBe(0);
  expect(existsSync(folderOf(id))).toBe(false);
});
