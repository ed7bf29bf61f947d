import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { undoChange } from '@/db/changes';
import type { Database } from '@/db/open';
import { changes, clients, instruments, jobs, keptTickets, markers, narrationLines } from '@/db/schema';
import { forgetChangedWords } from '@/lib/archive/store';
import { narrationOf } from '@/lib/narration/store';
import { everydayWords } from '@/lib/work/erase/everyday-words';
import type { Person } from '@/lib/work/erase/person';
import { scrubberFor } from '@/lib/work/erase/scrub';
import {
  addClient,
  eraseClient,
  exportClient,
  getJobRecord,
  mergeClients,
  patchClient,
  removeClient,
} from '@/lib/work/store';
import * as claimWords from '@/shared/claims';
import * as jobWords from '@/shared/jobs';
import * as looseWords from '@/shared/loose-ends';
import * as markerWords from '@/shared/markers';
import * as narrationWords from '@/shared/narration';
import * as readingWords from '@/shared/readings';
import * as wiringWords from '@/shared/wiring';
import * as workWords from '@/shared/work';
import { openTestDatabase } from '../open-test-database';
import { rewriteJob, writeJob, writeWorkshop } from './erase-record';

const ada: Person = {
  name: 'Ada Plainly',
  otherNames: ['Unknown'],
  aliases: ['a client', 'Ada from the choir'],
  reach: ['+44 (0)7700 900123\nada.plainly@example.org\n12 Plain Lane, New Hamlet\nevenings only'],
};

describe('a text without the person', () => {
  const { scrub } = scrubberFor(ada);

  it.each([
    ['Ada Plainly, bass crackles', 'A client, bass crackles'],
    ['for ADA  PLAINLY', 'for a client'],
    ['for Áda Plainly', 'for a client'],
    ['for Ada\nPlainly', 'for a client'],
    ['Mrs Plainly’s bass', 'A client’s bass'],
    ["the bass is ada plainly's", 'the bass is a client’s'],
    ['adas strap and the Plainly case', 'a client’s strap and the client case'],
    ['A. Plainly and Plainly, Ada', 'A client and a client'],
    ['see adaplainly_neck', 'see a client_neck'],
    ['“Ada” said so. Ada did.', '“A client” said so. A client did.'],
    ['ring 07700 900 123 (+447700-900123)', 'ring a client (a client)'],
    ['mail Ada.Plainly@example.org or ada dot plainly at example dot org', 'mail a client or a client'],
    ['bring it to 12 plain lane', 'bring it to a client'],
    ['12 Plain Lane, New Hamlet or New Hamlet', 'a client or a client'],
    ['Ada from the choir', 'A client'],
    ['Adam plays plain, evenings only', 'Adam plays plain, evenings only'],
    ['an unknown maker', 'an unknown maker'],
    ['2026-11-25', '2026-11-25'],
  ])('%s', (text, without) => {
    expect(scrub(text, 'own')).toBe(without);
  });

  it('elsewhere only the whole name and the ways to be reached count', () => {
    expect(scrub('Ada said so in New Hamlet', 'elsewhere')).toBe('Ada said so in New Hamlet');
    expect(scrub('Ada Plainly said 0044 7700 900123', 'elsewhere')).toBe('A client said a client');
  });

  it('in how another is reached a shared number stays', () => {
    expect(scrub('Ada Plainly, 07700 900123', 'reach of another')).toBe('A client, 07700 900123');
  });

  it('an everyday word is a name only with a capital', () => {
    const rose = scrubberFor({ name: 'Rose May', otherNames: [], aliases: [], reach: [] });
    expect(rose.scrub('rose wood may crack, said Rose; rosewood, may', 'own')).toBe(
      'rose wood may crack, said a client; rosewood, may',
    );
    expect(rose.scrub('rose may', 'elsewhere')).toBe('a client');
  });

  it('finds names in scripts without spaces', () => {
    const person = scrubberFor({ name: '山田 太郎', otherNames: [], aliases: [], reach: [] });
    expect(person.scrub('山田太郎さん', 'elsewhere')).toBe('a clientさん');
  });

  it('takes no word of the record itself for a name', () => {
    const wordsOf = (value: unknown): string[] => {
      if (value instanceof z.ZodEnum) return value.options.map(String);
      return Array.isArray(value) && value.every((each) => typeof each === 'string') ? value : [];
    };
    const all = [claimWords, jobWords, looseWords, markerWords, narrationWords, workWords, wiringWords]
      .flatMap((door) => Object.values(door))
      .flatMap(wordsOf)
      .concat(readingWords.bases)
      .flatMap((words) => words.split(/[^a-z]+/))
      .filter((word) => word.length > 1);
    expect(all.length).toBeGreaterThan(60);
    expect([...new Set(all.filter((word) => !everydayWords.has(word)))]).toEqual([]);
  });
});

