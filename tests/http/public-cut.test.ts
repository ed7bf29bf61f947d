import { execFileSync, spawnSync } from 'node:child_process';
import {
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  realpathSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import {
  type CutForecast,
  type CutView,
  cutChangedSchema,
  cutForecastSchema,
  cutViewSchema,
  type MadeCut,
} from '@/shared/cut';
import { jobRecordSchema } from '@/shared/jobs';
import { narrationSchema } from '@/shared/narration-record';
import { type Task, taskSchema } from '@/shared/tasks';
import { type App, startApp } from '../app';
import { aac, h264, picture, recording, removeMade, tone } from '../media/make';
import { addTake, ask, getJob, nameFolder, settled, until } from './client';

let app: App;
let folder: string;
let job: string;
let takes: string[];

beforeAll(async () => {
  folder = realpathSync(mkdtempSync(join(tmpdir(), 'benchtake-public-cut-')));
  app = await startApp();
  await nameFolder(app, folder);
});
afterAll(async () => {
  await app.clear();
  rmSync(folder, { recursive: true });
  removeMade();
});

const place = { location: '+46.0037+008.9511/', 'location-eng': '+46.0037+008.9511/' };
const tags = { ...place, make: 'Quixotic', model: 'Zephyrcam', comment: 'For Ottoline Fernsby' };
const tagged = [
  ...Object.entries(tags).flatMap(([key, value]) => ['-metadata', `${key}=${value}`]),
  ...['-metadata', 'creation_time=2021-05-06T07:08:09Z', '-movflags', '+use_metadata_tags'],
];
const small = () =>
  recording('small.mp4', ...picture(10, '320x180'), ...tone(10), ...h264, ...aac, ...tagged);
const large = () =>
  recording(
    'large.mp4',
    ...[...picture(5, '640x360', 30), ...tone(5, 880, 44_100)],
    ...[...h264, ...aac, '-metadata', 'creation_time=2021-05-06T07:18:09Z'],
  );
/** Takes long to encode. */
const slow = () => recording('slow.mp4', ...picture(24, '1280x720'), ...tone(24), ...h264, ...aac);

/** A job with these recordings, each a file of its own, as its takes in order. */
async function film(...paths: string[]): Promise<void> {
  const ticket = { title: 'Crackle on the neck pickup', instrument: { type: 'electric guitar' } };
  const { body } = await ask(app, 'POST', '/api/jobs', { ...ticket, client: { name: 'Ottoline Fernsby' } });
  job = jobRecordSchema.parse(body).job.id;
  takes = [];
  for (const [index, path] of paths.entries()) {
    const own = join(folder, `${job}-${index}${path.slice(path.lastIndexOf('.'))}`);
    execFileSync('cp', [path, own]);
    takes.push((await addTake(app, job, own)).id);
  }
  await settled(app, job);
  await ask(app, 'PATCH', `/api/takes/${takes[0]}`, { index: 0 });
}
const of = (rest: string) => `/api/jobs/${job}/${rest}`;
const view = async (): Promise<CutView> => cutViewSchema.parse((await ask(app, 'GET', of('cut'))).body);
const forecast = async (): Promise<CutForecast> =>
  cutForecastSchema.parse((await ask(app, 'GET', of('cut/forecast'))).body);
async function change(settings: object): Promise<CutView> {
  const { status, body } = await ask(app, 'PATCH', of('cut'), settings);
  expect(status, JSON.stringify(body)).toBe(200);
  return cutChangedSchema.parse(body).cut;
}
async function mark(title: string, take: number, ms: number): Promise<void> {
  const marker = { kind: 'work', title, takeId: takes[take], ms };
  expect((await ask(app, 'POST', of('markers'), marker)).status).toBe(201);
}
async function start(): Promise<Task> {
  const { status, body } = await ask(app, 'POST', of('exports/cut'));
  expect(status, JSON.stringify(body)).toBe(202);
  return z.object({ task: taskSchema }).parse(body).task;
}
const taskNow = async (id: string) => taskSchema.parse((await ask(app, 'GET', `/api/tasks/${id}`)).body);
async function ended(id: string): Promise<Task> {
  return until(
    () => taskNow(id),
    ({ state }) => state !== 'queued' && state !== 'running',
  );
}
/** Makes the cut and comes back with it, the newest on the list. */
async function make(): Promise<MadeCut> {
  expect(await ended((await start()).id)).toMatchObject({ state: 'done' });
  const [newest] = (await view()).made;
  if (!newest) throw new Error('The cut is not on the list');
  return newest;
}
const narrate = async (text: string) =>
  expect(
    (
      await ask(app, 'POST', of('narration?name=talk.vtt'), `WEBVTT\n\n${text}`, {
        'content-type': 'text/vtt',
      })
    ).status,
  ).toBe(201);
const decideAll = (decision: 'accept' | 'dismiss') =>
  ask(app, 'POST', of('proposals'), { type: 'private', decision });

/** Reads server-sent events to their end (WHATWG HTML, section 9.2.6). */
async function eventsOf(id: string): Promise<Task[]> {
  const text = await (await fetch(`${app.url}/api/tasks/${id}/events`)).text();
  return text
    .split('\n\n')
    .filter((block) => block.startsWith('event: task'))
    .map((block) => taskSchema.parse(JSON.parse(block.split('data: ')[1] ?? '')));
}

const probeSchema = z.object({
  chapters: z.array(z.object({ start_time: z.coerce.number(), tags: z.object({ title: z.string() }) })),
  streams: z.array(
    z.looseObject({
      codec_type: z.string(),
      width: z.int().optional(),
      tags: z.record(z.string(), z.string()).default({}),
    }),
  ),
  format: z.object({ duration: z.coerce.number(), tags: z.record(z.string(), z.string()).default({}) }),
});
/** Debian's ffprobe. */
function probed(path: string) {
  const shown = ['-show_chapters', '-show_streams', '-show_format', '-of', 'json', path];
  return probeSchema.parse(
    JSON.parse(execFileSync('ffprobe', ['-v', 'error', ...shown], { encoding: 'utf8' })),
  );
}

/** Highest sample of a span in dBFS, by FFmpeg's volumedetect on the decoded sound. */
function loudest(path: string, fromMs: number, toMs: number): number {
  const span = `atrim=start=${fromMs / 1000}:end=${toMs / 1000},volumedetect`;
  const args = ['-hide_banner', '-nostdin', '-i', path, '-vn', '-af', span, '-f', 'null', '-'];
  const { stderr } = spawnSync('ffmpeg', args, { encoding: 'utf8' });
  const found = /max_volume: (-?[\d.]+|-inf) dB/.exec(stderr)?.[1];
  if (found === undefined) throw new Error(`No sound from ${fromMs} to ${toMs}:\n${stderr}`);
  return found === '-inf' ? Number.NEGATIVE_INFINITY : Number(found);
}
/** FFmpeg's tone peaks at 1/8, that is −18 dBFS. */
const heardDb = -24;
const silentDb = -60;
/** AAC rings over one of its frames: 1024 samples. */
const frameMs = 24;

const handedOver = async () => {
  const { number } = (await getJob(app, job)).job;
  const at = join(app.home, 'handed-over', `job-${String(number).padStart(4, '0')}`);
  return existsSync(at) ? readdirSync(at) : [];
};
const covered = (take: number, toMs: number) => ({
  ...{ takeId: takes[take], fromMs: 0, toMs },
  ...{ x: 0, y: 0, width: 0.2, height: 0.2 },
});

describe.each(['mp4', 'mkv'] as const)('a public cut as %s', (format) => {
  let cut: MadeCut;
  let told: Task[];
  let muted: { from: number; to: number }[];

  beforeAll(async () => {
    await film(small(), large());
    await mark('What came in', 0, 0);
    await mark('Tap test', 0, 5000);
    await mark('<Sound> & check 🎸', 1, 1000);
    await narrate(
      '00:05.500 --> 00:07.500\nring Ottoline on oh one six three two, nine six oh, double one three\n',
    );
    await change({ cutAway: [{ takeId: takes[0], fromMs: 1500, toMs: 3500 }], cutting: 'exact', format });
    expect((await ask(app, 'POST', of('exports/cut'))).body).toMatchObject({ status: 409 });
    await decideAll('accept');
    const { id } = await start();
    told = await eventsOf(id);
    const [made] = (await view()).made;
    if (!made) throw new Error(JSON.stringify(told.at(-1)));
    cut = made;
    const { proposals } = narrationSchema.parse((await ask(app, 'GET', of('narration'))).body);
    const onTake = (ms: number) => ms - 2000;
    muted = proposals
      .filter(({ heard }) => heard.type === 'private')
      .map(({ startMs, endMs }) => ({ from: onTake(startMs), to: onTake(endMs) }));
  });

  it('is told from its start to its end', () => {
    expect(told.at(-1)).toMatchObject({ kind: 'cut', state: 'done', progress: 1, jobId: job });
    const progress = told.map((one) => one.progress);
    expect(progress).toEqual([...progress].sort((a, b) => a - b));
    expect(told.length).toBeGreaterThan(2);
  });

  it('is read whole and in ranges', async () => {
    const address = `${app.url}/api/cuts/${cut.id}/film`;
    const part = await fetch(address, { headers: { range: 'bytes=100-299' } });
    expect(part.status).toBe(206);
    expect(part.headers.get('content-range')).toBe(`bytes 100-299/${cut.inspection.sizeBytes}`);
    const whole = await fetch(address);
    expect(whole.headers.get('content-type')).toBe(format === 'mp4' ? 'video/mp4' : 'video/x-matroska');
    const bytes = Buffer.from(await whole.arrayBuffer());
    expect(bytes.equals(readFileSync(cut.path))).toBe(true);
    expect(Buffer.from(await part.arrayBuffer()).equals(bytes.subarray(100, 300))).toBe(true);
    expect((await fetch(address, { headers: { range: 'bytes=999999999-' } })).status).toBe(416);
  });

  it('has its length, its chapters and its pictures by ffprobe, as the view tells it', () => {
    const { chapters, streams, format: file } = probed(cut.path);
    expect(Math.abs(file.duration - 13)).toBeLessThan(0.1);
    expect(chapters.map(({ start_time, tags: { title } }) => [Math.round(start_time * 1000), title])).toEqual(
      [
        [0, 'What came in'],
        [3000, 'Tap test'],
        [9000, '<Sound> & check 🎸'],
      ],
    );
    expect(streams.find(({ codec_type }) => codec_type === 'video')).toMatchObject({ width: 640 });
    const { inspection, present } = cut;
    expect(present).toBe(true);
    expect(inspection.chapters.map(({ title }) => title)).toEqual(
      chapters.map(({ tags: { title } }) => title),
    );
    expect(inspection).toMatchObject({ hasPlaceTags: false, hasDeviceTags: false });
    expect(Math.abs(inspection.durationMs - file.duration * 1000)).toBeLessThan(40);
    for (const apart of [inspection.soundStartsLaterMs, inspection.soundEndsLaterMs])
      expect(Math.abs(apart ?? 999)).toBeLessThan(60);
    expect(inspection.loudness?.integratedLufs).toBeLessThan(-10);
    // Outside check: FFmpeg decodes all of it without a word.
    const { status, stderr } = spawnSync('ffmpeg', [
      '-v',
      'error',
      '-xerror',
      '-i',
      cut.path,
      '-f',
      'null',
      '-',
    ]);
    expect([status, stderr.toString()]).toEqual([0, '']);
  });

  it('tells nothing of the recordings and of the client', () => {
    const source = readFileSync(small()).toString('latin1');
    const bytes = readFileSync(cut.path).toString('latin1').toLowerCase();
    for (const word of ['Quixotic', 'Zephyrcam', 'Fernsby', '46.0037', 'Ottoline']) {
      expect(source, word).toContain(word);
      expect(bytes, word).not.toContain(word.toLowerCase());
    }
    const { format: file, streams } = probed(cut.path);
    const left = [file, ...streams].map((one) => one.tags);
    expect(left.flatMap((own) => Object.keys(own).map((name) => name.toLowerCase()))).not.toEqual(
      expect.arrayContaining([expect.stringMatching(/location|make|model|comment|creation/)]),
    );
    expect(file.tags.title ?? file.tags.TITLE).toBe('Crackle on the neck pickup');
  });

  it('is silent while the private words are said, and one frame before and after it is not', () => {
    expect(muted.length).toBeGreaterThan(1);
    for (const { from, to } of muted)
      expect(loudest(cut.path, from + frameMs, to - frameMs)).toBeLessThan(silentDb);
    const [first, last] = [
      Math.min(...muted.map(({ from }) => from)),
      Math.max(...muted.map(({ to }) => to)),
    ];
    expect(loudest(cut.path, first - 40, first)).toBeGreaterThan(heardDb);
    expect(loudest(cut.path, last, last + 40)).toBeGreaterThan(heardDb);
  });
});

describe('before it is made', () => {
  it('it is told by how much cuts move, and what is encoded', async () => {
    await film(small());
    const [takeId] = takes;
    await change({ cutAway: [{ takeId, fromMs: 0, toMs: 1500 }] });
    expect(await forecast()).toMatchObject({
      picture: 'copied',
      durationMs: 9000,
      pieces: [{ takeId, fromMs: 1000, toMs: 10_000, outMs: 0, startMovedMs: 500, how: 'copied' }],
    });
    await change({ cutting: 'exact' });
    expect(await forecast()).toMatchObject({
      picture: 'mixed',
      durationMs: 8500,
      pieces: [{ fromMs: 1500, startMovedMs: 0, how: 'partly copied' }],
    });
  });

  it('words of a left-out part stay unheard where the film begins at the key frame before', async () => {
    await film(small());
    await mark('What came in', 0, 0);
    await narrate('00:01.100 --> 00:01.400\nOttoline\n');
    const [proposal] = narrationSchema.parse((await ask(app, 'GET', of('narration'))).body).proposals;
    expect(proposal).toMatchObject({ heard: { type: 'private' }, decision: 'open' });
    expect((await change({ cutAway: [{ takeId: takes[0], fromMs: 0, toMs: 1500 }] })).findings).toEqual([]);
    const { path, result } = await make();
    expect(result.pieces).toMatchObject([{ fromMs: 1000 }]);
    const at = (ms: number | undefined) => (ms ?? 0) - 1000;
    expect(loudest(path, at(proposal?.startMs) + frameMs, at(proposal?.endMs) - frameMs)).toBeLessThan(
      silentDb,
    );
    expect(loudest(path, 1000, 9000)).toBeGreaterThan(heardDb);
  });

  it('a take that is not where it was is told, and nothing is made', async () => {
    await film(small(), large());
    const [, second] = (await getJob(app, job)).takes;
    const path = second?.path ?? '';
    renameSync(path, `${path}.away`);
    for (const [method, at] of [
      ['POST', 'exports/cut'],
      ['GET', 'cut/forecast'],
    ] as const) {
      const { status, body } = await ask(app, method, of(at));
      expect([404, 410]).toContain(status);
      expect(JSON.stringify(body)).toContain(path);
    }
    expect(await view()).toMatchObject({ task: null, made: [] });
    await change({ cutAway: [{ takeId: takes[1], fromMs: 0, toMs: 60_000 }] });
    expect((await make()).result.pieces).toHaveLength(1);
    renameSync(`${path}.away`, path);
  });

  it('a take that cannot be read is told, not left out without a word', async () => {
    const broken = join(folder, 'broken.mp4');
    writeFileSync(broken, 'no film at all '.repeat(100));
    await film(small(), broken);
    const { status, body } = await ask(app, 'POST', of('exports/cut'));
    expect({ status, body }).toMatchObject({ status: 409, body: { takeId: takes[1] } });
  });

  it('nothing is made of nothing', async () => {
    await film();
    expect((await ask(app, 'POST', of('exports/cut'))).status).toBe(422);
    await film(small());
    await change({ cutAway: [{ takeId: takes[0], fromMs: 0, toMs: 100_000 }] });
    const { status, body } = await ask(app, 'POST', of('exports/cut'));
    expect({ status, body }).toMatchObject({ status: 422, body: { title: 'There is nothing to cut.' } });
    for (const bad of [
      { cutAway: [{ takeId: takes[0], fromMs: 5, toMs: 5 }] },
      { covers: [{ ...covered(0, 5), x: 0.9 }] },
      { lufs: 3 },
      { format: 'avi' },
    ])
      expect((await ask(app, 'PATCH', of('cut'), bad)).status).toBe(422);
  });
});

it('of a recording without sound and one without picture', async () => {
  const silent = recording('silent.mp4', ...picture(3, '320x180'), ...h264);
  await film(silent, recording('memo.m4a', ...tone(3), ...aac));
  const { path } = await make();
  const { streams, format } = probed(path);
  expect(streams.map(({ codec_type }) => codec_type)).toEqual(expect.arrayContaining(['video', 'audio']));
  expect(Math.abs(format.duration - 6)).toBeLessThan(0.1);
  expect(loudest(path, 0, 2950)).toBeLessThan(silentDb);
  expect(loudest(path, 3050, 5900)).toBeGreaterThan(heardDb);
});

describe('a cut that was made', () => {
  it('is never written over; off the list its file stays; it comes back', async () => {
    await film(small());
    const first = await make();
    const bytes = readFileSync(first.path);
    const second = await make();
    expect(second.path).not.toBe(first.path);
    expect(readFileSync(first.path).equals(bytes)).toBe(true);
    const listed = async () => (await view()).made.map(({ id }) => id);
    expect(await listed()).toEqual([second.id, first.id]);
    expect((await ask(app, 'DELETE', `/api/cuts/${first.id}`)).status).toBe(200);
    expect(await listed()).toEqual([second.id]);
    expect((await fetch(`${app.url}/api/cuts/${first.id}/film`)).status).toBe(404);
    expect(readFileSync(first.path).equals(bytes)).toBe(true);
    await ask(app, 'POST', of('undo'));
    expect(await listed()).toEqual([second.id, first.id]);
    rmSync(first.path);
    expect((await view()).made.map(({ present }) => present)).toEqual([true, false]);
    expect((await fetch(`${app.url}/api/cuts/${first.id}/film`)).status).toBe(410);
    expect((await ask(app, 'DELETE', `/api/cuts/${'0'.repeat(20)}`)).status).toBe(404);
  });
});

describe('a cut under way', () => {
  beforeEach(async () => {
    await film(slow());
    await change({
      cutAway: [{ takeId: takes[0], fromMs: 4000, toMs: 4500 }],
      covers: [covered(0, 24_000)],
    });
  });
  const begun = (id: string) =>
    until(
      () => taskNow(id),
      ({ state, progress }) => state === 'running' && progress > 0,
    );

  it('is called off: nothing stands under its name, and the view tells of none', async () => {
    const { id } = await start();
    expect((await start()).id).toBe(id);
    await begun(id);
    expect((await view()).task).toMatchObject({ id, kind: 'cut' });
    expect((await ask(app, 'DELETE', `/api/tasks/${id}`)).body).toMatchObject({ state: 'cancelled' });
    expect(await view()).toMatchObject({ task: null, made: [] });
    await until(handedOver, (files) => files.length === 0);
    expect((await taskNow(id)).state).toBe('cancelled');
  });

  it('goes on when the server was killed in the middle, and does not make again what was finished', async () => {
    const { id } = await start();
    const pieces = join(app.home, 'cutting', job);
    await until(
      async () => (existsSync(pieces) ? readdirSync(pieces) : []),
      (files) => files.some((name) => name.endsWith('.mp4')),
    );
    expect((await taskNow(id)).state).toBe('running');
    await app.stop('SIGKILL');
    await app.restart();
    expect(await ended(id)).toMatchObject({ state: 'done' });
    const [cut] = (await view()).made;
    expect(cut?.result).toMatchObject({ picture: 'encoded', reusedPieces: 1 });
    expect(await handedOver()).toEqual(['public-cut.mp4']);
    expect(existsSync(pieces)).toBe(false);
    expect(Math.abs(probed(cut?.path ?? '').format.duration - 23.5)).toBeLessThan(0.1);
  });
});
