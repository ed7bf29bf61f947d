import { Readable } from 'node:stream';
import { text } from 'node:stream/consumers';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import type { Database } from '@/db/open';
import { markers, proposals } from '@/db/schema';
import { previewGiveOut, publicJsonOf, tableOf, wholeJsonOf } from '@/lib/archive/store';
import { addMarker } from '@/lib/film/store';
import { decideFinding, findingsOf, patchCut } from '@/lib/handover/store';
import { addReading } from '@/lib/readings/store';
import { addJob, patchJob } from '@/lib/work/store';
import {
  exportTables,
  type GiveOutQuery,
  giveOutQuerySchema,
  publicArchiveSchema,
} from '@/shared/archive-exports';
import { openTestDatabase } from '../open-test-database';
import { all, filesOf, readCsv, secrets, tellingJob } from './pages-job';

let db: Database;
let home: string;
let close: () => void;
beforeEach(() => {
  ({ db, home, close } = openTestDatabase());
});
afterEach(() => close());

const chosen = (query: Record<string, string>): GiveOutQuery => giveOutQuerySchema.parse(query);
const json = async (query = all) =>
  publicArchiveSchema.parse(JSON.parse(await text(Readable.from(publicJsonOf(db, query)))));
const numbers = async (query: Record<string, string> = {}) =>
  (await json(chosen(query))).jobs.map(({ number }) => number);
const csv = (name: (typeof exportTables)[number], scope: 'public' | 'everything' = 'public') =>
  text(Readable.from(tableOf(db, all, name, scope)));
describe('what goes out', () => {
  it('tells of a job what the film shows, was read, joined and done, and how each is known', async () => {
    tellingJob(db);
    const { jobs } = await json();
    expect(jobs).toHaveLength(1);
    const [job] = jobs;
    expect(job).toMatchObject({ number: 1, title: 'Rewire the neck pickup', day: '2026-03-17' });
    expect(job?.chapters).toMatchObject([{ atMs: 5000, kind: 'work', title: 'Opened the cavity' }]);
    expect(job?.readings.map(({ value, basis }) => [value, basis])).toContainEqual(['8.12 kΩ', 'measured']);
    expect(job?.traces[0]).toMatchObject({
      conductors: ['red', 'white', 'green', 'black'],
      joined: [{ atMs: 12_000, basis: 'measured' }],
    });
    expect(job?.traces[0]?.joined[0]?.lines.map(({ role, ends }) => [role, ends])).toEqual([
      ['hot', ['red']],
      ['joined', ['white', 'green']],
      ['ground', ['black', 'shield']],
    ]);
    expect(job?.done).toMatchObject([{ atMs: 8000 }]);
  });

  it('holds nothing private in any byte, though every field of the job does', async () => {
    tellingJob(db);
    const { files } = await filesOf(db, home);
    expect([...files.keys()]).toContain('jobs/0001.html');
    for (const [name, bytes] of files)
      for (const secret of secrets)
        expect(`${name}\n${bytes}`.toLowerCase(), `${secret} in ${name}`).not.toContain(secret.toLowerCase());
    for (const which of exportTables) {
      const table = (await csv(which)).toLowerCase();
      for (const secret of secrets) expect(table, which).not.toContain(secret.toLowerCase());
    }
  });

  it('holds no ids and no paths of the bench', async () => {
    const { jobId, takeId } = tellingJob(db);
    const { files } = await filesOf(db, home);
    const told = [...files].flat().join('\n');
    for (const id of [jobId, takeId, '/invented/', 'a.mp4']) expect(told).not.toContain(id);
  });

  it('names no client of another job, nor a serial', async () => {
    tellingJob(db);
    const { id } = addJob(db, { title: 'Set up the bass', instrument: { type: 'bass guitar' } });
    addReading(db, id, {
      ...{ kind: 'relief', value: '0.25', unit: 'mm', subject: 'neck' },
      note: 'as on the guitar of QUILLFEATHER, Marla and on Marla Quillfeather’s, QF-40417283',
    });
    const told = JSON.stringify((await json(chosen({ instrument: 'bass guitar' }))).jobs);
    expect(told).toContain('as on the guitar of (held back) and on (held back)’s, (held back)');
  });

  it('follows the published film: what is cut makes no chapter, and times are those of the cut', async () => {
    const { jobId, takeId } = tellingJob(db);
    addMarker(db, jobId, { kind: 'result', title: 'Last chord', takeId, ms: 20_000, public: true });
    addMarker(db, jobId, { kind: 'work', title: 'All of it cut', takeId, ms: 7000, public: true });
    addMarker(db, jobId, { kind: 'work', title: 'Begun in the cut', takeId, ms: 9000, public: true });
    addMarker(db, jobId, { kind: 'result', title: 'At the very end', takeId, ms: 599_000, public: true });
    patchCut(db, jobId, {
      cutAway: [
        { takeId, fromMs: 6500, toMs: 10_000 },
        { takeId, fromMs: 590_000, toMs: 600_000 },
      ],
    });
    const [job] = (await json()).jobs;
    expect(job?.chapters.map(({ atMs, title }) => [atMs, title])).toEqual([
      [5000, 'Opened the cavity'],
      [6500, 'Begun in the cut'],
      [16_500, 'Last chord'],
    ]);
    expect(job?.readings.find(({ value }) => value === '8.12 kΩ')?.atMs).toBeNull();
    expect(job?.done[0]?.atMs).toBeNull();
    expect(job?.traces[0]?.joined[0]?.atMs).toBe(8500);
  });

  it('leaves out jobs in the bin', async () => {
    tellingJob(db);
    db.$client.prepare('update jobs set deleted_at = 1').run();
    expect(await numbers()).toEqual([]);
    expect((await previewGiveOut(db, all)).jobs).toEqual([]);
  });
});

