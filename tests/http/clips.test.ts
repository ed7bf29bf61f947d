import { execFileSync } from 'node:child_process';
import {
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { markerSchema } from '@/shared/markers';
import { readingSchema } from '@/shared/readings';
import { type App, startApp } from '../app';
import { makeRecording } from '../recordings';
import { addTake, ask, makeJob, nameFolder, settled, until } from './client';

let app: App;
let folder: string;
let film: string;
let sound: string;
let jobId: string;
let takeId: string;
let soundTakeId: string;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'benchtake-clips-'));
  const tags = [
    'location=+46.0037+008.9511/',
    'make=Quixotic',
    'artist=Xanthippe',
    'title=Lugano',
    'comment=Kumquat',
  ];
  film = makeRecording(folder, 'take 1.mp4', {
    seconds: 20,
    extra: tags.flatMap((tag) => ['-metadata', tag]),
  });
  sound = join(folder, 'talk.m4a');
  execFileSync('ffmpeg', ['-v', 'error', '-f', 'lavfi', '-i', 'sine=f=440:d=12', '-c:a', 'aac', sound]);
  app = await startApp();
  await nameFolder(app, folder);
  jobId = (await makeJob(app)).job.id;
  takeId = (await addTake(app, jobId, film)).id;
  soundTakeId = (await addTake(app, jobId, sound)).id;
  await settled(app, jobId);
});
afterAll(async () => {
  await app.clear();
  rmSync(folder, { recursive: true });
});

async function marker(title: string, ms: number, more: Record<string, unknown> = {}) {
  const wanted = { kind: 'diagnosis', title, takeId, ms, ...more };
  const { body } = await ask(app, 'POST', `/api/jobs/${jobId}/markers`, wanted);
  return z.object({ marker: markerSchema }).parse(body).marker;
}

async function reading(more: Record<string, unknown> = { takeId, ms: 9000 }) {
  const wanted = { kind: 'resistance', value: '4.08', unit: 'kΩ', subject: 'neck pickup', ...more };
  const { body } = await ask(app, 'POST', `/api/jobs/${jobId}/readings`, {
    ...wanted,
    between: ['red', 'white'],
  });
  return z.object({ reading: readingSchema }).parse(body).reading;
}

const address = (what: 'clip' | 'still', line: string, more = '') =>
  `/api/jobs/${jobId}/exports/${what}?line=${line}${more}`;

/** Saves what a route answers with, for the programs outside. */
async function saved(what: 'clip' | 'still', line: string, more = '') {
  const response = await fetch(app.url + address(what, line, more));
  expect(response.status).toBe(200);
  const bytes = Buffer.from(await response.arrayBuffer());
  const path = join(folder, `saved.${what === 'clip' ? 'mp4' : 'jpg'}`);
  writeFileSync(path, bytes);
  return { path, bytes, headers: response.headers };
}

const probeSchema = z.object({
  streams: z.array(
    z.object({ codec_type: z.string(), width: z.int().optional(), height: z.int().optional() }),
  ),
  format: z.object({ duration: z.string().optional(), tags: z.record(z.string(), z.string()).default({}) }),
});

/** Debian's ffprobe. */
function probed(path: string) {
  const { streams, format } = probeSchema.parse(
    JSON.parse(
      execFileSync('ffprobe', ['-v', 'error', '-show_streams', '-show_format', '-of', 'json', path], {
        encoding: 'utf8',
      }),
    ),
  );
  return { streams, tags: format.tags, durationMs: Math.round(Number(format.duration) * 1000) };
}

/** Loudest sample of a part in dB, by Debian's ffmpeg. */
function peakDb(path: string, fromSeconds: number, toSeconds: number): number {
  const cut = `atrim=${fromSeconds}:${toSeconds},astats=measure_perchannel=none`;
  const told = execFileSync('sh', ['-c', 'ffmpeg -i "$1" -af "$2" -f null - 2>&1', 'sh', path, cut], {
    encoding: 'utf8',
  });
  const level = /Peak level dB: (\S+)/.exec(told)?.[1];
  return level === '-inf' ? Number.NEGATIVE_INFINITY : Number(level);
}

/** One frame of sound is 23 ms at the most, one picture 40 ms. */
const nearly = (ms: number, wanted: number) => expect(Math.abs(ms - wanted), `${ms} ms`).toBeLessThan(50);

