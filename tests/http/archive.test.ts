import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { archiveAnswerSchema, savedQuestionSchema, savedQuestionsSchema } from '@/shared/archive';
import { problemSchema } from '@/shared/problem';
import { type App, startApp } from '../app';
import { makeRecording } from '../recordings';
import { addTake, ask, makeJob, nameFolder, settled } from './client';

let app: App;
let folder: string;
let jobId: string;
let takeId: string;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'benchtake-archive-'));
  app = await startApp();
  await nameFolder(app, folder);
  jobId = (await makeJob(app, 'Bass, kerfing loose')).job.id;
  const path = makeRecording(folder, 'one.mp4', { seconds: 20, at: '2026-03-17T09:00:00Z' });
  takeId = (await addTake(app, jobId, path)).id;
  await settled(app, jobId);
  await ask(app, 'POST', `/api/jobs/${jobId}/markers`, {
    kind: 'work',
    title: 'Glued the kerfing',
    takeId,
    ms: 4000,
  });
});
afterAll(async () => {
  await app.clear();
  rmSync(folder, { recursive: true });
});

const search = async (params: Record<string, string>) => {
  const { status, body } = await ask(app, 'GET', `/api/archive?${new URLSearchParams(params)}`);
  expect(status).toBe(200);
  return archiveAnswerSchema.parse(body);
};

describe('the archive over HTTP', () => {
  it('answers with the moment, its job and its still', async () => {
    const { answers, none, filters } = await search({ q: 'when did I glue the kerfing' });
    expect(none).toBe(false);
    expect(answers).toMatchObject([
      {
        best: { kind: 'marker', moment: { takeId, ms: 4000 }, title: 'Glued the kerfing' },
        job: { id: jobId, instrument: 'bass guitar' },
        still: `/api/takes/${takeId}/still?ms=4000`,
      },
    ]);
    expect(filters.instruments).toEqual([{ value: 'bass guitar', count: 1 }]);
  });

  it('narrows by what is given, and takes parts of the question away', async () => {
    expect((await search({ q: 'kerfing', instrument: 'banjo' })).answers).toEqual([]);
    expect((await search({ q: 'kerfing', kind: 'work' })).answers).toHaveLength(1);
    expect((await search({ q: 'kerfing', from: '2027-01-01' })).none).toBe(true);
    const { understood } = await search({ q: 'kerfing zzyzx' });
    const zzyzx = understood.find(({ said }) => said === 'zzyzx')?.id ?? '';
    const { understood: left, answers } = await search({ q: 'kerfing zzyzx', without: zzyzx });
    expect(left.map(({ said }) => said)).toEqual(['kerfing']);
    expect(answers).toHaveLength(1);
  });

  it('narrows by a reading, which is then among what is shown', async () => {
    const reading = {
      kind: 'resistance',
      value: '8.1',
      unit: 'kΩ',
      subject: 'neck pickup',
      basis: 'measured',
    };
    const put = await ask(app, 'POST', `/api/jobs/${jobId}/readings`, { ...reading, takeId, ms: 9000 });
    expect(put.status).toBe(201);
    const range = { reading: 'resistance', low: '8000', high: '8200' };
    for (const q of ['', 'kerfing']) {
      const { answers, filters } = await search({ q, ...range });
      expect(answers).toHaveLength(1);
      const shown = answers.flatMap(({ best, others }) => [best, ...others]);
      expect(shown).toContainEqual(
        expect.objectContaining({ kind: 'reading', moment: { takeId, ms: 9000 } }),
      );
      expect(filters.readings).toEqual([{ kind: 'resistance', count: 1, low: 8100, high: 8100 }]);
    }
    expect((await search({ ...range, low: '8150' })).none).toBe(true);
    expect((await search({ q: '8.1k neck' })).answers[0]?.best).toMatchObject({ kind: 'reading' });
  });

  it('finds what is said while captions are put in', async () => {
    const lines = Array.from({ length: 400 }, (_, nth) => {
      const at = (ms: number) => new Date(ms).toISOString().slice(11, 23);
      return `${at(nth * 40)} --> ${at(nth * 40 + 30)}\nzebrano ${nth}\n`;
    });
    const putIn = ask(
      app,
      'POST',
      `/api/takes/${takeId}/narration?name=a.vtt`,
      `WEBVTT\n\n${lines.join('\n')}`,
      {
        'content-type': 'text/vtt',
      },
    );
    const during = Array.from({ length: 5 }, () => search({ q: 'kerfing' }));
    for (const { answers } of await Promise.all(during)) expect(answers).toHaveLength(1);
    expect((await putIn).status).toBe(201);
    expect((await search({ q: 'zebrano' })).answers).toHaveLength(1);
  });

  it.each([
    ['quotes', '"kerfing" \'kerfing\' “'],
    ['operators', 'kerfing AND OR NOT NEAR(kerfing glue, 5) ^kerfing words:kerfing -x (('],
    ['a star', 'kerf* *'],
    ['10 000 characters', 'kerfing '.repeat(1250)],
    ['only fillers', 'how did I do that one where it was'],
    ['nothing', '   '],
    ['emoji', '🎸🔥 👨‍👩‍👧‍👦'],
    ['SQL', "'; DROP TABLE jobs; --"],
    ['other alphabets', 'Ωμέγα гитара ギター กีตาร์ قيثارة 𐐷𐑊'],
    ['signs of control', 'ker\u0000fing \u202e'],
  ])('takes %s for what it is', async (_, q) => {
    const answer = await search({ q });
    expect(answer.answers.length + answer.nearest.length).toBeLessThanOrEqual(4);
  });

  it.each([
    'kind=nonsense',
    'limit=0',
    'from=2026-02-30',
    'client=x',
    'more=than+asked',
    'reading=x',
    'low=2',
    'reading=resistance&high=x',
  ])('refuses %s with a problem', async (params) => {
    const { status, body } = await ask(app, 'GET', `/api/archive?${params}`);
    expect(status).toBe(422);
    expect(problemSchema.parse(body).detail).not.toBe('');
  });
});

