import { existsSync, mkdirSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { eq } from 'drizzle-orm';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import { newId } from '@/db/ids';
import { folders, recordings } from '@/db/schema';
import { addTake } from '@/lib/film/store';
import { listenResults, modelsFolder, narrationOf, speechModels } from '@/lib/narration/store';
import { getTask } from '@/lib/tasks/store';
import { Supervisor } from '@/lib/tasks/supervisor-store';
import { addJob } from '@/lib/work/store';
import { folderIdSchema, type TaskId } from '@/shared/ids';
import type { Take } from '@/shared/takes';
import type { Task } from '@/shared/tasks';
import { openTestDatabase } from '../open-test-database';
import { made, plain, removeMade } from './make';
import { writeWeightlessModel } from './speech-model';
import { bundleWorker } from './worker-bundle';

let bundle: Awaited<ReturnType<typeof bundleWorker>>;
let opened: ReturnType<typeof openTestDatabase>;
let supervisor: Supervisor;
let told: Task[];
let take: Take;

beforeAll(async () => {
  bundle = await bundleWorker();
  plain(60);
});
beforeEach(() => {
  opened = openTestDatabase();
  const { db, home } = opened;
  db.insert(folders)
    .values({ id: newId(folderIdSchema), path: made, createdAt: 0 })
    .run();
  const job = addJob(db, { title: 'Neck pickup is silent', instrument: { type: 'electric guitar' } });
  ({ take } = addTake(db, job.id, plain(60)));
  mkdirSync(modelsFolder(home), { recursive: true });
  writeWeightlessModel(model('weightless.bin'));
  const other = { prepare: () => ({}), onResult: () => undefined };
  const handlers = { probe: other, sound: other, pictures: other, 'viewing-copy': other, cut: other };
  supervisor = new Supervisor({
    db,
    worker: bundle.worker,
    handlers: { ...handlers, ...listenResults(db, home) },
  });
  told = [];
  supervisor.on('task', (task) => told.push(task));
});
afterEach(async () => {
  await supervisor.stop();
  opened.close();
});
afterAll(() => {
  bundle.remove();
  removeMade();
});

const model = (name: string) => join(modelsFolder(opened.home), name);
const heardFile = () => join(opened.home, 'recordings', take.recordingId, 'heard.srt');
const listen = (name: string) =>
  supervisor.enqueue({ kind: 'listen', recordingId: take.recordingId }, { take: take.id, model: name });
const crashes = () =>
  opened.db.select().from(recordings).where(eq(recordings.id, take.recordingId)).get()?.crashes;

/** Waits until a task fits. */
function reaches(id: TaskId, fits: (task: Task) => boolean): Promise<Task> {
  const now = getTask(opened.db, id);
  if (fits(now)) return Promise.resolve(now);
  return new Promise((resolve) => {
    const hear = (task: Task) => {
      if (task.id !== id || !fits(task)) return;
      supervisor.off('task', hear);
      resolve(task);
    };
    supervisor.on('task', hear);
  });
}
const isOver = ({ state }: Task) => state === 'done' || state === 'failed';
const isUnderWay = ({ state, progress }: Task) => state === 'running' && progress > 0;

/** The worker that was started has ended, or started none. */
async function letGo(): Promise<void> {
  await supervisor.stop();
  expect(supervisor.workers).toEqual([]);
}

test('models are found by what they are, with their size', () => {
  writeFileSync(model('notes.bin'), 'notes');
  mkdirSync(model('folder.bin'));
  const { size } = statSync(model('weightless.bin'));
  expect(speechModels(opened.home)).toEqual([{ name: 'weightless.bin', sizeBytes: size }]);
});

test('a model without weights runs to the end, with progress, and puts nothing in', async () => {
  const { id } = listen('weightless.bin');
  expect(await reaches(id, isOver)).toMatchObject({ state: 'done', message: 'No words were heard.' });
  expect(told.filter(isUnderWay).length).toBeGreaterThan(0);
  expect(narrationOf(opened.db, take.jobId)).toEqual({ lines: [], proposals: [] });
  expect(existsSync(heardFile())).toBe(false);
});

test('called off, it leaves nothing half done', async () => {
  const { id } = listen('weightless.bin');
  await reaches(id, isUnderWay);
  expect(existsSync(heardFile())).toBe(true);
  expect(supervisor.cancel(id).state).toBe('cancelled');
  await letGo();
  expect(existsSync(heardFile())).toBe(false);
  expect(narrationOf(opened.db, take.jobId).lines).toEqual([]);
});

test('a worker that goes down over a model is not the recording’s fault, and not tried again', async () => {
  const { id } = listen('weightless.bin');
  await reaches(id, isUnderWay);
  for (const worker of supervisor.workers) process.kill(worker, 'SIGKILL');
  const { state, message } = await reaches(id, isOver);
  expect(state).toBe('failed');
  expect(message).toContain('The speech model did not get through this take.');
  expect(crashes()).toBe(0);
  await letGo();
  expect(existsSync(heardFile())).toBe(false);
});

test('a model that went away meanwhile is told of', async () => {
  const { id } = listen('gone.bin');
  const { state, message } = await reaches(id, isOver);
  expect(state).toBe('failed');
  expect(message).toContain('There is no speech model gone.bin.');
});
