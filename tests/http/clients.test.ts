import { mkdtempSync, readdirSync, readFileSync, realpathSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { clientExportSchema } from '@/lib/work/client-export';
import {
  type Client,
  clientChangedSchema,
  clientLinesSchema,
  clientSchema,
  erasedSchema,
  type NewClient,
} from '@/shared/clients';
import { changeIdSchema } from '@/shared/ids';
import { clientViewSchema, jobRecordSchema } from '@/shared/jobs';
import { problemSchema } from '@/shared/problem';
import { type App, startApp } from '../app';
import { makeRecording } from '../recordings';
import { addTake, ask, getJob, nameFolder, settled } from './client';

let app: App;
let folder: string;

beforeAll(async () => {
  folder = realpathSync(mkdtempSync(join(tmpdir(), 'benchtake-clients-')));
  app = await startApp();
  await nameFolder(app, folder);
});
afterAll(async () => {
  await app.clear();
  rmSync(folder, { recursive: true });
});

const madeSchema = z.object({ client: clientSchema });
const changedSchema = z.object({ change: changeIdSchema });

const write = async (client: NewClient): Promise<Client> => {
  const { status, body } = await ask(app, 'POST', '/api/clients', client);
  expect(status).toBe(201);
  return madeSchema.parse(body).client;
};
const view = async (id: string) => clientViewSchema.parse((await ask(app, 'GET', `/api/clients/${id}`)).body);
const lines = async (find = '') =>
  clientLinesSchema.parse((await ask(app, 'GET', `/api/clients?find=${encodeURIComponent(find)}`)).body)
    .clients;
const undo = (change: string) => ask(app, 'POST', `/api/changes/${change}/undo`);
const book = async (client: string, title: string) =>
  jobRecordSchema.parse(
    (
      await ask(app, 'POST', '/api/jobs', {
        title,
        instrument: { type: 'mandolin', serial: 'Q 7' },
        client: { id: client },
      })
    ).body,
  );
const names = async (find: string) => (await lines(find)).map(({ name }) => name);

describe('the entries', () => {
  it('are written down, listed in the order of the alphabet, and found by any words of theirs', async () => {
    await write({ name: 'Zebedee Okra', reach: 'okra@example.org' });
    const { id, alias } = await write({ name: 'Émile Okra', notes: 'two mandolins' });
    expect(alias).toBe('a client');
    await book(id, 'Okra mandolin');
    expect(await names('okra')).toEqual(['Émile Okra', 'Zebedee Okra']);
    expect(await names('EMILE mandolins')).toEqual(['Émile Okra']);
    expect(await names('okra@example')).toEqual(['Zebedee Okra']);
    expect((await lines('emile'))[0]).toMatchObject({ jobs: 1, instruments: 1 });
    expect((await lines('zebedee'))[0]).toMatchObject({ jobs: 0, instruments: 0, lastJobAt: null });
  });

  it('show their instruments and jobs', async () => {
    const { id } = await write({ name: 'Orla Tamarind' });
    const first = await book(id, 'first');
    const second = await book(id, 'second');
    expect(await view(id)).toMatchObject({
      client: { name: 'Orla Tamarind' },
      jobs: [{ id: second.job.id }, { id: first.job.id }],
      instruments: [{ serial: 'Q 7' }, { serial: 'Q 7' }],
    });
    await ask(app, 'DELETE', `/api/jobs/${first.job.id}`);
    expect((await view(id)).jobs.map(({ title }) => title)).toEqual(['second']);
  });

  it('are changed, told when another window was faster, and taken back', async () => {
    const { id } = await write({ name: 'Bram Quillfeather', reach: 'by post' });
    const changed = await ask(app, 'PATCH', `/api/clients/${id}`, {
      alias: 'a returning client',
      reach: null,
      was: { alias: 'a client', reach: 'by post' },
    });
    const { change, client } = clientChangedSchema.parse(changed.body);
    expect(client).toMatchObject({ alias: 'a returning client', reach: null });
    const late = await ask(app, 'PATCH', `/api/clients/${id}`, { alias: 'late', was: { alias: 'a client' } });
    expect(late.status).toBe(409);
    expect(late.body).toMatchObject({ now: { alias: 'a returning client' } });
    expect((await undo(change)).status).toBe(200);
    expect((await view(id)).client).toMatchObject({ alias: 'a client', reach: 'by post' });
  });

  it('come off: jobs and instruments stay, and get their client back by undo', async () => {
    const { id } = await write({ name: 'Cato Underleaf' });
    const { job } = await book(id, 'Buzzing mandolin');
    const { change } = changedSchema.parse((await ask(app, 'DELETE', `/api/clients/${id}`)).body);
    expect((await ask(app, 'GET', `/api/clients/${id}`)).status).toBe(404);
    expect(await getJob(app, job.id)).toMatchObject({ client: null, instrument: { clientId: null } });
    await undo(change);
    expect(await getJob(app, job.id)).toMatchObject({ client: { id }, instrument: { clientId: id } });
  });

  it.each([
    ['POST', '', {}, 422],
    ['POST', '', { name: '  ' }, 422],
    ['POST', '', { name: 'x'.repeat(201) }, 422],
    ['POST', '', { name: 'Nora', shoe: 4 }, 422],
    ['POST', '', '{', 400],
    ['GET', '/nonsense', undefined, 422],
    ['GET', '/00000000000000000000', undefined, 404],
    ['PATCH', '/00000000000000000000', { name: 'Nora' }, 404],
    ['DELETE', '/00000000000000000000', undefined, 404],
    ['POST', '/00000000000000000000/merge', { other: '00000000000000000001' }, 404],
    ['POST', '/00000000000000000000/merge', {}, 422],
    ['POST', '/00000000000000000000/erase', { name: 'Nora' }, 404],
    ['GET', '/00000000000000000000/export', undefined, 404],
  ])('%s %s with %j is refused in words: %i', async (method, path, body, status) => {
    const answer = await ask(app, method, `/api/clients${path}`, body);
    expect(answer.status).toBe(status);
    expect(problemSchema.parse(answer.body).detail).not.toBe('');
  });
});

describe('two entries of one person', () => {
  it('become one, with everything of both, and two again by undo', async () => {
    const into = await write({
      name: 'Dot Marrowby',
      alias: 'a fiddler',
      reach: '555-0117\nby post',
      notes: 'a',
    });
    const other = await write({ name: 'D. Marrowby', reach: 'by post\n555-0118', notes: 'b' });
    await book(into.id, 'one');
    const { job, instrument } = await book(other.id, 'two');
    const before = [await view(into.id), await view(other.id)];
    const merged = await ask(app, 'POST', `/api/clients/${into.id}/merge`, { other: other.id });
    const { change, client } = clientChangedSchema.parse(merged.body);
    expect(client).toEqual({
      id: into.id,
      name: 'Dot Marrowby',
      alias: 'a fiddler',
      reach: '555-0117\nby post\n555-0118',
      notes: 'a\nb',
    });
    const both = await view(into.id);
    expect(both.jobs.map(({ title }) => title)).toEqual(['two', 'one']);
    expect(both.instruments.map(({ id }) => id)).toContain(instrument.id);
    expect((await ask(app, 'GET', `/api/clients/${other.id}`)).status).toBe(404);
    expect((await getJob(app, job.id)).client?.id).toBe(into.id);
    expect((await undo(change)).status).toBe(200);
    expect([await view(into.id), await view(other.id)]).toEqual(before);
  });

  it('an entry does not go into itself, nor into one too long for both', async () => {
    const { id } = await write({ name: 'Ezra Pollen', reach: 'x'.repeat(1500) });
    expect((await ask(app, 'POST', `/api/clients/${id}/merge`, { other: id })).status).toBe(422);
    const { id: other } = await write({ name: 'Ezra Pollen', reach: 'y'.repeat(1500) });
    expect((await ask(app, 'POST', `/api/clients/${id}/merge`, { other })).status).toBe(422);
    expect((await view(other)).client.reach).toHaveLength(1500);
  });
});

it('everything that is known is handed out as one file', async () => {
  const { id } = await write({ name: 'Fern Wicklow', reach: '555-0120' });
  const { job } = await book(id, 'Fern’s mandolin');
  const { status, headers, body } = await ask(app, 'GET', `/api/clients/${id}/export`);
  expect(status).toBe(200);
  expect(headers.get('content-disposition')).toMatch(/^attachment; filename="client-\d{4}-\d\d-\d\d\.json"$/);
  const known = clientExportSchema.parse(body);
  expect(known.client).toMatchObject({ name: 'Fern Wicklow', reach: '555-0120' });
  expect(known.jobs.map(({ record }) => record.job.id)).toEqual([job.id]);
  expect(known.instruments.map(({ serial }) => serial)).toEqual(['Q 7']);
});

describe('erasing', () => {
  const everyByte = () =>
    readdirSync(app.home)
      .filter((name) => name.startsWith('benchtake.sqlite'))
      .map((name) => readFileSync(join(app.home, name)).toString('utf8'))
      .join('\n');

  it('wants the name typed again', async () => {
    const { id } = await write({ name: 'Gwill Thistlewood' });
    for (const body of [{}, { name: '' }, { name: 'gwill thistlewood' }])
      expect((await ask(app, 'POST', `/api/clients/${id}/erase`, body)).status).toBe(422);
    expect((await view(id)).client.name).toBe('Gwill Thistlewood');
  });

  it('takes the person out of the record, its history, the rack and the file', async () => {
    const path = makeRecording(folder, 'thistlewood zither.mp4', { seconds: 2 });
    const { id } = await write({ name: 'Hanno Thistlewort', reach: '+44 7700 900987\nhanno@example.org' });
    const { job } = await book(id, 'Thistlewort’s mandolin');
    const { id: takeId } = await addTake(app, job.id, path);
    await settled(app, job.id);
    await ask(app, 'POST', `/api/jobs/${job.id}/markers`, {
      kind: 'intake',
      title: 'Hanno brings it',
      note: 'ring 07700 900 987',
      takeId,
      ms: 10,
    });
    await ask(app, 'POST', `/api/jobs/${job.id}/work`, { what: 'frets, as hanno@example.org asked' });
    const captions = 'WEBVTT\n\n00:00.100 --> 00:01.000\nHanno Thistlewort says it buzzes.\n';
    const heard = await ask(app, 'POST', `/api/takes/${takeId}/narration`, captions, {
      'content-type': 'text/vtt',
    });
    expect(heard.body).toMatchObject({ lines: 1 });
    await ask(app, 'PATCH', `/api/jobs/${job.id}`, { title: 'Mandolin of Hanno Thistlewort' });
    await ask(app, 'GET', '/api/jobs');
    expect(everyByte()).toMatch(/Thistlewort/);

    const { status, body } = await ask(app, 'POST', `/api/clients/${id}/erase`, {
      name: 'Hanno Thistlewort',
    });
    expect(status).toBe(200);
    expect(erasedSchema.parse(body).recordings).toEqual([]);
    expect((await ask(app, 'GET', `/api/clients/${id}`)).status).toBe(404);
    const record = await getJob(app, job.id);
    expect(record).toMatchObject({ client: null, job: { title: 'Mandolin of a client' } });
    expect(record.markers).toMatchObject([{ title: 'A client brings it', note: 'ring a client' }]);
    expect(record.work).toMatchObject([{ what: 'frets, as a client asked' }]);
    const answers: unknown[] = [record];
    for (const page of ['narration', 'proposals', 'changes', 'exports/chapters', 'loose-ends'])
      answers.push((await ask(app, 'GET', `/api/jobs/${job.id}/${page}`)).body);
    const told = `${JSON.stringify(answers)}${JSON.stringify((await ask(app, 'GET', '/api/jobs')).body)}`;
    for (const left of [told, everyByte()])
      expect(left.match(/.{20}(?:thistlewort|hanno|900 ?987).{20}/gi)).toBeNull();
    // The last change still stands as one that can be taken back.
    expect((await ask(app, 'POST', `/api/jobs/${job.id}/undo`)).status).toBe(200);
    expect((await getJob(app, job.id)).job.title).toBe('A client’s mandolin');
  });

  it('tells which file names still hold the name', async () => {
    const path = makeRecording(folder, 'ivo-larkspurr.mp4', { seconds: 2 });
    const { id } = await write({ name: 'Ivo Larkspurr' });
    const { job } = await book(id, 'Mandolin');
    await addTake(app, job.id, path);
    await settled(app, job.id);
    const { body } = await ask(app, 'POST', `/api/clients/${id}/erase`, { name: 'Ivo Larkspurr' });
    expect(erasedSchema.parse(body).recordings).toEqual([path]);
  });
});
