import { execFileSync } from 'node:child_process';
import { mkdtempSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseText } from 'media-captions';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { type Finding, findingsSchema } from '@/shared/cut';
import { type HandOverView, handOverViewSchema } from '@/shared/hand-over';
import { chapterListSchema } from '@/shared/handover';
import { type JobRecord, jobRecordSchema } from '@/shared/jobs';
import { markerSchema, type NewMarker } from '@/shared/markers';
import type { KeptNote, NoteSectionId } from '@/shared/notes';
import { problemSchema } from '@/shared/problem';
import { traceViewSchema } from '@/shared/traces';
import { workItemChangedSchema } from '@/shared/work';
import { type App, startApp } from '../app';
import { makeRecording } from '../recordings';
import { type Answer, addTake, ask, getJob, nameFolder, settled } from './client';

let app: App;
let folder: string;
let path: string;
let job: string;
let takeId: string;

const tags = { location: '+46.0037+008.9511/', artist: 'Ottoline Fernsby', comment: 'filmed in Penhallow' };

beforeAll(async () => {
  folder = realpathSync(mkdtempSync(join(tmpdir(), 'benchtake-hand-over-')));
  const extra = Object.entries(tags).flatMap(([key, value]) => ['-metadata', `${key}=${value}`]);
  path = makeRecording(folder, 'Fernsby neck pickup.mp4', { seconds: 40, extra });
  app = await startApp();
  await nameFolder(app, folder);
});
afterAll(async () => {
  await app.clear();
  rmSync(folder, { recursive: true });
});

async function done(method: string, to: string, body?: unknown): Promise<unknown> {
  const answer = await ask(app, method, to, body);
  expect(answer.status, `${method} ${to}: ${JSON.stringify(answer.body)}`).toBeLessThan(300);
  return answer.body;
}
async function bookIn(more: object = {}): Promise<JobRecord> {
  const ticket = { title: 'Crackle on the neck pickup', instrument: { type: 'electric guitar' }, ...more };
  const record = jobRecordSchema.parse(await done('POST', '/api/jobs', ticket));
  job = record.job.id;
  takeId = (await addTake(app, job, path)).id;
  return settled(app, job);
}
async function mark(title: string, ms: number, more: Partial<NewMarker> = {}) {
  const wanted = { kind: 'work', title, takeId, ms, ...more };
  return z.looseObject({ marker: markerSchema }).parse(await done('POST', `/api/jobs/${job}/markers`, wanted))
    .marker;
}
const of = (rest: string) => `/api/jobs/${job}/${rest}`;
const view = async (): Promise<HandOverView> => handOverViewSchema.parse(await done('GET', of('hand-over')));
const findings = async (): Promise<Finding[]> =>
  findingsSchema.parse(await done('GET', of('findings'))).findings;
const decide = (id: string | undefined, decision: Finding['decision']) =>
  ask(app, 'POST', of('findings'), { id, decision });
const chapters = (as = 'text') => ask(app, 'GET', of(`exports/chapters?as=${as}`));
const notes = (as = 'markdown') => ask(app, 'GET', of(`exports/notes?as=${as}`));
const narrate = (text: string) =>
  ask(app, 'POST', of('narration?name=talk.vtt'), text, { 'content-type': 'text/vtt' });
const textOf = ({ status, body }: Answer): string => {
  expect(status, JSON.stringify(body)).toBe(200);
  return typeof body === 'string' ? body : JSON.stringify(body);
};
const undo = () => done('POST', of('undo'));

const chapterFormats = ['text', 'webvtt', 'matroska', 'ffmetadata', 'json'];
const noteFormats = ['markdown', 'text', 'html'];

const client = {
  name: 'Ottoline Fernsby',
  alias: 'a returning client',
  reach: '01632 960 113, evenings\nottoline@fernsby.example\n14 Quillow Street, Penhallow',
};
const talk = `WEBVTT

00:02.000 --> 00:05.000
this is Ottoline's guitar, ring her on oh one six three two, nine six oh, double one three

00:20.000 --> 00:23.000
her neighbour Bartholomew rang as well, that is bartholomew at quillon dot example
`;

