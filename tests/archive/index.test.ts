import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { redoNewest, undoNewest } from '@/db/changes';
import { closeDatabase, type Database, openDatabase } from '@/db/open';
import { readAhead } from '@/lib/archive/reference-store';
import { forgetChangedWords, mendArchive, rebuildArchive, setSynonyms } from '@/lib/archive/store';
import { patchMarker, removeMarker } from '@/lib/film/store';
import { correctLine } from '@/lib/narration/store';
import { addReading } from '@/lib/readings/store';
import {
  addClaim,
  addPart,
  addWorkItem,
  clearOldBin,
  deleteJob,
  eraseClient,
  jobRow,
  patchClient,
  patchInstrument,
  patchJob,
  restoreJob,
} from '@/lib/work/store';
import type { JobId, TakeId } from '@/shared/ids';
import { openTestDatabase } from '../open-test-database';
import { addFilm, ask, contents, found, jobWithTake, mark, say } from './index-job';

let db: Database;
let home: string;
let close: () => void;
let jobId: JobId;
let takeId: TakeId;

beforeEach(() => {
  ({ db, home, close } = openTestDatabase());
  jobWithTake(db, 'Other job', 'mandolin');
  ({ jobId, takeId } = jobWithTake(db, 'Rattling lid'));
});
afterEach(() => close());

describe('what is written down is found at once', () => {
  it('a marker by its words, its new words, no more when it is gone, and again when that is undone', () => {
    const { marker } = mark(db, jobId, takeId, 61_000, 'Glued the kerfing');
    expect(ask(db, 'kerfing').answers[0]).toMatchObject({
      best: {
        kind: 'marker',
        recordId: marker.id,
        moment: { takeId, ms: 61_000 },
        title: 'Glued the kerfing',
      },
      job: { number: 2, title: 'Rattling lid', instrument: 'bass guitar', day: '2026-03-17' },
      still: `/api/takes/${takeId}/still?ms=61000`,
    });
    patchMarker(db, marker.id, { title: 'Glued the wedge' });
    expect(found(db, 'kerfing')).toEqual([]);
    expect(found(db, 'wedge')).toEqual([2]);
    removeMarker(db, marker.id);
    expect(found(db, 'wedge')).toEqual([]);
    undoNewest(db, jobId);
    expect(found(db, 'wedge')).toEqual([2]);
    undoNewest(db, jobId);
    expect(found(db, 'kerfing')).toEqual([2]);
    redoNewest(db, jobId);
    expect(found(db, 'wedge')).toEqual([2]);
  });

  it('a spoken line at its moment, under the marker that it falls under', () => {
    mark(db, jobId, takeId, 60_000, 'Lid off');
    const { id } = say(db, jobId, takeId, 64_500, 'and here is the walnut shim');
    const [answer] = ask(db, 'walnut').answers;
    expect(answer?.best).toMatchObject({
      ...{ kind: 'narration', recordId: id, moment: { takeId, ms: 64_500 }, title: 'Lid off' },
      words: [
        { text: 'and here is the ', matched: false },
        { text: 'walnut', matched: true },
        { text: ' shim', matched: false },
      ],
    });
    correctLine(db, id, 'and here is the ebony shim');
    expect(found(db, 'walnut')).toEqual([]);
    expect(found(db, 'ebony')).toEqual([2]);
  });

  it('readings, work, parts, claims and the ticket', () => {
    const place = { takeId, ms: 5000 };
    addReading(db, jobId, {
      kind: 'resistance',
      value: '8.12',
      unit: 'kΩ',
      subject: 'rhythm pickup',
      ...place,
    });
    addWorkItem(db, jobId, { what: 'Refit the escutcheon' });
    addPart(db, jobId, { what: 'ferrule', deed: 'fitted', doubt: 'perhaps from a parlour organ' });
    addClaim(db, jobRow(db, jobId).instrumentId, { kind: 'year', value: 'about 1962', jobId });
    patchJob(db, jobId, { place: 'loft', cameWith: ['tartan case'] });
    for (const [word, kind] of [
      ['rhythm', 'reading'],
      ['escutcheon', 'work'],
      ['ferrule', 'part'],
      ['parlour organ', 'part'],
      ['1962', 'claim'],
      ['loft', 'ticket'],
      ['tartan', 'ticket'],
      ['fernsby rattling', 'ticket'],
    ] as const)
      expect([word, ask(db, word).answers[0]?.best.kind]).toEqual([word, kind]);
    expect(ask(db, 'rhythm').answers[0]?.readings).toEqual(['rhythm pickup: 8.12 kΩ']);
  });

  it('what another row says of the job: client, instrument', () => {
    const { instrumentId, clientId } = jobRow(db, jobId);
    patchInstrument(db, instrumentId, { features: 'pearloid guard' }, jobId);
    expect(found(db, 'pearloid')).toEqual([2]);
    say(db, jobId, takeId, 0, 'a zebrano neck');
    expect(found(db, 'zebrano', { instrument: 'bass guitar' })).toEqual([2]);
    patchInstrument(db, instrumentId, { type: 'banjo' }, jobId);
    expect(found(db, 'zebrano', { instrument: 'bass guitar' })).toEqual([]);
    expect(found(db, 'zebrano', { instrument: 'banjo' })).toEqual([2]);
    if (clientId) patchClient(db, clientId, { name: 'Peregrine Tolliver' });
    expect(found(db, 'tolliver')).toEqual([2]);
  });

  it('nothing that lies in the bin, and all of it when it is taken out again', () => {
    mark(db, jobId, takeId, 0, 'Glued the kerfing');
    say(db, jobId, takeId, 40_000, 'walnut shim');
    deleteJob(db, jobId);
    expect(ask(db, 'kerfing walnut').answers).toEqual([]);
    restoreJob(db, jobId);
    expect(found(db, 'kerfing')).toEqual([2]);
    expect(found(db, 'walnut')).toEqual([2]);
    deleteJob(db, jobId);
    expect(clearOldBin(db, Date.now() + 31 * 86_400_000)).toBe(1);
    expect(found(db, 'kerfing')).toEqual([]);
    expect(
      db.$client.prepare('select count(*) from archive_things where job_id = ?').pluck().get(jobId),
    ).toBe(0);
  });

  it('a word of the repairer’s own, once it is taken in anew', () => {
    mark(db, jobId, takeId, 0, 'Glued the kerfing');
    setSynonyms(db, [{ said: 'wobbly strip', means: 'kerfing' }]);
    expect(found(db, 'wobbly strip')).toEqual([2]);
  });
});