let db: Database;
let home: string;
let close: () => void;
beforeEach(() => {
  ({ db, home, close } = openTestDatabase());
});
afterEach(() => close());

/** Plain letters, lower case: written apart from the code under test. */
const plain = (text: string) => text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();

/** All bytes of the data folder, read as text. */
function bytesOnDisk(): string {
  return readdirSync(home, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => readFileSync(join(entry.parentPath, entry.name)).toString('utf8'))
    .join('\n');
}

/** What stands around the places where one of these is found. */
function around(text: string, wanted: RegExp): string[] {
  return Array.from(text.matchAll(wanted), ({ index }) => text.slice(Math.max(0, index - 40), index + 40));
}

const syllables = ['zorv', 'quim', 'thrép', 'blonx', 'vüzk', 'grawm', 'plek', 'ñimf'];
const nameWord = fc
  .array(fc.constantFrom(...syllables), { minLength: 2, maxLength: 2 })
  .map((parts) => parts.join(''))
  .map((word) => word.charAt(0).toUpperCase() + word.slice(1));
const benchWord = fc.constantFrom(
  'buzz',
  'fret',
  'said',
  'to',
  'noisy',
  'after',
  'then',
  'seven',
  'für',
  '½',
);
const benchWords = fc.array(benchWord, { minLength: 1, maxLength: 2 }).map((words) => words.join(' '));
const personAlike = fc.record({
  first: nameWord,
  last: nameWord,
  digits: fc.stringMatching(/^[1-9]{9}$/),
  mailbox: fc.stringMatching(/^[a-z]{5}\.[a-z]{6}$/),
});
type Alike = typeof personAlike extends fc.Arbitrary<infer T> ? T : never;

/** Ways to write of someone; those of the second half only in their own jobs. */
const whole: ((who: Alike) => string)[] = [
  ({ first, last }) => `${first} ${last}`,
  ({ first, last }) => `${first} ${last}`.toUpperCase(),
  ({ first, last }) => plain(`${first}  ${last}`),
  ({ first, last }) => `${last}, ${first}`.normalize('NFD'),
  ({ digits }) => `0${digits}`,
  ({ digits }) => `+49 ${digits.slice(0, 3)} ${digits.slice(3, 5)}-${digits.slice(5)}`,
  ({ digits }) => `0${digits.slice(0, 4)}/${digits.slice(4)}`,
  ({ mailbox }) => `${mailbox}@example.org`,
  ({ mailbox }) => `${mailbox}@example.org`.toUpperCase(),
];
const parts: typeof whole = [
  ({ first }) => first,
  ({ last }) => plain(last),
  ({ last }) => last.toUpperCase(),
];

interface Placement {
  before: string;
  after: string;
  way: number;
}
const placements = fc.array(fc.record({ before: benchWords, after: benchWords, way: fc.nat() }), {
  minLength: 20,
  maxLength: 40,
});

const written = ({ before, after, way }: Placement, who: Alike, ways: typeof whole) =>
  `${before} ${ways[way % ways.length]?.(who) ?? ''} ${after}`;

/** Texts with the person at random places, and what they must be without. */
function texts(random: readonly Placement[], who: Alike, ways: typeof whole) {
  const without: string[] = [];
  let at = 0;
  const next = () => {
    const placement = random[at++ % random.length];
    if (!placement) throw new Error('There are no texts');
    without.push(`${placement.before} a client ${placement.after}`);
    return written(placement, who, ways);
  };
  return { next, without };
}