/** A made-up job with all that documents are made from, and private words wherever a person could have put them. */
async function wholeJob(): Promise<void> {
  const features = 'sea-green top\nserial 40417283 inside, belongs to Ottoline Fernsby';
  const work = [
    { what: 'Find the crackle that Ottoline hears', outcome: 'done', priceMinor: 4500, currency: 'EUR' },
    { what: 'New strings', outcome: 'declined', why: 'Mrs Fernsby puts them on herself' },
    { what: 'Set-up', origin: 'offered', charge: 'free', outcome: 'done' },
    { what: 'Worn second fret', origin: 'found', outcome: 'not done', why: 'call 01632 960113 first' },
  ];
  await bookIn({ client, instrument: { type: 'electric guitar', serial: '40417283', features }, work });
  await mark('What came in', 0, { kind: 'intake', note: 'Ottoline heard it first' });
  await mark('Collected from 14 Quillow Street', 6000, { public: false });
  await mark('Tap test', 12_000, { kind: 'diagnosis', note: 'ring 01632 960 113 when it is found' });
  await mark('White & green <soldered>', 24_000);
  await mark('Sound check', 34_000, { kind: 'result', note: 'ottoline@fernsby.example gets the file' });
  await wire();
  for (const part of [
    { what: 'capacitor', deed: 'fitted', source: 'stock' },
    {
      ...{ what: 'neck pickup', deed: 'reused', source: 'instrument', moment: { takeId, ms: 14_000 } },
      ...{
        doubt: 'Fernsby was told that it is the first one',
        doubtBasis: 'stated',
        evidence: 'Ottoline said',
      },
    },
  ])
    await done('POST', of('parts'), part);
  expect((await narrate(talk)).status).toBe(201);
}

/** Values: common practice, no source. */
async function wire(): Promise<void> {
  const conductors = ['red', 'white', 'green', 'black'];
  const trace = { subject: 'neck pickup', conductors };
  const begun = z.looseObject({ trace: traceViewSchema }).parse(await done('POST', of('traces'), trace))
    .trace.worksheet;
  const read = (reading: object, ms: number) =>
    done('POST', of('readings'), { subject: 'neck pickup', takeId, ms, kind: 'resistance', ...reading });
  await read({ value: '4.08', unit: 'kΩ', between: ['red', 'white'], note: 'Fernsby’s own meter' }, 13_000);
  await read({ value: '3.97', unit: 'kΩ', between: ['green', 'black'] }, 15_000);
  await read({ open: true, unit: 'kΩ', between: ['red', 'green'] }, 16_000);
  for (const [red, black, row] of [
    ['red', 'white', 'slug'],
    ['green', 'black', 'screw'],
  ])
    await read(
      {
        ...{ kind: 'polarity-kick', unit: undefined },
        details: { leads: { red, black }, steel: 'laid on', row, sign: 1, size: 'large' },
      },
      18_000,
    );
  const { plans } = traceViewSchema.parse(await done('GET', `/api/traces/${begun.id}`));
  const planId = plans.find(({ kind }) => kind === 'series')?.id;
  await done('POST', `/api/traces/${begun.id}/outcomes`, { planId, takeId, ms: 25_000 });
}

/** What no public text may hold, in small letters; figures without what stands between them. */
const privateWords = ['ottoline', 'fernsby', 'quillow', 'penhallow', 'bartholomew', 'quillon', '46.0037'];
const privateFigures = ['01632960113', '40417283', '460037', '0089511'];
const folded = (text: string) => text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();

function expectPublic(text: string, what: string): void {
  for (const word of privateWords) expect(folded(text), what).not.toContain(word);
  const figures = text.replace(/(?<=\d)[\s().+/-]+(?=\d)/g, '');
  for (const number of privateFigures) expect(figures, what).not.toContain(number);
}

function pdfText(bytes: Uint8Array, name: string): { text: string; info: string } {
  const file = join(folder, name);
  writeFileSync(file, bytes);
  const run = (command: string, ...args: string[]) => execFileSync(command, args, { encoding: 'utf8' });
  return { text: run('pdftotext', file, '-'), info: run('pdfinfo', file) };
}