describe('an erased client', () => {
  it('leaves no word in the index', () => {
    mark(db, jobId, takeId, 0, 'Zebedee Quillfeather wants it loud');
    say(db, jobId, takeId, 0, 'Quillfeather rang again');
    const { clientId } = jobRow(db, jobId);
    if (clientId) patchClient(db, clientId, { name: 'Zebedee Quillfeather' });
    expect(found(db, 'quillfeather')).toEqual([2]);
    if (clientId) eraseClient(db, clientId, 'Zebedee Quillfeather', forgetChangedWords);
    expect(found(db, 'quillfeather')).toEqual([]);
    expect(found(db, 'loud')).toEqual([2]);
    const words = db.$client.prepare("select word from archive_vocabulary where word like 'quill%'").all();
    expect(words).toEqual([]);
    const data = db.$client.prepare('select block from archive_said_data').pluck().all();
    expect(data.map(String).join()).not.toContain('quill');
  });
});

describe('a damaged index', () => {
  const damages: [string, string[]][] = [
    ['its words are gone', ['drop table archive_words']],
    ['what was said is gone', ['drop table archive_said']],
    ['some rows are gone', ['delete from archive_said where rowid > 0']],
    ['things are gone', ['delete from archive_things']],
  ];
  it.each(damages)('%s: it is noticed at the start and made anew', (_, statements) => {
    mark(db, jobId, takeId, 0, 'Glued the kerfing');
    say(db, jobId, takeId, 0, 'walnut shim');
    expect(found(db, 'kerfing')).toEqual([2]);
    for (const statement of statements) db.$client.exec(statement);
    expect(mendArchive(db)).toBe(false);
    rebuildArchive(db);
    expect(found(db, 'kerfing')).toEqual([2]);
    expect(found(db, 'walnut')).toEqual([2]);
    expect(mendArchive(db, true)).toBe(true);
  });

  it.each(['archive_words', 'archive_said'])('%s torn in the file: a thorough look finds it', (table) => {
    mark(db, jobId, takeId, 0, 'Glued the kerfing');
    say(db, jobId, takeId, 0, 'walnut shim');
    expect(found(db, 'kerfing')).toEqual([2]);
    db.$client.unsafeMode(true);
    db.$client.exec(`update ${table}_data set block = zeroblob(20)`);
    db.$client.unsafeMode(false);
    expect(mendArchive(db, true)).toBe(false);
    rebuildArchive(db);
    expect(found(db, 'kerfing')).toEqual([2]);
    expect(found(db, 'walnut')).toEqual([2]);
  });

  /** Bytes that are nothing, as a worn disk may give them. */
  const garbage = `x'${Array.from({ length: 60 }, (_, nth) => ((nth * 37 + 11) % 256).toString(16).padStart(2, '0')).join('')}'`;
  const writeGarbage = (into: string, column: string) => {
    db.$client.unsafeMode(true);
    db.$client.exec(`update ${into} set ${column} = ${garbage}`);
    db.$client.unsafeMode(false);
  };

  it.each(['archive_words_data', 'archive_said_data'])(
    'garbage in %s: who asks is answered all the same, from an index made anew',
    (into) => {
      mark(db, jobId, takeId, 0, 'Glued the kerfing');
      say(db, jobId, takeId, 0, 'walnut shim');
      expect(found(db, 'kerfing walnut')).toEqual([2]);
      writeGarbage(into, 'block');
      expect(ask(db, 'kerfing walnut')).toMatchObject({ answers: [{ job: { number: 2 } }], waiting: 0 });
      expect(mendArchive(db, true)).toBe(true);
    },
  );

  it.each(['archive_words_config', 'archive_said_config'])(
    'garbage in %s: it is noticed when the database is opened again',
    (into) => {
      mark(db, jobId, takeId, 0, 'Glued the kerfing');
      say(db, jobId, takeId, 0, 'walnut shim');
      expect(found(db, 'kerfing walnut')).toEqual([2]);
      writeGarbage(into, 'v');
      closeDatabase();
      db = openDatabase(home, 'db/migrations');
      expect(mendArchive(db)).toBe(false);
      expect(found(db, 'kerfing walnut')).toEqual([2]);
    },
  );

  it('is no trouble to who is asking', () => {
    mark(db, jobId, takeId, 0, 'Glued the kerfing');
    expect(found(db, 'kerfing')).toEqual([2]);
    db.$client.exec('drop table archive_words');
    expect(() => ask(db, 'kerfing')).not.toThrow();
    rebuildArchive(db);
    expect(found(db, 'kerfing')).toEqual([2]);
  });

  it('is made anew just as the migration made it', () => {
    const made = () =>
      db.$client
        .prepare(
          "select sql from sqlite_master where name in ('archive_words', 'archive_said') order by name",
        )
        .all();
    const before = made();
    rebuildArchive(db);
    expect(made()).toEqual(before);
  });
});