describe('what stands in the way', () => {
  it('holds a job back until each finding is decided, and lets through only what was allowed', async () => {
    const { jobId, takeId } = tellingJob(db, 'Neck pickup of Marla Quillfeather');
    addMarker(db, jobId, { kind: 'work', title: 'Marla listens', takeId, ms: 30_000, public: true });
    const held = await previewGiveOut(db, all);
    expect(held.counts).toMatchObject({ jobs: 0, chapters: 0, inTheWay: 1 });
    expect(held.jobs[0]?.findings.map(({ words, decision }) => [words, decision])).toEqual([
      ['Marla Quillfeather', 'open'],
      ['Marla', 'open'],
    ]);
    expect(await numbers()).toEqual([]);
    expect([...(await filesOf(db, home)).files.keys()].filter((name) => name.startsWith('jobs/'))).toEqual(
      [],
    );

    const [first, second] = held.jobs[0]?.findings ?? [];
    // The ids are those of the hand-over.
    expect(findingsOf(db, jobId).map(({ id }) => id)).toEqual(
      expect.arrayContaining([first?.id, second?.id]),
    );
    decideFinding(db, jobId, { id: first?.id ?? '', decision: 'allowed' });
    expect(await numbers()).toEqual([]);
    decideFinding(db, jobId, { id: second?.id ?? '', decision: 'allowed' });
    const [job] = (await json()).jobs;
    expect(job?.title).toBe('Neck pickup of Marla Quillfeather');
    expect(job?.chapters.map(({ title }) => title)).toEqual(['Opened the cavity', 'Marla listens']);
    expect(job?.chapters[0]?.note).not.toContain('Marla');
    expect((await previewGiveOut(db, all)).counts).toMatchObject({ jobs: 1, chapters: 2, inTheWay: 0 });
  });

  it('asks again when the words are other ones', async () => {
    const { jobId } = tellingJob(db, 'For Quillfeather');
    const [finding] = (await previewGiveOut(db, all)).jobs[0]?.findings ?? [];
    decideFinding(db, jobId, { id: finding?.id ?? '', decision: 'allowed' });
    expect(await numbers()).toEqual([1]);
    patchJob(db, jobId, { title: 'For Marla Quillfeather, 07700 900133' });
    expect(await numbers()).toEqual([]);
  });

  it('does not mind what is only spoken or written on a private marker: pages carry neither', async () => {
    const { jobId } = tellingJob(db);
    expect(db.select().from(proposals).all()).toEqual([]);
    expect(db.select().from(markers).all()).toHaveLength(2);
    expect((await previewGiveOut(db, all)).jobs).toMatchObject([
      { id: jobId, state: 'goes out', findings: [] },
    ]);
  });

  it('withdraws a job that comes to tell something private while the set is being made', async () => {
    tellingJob(db);
    const making = filesOf(db, home);
    // After the jobs were chosen, before the first is told: what is chosen takes several turns.
    db.$client.prepare("update jobs set title = 'Marla Quillfeather'").run();
    const { files } = await making;
    expect([...files.values()].join('\n')).not.toContain('Quillfeather');
    expect(files.get('jobs/0001.html')).toContain('Not published');
    expect(JSON.parse(files.get('archive.json') ?? '')).toMatchObject({ jobs: [] });
  });
});