describe('the documents of a whole job', () => {
  beforeAll(wholeJob);

  it('are shown together, with the stills and the findings', async () => {
    const { chapters: listed, notes: written, summary, cut } = await view();
    expect(listed.chapters.map(({ startMs, title }) => [startMs, title])).toEqual([
      [0, 'What came in'],
      [12_000, 'Tap test'],
      [24_000, 'White & green <soldered>'],
      [34_000, 'Sound check'],
    ]);
    expect(written.sections.map(({ id }) => id)).toEqual(
      expect.arrayContaining(['came in', 'measured', 'wiring', 'done', 'not done', 'parts', 'chapters']),
    );
    expect(summary.stills.filter(({ usual }) => usual).length).toBeGreaterThan(0);
    expect(cut.durationMs).toBeGreaterThan(39_900);
    expect(cut.findings.every(({ what, decision }) => what === 'spoken' && decision === 'open')).toBe(true);
    expect(cut.findings.length).toBeGreaterThan(2);
  });

  it.each(chapterFormats)('chapters as %s tell nothing private', async (as) => {
    const answer = await chapters(as);
    const text = textOf(answer);
    expect(text).toContain('Tap test');
    expectPublic(text, as);
    expect(answer.headers.get('content-disposition')).toMatch(/^inline; filename="job-\d+-chapters\.\w+"$/);
  });

  it('chapters are read by other programs: a WebVTT parser, FFmpeg', async () => {
    const { cues, errors } = await parseText(textOf(await chapters('webvtt')), { type: 'vtt' });
    expect(errors).toEqual([]);
    expect(cues.map(({ startTime }) => startTime)).toEqual([0, 12, 24, 34]);
    expect(chapterListSchema.parse((await chapters('json')).body).chapters).toHaveLength(4);
    const file = join(folder, 'chapters.ffmetadata');
    writeFileSync(file, textOf(await chapters('ffmetadata')));
    const shown = ['-v', 'error', '-show_chapters', '-of', 'csv=p=0', '-f', 'ffmetadata', file];
    expect(execFileSync('ffprobe', shown, { encoding: 'utf8' })).toContain('White & green <soldered>');
  });

  it.each(noteFormats)('notes as %s tell nothing private, and the work', async (as) => {
    const text = textOf(await notes(as));
    expectPublic(text, as);
    expect(text).toContain('returning client');
    for (const words of ['4.08', 'capacitor', 'Worn second fret', 'Tap test']) expect(text).toContain(words);
    expect(text).not.toMatch(/45[.,]00|EUR|€/);
  });

  it.each([
    ['a4', /Page size:\s+595\.\d+ x 841\.\d+ pts \(A4\)/],
    ['letter', /Page size:\s+612 x 792 pts \(letter\)/],
  ])('the summary on %s is for the client, and tells of nobody else', async (paper, size) => {
    const response = await fetch(`${app.url}${of(`exports/summary?paper=${paper}`)}`);
    expect(response.status).toBe(200);
    expect(response.headers.get('content-type')).toBe('application/pdf');
    const bytes = new Uint8Array(await response.arrayBuffer());
    const { text, info } = pdfText(bytes, `summary-${paper}.pdf`);
    expect(info).toMatch(size);
    expect(Number(/Pages:\s+(\d+)/.exec(info)?.[1])).toBeLessThanOrEqual(3);
    for (const words of ['Ottoline Fernsby', '40417283', 'capacitor', 'Worn second fret'])
      expect(text).toContain(words);
    const [whole, raw] = [folded(text + info), folded(Buffer.from(bytes).toString('latin1'))];
    for (const word of ['bartholomew', 'quillon', '46.0037']) {
      expect(whole).not.toContain(word);
      expect(raw).not.toContain(word);
    }
  });
});

