import {
  copyFileSync,
  mkdirSync,
  mkdtempSync,
  realpathSync,
  renameSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { archiveAnswerSchema } from '@/shared/archive';
import {
  type BacklogId,
  type BacklogView,
  backlogIdSchema,
  backlogsSchema,
  backlogUndoneSchema,
  backlogViewSchema,
  type Choice,
  type JobRule,
} from '@/shared/backlog';
import { rackSchema } from '@/shared/jobs';
import { type Task, taskSchema } from '@/shared/tasks';
import { type App, startApp } from '../app';
import { makeRecording } from '../recordings';
import { ask, getJob, nameFolder, settled, until } from './client';

let app: App;
let folder: string;

beforeAll(async () => {
  folder = realpathSync(mkdtempSync(join(tmpdir(), 'benchtake-backlog-')));
  // The day of a recording is that of the bench machine's clock.
  app = await startApp({ TZ: 'Europe/Berlin' });
});
afterAll(async () => {
  await app.clear();
  rmSync(folder, { recursive: true });
});

let hz = 200;
/** A recording with a sound of its own, so that no two are the same. */
function film(path: string, at: string, extra: string[] = []): string {
  hz += 10;
  const name = basename(path);
  return makeRecording(join(folder, dirname(path)), name, { seconds: 1, hz, at, extra });
}

const captions = (words: string) => `WEBVTT\n\n00:00.100 --> 00:00.900\n${words}\n`;
const write = (path: string, text: string) => writeFileSync(join(folder, path), text);

const startedSchema = z.object({ id: backlogIdSchema, task: taskSchema });
const taskNow = async ({ id }: Task) => taskSchema.parse((await ask(app, 'GET', `/api/tasks/${id}`)).body);
const ended = (task: Task) =>
  until(
    () => taskNow(task),
    ({ state }) => !['queued', 'running'].includes(state),
  );

async function view(id: BacklogId, rule: JobRule = 'usual'): Promise<BacklogView> {
  const { status, body } = await ask(app, 'GET', `/api/archive/backlog/${id}?rule=${rule}`);
  expect(status, JSON.stringify(body)).toBe(200);
  return backlogViewSchema.parse(body);
}

async function look(under: string): Promise<BacklogView> {
  const { id: folderId } = await nameFolder(app, folder);
  const { status, body } = await ask(app, 'POST', '/api/archive/backlog', { folderId, under });
  expect(status, JSON.stringify(body)).toBe(202);
  const { id, task } = startedSchema.parse(body);
  expect(await ended(task)).toMatchObject({ state: 'done', progress: 1 });
  return view(id);
}

async function order(id: BacklogId, choices: Partial<Choice>[] = [], rule: JobRule = 'usual'): Promise<Task> {
  const { status, body } = await ask(app, 'POST', `/api/archive/backlog/${id}/import`, { rule, choices });
  expect(status, JSON.stringify(body)).toBe(202);
  return z.object({ task: taskSchema }).parse(body).task;
}

async function importAll(
  id: BacklogId,
  choices: Partial<Choice>[] = [],
  rule: JobRule = 'usual',
): Promise<BacklogView> {
  const task = await ended(await order(id, choices, rule));
  expect(task.state, task.message ?? '').toBe('done');
  return view(id, rule);
}

async function rack() {
  return rackSchema.parse((await ask(app, 'GET', '/api/jobs')).body).jobs;
}

/** Titles of the jobs that answer, once all that changed is taken in. */
async function found(words: string): Promise<string[]> {
  const answer = async () =>
    archiveAnswerSchema.parse((await ask(app, 'GET', `/api/archive?q=${encodeURIComponent(words)}`)).body);
  return (await until(answer, ({ waiting }) => waiting === 0)).answers.map(({ job }) => job.title);
}

describe('a folder of older recordings', () => {
  let first: BacklogView;

  beforeAll(async () => {
    film('old/2019/bass rewire/two.mp4', '2019-03-16T10:00:00Z');
    film('old/2019/bass rewire/one.mp4', '2019-03-14T10:00:00Z');
    write('old/2019/bass rewire/one.vtt', captions('the zebrawood veneer lifts at the edge'));
    film('old/2019/DCIM/a.mp4', '2019-05-02T10:00:00Z');
    // Half past midnight at the workshop, and the name of the file says no day.
    film('old/2019/DCIM/b.mp4', '2019-05-02T22:30:00Z');
    write('old/2019/DCIM/a.srt', 'these are only notes\n');
    write('old/2019/DCIM/broken.mp4', 'no film at all');
    write('old/2019/DCIM/.hidden.mp4', 'hidden');
    symlinkSync('a.mp4', join(folder, 'old/2019/DCIM/zlink.mp4'));
    symlinkSync('/etc/hostname', join(folder, 'old/2019/DCIM/out.mp4'));
    first = await look('old');
  });

  it('is planned by folder and day, at the clock of the workshop', () => {
    const { plan } = first;
    expect(
      plan?.jobs.map(({ title, day, lastDay, takes }) => [
        title,
        day,
        lastDay,
        takes.map(({ name }) => name),
      ]),
    ).toEqual([
      ['Bass rewire', '2019-03-14', '2019-03-16', ['one.mp4', 'two.mp4']],
      ['Recordings of 2 May 2019', '2019-05-02', '2019-05-02', ['a.mp4']],
      ['Recordings of 3 May 2019', '2019-05-03', '2019-05-03', ['b.mp4']],
    ]);
    expect(plan?.unreadable.map(({ path }) => path)).toEqual(['old/2019/DCIM/broken.mp4']);
    expect(plan?.jobs[0]).toMatchObject({ instrumentType: 'bass guitar', typeWords: 'bass' });
  });

  it('becomes jobs that were collected then, that say where they come from, and that can be asked for', async () => {
    const [, second] = first.plan?.jobs ?? [];
    const after = await importAll(first.id, [
      { key: second?.key ?? '', title: 'Banjo head', instrumentType: 'banjo' },
    ]);
    expect(after.jobs.map(({ job, takes, lines }) => [job.title, takes, lines])).toEqual([
      ['Bass rewire', 2, 1],
      ['Banjo head', 1, 0],
      ['Recordings of 3 May 2019', 1, 0],
    ]);
    expect(after.plan?.jobs.map(({ takes }) => takes.map(({ captionsOnly }) => captionsOnly))).toEqual([
      [true],
    ]);
    const record = await getJob(app, after.jobs[0]?.job.id ?? '');
    expect(record.job).toMatchObject({
      state: 'collected',
      receivedOn: '2019-03-14',
      collectedOn: '2019-03-16',
      promisedOn: null,
    });
    expect(record.job.place).toBe('from older recordings, folder “old/2019/bass rewire”');
    expect(record.client).toBeNull();
    expect(record.takes.map(({ name, state }) => [name, state])).toEqual([
      ['one.mp4', 'ready'],
      ['two.mp4', 'ready'],
    ]);
    expect(record.undo).toBeNull();
    expect(await found('zebrawood veneer')).toEqual(['Bass rewire']);
  });

  it('tells bad captions with their name and what to do, and makes the job all the same', async () => {
    const { problems } = await view(first.id);
    expect(problems.map(({ file }) => file)).toEqual(['old/2019/DCIM/a.srt']);
    expect(problems[0]?.detail).toContain('import again');
  });

  it('hangs behind what was handed over since', async () => {
    await ask(app, 'POST', '/api/jobs', { title: 'Today', instrument: { type: 'banjo' } });
    const hung = await rack();
    expect(hung[0]?.title).toBe('Today');
    expect(hung.slice(1).map(({ collectedOn }) => collectedOn)).toEqual([
      '2019-05-03',
      '2019-05-02',
      '2019-03-16',
    ]);
  });

  it('is listed among the folders that were looked through', async () => {
    const { backlogs } = backlogsSchema.parse((await ask(app, 'GET', '/api/archive/backlog')).body);
    expect(backlogs.map(({ id, under }) => [id, under])).toEqual([[first.id, 'old']]);
  });

  it('gets its sound and stills in the end', async () => {
    const { jobs } = await view(first.id);
    const record = await settled(app, jobs[0]?.job.id ?? '');
    expect(record.takes.every(({ stills, peaks }) => stills.length > 0 && peaks.length > 0)).toBe(true);
  });

  it('run again adds only what is new, to the jobs that are there', async () => {
    film('old/2019/bass rewire/three.mp4', '2019-03-16T12:00:00Z');
    film('old/2020/a.mp4', '2020-01-05T12:00:00Z');
    write('old/2019/DCIM/a.srt', '1\n00:00:00,100 --> 00:00:00,900\nthe xylophone bar is loose\n');
    renameSync(join(folder, 'old/2019/DCIM/b.mp4'), join(folder, 'old/2020/renamed.mp4'));
    const { id, plan } = await look('old');
    expect(id).toBe(first.id);
    expect(plan?.elsewhere.map(({ path, job }) => [path, job?.title])).toEqual([
      ['old/2020/renamed.mp4', 'Recordings of 3 May 2019'],
    ]);
    const before = await view(id);
    const after = await importAll(id);
    expect(
      after.jobs
        .slice(before.jobs.length)
        .map(({ job, joined, takes, lines }) => [job.title, joined, takes, lines]),
    ).toEqual([
      ['Bass rewire', true, 1, 0],
      ['Banjo head', true, 0, 1],
      ['Recordings of 5 January 2020', false, 1, 0],
    ]);
    expect(after.problems).toEqual([]);
    expect(await found('xylophone bar')).toEqual(['Banjo head']);
    const third = await importAll(id);
    expect(third.jobs).toEqual(after.jobs);
    expect(third.plan?.jobs).toEqual([]);
  });

  it('is undone as a whole, but for what was worked on since', async () => {
    const { id, jobs } = await view(first.id);
    const [bass] = jobs;
    await ask(app, 'PATCH', `/api/jobs/${bass?.job.id}`, { title: 'Bass, rewired' });
    const undone = backlogUndoneSchema.parse((await ask(app, 'DELETE', `/api/archive/backlog/${id}`)).body);
    expect(undone).toMatchObject({ binned: 3, kept: [{ title: 'Bass, rewired' }] });
    expect((await getJob(app, bass?.job.id ?? '')).takes.map(({ name }) => name)).toEqual([
      'one.mp4',
      'two.mp4',
    ]);
    expect(await found('xylophone bar')).toEqual([]);
    const again = await view(id);
    expect(again.undoneAt).not.toBeNull();
    expect(again.plan?.jobs.flatMap(({ takes }) => takes.map(({ name }) => name)).sort()).toEqual([
      'a.mp4',
      'a.mp4',
      'renamed.mp4',
      'three.mp4',
    ]);
  });
});

describe('a large import', () => {
  const many = 60;
  let big: BacklogView;

  beforeAll(async () => {
    const made = film('big/model.mp4', '2021-01-01T10:00:00Z');
    for (let index = 0; index < many; index++) {
      const home = join(folder, 'big', `mandolin number ${String(index).padStart(3, '0')} nut`);
      mkdirSync(home);
      for (const name of ['a.mp4', 'b.mp4']) {
        copyFileSync(made, join(home, name));
        // A few bytes behind the film make it a recording of its own, which still plays.
        writeFileSync(join(home, name), `${index} ${name}`.padEnd(64), { flag: 'a' });
      }
      writeFileSync(join(home, 'a.vtt'), captions(`the quillwort of number ${index}`));
    }
    rmSync(made);
    big = await look('big');
  });

  it('goes on where the plug was pulled; every job is whole, none is there twice', async () => {
    expect(big.plan?.jobs).toHaveLength(many);
    const task = await order(big.id);
    await until(
      () => view(big.id),
      ({ jobs }) => jobs.length > 2,
    );
    await app.stop('SIGKILL');
    await app.restart();
    await ended(task);
    const after = await view(big.id);
    expect(after.jobs.map(({ takes, lines }) => [takes, lines])).toEqual(Array(many).fill([2, 1]));
    expect(new Set(after.jobs.map(({ job }) => job.id)).size).toBe(many);
    expect(after.plan?.jobs).toEqual([]);
    const titled = (await rack()).filter(({ title }) => title.startsWith('Mandolin number'));
    expect(titled).toHaveLength(many);
    expect(titled.every(({ takes }) => takes === 2)).toBe(true);
  });

  it('is answered about while it goes on, can be called off, and goes on with the rest', async () => {
    await ask(app, 'DELETE', `/api/archive/backlog/${big.id}`);
    const task = await order(big.id);
    await until(
      () => view(big.id),
      ({ jobs }) => jobs.length > 0,
    );
    const { status, body } = await ask(app, 'GET', '/api/archive?q=quillwort');
    expect([status, archiveAnswerSchema.parse(body).answers.length > 0]).toEqual([200, true]);
    await ask(app, 'DELETE', `/api/tasks/${task.id}`);
    expect(await taskNow(task)).toMatchObject({ state: 'cancelled' });
    const rest = await until(
      () => view(big.id),
      ({ plan, jobs }) => plan?.jobs.length === many - jobs.length,
    );
    const left = rest.plan?.jobs[0];
    const after = await importAll(big.id, left ? [{ key: left.key, leftOut: true }] : []);
    expect(after.jobs).toHaveLength(left ? many - 1 : many);
  });
});

describe('what cannot be', () => {
  it('a folder that is not named, or lies outside', async () => {
    const { id: folderId } = await nameFolder(app, folder);
    const refused = async (body: unknown) => (await ask(app, 'POST', '/api/archive/backlog', body)).status;
    expect(await refused({ folderId: '0'.repeat(20) })).toBe(404);
    expect(await refused({ folderId, under: '../../etc' })).toBe(404);
    expect(await refused({ folderId, under: 'nowhere' })).toBe(404);
    expect(await refused({ folderId, under: 'old/2019/bass rewire/one.mp4' })).toBe(404);
    symlinkSync('/etc', join(folder, 'etc'));
    expect(await refused({ folderId, under: 'etc' })).toBe(404);
    expect(await refused({ under: '' })).toBe(422);
  });

  it('an import of what is not there or not looked through', async () => {
    const nobody = `/api/archive/backlog/${'0'.repeat(20)}`;
    expect((await ask(app, 'GET', nobody)).status).toBe(404);
    expect((await ask(app, 'POST', `${nobody}/import`, {})).status).toBe(404);
    expect((await ask(app, 'DELETE', nobody)).status).toBe(404);
  });

  it('an empty folder is empty', async () => {
    mkdirSync(join(folder, 'empty'));
    expect((await look('empty')).plan).toEqual({ jobs: [], known: 0, elsewhere: [], unreadable: [] });
  });

  it('a recording that changed since it was looked at is left, and told', async () => {
    film('late/violin/a.mp4', '2022-01-05T12:00:00Z');
    const { id } = await look('late');
    film('late/violin/a.mp4', '2022-01-05T12:00:00Z', ['-metadata', 'title=a much longer one than before']);
    const after = await importAll(id);
    expect(after.jobs).toEqual([]);
    expect(after.problems.map(({ file }) => file)).toEqual(['late/violin/a.mp4']);
  });
});
