import { mkdtempSync, realpathSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { clientSchema } from '@/shared/clients';
import { changeIdSchema } from '@/shared/ids';
import { changeSchema, type JobRecord, jobSchema, rackSchema } from '@/shared/jobs';
import { markerSchema } from '@/shared/markers';
import { readingSchema } from '@/shared/readings';
import type { Take } from '@/shared/takes';
import { traceViewSchema } from '@/shared/traces';
import { partChangedSchema, workItemChangedSchema } from '@/shared/work';
import { type App, startApp } from '../app';
import { makeRecording } from '../recordings';
import { addTake, ask, getJob, makeJob, nameFolder, settled } from './client';

let app: App;
let folder: string;
let paths: string[];

beforeAll(async () => {
  folder = realpathSync(mkdtempSync(join(tmpdir(), 'benchtake-undo-')));
  paths = [0, 1, 2].map((index) =>
    makeRecording(folder, `take ${index}.mp4`, { seconds: 4, at: `2026-03-17T09:0${index}:00Z` }),
  );
  app = await startApp();
  await nameFolder(app, folder);
});
afterAll(async () => {
  await app.clear();
  rmSync(folder, { recursive: true });
});

let job: string;
let takes: Take[];
beforeEach(async () => {
  job = (await makeJob(app)).job.id;
  for (const path of paths) await addTake(app, job, path);
  ({ takes } = await settled(app, job));
});

/** The record and the worksheets, without when it was last touched and what could be undone. */
async function state(): Promise<unknown> {
  const { undo: _, redo: __, job: ticket, ...record } = await getJob(app, job);
  const { updatedAt: ___, ...rest } = ticket;
  const traces = (await ask(app, 'GET', `/api/jobs/${job}/traces`)).body;
  return { ...record, job: rest, traces };
}

async function done(method: string, path: string, body?: unknown): Promise<unknown> {
  const answer = await ask(app, method, path, body);
  expect(answer.status, `${method} ${path}: ${JSON.stringify(answer.body)}`).toBeLessThan(300);
  return answer.body;
}
const undo = async () =>
  z.object({ undone: changeSchema.nullable() }).parse(await done('POST', `/api/jobs/${job}/undo`)).undone;
const redo = async () =>
  z.object({ redone: changeSchema.nullable() }).parse(await done('POST', `/api/jobs/${job}/redo`)).redone;
const takeAt = (index: number) => {
  const take = takes[index % takes.length];
  if (!take) throw new Error('The job has no takes');
  return take.id;
};

async function addMarker(title: string, ms = 1000, index = 0) {
  const body = await done('POST', `/api/jobs/${job}/markers`, {
    kind: 'work',
    title,
    takeId: takeAt(index),
    ms,
  });
  return z.looseObject({ change: changeIdSchema, marker: markerSchema }).parse(body);
}
async function addReading() {
  const body = await done('POST', `/api/jobs/${job}/readings/quick`, {
    text: 'neck red-white 4.08k',
    takeId: takeAt(0),
    ms: 1500,
  });
  return z.looseObject({ reading: readingSchema }).parse(body).reading;
}
async function addItem() {
  const body = await done('POST', `/api/jobs/${job}/work`, {
    what: 'set-up',
    origin: 'offered',
    charge: 'agreed',
    priceMinor: 4500,
    begun: { takeId: takeAt(0), ms: 300 },
  });
  return workItemChangedSchema.parse(body).item;
}
async function addPart() {
  const body = await done('POST', `/api/jobs/${job}/parts`, {
    what: 'jack',
    deed: 'fitted',
    source: 'stock',
  });
  return partChangedSchema.parse(body).part;
}
async function addClient() {
  const body = await done('POST', '/api/clients', { name: 'Ada Plainly' });
  return z.looseObject({ client: clientSchema }).parse(body).client.id;
}
async function addTrace() {
  const body = await done('POST', `/api/jobs/${job}/traces`, {
    subject: 'neck',
    conductors: ['red', 'white', 'green', 'black'],
  });
  return z.looseObject({ trace: traceViewSchema }).parse(body).trace;
}

/** Every kind of change that the routes offer; each prepares what it needs and gives back the change itself. */
const everyChange: [string, () => Promise<() => Promise<unknown>>][] = [
  ['a marker dropped', async () => () => addMarker('fret dressed')],
  [
    'a span dropped',
    async () => () =>
      done('POST', `/api/jobs/${job}/markers`, {
        kind: 'diagnosis',
        takeId: takeAt(1),
        ms: 100,
        endMs: 900,
        public: false,
        note: 'hum',
      }),
  ],
  [
    'a marker moved to another take',
    async () => {
      const { marker } = await addMarker('here');
      return () => done('PATCH', `/api/markers/${marker.id}`, { takeId: takeAt(2), ms: 2000 });
    },
  ],
  [
    'a marker named',
    async () => {
      const { marker } = await addMarker('before');
      return () =>
        done('PATCH', `/api/markers/${marker.id}`, {
          title: 'after',
          kind: 'result',
          note: 'n',
          public: false,
          endMs: 3000,
        });
    },
  ],
  [
    'a marker deleted',
    async () => {
      const { marker } = await addMarker('away');
      return () => done('DELETE', `/api/markers/${marker.id}`);
    },
  ],
  ['a reading typed', async () => addReading],
  [
    'a reading added',
    async () => () =>
      done('POST', `/api/jobs/${job}/readings`, {
        kind: 'resistance',
        open: true,
        unit: 'kΩ',
        subject: 'bridge',
        between: ['hot', 'ground'],
        basis: 'stated',
      }),
  ],
  [
    'a reading corrected',
    async () => {
      const { id } = await addReading();
      return () =>
        done('PATCH', `/api/readings/${id}`, { value: '4.11', note: 'read again', takeId: null, ms: null });
    },
  ],
  [
    'a reading deleted',
    async () => {
      const { id } = await addReading();
      return () => done('DELETE', `/api/readings/${id}`);
    },
  ],
  [
    'a take trimmed',
    async () => () => done('PATCH', `/api/takes/${takeAt(0)}`, { trimStartMs: 500, trimEndMs: 3500 }),
  ],
  ['takes re-ordered', async () => () => done('PATCH', `/api/takes/${takeAt(0)}`, { index: 2 })],
  [
    'takes back to the camera clock',
    async () => {
      await done('PATCH', `/api/takes/${takeAt(0)}`, { index: 1 });
      return () => done('DELETE', `/api/jobs/${job}/takes/order`);
    },
  ],
  [
    'a take deleted, with its markers, its readings’ moments kept apart',
    async () => {
      await addMarker('on the take', 10);
      await addMarker('on the take too', 3000);
      await addReading();
      return () => done('DELETE', `/api/takes/${takeAt(0)}`);
    },
  ],
  [
    'a take added',
    async () => {
      await done('DELETE', `/api/takes/${takeAt(1)}`);
      return () => done('POST', `/api/jobs/${job}/takes`, { path: paths[1] });
    },
  ],
  [
    'the job named, its days and place told',
    async () => () =>
      done('PATCH', `/api/jobs/${job}`, {
        title: 'Other title',
        receivedOn: '2026-02-28',
        promisedOn: '2026-03-02',
        place: 'second shelf',
        cameWith: ['case', 'strap'],
      }),
  ],
  [
    'the job ready, its loose ends looked at',
    async () => {
      await addItem();
      const { looseEnds } = await getJob(app, job);
      return () =>
        done('PATCH', `/api/jobs/${job}`, { state: 'ready', lookedAt: looseEnds.map(({ id }) => id) });
    },
  ],
  [
    'the client chosen',
    async () => {
      const client = await addClient();
      return () => done('PATCH', `/api/jobs/${job}`, { clientId: client });
    },
  ],
  [
    'the client taken off',
    async () => {
      await done('PATCH', `/api/jobs/${job}`, { clientId: await addClient() });
      return () => done('PATCH', `/api/jobs/${job}`, { clientId: null });
    },
  ],
  [
    'the instrument told',
    async () => {
      const { instrument } = await getJob(app, job);
      return () =>
        done('PATCH', `/api/instruments/${instrument.id}?job=${job}`, { type: 'mandolin', serial: 'A1' });
    },
  ],
  [
    'a claim made',
    async () => {
      const { instrument } = await getJob(app, job);
      return () =>
        done('POST', `/api/instruments/${instrument.id}/claims`, { jobId: job, kind: 'year', value: '1978' });
    },
  ],
  ['a work item written down', async () => addItem],
  [
    'a work item done',
    async () => {
      const { id } = await addItem();
      return () =>
        done('PATCH', `/api/work/${id}`, { outcome: 'done', ended: { takeId: takeAt(0), ms: 900 } });
    },
  ],
  [
    'a work item taken off',
    async () => {
      const { id } = await addItem();
      return () => done('DELETE', `/api/work/${id}`);
    },
  ],
  ['a part fitted', async () => addPart],
  [
    'a part doubted',
    async () => {
      const { id } = await addPart();
      return () => done('PATCH', `/api/parts/${id}`, { doubt: 'not the first one', doubtBasis: 'assumed' });
    },
  ],
  [
    'a part taken off',
    async () => {
      const { id } = await addPart();
      return () => done('DELETE', `/api/parts/${id}`);
    },
  ],
  ['a trace begun', async () => addTrace],
  [
    'a trace changed',
    async () => {
      const { worksheet } = await addTrace();
      return () =>
        done('PATCH', `/api/traces/${worksheet.id}`, {
          subject: 'bridge',
          shield: false,
          conductors: ['red', 'white'],
        });
    },
  ],
  [
    'a trace deleted',
    async () => {
      const { worksheet } = await addTrace();
      return () => done('DELETE', `/api/traces/${worksheet.id}`);
    },
  ],
  ['the job into the bin', async () => () => done('DELETE', `/api/jobs/${job}`)],
];

describe('every change', () => {
  it.each(everyChange)('%s: undone and done again', async (_name, prepare) => {
    const change = await prepare();
    const before = await state();
    await change();
    const after = await state();
    expect(after).not.toEqual(before);
    const { undo: offered } = await getJob(app, job);
    expect((await undo())?.label).toBe(offered?.label);
    expect(await state()).toEqual(before);
    expect((await getJob(app, job)).redo?.label).toBe(offered?.label);
    await redo();
    expect(await state()).toEqual(after);
    await undo();
    expect(await state()).toEqual(before);
  });
});

describe('the bin', () => {
  const inBin = async () =>
    z
      .object({ jobs: z.array(jobSchema) })
      .parse((await ask(app, 'GET', '/api/bin')).body)
      .jobs.some(({ id }) => id === job);
  const onRack = async () =>
    rackSchema.parse((await ask(app, 'GET', '/api/jobs')).body).jobs.some(({ id }) => id === job);

  it('takes a job and gives it back whole, by undo or by restoring', async () => {
    await addMarker('kept');
    const before = await state();
    for (const back of ['undo', 'restore']) {
      await done('DELETE', `/api/jobs/${job}`);
      expect([await onRack(), await inBin()]).toEqual([false, true]);
      await done('POST', `/api/jobs/${job}/${back}`);
      expect([await onRack(), await inBin()]).toEqual([true, false]);
      expect(await state()).toEqual(before);
    }
  });
});

describe('two windows at once', () => {
  it('one takes back its own older change while the other’s newer one stands', async () => {
    const mine = await addMarker('mine');
    const theirs = await addMarker('theirs', 2000);
    await done('POST', `/api/changes/${mine.change}/undo`);
    expect((await getJob(app, job)).markers.map(({ title }) => title)).toEqual(['theirs']);
    await done('POST', `/api/changes/${mine.change}/undo`);
    expect((await getJob(app, job)).markers.map(({ id }) => id)).toEqual([theirs.marker.id]);
  });

  it('what the other has changed since is not overwritten: a problem says so', async () => {
    const { change, marker } = await addMarker('dropped here');
    await done('PATCH', `/api/markers/${marker.id}`, { title: 'named there' });
    const { status, body } = await ask(app, 'POST', `/api/changes/${change}/undo`);
    expect(status).toBe(409);
    expect(body).toMatchObject({ detail: expect.stringMatching(/newer/) });
    expect((await getJob(app, job)).markers[0]?.title).toBe('named there');
  });

  it('both press undo at the same time: two changes are taken back, none twice', async () => {
    for (const title of ['1', '2', '3']) await addMarker(title);
    const undone = await Promise.all([undo(), undo()]);
    expect(new Set(undone.map((change) => change?.id)).size).toBe(2);
    expect((await getJob(app, job)).markers.map(({ title }) => title)).toEqual(['1']);
  });

  it('a marker dropped on a take that the other has just deleted is refused in words', async () => {
    await done('DELETE', `/api/takes/${takeAt(0)}`);
    const { status } = await ask(app, 'POST', `/api/jobs/${job}/markers`, {
      kind: 'work',
      takeId: takeAt(0),
      ms: 5,
    });
    expect(status).toBe(422);
  });
});

it('a new change after an undo ends what could be done again', async () => {
  await addMarker('1');
  await undo();
  await addMarker('2');
  expect((await getJob(app, job)).redo).toBeNull();
  expect(await redo()).toBeNull();
});

/** One step of a hand at random: which of the record’s things it takes is chosen by `pick`. */
const steps: Record<string, (record: JobRecord, pick: number) => Promise<unknown>> = {
  drop: (_record, pick) => addMarker(`m${pick}`, pick % 4000, pick),
  move: ({ markers }, pick) =>
    onOne(markers, pick, ({ id }) =>
      ask(app, 'PATCH', `/api/markers/${id}`, { ms: (pick * 7) % 4000, endMs: null }),
    ),
  unmark: ({ markers }, pick) => onOne(markers, pick, ({ id }) => ask(app, 'DELETE', `/api/markers/${id}`)),
  read: (record, pick) =>
    onOne(record.takes, pick, ({ id }) =>
      ask(app, 'POST', `/api/jobs/${job}/readings`, {
        kind: 'resistance',
        value: `${pick % 10}.08`,
        unit: 'kΩ',
        takeId: id,
        ms: pick % 4000,
      }),
    ),
  correct: ({ readings }, pick) =>
    onOne(readings, pick, ({ id }) => ask(app, 'PATCH', `/api/readings/${id}`, { value: '7.9' })),
  order: ({ takes: film }, pick) =>
    onOne(film, pick, ({ id }) => ask(app, 'PATCH', `/api/takes/${id}`, { index: pick % 3 })),
  clock: () => ask(app, 'DELETE', `/api/jobs/${job}/takes/order`),
  trim: ({ takes: film }, pick) =>
    onOne(film, pick, ({ id }) => ask(app, 'PATCH', `/api/takes/${id}`, { trimStartMs: pick % 2000 })),
  remove: ({ takes: film }, pick) => onOne(film, pick, ({ id }) => ask(app, 'DELETE', `/api/takes/${id}`)),
  add: (_record, pick) => ask(app, 'POST', `/api/jobs/${job}/takes`, { path: paths[pick % 3] }),
  name: (_record, pick) =>
    ask(app, 'PATCH', `/api/jobs/${job}`, {
      title: `t${pick}`,
      place: pick % 2 ? `shelf ${pick}` : null,
      receivedOn: '2026-01-01',
      promisedOn: `2026-03-${String((pick % 28) + 1).padStart(2, '0')}`,
    }),
  promise: () => addItem(),
  settle: ({ work }, pick) =>
    onOne(work, pick, ({ id }) =>
      ask(app, 'PATCH', `/api/work/${id}`, { outcome: pick % 2 ? 'done' : 'declined', why: `w${pick}` }),
    ),
  unpromise: ({ work }, pick) => onOne(work, pick, ({ id }) => ask(app, 'DELETE', `/api/work/${id}`)),
  fit: () => addPart(),
  doubt: ({ parts }, pick) =>
    onOne(parts, pick, ({ id }) => ask(app, 'PATCH', `/api/parts/${id}`, { doubt: `d${pick}` })),
  pass: ({ looseEnds }, pick) =>
    ask(app, 'PATCH', `/api/jobs/${job}`, {
      state: pick % 2 ? 'ready' : 'on the bench',
      lookedAt: looseEnds.map(({ id }) => id),
    }),
  trace: () => addTrace(),
  bin: () => ask(app, 'DELETE', `/api/jobs/${job}`),
  back: () => ask(app, 'POST', `/api/jobs/${job}/restore`),
  undo: () => undo(),
  redo: () => redo(),
};

const needsATake = new Set(['drop', 'promise']);

async function onOne<T>(
  things: readonly T[],
  pick: number,
  act: (thing: T) => Promise<unknown>,
): Promise<unknown> {
  const thing = things[pick % things.length];
  return thing && act(thing);
}

it('any sequence of changes, undone to the start, restores the record exactly; done again, it is as it was', async () => {
  const sequence = fc.array(fc.tuple(fc.constantFrom(...Object.keys(steps)), fc.nat(9999)), {
    minLength: 4,
    maxLength: 25,
  });
  await fc.assert(
    fc.asyncProperty(sequence, async (hand) => {
      job = (await makeJob(app)).job.id;
      const start = await state();
      for (const path of paths) await addTake(app, job, path);
      for (const [name, pick] of hand) {
        const record = await getJob(app, job);
        takes = record.takes;
        if (takes.length > 0 || !needsATake.has(name)) await steps[name]?.(record, pick);
      }
      const end = await state();
      let undone = 0;
      while ((await undo()) !== null) undone++;
      expect(await state()).toEqual(start);
      for (let again = 0; again < undone; again++) await redo();
      expect(await state()).toEqual(end);
    }),
    { numRuns: 15 },
  );
});