describe('a private title', () => {
  beforeEach(async () => {
    await bookIn({ client });
    await mark('What came in', 0);
  });
  const three = async () => [await chapters(), await notes(), await ask(app, 'POST', of('exports/cut'))];

  it('stops chapters, notes and cut, until it is named otherwise', async () => {
    const { id } = await mark('Ottoline tries it', 20_000);
    for (const { status, body, headers } of await three()) {
      expect(status).toBe(409);
      expect(headers.get('content-type')).toContain('application/problem+json');
      const told = problemSchema.extend({ findings: findingsSchema.shape.findings }).parse(body);
      expect(told.findings).toMatchObject([{ what: 'written', words: 'Ottoline', place: { line: id } }]);
    }
    await done('PATCH', `/api/markers/${id}`, { title: 'The client tries it' });
    expect(await findings()).toEqual([]);
    for (const { status } of await three()) expect(status).toBeLessThan(300);
  });

  it('that is not public stops nothing', async () => {
    const { id } = await mark('Ottoline tries it', 20_000);
    await done('PATCH', `/api/markers/${id}`, { public: false });
    expect(await findings()).toEqual([]);
    expect(textOf(await chapters())).not.toMatch(/ottoline/i);
  });

  it('is allowed on purpose, in those very words, and no longer when the allowance is undone', async () => {
    const { id } = await mark('Ottoline tries it', 20_000);
    const finding = (await findings())[0]?.id;
    expect((await decide(finding, 'allowed')).status).toBe(200);
    for (const as of chapterFormats) expect(textOf(await chapters(as))).toContain('Ottoline tries it');
    expect((await notes()).status).toBe(200);
    await done('PATCH', `/api/markers/${id}`, { title: 'Ottoline Fernsby tries it' });
    expect((await chapters()).status).toBe(409);
    await done('PATCH', `/api/markers/${id}`, { title: 'Ottoline tries it' });
    expect((await findings())[0]).toMatchObject({ id: finding, decision: 'allowed' });
    expect((await decide(finding, 'open')).status).toBe(200);
    expect((await chapters()).status).toBe(409);
    await undo();
    expect((await chapters()).status).toBe(200);
  });

  it('of the job counts too, and is not muted but written otherwise', async () => {
    await done('PATCH', `/api/jobs/${job}`, { title: 'For Mrs Fernsby' });
    const [finding] = await findings();
    expect(finding).toMatchObject({ place: { on: 'ticket', anchor: 'title' }, decision: 'open' });
    expect((await decide(finding?.id, 'held back')).status).toBe(422);
    expect((await decide('title:nothing', 'allowed')).status).toBe(404);
    expect((await decide(finding?.id, 'open')).status).toBe(200);
    expect((await chapters()).status).toBe(409);
  });

  it('appears when the client is named only later', async () => {
    await mark('Thaddeus said so', 20_000);
    await done('PATCH', `/api/clients/${(await getJob(app, job)).client?.id}`, { name: 'Thaddeus Zwick' });
    expect((await findings()).map(({ words }) => words)).toEqual(['Thaddeus']);
  });
});

describe('private words that were spoken', () => {
  beforeEach(async () => {
    await bookIn({ client });
    await mark('What came in', 0);
    await narrate(talk);
  });

  it('stop the cut alone; each is muted, left or open again, and that can be undone', async () => {
    expect([(await chapters()).status, (await notes()).status]).toEqual([200, 200]);
    const [first] = await findings();
    const now = async () => (await findings()).find(({ id }) => id === first?.id)?.decision;
    expect((await ask(app, 'POST', of('exports/cut'))).status).toBe(409);
    for (const decision of ['held back', 'allowed', 'open', 'allowed'] as const) {
      expect((await decide(first?.id, decision)).status).toBe(200);
      expect(await now()).toBe(decision);
    }
    await undo();
    expect(await now()).toBe('open');
    for (const { id } of await findings()) await decide(id, 'held back');
    expect((await ask(app, 'POST', of('exports/cut'))).status).toBe(202);
  });

  it('need no decision where they are cut away', async () => {
    const cutAway = [{ takeId, fromMs: 0, toMs: 30_000 }];
    await done('PATCH', of('cut'), { cutAway });
    expect(await findings()).toEqual([]);
    const { notes: told } = (await view()).chapters;
    expect(told).toMatchObject([{ what: 'moved' }]);
  });
});