describe('a clip', () => {
  it('of a point reaches from 2 s before to 8 s after it, with its title and no tag of the recording', async () => {
    const { id } = await marker('Größe “4 kΩ” reads open', 6000);
    const { path, bytes, headers } = await saved('clip', id);
    const { streams, tags, durationMs } = probed(path);
    nearly(durationMs, 10_000);
    expect(streams.map(({ codec_type }) => codec_type)).toEqual(['video', 'audio']);
    expect(tags.title).toBe('Größe “4 kΩ” reads open');
    expect(Object.keys(tags).filter((key) => /location|make|artist|comment|creation/i.test(key))).toEqual([]);
    for (const word of ['46.0037', 'Quixotic', 'Xanthippe', 'Lugano', 'Kumquat'])
      expect(bytes.includes(word), word).toBe(false);
    expect(headers.get('content-type')).toBe('video/mp4');
    expect(headers.get('content-disposition')).toMatch(/^attachment; filename="job-\d+-clip-at-0-06\.mp4"$/);
  });

  it('of a reading shows 3 s on either side, and says in its title how it is known', async () => {
    const { path } = await saved('clip', (await reading()).id);
    const { durationMs, tags } = probed(path);
    nearly(durationMs, 6000);
    expect(tags.title).toBe('neck pickup, red – white: 4.08 kΩ (measured)');
  });

  it('of a span is the span; of a wanted length that length; never over the ends of its take', async () => {
    const span = await marker('Soldering', 3500, { endMs: 8300 });
    nearly(probed((await saved('clip', span.id)).path).durationMs, 4800);
    nearly(probed((await saved('clip', span.id, '&seconds=2')).path).durationMs, 2000);
    nearly(probed((await saved('clip', (await marker('First', 500)).id)).path).durationMs, 8500);
    nearly(probed((await saved('clip', (await marker('Last', 17_000)).id)).path).durationMs, 5000);
  });

  it('mutes what is muted in the public cut, and nothing beside it', async () => {
    const { id } = await marker('A name is said', 6000);
    const muted = [{ takeId, fromMs: 7000, toMs: 8000 }];
    expect((await ask(app, 'PATCH', `/api/jobs/${jobId}/cut`, { muted })).status).toBe(200);
    const { path } = await saved('clip', id);
    await ask(app, 'PATCH', `/api/jobs/${jobId}/cut`, { muted: [] });
    expect(peakDb(path, 3.05, 3.95)).toBeLessThan(-80);
    expect(peakDb(path, 2, 2.9)).toBeGreaterThan(-25);
    expect(peakDb(path, 4.1, 5)).toBeGreaterThan(-25);
  });

  it('of a sound recording is sound only', async () => {
    const { id } = await marker('Crackle', 5000, { takeId: soundTakeId });
    const { streams, durationMs } = probed((await saved('clip', id)).path);
    expect(streams.map(({ codec_type }) => codec_type)).toEqual(['audio']);
    nearly(durationMs, 9000);
  });

  it('is not kept: nothing is left of it once it was sent, nor where the reader hangs up', async () => {
    const { id } = await marker('Gone again', 6000);
    await saved('clip', id);
    const gone = new AbortController();
    const answer = await fetch(app.url + address('clip', id), { signal: gone.signal });
    await answer.body?.getReader().read();
    gone.abort();
    const left = await until(
      async () => readdirSync(join(app.home, 'clips')),
      (names) => names.length === 0,
    );
    expect(left).toEqual([]);
  });
});

describe('a still', () => {
  it('is as wide as the recording, and taller by the strip with the caption', async () => {
    const { id } = await marker('Neck pickup reads open', 6000);
    const { path, headers } = await saved('still', id);
    const [picture] = probed(path).streams;
    expect(picture?.width).toBe(320);
    expect(picture?.height).toBeGreaterThan(190);
    expect(headers.get('content-type')).toBe('image/jpeg');
    expect(headers.get('content-disposition')).toMatch(/^attachment; filename="job-\d+-still-at-0-06\.jpg"$/);
    expect(readFileSync(path).includes('46.0037')).toBe(false);
  });

  it('has another strip for another caption, and signs of music are in it', async () => {
    const strips = [];
    for (const title of [
      'E♭ on the 3rd string ✓',
      'E on the 3rd string',
      'Ε στη 3η χορδή',
      'Ми на третьей',
    ]) {
      const { path } = await saved('still', (await marker(title, 6000)).id);
      const crop = ['-vf', 'crop=iw:ih-182:0:182,format=gray', '-f', 'rawvideo', '-'];
      strips.push(execFileSync('ffmpeg', ['-v', 'error', '-i', path, ...crop]).toString('base64'));
    }
    expect(new Set(strips).size).toBe(4);
  });

  it('of a sound recording is refused in words', async () => {
    const { id } = await marker('Hum', 5000, { takeId: soundTakeId });
    const { status, body } = await ask(app, 'GET', address('still', id));
    expect(status).toBe(422);
    expect(body).toMatchObject({ title: expect.stringContaining('no picture') });
  });
});

describe.each(['clip', 'still'] as const)('a %s that cannot be had', (what) => {
  it('says that the line is not there, or that it is not asked for as it must be', async () => {
    expect((await ask(app, 'GET', address(what, '0'.repeat(20)))).status).toBe(404);
    expect((await ask(app, 'GET', address(what, '../../etc'))).status).toBe(422);
    const other = (await makeJob(app, 'Another job')).job.id;
    const { id } = await marker('Here', 6000);
    expect((await ask(app, 'GET', `/api/jobs/${other}/exports/${what}?line=${id}`)).status).toBe(404);
  });

  it('says that a reading has no moment, and that a trim has cut it off', async () => {
    const loose = await ask(app, 'GET', address(what, (await reading({})).id));
    expect(loose).toMatchObject({
      status: 410,
      body: { title: 'This reading has no moment on the film.' },
    });
    const { id } = await marker('Cut off', 1000);
    await ask(app, 'PATCH', `/api/takes/${takeId}`, { trimStartMs: 2000 });
    const trimmed = await ask(app, 'GET', address(what, id));
    await ask(app, 'PATCH', `/api/takes/${takeId}`, { trimStartMs: 0 });
    expect(trimmed).toMatchObject({ status: 410, body: { detail: expect.stringContaining('trim') } });
  });

  it('says that the recording is not where it was, and works again once it is back', async () => {
    const { id } = await marker('Away', 6000);
    renameSync(film, `${film}.away`);
    const away = await ask(app, 'GET', address(what, id));
    renameSync(`${film}.away`, film);
    expect(away).toMatchObject({ status: 410, body: { title: 'The recording is not where it was.' } });
    expect((await saved(what, id)).bytes.length).toBeGreaterThan(1000);
  });
});

it('takes no length out of reason', async () => {
  const { id } = await marker('Long', 6000);
  for (const seconds of ['0', '61', 'x'])
    expect((await ask(app, 'GET', address('clip', id, `&seconds=${seconds}`))).status).toBe(422);
  expect(existsSync(film)).toBe(true);
});
