import { parse } from 'csv-parse/sync';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { problemSchema } from '@/shared/problem';
import { faultsAnswerSchema, pickupsAnswerSchema, readingsAnswerSchema } from '@/shared/reference';
import { type App, startApp } from '../app';
import { ask, makeJob } from './client';

let app: App;
beforeAll(async () => {
  app = await startApp();
  const { id } = (await makeJob(app, 'Hums, no labels')).job;
  const subject = 'neck pickup';
  const conductors = ['red', 'white', 'green', 'black'];
  await ask(app, 'POST', `/api/jobs/${id}/traces`, { subject, conductors });
  for (const text of ['neck red-white 4.08k', 'neck green-black 3.97k', 'neck 8.05k'])
    await ask(app, 'POST', `/api/jobs/${id}/readings/quick`, { text });
  await ask(app, 'POST', `/api/jobs/${id}/work`, { what: 'Shielded with copper foil', outcome: 'done' });
});
afterAll(() => app.clear());

const get = async (path: string) => ask(app, 'GET', `/api/archive/reference/${path}`);

describe('the reference over HTTP', () => {
  it('answers with the cables like the one in the hand', async () => {
    const answer = pickupsAnswerSchema.parse((await get('pickups?colours=r+w+g+b')).body);
    expect(answer).toMatchObject({ count: 1, same: { count: 1 }, pickups: [{ likeness: 'same' }] });
    expect(pickupsAnswerSchema.parse((await get('pickups?colours=mauve')).body)).toMatchObject({
      asked: { unknown: ['mauve'] },
      count: 0,
    });
  });

  it('sets a reading among the earlier ones', async () => {
    const answer = readingsAnswerSchema.parse((await get('readings?reading=neck+7k')).body);
    expect(answer.standing).toMatchObject({ place: 'neck pickup', is: { n: 1, above: 1, isEnough: false } });
  });

  it('tells what was found and what was done', async () => {
    const { faults } = faultsAnswerSchema.parse((await get('faults?instrument=bass+guitar')).body);
    expect(faults).toMatchObject([{ word: 'hum', cures: [{ word: 'shielding' }] }]);
  });

  it('gives each table out as CSV (RFC 4180, read by csv-parse)', async () => {
    for (const [table, column] of [
      ['pickups', 'pickup'],
      ['readings', 'measured at'],
      ['faults', 'fault'],
    ]) {
      const { status, headers, body } = await get(`${table}?as=csv`);
      expect(status).toBe(200);
      expect(headers.get('content-type')).toBe('text/csv; charset=utf-8; header=present');
      expect(headers.get('content-disposition')).toContain('.csv');
      const lines = parse(String(body), { columns: true, bom: true, record_delimiter: '\r\n' });
      expect(lines[0], table).toHaveProperty(column ?? '');
    }
  });

  it('refuses what it does not know, and takes any words', async () => {
    for (const path of ['pickups?limit=0', 'readings?kind=flavour', 'faults?as=pdf', 'pickups?nonsense=1']) {
      const { status, body } = await get(path);
      expect(status, path).toBe(422);
      problemSchema.parse(body);
    }
    const odd = encodeURIComponent(`"; drop table jobs -- 🎸 ${'x'.repeat(5000)}`);
    for (const path of [
      `pickups?colours=${odd}`,
      `readings?reading=${odd}`,
      `readings?place=${odd}`,
      `faults?fault=${odd}`,
    ])
      expect((await get(path)).status, path.slice(0, 30)).toBe(200);
  });
});