describe('notes written by hand', () => {
  const kept = (id: NoteSectionId, more: Partial<KeptNote> = {}): KeptNote => ({
    ...{ id, on: true, text: null, madeFrom: null },
    ...more,
  });
  const patch = (body: object) => ask(app, 'PATCH', of('notes'), body);
  const section = async (id: NoteSectionId) => (await view()).notes.sections.find((one) => one.id === id);
  let item: string;

  beforeEach(async () => {
    await bookIn({ client });
    await mark('What came in', 0);
    const wanted = { what: 'Fret dress', outcome: 'done' };
    item = workItemChangedSchema.parse(await done('POST', of('work'), wanted)).item.id;
  });

  it('stay when the facts change, marked as behind, with the difference', async () => {
    const draft = (await section('done'))?.text ?? '';
    expect(draft).toContain('Fret dress');
    const mine = kept('done', { text: 'All frets, *by hand*.', madeFrom: draft });
    expect((await patch({ sections: [mine] })).status).toBe(200);
    expect(await section('done')).toMatchObject({ text: mine.text, edited: true, behind: false });
    await done('PATCH', `/api/work/${item}`, { what: 'Fret and nut dress' });
    const now = await section('done');
    expect(now).toMatchObject({ text: mine.text, behind: true });
    expect(now?.difference?.filter(({ what }) => what === 'added').map(({ text }) => text.trim())).toEqual([
      'and nut',
    ]);
    for (const as of noteFormats) expect(textOf(await notes(as))).toMatch(/All frets, .{0,6}by hand/);
    await undo();
    expect(await section('done')).toMatchObject({ behind: false });
  });

  it('keep their order, and leave out what is switched off', async () => {
    await patch({ sections: [kept('chapters'), kept('done', { on: false }), kept('came in')] });
    const ids = (await view()).notes.sections.map(({ id }) => id);
    expect(ids.indexOf('chapters')).toBeLessThan(ids.indexOf('came in'));
    for (const as of noteFormats) {
      const text = textOf(await notes(as));
      expect(text).not.toContain('What was done');
      expect(text.indexOf('What came in')).toBeGreaterThan(0);
    }
  });

  it('with a private word stop the notes alone', async () => {
    await patch({ sections: [kept('done', { text: 'For F**ernsb**y, with thanks' })] });
    const { status, body } = await notes('html');
    expect(status).toBe(409);
    expect(body).toMatchObject({ findings: [{ documents: ['notes'], place: { anchor: 'notes-done' } }] });
    expect((await chapters()).status).toBe(200);
    await patch({ sections: [kept('done', { on: false, text: 'For Fernsby, with thanks' })] });
    expect(textOf(await notes('html'))).not.toContain('Fernsby');
  });

  it('clash with another window, and nothing is lost', async () => {
    const [first, second] = ['https://films.example/1', 'https://films.example/2'];
    expect((await patch({ videoAddress: first, was: { videoAddress: null } })).status).toBe(200);
    const late = await patch({ videoAddress: second, was: { videoAddress: null } });
    expect(late).toMatchObject({ status: 409, body: { now: { videoAddress: first } } });
    const sections = [kept('done')];
    expect((await patch({ sections, was: { sections: [] } })).status).toBe(200);
    expect((await patch({ sections: [], was: { sections: [] } })).status).toBe(409);
    expect((await view()).notes).toMatchObject({ videoAddress: first, kept: sections });
    const summary = await ask(app, 'PATCH', of('summary'), { greeting: 'Hello', was: { greeting: 'Hi' } });
    expect(summary).toMatchObject({ status: 409, body: { now: { greeting: '' } } });
    expect(textOf(await notes())).toContain(`(${first}#t=0)`);
  });

  it.each(['films.example', 'javascript:alert(1)', 'https://', 'https://a b', 'https://x/"onload=', 7])(
    'refuse %s as the address of a video',
    async (videoAddress) => {
      const { status, body } = await patch({ videoAddress });
      expect(status).toBe(422);
      expect(problemSchema.parse(body).detail).toContain('videoAddress');
    },
  );

  it('are refused when they are enormous, and what stood there stays', async () => {
    await patch({ sections: [kept('done', { text: 'Mine' })] });
    for (const [letters, answer] of [
      [500_001, 422],
      [2_000_001, 413],
    ] as const)
      expect((await patch({ sections: [kept('done', { text: 'x'.repeat(letters) })] })).status).toBe(answer);
    expect(await section('done')).toMatchObject({ text: 'Mine' });
    await patch({ sections: [kept('done', { text: 'a word '.repeat(10_000) })] });
    expect(textOf(await notes('text')).length).toBeGreaterThan(69_000);
  });
});