describe('the part that is chosen', () => {
  beforeEach(() => {
    tellingJob(db);
    const bass = addJob(db, { title: 'Bass', instrument: { type: 'bass guitar' }, receivedOn: '2025-11-02' });
    addReading(db, bass.id, {
      kind: 'resistance',
      value: '6.8',
      unit: 'kΩ',
      subject: 'neck',
      basis: 'stated',
    });
    addReading(db, bass.id, { kind: 'resistance', open: true, unit: 'kΩ', subject: 'bridge' });
    const banjo = addJob(db, { title: 'Banjo', instrument: { type: 'banjo' }, receivedOn: '2024-02-29' });
    addReading(db, banjo.id, { kind: 'relief', value: '0.3', unit: 'mm', subject: 'neck' });
  });

  it.each([
    [{}, [1, 2, 3]],
    [{ instrument: 'banjo' }, [3]],
    [{ instrument: 'Banjo' }, []],
    [{ kind: 'joint' }, [1]],
    [{ kind: 'work' }, [1]],
    [{ kind: 'reading' }, [1, 2, 3]],
    [{ basis: 'stated' }, [1, 2]],
    [{ from: '2025-11-02' }, [1, 2]],
    [{ to: '2025-11-02' }, [2, 3]],
    [{ from: '2024-02-29', to: '2024-02-29' }, [3]],
    [{ reading: 'resistance' }, [1, 2]],
    [{ reading: 'resistance', low: '6800', high: '6800' }, [2]],
    [{ reading: 'resistance', low: '8000' }, [1]],
    [{ without: '1,3' }, [2]],
  ])('%j gives jobs %j', async (query, expected) => {
    expect(await numbers(query)).toEqual(expected);
    const { jobs } = await previewGiveOut(db, chosen(query));
    const goes = jobs.filter(({ state }) => state === 'goes out').map(({ number }) => number);
    expect(goes.sort()).toEqual(expected);
    const { files } = await filesOf(db, home, chosen(query));
    const pages = [...files.keys()].filter((name) => name.startsWith('jobs/'));
    expect(pages).toEqual(expected.map((number) => `jobs/000${number}.html`));
  });

  it('shows what is left out by hand as left out', async () => {
    const { counts, jobs } = await previewGiveOut(db, chosen({ without: '2' }));
    expect(counts).toMatchObject({ jobs: 2, leftOut: 1 });
    expect(jobs.map(({ number, state }) => [number, state])).toEqual([
      [3, 'goes out'],
      [2, 'left out'],
      [1, 'goes out'],
    ]);
  });

  it.each([{ client: 'x' }, { low: '3' }, { without: '1;2' }, { from: '2026-02-30' }, { kind: 'nonsense' }])(
    'refuses %j',
    (query) => expect(giveOutQuerySchema.safeParse(query).success).toBe(false),
  );
});

describe('everything, private', () => {
  it('holds whole records as JSON, and names, private markers and what is said in the tables', async () => {
    tellingJob(db, 'Neck pickup of Marla Quillfeather');
    const whole = z
      .object({ jobs: z.array(z.looseObject({ lines: z.array(z.unknown()), parts: z.array(z.unknown()) })) })
      .parse(JSON.parse(await text(Readable.from(wholeJsonOf(db, all)))));
    expect(whole.jobs).toMatchObject([{ lines: [{ voice: 'Marla' }], parts: [{}] }]);
    const moments = readCsv(await csv('moments', 'everything'));
    expect(moments.map(({ kind }) => kind)).toEqual(['work', 'work', 'joint', 'done', 'narration']);
    for (const row of moments)
      expect(row).toMatchObject({ client: 'Marla Quillfeather', serial: 'QF40417283' });
    expect(moments[1]?.what).toContain('Hushword');
    expect(readCsv(await csv('readings', 'everything'))[0]?.subject).toContain('Marla Quillfeather');
  });
});