describe('erasing', () => {
  it('leaves no byte of the person, and all else as it was', () => {
    fc.assert(
      fc.property(personAlike, placements, (who, random) => {
        fc.pre(plain(who.first) !== plain(who.last));
        close();
        ({ db, home, close } = openTestDatabase());
        const name = `${who.first} ${who.last}`;
        const reach = `0${who.digits}\n${who.mailbox}@example.org`;
        const { id } = addClient(db, { name: 'Before', reach });
        patchClient(db, id, { name, notes: `asks for ${name}` });
        const own = texts(random, who, [...whole, ...parts]);
        const other = texts(random, who, whole);
        const { jobId, instrumentId } = writeJob(db, id, own.next);
        const { jobId: otherJob } = writeJob(db, null, other.next);
        writeWorkshop(db, other.next);
        const before = own.without.length;
        const first = snapshot(db, jobId, instrumentId);
        const steps = rewriteJob(db, jobId, instrumentId, () => `later ${own.next()}`);
        mkdirSync(join(home, 'backups'), { recursive: true });
        db.$client.prepare('vacuum into ?').run(join(home, 'backups', 'before-migration-1.sqlite'));
        expect(plain(bytesOnDisk()).includes(plain(who.last))).toBe(true);

        const erased = eraseClient(db, id, ` ${name} `, forgetChangedWords);
        expect(erased.recordings).toEqual([]);
        expect(erased.texts).toBeGreaterThan(40);

        const exported = [jobId, otherJob].map((job) => [getJobRecord(db, job), narrationOf(db, job)]);
        const left = plain(`${bytesOnDisk()}\n${JSON.stringify(exported)}`);
        const words = [who.first, who.last, who.mailbox].map(plain).join('|');
        expect(around(left, new RegExp(words, 'g'))).toEqual([]);
        expect(around(left.replace(/[\s().\-/]/g, ''), new RegExp(who.digits, 'g'))).toEqual([]);

        // Every text is as it was but for the person.
        const record = JSON.stringify(dump(db));
        for (const text of new Set([...own.without.slice(before), ...other.without]))
          expect(record.includes(JSON.stringify(text).slice(1, -1)), text).toBe(true);

        // What else was changed can still be taken back.
        for (const step of steps.reverse()) undoChange(db, step);
        const scrubber = scrubberFor({ name, otherNames: [], aliases: [], reach: [reach] });
        const expected: unknown = JSON.parse(
          JSON.stringify(first, (_key, value) =>
            typeof value === 'string' ? scrubber.scrub(value, 'own') : value,
          ),
        );
        expect(snapshot(db, jobId, instrumentId)).toEqual(expected);
      }),
      { numRuns: 20, endOnFailure: true },
    );
  }, 120_000);

  const bookedFor = (id: string, title: string, file?: string) => writeJob(db, id, () => title, file);

  it('takes the entry and what hung on it off, and keeps jobs and instruments', () => {
    const { id } = addClient(db, { name: 'Ottoline Fernsby', reach: '555-0142 000' });
    const { jobId } = bookedFor(id, 'Fernsby bass', 'Fernsby bass.mp4');
    const { recordings, texts: told } = eraseClient(db, id, 'Ottoline Fernsby', forgetChangedWords);
    expect(recordings.map((path) => path.split('/').at(-1))).toEqual(['Fernsby bass.mp4']);
    expect(told).toBeGreaterThan(10);
    expect(db.select().from(clients).all()).toEqual([]);
    expect(db.select().from(jobs).all()).toMatchObject([
      { id: jobId, clientId: null, title: 'A client bass' },
    ]);
    expect(db.select().from(instruments).all()).toMatchObject([{ clientId: null }]);
    expect(JSON.stringify(db.select().from(changes).all())).not.toContain('Fernsby');
    expect(JSON.stringify(db.select().from(keptTickets).all())).not.toContain('Fernsby');
  });

  it('wants the name, and changes nothing without it', () => {
    const { id } = addClient(db, { name: 'Ottoline Fernsby' });
    expect(() => eraseClient(db, id, 'ottoline', forgetChangedWords)).toThrow(/not the name/);
    expect(db.select().from(clients).all()).toHaveLength(1);
  });

  it('erases the names of entries that went into this one, and those it bore before', () => {
    const { id } = addClient(db, { name: 'Ottoline Fernsby' });
    const { id: other } = addClient(db, { name: 'Tilda Quorn', reach: 'tilda@example.org' });
    bookedFor(id, 'Quorn and Fernsby, tilda@example.org');
    mergeClients(db, id, other);
    eraseClient(db, id, 'Ottoline Fernsby', forgetChangedWords);
    expect(around(plain(bytesOnDisk()), /tilda|quorn|fernsby/g)).toEqual([]);
    expect(
      db
        .select()
        .from(jobs)
        .all()
        .map(({ title }) => title),
    ).toEqual(['A client and a client, a client']);
  });

  it('lets what was once theirs go too, when the entry was taken off a job before', () => {
    const { id } = addClient(db, { name: 'Ottoline Fernsby' });
    const { id: other } = addClient(db, { name: 'Ottoline Fernsby' });
    bookedFor(other, 'Fernsby bass');
    removeClient(db, other);
    eraseClient(db, id, 'Ottoline Fernsby', forgetChangedWords);
    expect(
      db
        .select()
        .from(jobs)
        .all()
        .map(({ title }) => title),
    ).toEqual(['Fernsby bass']);
  });

  it('refuses while another entry bears the same name, and leaves namesakes alone', () => {
    const { id } = addClient(db, { name: 'Fernsby' });
    const { id: twin } = addClient(db, { name: 'FERNSBY' });
    expect(() => eraseClient(db, id, 'Fernsby', forgetChangedWords)).toThrow(/same name/);
    patchClient(db, twin, { name: 'Tilda Fernsby', notes: 'Fernsby, not the other' });
    bookedFor(twin, 'bass of Fernsby');
    eraseClient(db, id, 'Fernsby', forgetChangedWords);
    expect(db.select().from(clients).all()).toMatchObject([
      { name: 'Tilda Fernsby', notes: 'Fernsby, not the other' },
    ]);
    expect(db.select().from(jobs).all()).toMatchObject([{ title: 'bass of Fernsby', clientId: twin }]);
  });

  it('puts one fresh copy in the place of its own backups, and leaves what others put there', () => {
    const { id } = addClient(db, { name: 'Ottoline Fernsby' });
    const folder = join(home, 'backups');
    mkdirSync(folder);
    for (const name of ['before-migration-1.sqlite', 'before-migration-2.sqlite', 'mine.txt'])
      writeFileSync(join(folder, name), 'Fernsby');
    eraseClient(db, id, 'Ottoline Fernsby', forgetChangedWords);
    expect(readdirSync(folder).sort()).toEqual([
      expect.stringMatching(/^after-erasing-.*\.sqlite$/),
      'mine.txt',
    ]);
  });

  it('reaches an index of words, and tables that came later', () => {
    const { id } = addClient(db, { name: 'Ottoline Fernsby' });
    const { jobId } = bookedFor(id, 'bass of Fernsby');
    db.$client.exec(`
      create table later (job_id text, remark text);
      insert into later values ('${jobId}', 'Fernsby asked');
      create virtual table heard using fts5(text, content='narration_lines', prefix='3');
      insert into heard(heard) values ('rebuild');
      create virtual table spoken using fts5(text);
      insert into spoken values ('Ottoline Fernsby spoke');`);
    eraseClient(db, id, 'Ottoline Fernsby', forgetChangedWords);
    expect(around(plain(bytesOnDisk()), /ernsby|ottoline/g)).toEqual([]);
    expect(db.$client.prepare('select remark from later').pluck().get()).toBe('A client asked');
    const asked = db.$client.prepare("select count(*) from heard where heard match 'client'").pluck();
    expect(asked.get()).toBe(db.select().from(narrationLines).all().length);
  });
});