describe('odd jobs', () => {
  it('without a public marker: no chapter, and still notes and a summary', async () => {
    await bookIn({ client });
    await mark('For me', 5000, { public: false });
    expect(textOf(await chapters())).toBe('');
    expect(textOf(await chapters('webvtt'))).toContain('WEBVTT');
    expect(chapterListSchema.parse((await chapters('json')).body).chapters).toEqual([]);
    for (const as of [...chapterFormats]) expect((await chapters(as)).status).toBe(200);
    expect(textOf(await notes())).not.toContain('For me');
    expect((await fetch(`${app.url}${of('exports/summary')}`)).status).toBe(200);
  });

  it.each([
    ['Greek', 'Ευανθία Μελισσουργού', 'Το μπάσο της Ευανθίας'],
    ['Cyrillic', 'Аграфена Веснушкина', 'Гитара для Аграфены'],
  ])(
    'of a client whose name is %s: found, kept out, and printed for the client',
    async (_script, name, title) => {
      await bookIn({ client: { name } });
      await mark('What came in', 0, { kind: 'intake', note: `${name} brought it` });
      const { id } = await mark(title, 20_000);
      expect((await chapters()).status).toBe(409);
      expect(await findings()).toMatchObject([{ place: { line: id } }]);
      await done('PATCH', `/api/markers/${id}`, { title: 'Sound check' });
      for (const word of folded(name).split(' '))
        for (const as of noteFormats) expect(folded(textOf(await notes(as)))).not.toContain(word);
      const response = await fetch(`${app.url}${of('exports/summary')}`);
      expect(pdfText(new Uint8Array(await response.arrayBuffer()), 'script.pdf').text).toContain(name);
    },
  );

  it('with 500 markers', async () => {
    await bookIn();
    await Promise.all(Array.from({ length: 500 }, (_, at) => mark(`Step ${at}`, at * 79)));
    const { chapters: listed } = chapterListSchema.parse((await chapters('json')).body);
    expect(listed).toHaveLength(40);
    const told = listed.flatMap(({ title }) => title.split(' · '));
    expect(told).toEqual(Array.from({ length: 500 }, (_, at) => `Step ${at}`));
    for (const as of noteFormats) expect(textOf(await notes(as))).toContain('Step 499');
    expect((await fetch(`${app.url}${of('exports/summary')}`)).status).toBe(200);
  });

  it('with long titles of every kind of letter', async () => {
    await bookIn();
    const many = [...'🎸👩🏽‍🔧 בדיקה <&> "שלום" e\u0301 '.repeat(20)];
    const long = many.slice(0, 199).join('').trim();
    const title = many.slice(0, 299).join('').trim();
    const refused = await ask(app, 'POST', of('markers'), { kind: 'work', takeId, ms: 0, title });
    expect(refused.status).toBe(422);
    expect(problemSchema.parse(refused.body).detail).toContain('title');
    await mark(long, 0);
    const { chapters: listed } = chapterListSchema.parse((await chapters('json')).body);
    expect(listed.map(({ title }) => title)).toEqual([long]);
    for (const as of chapterFormats) expect(textOf(await chapters(as))).toContain('שלום');
    for (const as of noteFormats) expect(textOf(await notes(as))).toContain('שלום');
    const { cues } = await parseText(textOf(await chapters('webvtt')), { type: 'vtt' });
    expect(cues).toHaveLength(1);
    const file = join(folder, 'long.xml');
    writeFileSync(file, textOf(await chapters('matroska')));
    // Outside check: MKVToolNix takes the chapters.
    execFileSync('mkvmerge', ['-q', '-o', join(folder, 'long.mkv'), '--chapters', file, path]);
    expect((await fetch(`${app.url}${of('exports/summary')}`)).status).toBe(200);
  });

  it('that are not there: a problem from every address', async () => {
    job = '0'.repeat(20);
    for (const at of ['hand-over', 'findings', 'cut', 'exports/chapters', 'exports/notes', 'exports/summary'])
      expect(await ask(app, 'GET', of(at)), at).toMatchObject({ status: 404 });
    expect((await ask(app, 'GET', of('cut/forecast'))).status).toBe(404);
    expect((await ask(app, 'POST', of('exports/cut'))).status).toBe(404);
    for (const at of ['notes', 'summary', 'cut'])
      expect((await ask(app, 'PATCH', of(at), {})).status).toBe(404);
    await bookIn();
    expect((await chapters('morse')).status).toBe(422);
    expect((await ask(app, 'GET', of('exports/summary?paper=napkin'))).status).toBe(422);
  });
});
