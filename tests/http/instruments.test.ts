import { mkdtempSync, realpathSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { claimSchema, serialPatternsSchema } from '@/shared/claims';
import { changeIdSchema } from '@/shared/ids';
import { instrumentSchema, instrumentsSchema, instrumentViewSchema, type JobRecord } from '@/shared/jobs';
import { problemSchema } from '@/shared/problem';
import { readingSchema } from '@/shared/readings';
import type { Take } from '@/shared/takes';
import { type App, startApp } from '../app';
import { makeRecording } from '../recordings';
import { addTake, ask, getJob, makeJob, nameFolder, settled } from './client';

let app: App;
let folder: string;
let record: JobRecord;
let other: JobRecord;
let take: Take;
let base: string;

beforeAll(async () => {
  folder = realpathSync(mkdtempSync(join(tmpdir(), 'benchtake-instruments-')));
  const path = makeRecording(folder, 'headstock.mp4', { seconds: 4, at: '2026-03-17T09:00:00Z' });
  const elsewhere = makeRecording(folder, 'other.mp4', { seconds: 4, at: '2026-03-18T09:00:00Z' });
  app = await startApp();
  await nameFolder(app, folder);
  record = await makeJob(app);
  other = await makeJob(app, 'Mandolin, a loose brace');
  await addTake(app, record.job.id, path);
  await addTake(app, other.job.id, elsewhere);
  take = at(0, (await settled(app, record.job.id)).takes);
  other = await settled(app, other.job.id);
  base = `/api/instruments/${record.instrument.id}`;
});
afterAll(async () => {
  await app.clear();
  rmSync(folder, { recursive: true });
});
beforeEach(async () => {
  await ask(app, 'PUT', '/api/serial-patterns', { patterns: [] });
});

const claimChangedSchema = z.object({ change: changeIdSchema, claim: claimSchema });
const instrumentChangedSchema = z.object({ change: changeIdSchema, instrument: instrumentSchema });
const at = <T>(index: number, all: readonly T[]): T => {
  const one = all[index];
  if (one === undefined) throw new Error(`There is no number ${index}.`);
  return one;
};

async function ok(method: string, path: string, body?: unknown) {
  const answer = await ask(app, method, path, body);
  expect(answer.status, JSON.stringify(answer.body)).toBeLessThan(300);
  return answer.body;
}
const view = async () => instrumentViewSchema.parse(await ok('GET', base));
const patch = async (fields: object, query = '') =>
  instrumentChangedSchema.parse(await ok('PATCH', base + query, fields));
const claim = async (fields: object) =>
  claimChangedSchema.parse(await ok('POST', `${base}/claims`, { kind: 'year', value: '1978', ...fields }));
/** RFC 9457: a refusal is a problem with a title and what to do. */
const refused = async (method: string, path: string, body?: unknown) => {
  const { status, headers, body: told } = await ask(app, method, path, body);
  expect(headers.get('content-type')).toContain('application/problem+json');
  expect(problemSchema.parse(told).detail).not.toBe('');
  return { status, ...z.looseObject({}).parse(told) };
};

describe('an instrument', () => {
  it('is found by words and by its client', async () => {
    const { instrument } = await patch({ maker: 'Unbekannt Söhne', serial: 'N 84-07' });
    const { body } = await ask(app, 'POST', '/api/clients', { name: 'Ada Plainly' });
    const { client } = z.looseObject({ client: z.looseObject({ id: z.string() }) }).parse(body);
    await patch({ clientId: client.id });
    const find = async (query: string) =>
      instrumentsSchema.parse(await ok('GET', `/api/instruments?${query}`)).instruments.map(({ id }) => id);
    expect(await find('find=BASS%20sohne')).toEqual([instrument.id]);
    expect(await find('find=plainly')).toEqual([instrument.id]);
    expect(await find('find=bass%20banjo')).toEqual([]);
    expect(await find(`client=${client.id}`)).toEqual([instrument.id]);
    expect(await find('')).toEqual([other.instrument.id, instrument.id]);
    expect((await view()).client?.name).toBe('Ada Plainly');
    await patch({ clientId: null });
  });

  it('is changed within a job and undone with it', async () => {
    const query = `?job=${record.job.id}`;
    const before = (await view()).instrument;
    await patch({ model: 'a short scale', features: 'two knobs\nworn frets' }, query);
    expect((await getJob(app, record.job.id)).instrument).toMatchObject({ model: 'a short scale' });
    await ok('POST', `/api/jobs/${record.job.id}/undo`);
    expect((await view()).instrument).toEqual(before);
    const { change } = await patch({ model: null, type: 'hurdy-gurdy' });
    expect((await view()).instrument).toMatchObject({ model: null, type: 'hurdy-gurdy' });
    await ok('POST', `/api/changes/${change}/undo`);
    expect((await view()).instrument).toEqual(before);
  });

  it('tells the later of two windows what stands there now, and loses neither text', async () => {
    await patch({ model: 'first', was: { model: null } });
    const clash = await refused('PATCH', base, { model: 'second', was: { model: null } });
    expect(clash).toMatchObject({ status: 409, now: { model: 'first' } });
    await patch({ model: null, was: { model: 'first' } });
  });

  it('holds the jobs that it came in for, but none from the bin', async () => {
    const numbers = async () => (await view()).jobs.map(({ id }) => id);
    const { body } = await ask(app, 'POST', '/api/jobs', {
      title: 'Back again',
      instrument: { id: record.instrument.id },
    });
    const again = z.looseObject({ job: z.looseObject({ id: z.string() }) }).parse(body).job.id;
    expect(await numbers()).toEqual([again, record.job.id]);
    await ok('DELETE', `/api/jobs/${again}`);
    expect(await numbers()).toEqual([record.job.id]);
  });

  it.each([
    [{ type: '' }],
    [{ maker: 'm'.repeat(201) }],
    [{ features: 'f'.repeat(5001) }],
    [{ colour: 'red' }],
    [{ clientId: 'nobody' }],
  ])('refuses %j', async (fields) => {
    expect((await refused('PATCH', base, fields)).status).toBe(422);
  });

  it('refuses what is not there, and a job of another instrument', async () => {
    const none = 'a'.repeat(20);
    expect((await refused('GET', `/api/instruments/${none}`)).status).toBe(404);
    expect((await refused('PATCH', `/api/instruments/${none}`, { maker: null })).status).toBe(404);
    expect((await refused('PATCH', base, { clientId: none })).status).toBe(404);
    expect((await refused('PATCH', `${base}?job=${other.job.id}`, { maker: null })).status).toBe(422);
    expect((await refused('PATCH', `${base}?job=${none}`, { maker: null })).status).toBe(404);
    expect((await refused('GET', '/api/instruments?finds=x')).status).toBe(422);
  });
});

describe('a claim', () => {
  it('stands with its basis, its evidence and how sure it is, on the record of every job of the instrument', async () => {
    const reading = z
      .looseObject({ reading: readingSchema })
      .parse(
        await ok('POST', `/api/jobs/${record.job.id}/readings/quick`, { text: 'neck total 8.08k' }),
      ).reading;
    const { claim: made } = await claim({
      jobId: record.job.id,
      basis: 'measured',
      sure: 'doubtful',
      evidence: 'a date in the neck pocket',
      moment: { takeId: take.id, ms: 1200 },
      readingId: reading.id,
    });
    expect(made).toMatchObject({ kind: 'year', subject: null, value: '1978', sure: 'doubtful' });
    expect((await getJob(app, record.job.id)).claims).toEqual([made]);
    expect((await view()).claims).toEqual([made]);
    await ok('DELETE', `/api/claims/${made.id}`);
  });

  it('is changed and deleted, and each is undone exactly', async () => {
    const { change: adding, claim: made } = await claim({ jobId: record.job.id });
    const changed = claimChangedSchema.parse(
      await ok('PATCH', `/api/claims/${made.id}?job=${record.job.id}`, {
        value: 'late 70s',
        was: { value: '1978' },
      }),
    );
    expect(changed.claim).toEqual({ ...made, value: 'late 70s' });
    await ok('POST', `/api/changes/${changed.change}/undo`);
    expect((await view()).claims).toEqual([made]);
    const { change } = z
      .object({ change: changeIdSchema })
      .parse(await ok('DELETE', `/api/claims/${made.id}`));
    expect((await view()).claims).toEqual([]);
    await ok('POST', `/api/changes/${change}/undo`);
    expect((await view()).claims).toEqual([made]);
    await ok('POST', `/api/changes/${adding}/undo`);
    expect((await view()).claims).toEqual([]);
  });

  it('tells the later of two windows what stands there now', async () => {
    const { claim: made } = await claim({});
    const path = `/api/claims/${made.id}`;
    await ok('PATCH', path, { value: '1979', was: { value: '1978' } });
    expect(await refused('PATCH', path, { value: '1984', was: { value: '1978' } })).toMatchObject({
      status: 409,
      now: { value: '1979' },
    });
    await ok('DELETE', path);
  });

  it('rests only on the film and the readings of the job in which it came up', async () => {
    const jobId = record.job.id;
    const foreignTake = at(0, other.takes).id;
    const { reading: foreign } = z
      .looseObject({ reading: readingSchema })
      .parse(await ok('POST', `/api/jobs/${other.job.id}/readings/quick`, { text: 'bridge total 8k' }));
    const moment = { takeId: take.id, ms: 100 };
    for (const [fields, status] of [
      [{ jobId, moment: { takeId: foreignTake, ms: 0 } }, 422],
      [{ jobId, moment: { takeId: take.id, ms: 9_999_999 } }, 422],
      [{ moment }, 422],
      [{ jobId, readingId: foreign.id }, 422],
      [{ jobId, readingId: 'a'.repeat(20) }, 404],
      [{ readingId: foreign.id }, 422],
      [{ jobId: other.job.id }, 422],
      [{ jobId: 'a'.repeat(20) }, 404],
      [{ value: '' }, 422],
      [{ value: 'v'.repeat(301) }, 422],
      [{ kind: 'colour' }, 422],
      [{ basis: 'heard' }, 422],
      [{ sure: 'very' }, 422],
    ] as const) {
      const answer = await refused('POST', `${base}/claims`, { kind: 'year', value: '1978', ...fields });
      expect(answer.status, JSON.stringify(fields)).toBe(status);
    }
    const { claim: loose } = await claim({});
    expect((await refused('PATCH', `/api/claims/${loose.id}`, { moment })).status).toBe(422);
    await ok('DELETE', `/api/claims/${loose.id}`);
    expect((await refused('DELETE', `/api/claims/${loose.id}`)).status).toBe(404);
    expect((await view()).claims).toEqual([]);
  });
});

describe('serial patterns', () => {
  const patterns = [
    { name: 'year and month', words: 'one letter factory: N north works, two digits year, two digits month' },
  ];

  it('are the repairer’s own: a new workshop has none, and a serial tells nothing', async () => {
    await patch({ serial: 'N 84-07' });
    expect(await ok('GET', '/api/serial-patterns')).toEqual({ patterns: [] });
    expect((await view()).serialReadings).toEqual([]);
  });

  it('read the serial of an instrument; the century stays open', async () => {
    await patch({ serial: 'N 84-07' });
    const kept = serialPatternsSchema.parse(await ok('PUT', '/api/serial-patterns', { patterns }));
    expect(kept).toEqual({ patterns });
    expect(await ok('GET', '/api/serial-patterns')).toEqual({ patterns });
    expect((await view()).serialReadings).toEqual([
      {
        pattern: 'year and month',
        years: [1884, 1984],
        month: 7,
        factory: 'north works',
        sentence: 'N is the factory (north works), 84 the year (1884 or 1984), 07 the month (July).',
      },
    ]);
    await patch({ serial: null });
    expect((await view()).serialReadings).toEqual([]);
  });

  it('are refused where a piece is not understood, and the list stays as it was', async () => {
    await ok('PUT', '/api/serial-patterns', { patterns });
    const unclear = [...patterns, { name: 'other', words: 'two digits year, some letters' }];
    expect(await refused('PUT', '/api/serial-patterns', { patterns: unclear })).toMatchObject({
      status: 422,
      piece: 'some letters',
    });
    const twice = [...patterns, { name: 'Year and Month', words: 'two digits year' }];
    expect((await refused('PUT', '/api/serial-patterns', { patterns: twice })).status).toBe(422);
    expect((await refused('PUT', '/api/serial-patterns', { patterns: [{ name: '' }] })).status).toBe(422);
    expect(await ok('GET', '/api/serial-patterns')).toEqual({ patterns });
  });
});