describe('a search in the middle of many writes', () => {
  const nthWord = (nth: number) => `zebrano${'abcdefghij'.charAt(nth / 10)}${'abcdefghij'.charAt(nth % 10)}`;

  it('answers with what was written last, and with what was written before', () => {
    for (let nth = 0; nth < 60; nth++) {
      say(db, jobId, takeId, nth * 30_000, `here goes the ${nthWord(nth)}`);
      mark(db, jobId, takeId, nth * 30_000, `Fitted ${nthWord(nth)} strip`);
      if (nth % 10 !== 9) continue;
      const [last] = ask(db, nthWord(nth)).answers;
      expect(last?.best).toMatchObject({ kind: 'marker', moment: { takeId, ms: nth * 30_000 } });
      expect(found(db, nthWord(nth - 9))).toEqual([2]);
    }
  });

  it('answers within a change that is not yet made, and forgets it when it is not made', () => {
    expect(() =>
      db.transaction(() => {
        for (let nth = 0; nth < 30; nth++) say(db, jobId, takeId, nth * 30_000, nthWord(nth));
        expect(found(db, nthWord(29))).toEqual([2]);
        throw new Error('Not made.');
      }),
    ).toThrow('Not made.');
    expect(found(db, nthWord(29))).toEqual([]);
    expect(mendArchive(db, true)).toBe(true);
  });
});