describe('an export', () => {
  it('holds the entry, instruments with claims, and whole jobs', () => {
    const { id } = addClient(db, { name: 'Ottoline Fernsby', reach: 'by post' });
    const { jobId, instrumentId } = writeJob(db, id, () => 'words');
    const known = exportClient(db, id);
    expect(known).toMatchObject({
      client: { name: 'Ottoline Fernsby', reach: 'by post' },
      instruments: [{ id: instrumentId, claims: [{ value: 'words' }] }],
      jobs: [{ record: { job: { id: jobId } }, narration: { lines: [{ text: 'words' }] } }],
    });
  });
});

/** What the later steps of the history touch. */
function snapshot(from: Database, jobId: string, instrumentId: string): unknown {
  const job = from
    .select()
    .from(jobs)
    .all()
    .find(({ id }) => id === jobId);
  const marker = from
    .select()
    .from(markers)
    .all()
    .find((row) => row.jobId === jobId);
  const instrument = from
    .select()
    .from(instruments)
    .all()
    .find(({ id }) => id === instrumentId);
  return JSON.parse(
    JSON.stringify([job?.title, job?.place, marker?.title, marker?.note, instrument?.features]),
  );
}

/** Every row of every table. */
function dump(from: Database): unknown {
  const tables = z
    .array(z.object({ name: z.string() }))
    .parse(from.$client.prepare("select name from sqlite_master where type = 'table'").all());
  return tables.map(({ name }) =>
    from.$client
      .prepare(`select * from "${name}"`)
      .all()
      .map((row) =>
        Object.values(z.record(z.string(), z.unknown()).parse(row)).map((value) =>
          typeof value === 'string' && /^[[{]/.test(value) ? JSON.parse(value) : value,
        ),
      ),
  );
}