describe('what the repairer sets for it', () => {
  it('words of their own are taken in by and by', async () => {
    const synonyms = [{ said: 'wobbly strip', means: 'kerfing' }];
    expect((await ask(app, 'PUT', '/api/archive/synonyms', { synonyms })).body).toEqual({ synonyms });
    expect((await ask(app, 'GET', '/api/archive/synonyms')).body).toEqual({ synonyms });
    expect((await search({ q: 'wobbly strip' })).answers).toHaveLength(1);
    await ask(app, 'PUT', '/api/archive/synonyms', { synonyms: [] });
  });

  it('where spring is and where a week begins', async () => {
    expect((await ask(app, 'GET', '/api/archive/calendar')).body).toEqual({
      hemisphere: 'north',
      firstDayOfWeek: 1,
    });
    const south = { hemisphere: 'south', firstDayOfWeek: 0 };
    expect((await ask(app, 'PUT', '/api/archive/calendar', south)).body).toEqual(south);
    expect((await ask(app, 'GET', '/api/archive/calendar')).body).toEqual(south);
  });

  it('questions are kept and thrown away', async () => {
    const wanted = { title: 'Loose kerfing', search: '?q=kerfing&instrument=bass+guitar' };
    const { status, body } = await ask(app, 'POST', '/api/archive/questions', wanted);
    expect(status).toBe(201);
    const { id } = savedQuestionSchema.parse(Object(body).question);
    const kept = savedQuestionsSchema.parse((await ask(app, 'GET', '/api/archive/questions')).body);
    expect(kept.questions).toEqual([
      { id, title: 'Loose kerfing', search: 'q=kerfing&instrument=bass+guitar' },
    ]);
    expect((await ask(app, 'DELETE', `/api/archive/questions/${id}`)).status).toBe(200);
    expect((await ask(app, 'DELETE', `/api/archive/questions/${id}`)).status).toBe(404);
  });
});
