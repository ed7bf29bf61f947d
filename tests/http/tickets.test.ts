import { mkdtempSync, realpathSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { jobRecordSchema, rackSchema } from '@/shared/jobs';
import { looseEndSchema, looseEndsSchema } from '@/shared/loose-ends';
import { narrationSchema } from '@/shared/narration-record';
import { problemSchema } from '@/shared/problem';
import { partChangedSchema, workItemChangedSchema, workOfJobSchema } from '@/shared/work';
import { type App, startApp } from '../app';
import { makeRecording } from '../recordings';
import { addTake, ask, getJob, makeJob, nameFolder, settled } from './client';

let app: App;
let folder: string;
let path: string;
let job: string;
let takeId: string;

beforeAll(async () => {
  folder = realpathSync(mkdtempSync(join(tmpdir(), 'benchtake-tickets-')));
  path = makeRecording(folder, 'set-up.mp4', { seconds: 20 });
  app = await startApp();
  await nameFolder(app, folder);
});
afterAll(async () => {
  await app.clear();
  rmSync(folder, { recursive: true });
});
beforeEach(async () => {
  job = (await makeJob(app)).job.id;
  takeId = (await addTake(app, job, path)).id;
  await settled(app, job);
});

const addItem = async (item: object) =>
  workItemChangedSchema.parse((await ask(app, 'POST', `/api/jobs/${job}/work`, item)).body).item;
const patch = (fields: object) => ask(app, 'PATCH', `/api/jobs/${job}`, fields);
const looseEnds = async () =>
  looseEndsSchema.parse((await ask(app, 'GET', `/api/jobs/${job}/loose-ends`)).body).looseEnds;
const rack = async (search = '') => rackSchema.parse((await ask(app, 'GET', `/api/jobs${search}`)).body);

describe('booking in', () => {
  it('takes all that is told at the counter', async () => {
    const { status, body } = await ask(app, 'POST', '/api/jobs', {
      title: 'Mandolin, buzz on the A course',
      instrument: { type: 'mandolin', features: 'flat back' },
      client: { name: 'Ottoline Fernsby', reach: '555-0199' },
      receivedOn: '2026-11-20',
      promisedOn: '2026-11-27',
      place: 'top shelf',
      cameWith: ['case'],
      work: [{ what: 'find the buzz' }, { what: 'new strings', origin: 'offered', charge: 'free' }],
    });
    expect(status).toBe(201);
    const record = jobRecordSchema.parse(body);
    expect(record.job).toMatchObject({ state: 'booked in', promisedOn: '2026-11-27', place: 'top shelf' });
    expect(record.client).toMatchObject({ name: 'Ottoline Fernsby', alias: 'a client', reach: '555-0199' });
    expect(record.instrument).toMatchObject({ features: 'flat back', clientId: record.client?.id });
    expect(record.work.map(({ what, origin, charge }) => [what, origin, charge])).toEqual([
      ['find the buzz', 'asked', null],
      ['new strings', 'offered', 'free'],
    ]);
  });

  it('knows a returning client and instrument', async () => {
    const first = jobRecordSchema.parse(
      (
        await ask(app, 'POST', '/api/jobs', {
          title: 'Fret dress',
          instrument: { type: 'banjo' },
          client: { name: 'Ines Overbrook' },
        })
      ).body,
    );
    const again = jobRecordSchema.parse(
      (
        await ask(app, 'POST', '/api/jobs', {
          title: 'New head',
          instrument: { id: first.instrument.id },
          client: { id: first.client?.id },
        })
      ).body,
    );
    expect(again.instrument).toEqual(first.instrument);
    expect(again.client).toEqual(first.client);
  });

  it.each([
    ['a day that does not exist', { receivedOn: '2026-02-29' }],
    ['a day of no calendar', { promisedOn: '2026-13-01' }],
    ['promised before it was received', { receivedOn: '2026-11-20', promisedOn: '2026-11-19' }],
    ['a title of 300 characters', { title: 'x'.repeat(300) }],
    ['an enormous place', { place: 'x'.repeat(100_000) }],
    ['a client that is not known', { client: { id: 'a'.repeat(20) } }],
    ['a price as a float', { work: [{ what: 'set-up', priceMinor: 12.5 }] }],
  ])('refuses %s, and books nothing in', async (_name, more) => {
    const before = (await rack()).total;
    const { status, body } = await ask(app, 'POST', '/api/jobs', {
      title: 'Bad',
      instrument: { type: 'ukulele' },
      ...more,
    });
    expect(status).toBeGreaterThanOrEqual(404);
    expect(problemSchema.parse(body).detail).not.toBe('');
    expect((await rack()).total).toBe(before);
  });
});

describe('two windows on one ticket', () => {
  it('tell the later one, and lose nothing', async () => {
    const { title } = (await getJob(app, job)).job;
    expect((await patch({ title: 'From the first window', was: { title } })).status).toBe(200);
    const late = await patch({ title: 'From the second window', was: { title } });
    expect(late.status).toBe(409);
    expect(late.body).toMatchObject({ now: { title: 'From the first window' } });
    expect((await getJob(app, job)).job.title).toBe('From the first window');
    expect(
      (await patch({ title: 'From the second window', was: { title: 'From the first window' } })).status,
    ).toBe(200);
  });

  it('may write on different lines at once', async () => {
    const { title, place } = (await getJob(app, job)).job;
    await patch({ title: 'New title', was: { title } });
    expect((await patch({ place: 'window sill', was: { place } })).status).toBe(200);
    expect((await getJob(app, job)).job).toMatchObject({ title: 'New title', place: 'window sill' });
  });

  it('clash on a work item and a part as well', async () => {
    const item = await addItem({ what: 'set-up' });
    await ask(app, 'PATCH', `/api/work/${item.id}`, { outcome: 'done', was: { outcome: 'open' } });
    const late = await ask(app, 'PATCH', `/api/work/${item.id}`, {
      outcome: 'declined',
      was: { outcome: 'open' },
    });
    expect(late).toMatchObject({ status: 409, body: { now: { outcome: 'done' } } });
    const { part } = partChangedSchema.parse(
      (await ask(app, 'POST', `/api/jobs/${job}/parts`, { what: 'nut', deed: 'fitted' })).body,
    );
    await ask(app, 'PATCH', `/api/parts/${part.id}`, { what: 'bone nut', was: { what: 'nut' } });
    expect(
      (await ask(app, 'PATCH', `/api/parts/${part.id}`, { what: 'brass nut', was: { what: 'nut' } })).status,
    ).toBe(409);
  });
});

describe('work items and parts', () => {
  it('keep prices whole, and what is free without one', async () => {
    const paid = await addItem({ what: 'rewire', charge: 'agreed', priceMinor: 4500 });
    expect(paid).toMatchObject({ priceMinor: 4500, currency: 'EUR' });
    const { body } = await ask(app, 'PATCH', `/api/work/${paid.id}`, { charge: 'free' });
    expect(workItemChangedSchema.parse(body).item).toMatchObject({ priceMinor: null, currency: null });
  });

  it('pin both ends to moments of the film', async () => {
    const item = await addItem({ what: 'set-up', origin: 'offered', begun: { takeId, ms: 1200 } });
    const ended = { takeId, ms: 9000 };
    await ask(app, 'PATCH', `/api/work/${item.id}`, { outcome: 'done', ended });
    const { items } = workOfJobSchema.parse((await ask(app, 'GET', `/api/jobs/${job}/work`)).body);
    expect(items[0]).toMatchObject({ begun: { takeId, ms: 1200 }, ended, outcome: 'done' });
    const beyond = await ask(app, 'PATCH', `/api/work/${item.id}`, { ended: { takeId, ms: 9_000_000 } });
    expect(beyond.status).toBe(422);
  });

  it('say when they are gone', async () => {
    const item = await addItem({ what: 'set-up' });
    expect((await ask(app, 'DELETE', `/api/work/${item.id}`)).status).toBe(200);
    expect((await ask(app, 'PATCH', `/api/work/${item.id}`, { what: 'x' })).status).toBe(404);
    expect((await ask(app, 'POST', `/api/jobs/${'a'.repeat(20)}/work`, { what: 'x' })).status).toBe(404);
  });
});

describe('a job that is ready', () => {
  it('has its loose ends looked at first, and keeps the list', async () => {
    await ask(app, 'POST', `/api/jobs/${job}/markers`, { kind: 'work', title: 'Setting up', takeId, ms: 10 });
    const item = await addItem({ what: 'a set-up', origin: 'offered', charge: 'free' });
    const [loose] = await looseEnds();
    expect(loose).toMatchObject({
      kind: 'offered and open',
      place: { on: 'ticket', anchor: item.id },
    });

    const refused = await patch({ state: 'ready' });
    expect(refused.status).toBe(409);
    const told = z.looseObject({ looseEnds: z.array(looseEndSchema) }).parse(refused.body).looseEnds;
    expect(told).toEqual(await looseEnds());

    const lookedAt = told.map(({ id }) => id);
    expect((await patch({ state: 'ready', lookedAt })).status).toBe(200);
    expect((await getJob(app, job)).job.readyLook?.looseEnds).toEqual(told);

    // The same list need not be looked at again on the way out.
    expect((await patch({ state: 'collected' })).status).toBe(200);
    expect((await getJob(app, job)).job.collectedOn).toMatch(/^\d{4}-\d\d-\d\d$/);
  });

  it('goes without a list once all is tied up', async () => {
    await ask(app, 'POST', `/api/jobs/${job}/markers`, { kind: 'work', title: 'Setting up', takeId, ms: 10 });
    const item = await addItem({ what: 'a set-up', origin: 'offered' });
    await ask(app, 'PATCH', `/api/work/${item.id}`, { outcome: 'declined', why: 'plays well as it is' });
    expect(await looseEnds()).toEqual([]);
    expect((await patch({ state: 'ready' })).status).toBe(200);
  });
});

describe('what was heard about the work', () => {
  it('goes on the ticket when it is accepted: the promise, and what became of it', async () => {
    await ask(
      app,
      'POST',
      `/api/takes/${takeId}/narration`,
      '[0:01] I will do a set-up for free\n[0:09] and that is the set-up done\n',
      { 'content-type': 'text/plain' },
    );
    const heard = narrationSchema
      .parse((await ask(app, 'GET', `/api/jobs/${job}/narration`)).body)
      .proposals.filter(({ heard: { type } }) => type === 'work');
    for (const { id } of heard) await ask(app, 'POST', `/api/proposals/${id}`, { decision: 'accept' });
    const { work } = await getJob(app, job);
    expect(work).toHaveLength(1);
    expect(work[0]).toMatchObject({
      origin: 'offered',
      charge: 'free',
      outcome: 'done',
      begun: { takeId, ms: 1000 },
      ended: { takeId, ms: 9000 },
    });
    for (const _ of heard) await ask(app, 'POST', `/api/jobs/${job}/undo`);
    expect((await getJob(app, job)).work).toEqual([]);
  });
});

describe('the rack', () => {
  it('has what is on the bench first, then what is due, then what is ready, then what has gone', async () => {
    const make = async (title: string, fields: object) => {
      job = (await makeJob(app, title)).job.id;
      await patch({ receivedOn: '2026-01-02', ...fields });
    };
    await make('rack: gone', { state: 'returned undone' });
    await make('rack: ready', { state: 'ready' });
    await make('rack: due later', { promisedOn: '2099-05-02' });
    await make('rack: due, no day', {});
    await make('rack: due first', { promisedOn: '2026-02-01' });
    await make('rack: on the bench', { state: 'on the bench' });
    const { jobs, total } = await rack('?find=rack:');
    expect(jobs.map(({ title }) => title.slice(6))).toEqual([
      'on the bench',
      'due first',
      'due later',
      'due, no day',
      'ready',
      'gone',
    ]);
    expect(total).toBe(6);
    expect(jobs[1]?.looseEnds[0]?.kind).toBe('promise passed');
    expect((await rack('?find=rack:&limit=2')).jobs).toHaveLength(2);
    expect((await rack('?find=rack:&limit=2')).total).toBe(6);
  });

  it('finds by client, instrument, words and number, whatever the case and accents', async () => {
    const { body } = await ask(app, 'POST', '/api/jobs', {
      title: 'Crackle',
      instrument: { type: 'hurdy-gurdy' },
      client: { name: 'Zoë Árnason-Pretend' },
      work: [{ what: 'wheel trued' }],
    });
    const { number, id } = jobRecordSchema.parse(body).job;
    const words = ['zoe ARNASON', 'hurdy', 'wheel', `${number} crackle`, String(number).padStart(4, '0')];
    for (const asked of words) {
      const { jobs } = await rack(`?find=${encodeURIComponent(asked)}`);
      expect(
        jobs.map((each) => each.id),
        asked,
      ).toContain(id);
    }
    expect((await rack('?find=%25_%27"')).jobs).toEqual([]);
  });

  it('tells at once what has changed on the record, the instrument and the client', async () => {
    const { instrument } = await getJob(app, job);
    await ask(app, 'PATCH', `/api/instruments/${instrument.id}`, { maker: 'Nobody known' });
    const { body } = await ask(app, 'POST', '/api/clients', { name: 'Tamsin Leaflet' });
    const { client } = z.looseObject({ client: z.looseObject({ id: z.string() }) }).parse(body);
    await patch({ clientId: client.id });
    await ask(app, 'PATCH', `/api/clients/${client.id}`, { name: 'Tamsin Brochure' });
    await ask(app, 'POST', `/api/jobs/${job}/markers`, { kind: 'work', title: 'Here', takeId, ms: 700 });
    const ticket = (await rack('?find=brochure')).jobs.find(({ id }) => id === job);
    expect(ticket).toMatchObject({
      instrument: { maker: 'Nobody known' },
      client: { name: 'Tamsin Brochure' },
      markers: 1,
      lastMoment: { takeId, ms: 700 },
    });
    await ask(app, 'POST', `/api/jobs/${job}/undo`);
    expect((await rack('?find=brochure')).jobs[0]).toMatchObject({ markers: 0, lastMoment: null });
  });
});