describe('reading ahead for the reference', () => {
  it('goes piece by piece until all is read, and begins again for other words of the repairer’s own', () => {
    for (let nth = 0; nth < 201; nth++) mark(db, jobId, takeId, nth * 1000, `Glued brace ${nth}`);
    expect(readAhead(db)).toBe(true);
    expect(readAhead(db)).toBe(false);
    expect(readAhead(db)).toBe(false);
    setSynonyms(db, [{ said: 'wobbly strip', means: 'kerfing' }]);
    expect(readAhead(db)).toBe(true);
  });
});

describe('the index after any changes', () => {
  interface Known {
    jobId: JobId;
    takeIds: TakeId[];
  }
  const words = ['walnut', 'ebony', 'shim', 'kerfing', 'bridge lifted', 'four wire cable', '8.1k'];
  const word = (pick: number) => words[pick % words.length] ?? 'shim';
  const stands = (id: TakeId) => db.$client.prepare('select 1 from takes where id = ?').get(id) !== undefined;
  const isInBin = (id: JobId) => jobRow(db, id).deletedAt !== null;

  /** Each is given one of the jobs. */
  const steps: Record<string, (job: Known, pick: number, jobs: Known[]) => void> = {
    book: (_, pick, jobs) => {
      const made = jobWithTake(db, word(pick), pick % 2 ? 'banjo' : 'mandolin');
      jobs.push({ jobId: made.jobId, takeIds: [made.takeId] });
    },
    film: ({ jobId: job, takeIds }, pick) => {
      takeIds.push(addFilm(db, job, `2026-0${(pick % 9) + 1}-11`));
    },
    say: ({ jobId: job, takeIds }, pick) => {
      const take = takeIds.filter(stands)[pick % 2];
      if (take) say(db, job, take, pick * 1000, word(pick));
    },
    mark: ({ jobId: job, takeIds }, pick) => {
      const take = takeIds.find(stands);
      if (take) mark(db, job, take, pick * 1000, word(pick + 1));
    },
    work: ({ jobId: job }, pick) => {
      addWorkItem(db, job, { what: word(pick) });
    },
    claim: ({ jobId: job }, pick) => {
      addClaim(db, jobRow(db, job).instrumentId, { kind: 'other', value: word(pick) });
    },
    type: ({ jobId: job }, pick) => {
      patchInstrument(db, jobRow(db, job).instrumentId, { type: pick % 2 ? 'ukulele' : 'banjo' }, job);
    },
    bin: ({ jobId: job }) => {
      if (!isInBin(job)) deleteJob(db, job);
    },
    restore: ({ jobId: job }) => {
      if (isInBin(job)) restoreJob(db, job);
    },
    undo: ({ jobId: job }) => {
      undoNewest(db, job);
    },
    redo: ({ jobId: job }) => {
      redoNewest(db, job);
    },
    search: (_, pick) => {
      ask(db, word(pick));
    },
  };

  it('is what a rebuild makes of the record', () => {
    const step = fc.tuple(fc.constantFrom(...Object.keys(steps)), fc.nat(50));
    fc.assert(
      fc.property(fc.array(step, { minLength: 3, maxLength: 25 }), (taken) => {
        const jobs: Known[] = [{ jobId, takeIds: [takeId] }];
        for (const [name, pick] of taken) {
          const job = jobs[pick % jobs.length];
          if (job) steps[name]?.(job, pick, jobs);
        }
        while (ask(db, 'shim').waiting > 0);
        const after = contents(db);
        rebuildArchive(db);
        expect(contents(db)).toEqual(after);
      }),
      { numRuns: 25 },
    );
  });
});
