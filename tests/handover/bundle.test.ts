import { execFileSync } from 'node:child_process';
import { createWriteStream, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { parse } from 'csv-parse/sync';
import { eq } from 'drizzle-orm';
import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import type { Database } from '@/db/open';
import { clients, recordings } from '@/db/schema';
import { addMarker, addTake } from '@/lib/film/store';
import { bringInBundle } from '@/lib/handover/bundle/bundle-in-store';
import { writeBundle } from '@/lib/handover/bundle/bundle-out-store';
import { writeCsv } from '@/lib/handover/bundle/csv';
import { faultOfName, namer, sameOnDisk } from '@/lib/handover/bundle/entry-name';
import { bundleRecordOf } from '@/lib/handover/bundle/record-store';
import { fingerprint } from '@/lib/media/engine/fingerprint';
import { addFolder } from '@/lib/media/store';
import { addReading } from '@/lib/readings/store';
import { addJob, addWorkItem, getJobRecord } from '@/lib/work/store';
import { type BundleRecord, bundleRecordSchema } from '@/shared/bundle';
import type { JobId } from '@/shared/ids';
import { openTestDatabase } from '../open-test-database';
import { awkwardTitles } from './awkward';
import { comparable, oneRecord, recordFrom, zipOf } from './bundle-records';

const ways = { fingerprintOf: fingerprint, look: () => {} };
interface Home {
  db: Database;
  home: string;
}
let clear: (() => void) | null = null;
afterEach(() => {
  clear?.();
  clear = null;
});

function newHome(): Home {
  clear?.();
  const { db, home, close } = openTestDatabase();
  clear = close;
  return { db, home };
}

function bringInZip({ db, home }: Home, zip: Buffer) {
  return bringInBundle(db, home, { source: Readable.from([zip]), announcedBytes: zip.length }, ways);
}
const bringIn = async (home: Home, record: BundleRecord) =>
  bringInZip(home, await zipOf({ 'record.json': JSON.stringify(record) }));
const recordOf = (db: Database, id: JobId) => bundleRecordOf(db, id, () => null, new Date());

/** The bundle of a job as a file, and what Debian's unzip finds in it. */
async function bundleOf({ db, home }: Home, id: JobId, recordingsToo: 'none' | 'all') {
  const path = join(home, 'out.zip');
  const { stream } = await writeBundle(db, home, id, { recordings: recordingsToo });
  await pipeline(stream, createWriteStream(path));
  // Outside check: Debian's unzip.
  const tested = execFileSync('unzip', ['-t', path], {
    encoding: 'utf8',
    env: { ...process.env, LC_ALL: 'C.UTF-8' },
  });
  const read = (name: string) => execFileSync('unzip', ['-p', path, name], { maxBuffer: 1 << 28 });
  const names = execFileSync('unzip', ['-Z1', path], { encoding: 'utf8' }).trim().split('\n');
  return { zip: readFileSync(path), tested, names, read };
}

/** A job with two recordings that the engine has looked at. */
async function filmedJob({ db, home }: Home) {
  const folder = join(home, 'films');
  mkdirSync(folder);
  addFolder(db, { path: folder, clockOffsetMinutes: 60 });
  const client = { name: 'Quilla Testperson', alias: 'a drummer', reach: '+00 0000 1', notes: 'Pays late.' };
  const instrument = { type: 'bass guitar', maker: 'Workshop-built', serial: 'T-0042' };
  const { id } = addJob(db, { title: 'Crackles', instrument, client });
  for (const name of ['one.mp4', 'two.mp4']) {
    const path = join(folder, name);
    writeFileSync(path, name.repeat(200_000));
    const { take } = addTake(db, id, path);
    const known = { fingerprint: await fingerprint(path), state: 'ready' as const };
    db.update(recordings).set(known).where(eq(recordings.id, take.recordingId)).run();
  }
  return { id, folder, takes: getJobRecord(db, id).takes };
}

describe('a record out of one home and into another', () => {
  it('comes out as it went in, but for ids, number and day', { timeout: 60_000 }, async () => {
    await fc.assert(
      fc.asyncProperty(fc.gen(), async (g) => {
        const given = recordFrom(g);
        const first = newHome();
        const there = recordOf(first.db, (await bringIn(first, given)).job.id);
        expect(comparable(there)).toEqual(comparable(given));
        const second = newHome();
        const { job, report } = await bringIn(second, there);
        expect(comparable(recordOf(second.db, job.id))).toEqual(comparable(given));
        expect(report.numberBefore).toBe(there.job.number);
        expect(job.id).not.toBe(there.job.id);
      }),
      { numRuns: 15, endOnFailure: true },
    );
  });

  it('twice makes two jobs, says so, and changes nothing of the first', async () => {
    const home = newHome();
    const given = oneRecord(1);
    const first = await bringIn(home, given);
    expect(first.report).toMatchObject({ before: [], client: 'new', instrument: 'new' });
    const before = recordOf(home.db, first.job.id);
    const second = await bringIn(home, given);
    expect(second.report).toMatchObject({ before: [{ id: first.job.id }], client: 'known' });
    expect(second.report.said.join(' ')).toContain(`It was here already, as job ${first.job.number}`);
    expect(second.job.number).toBe(first.job.number + 1);
    // Both are about one instrument, which is claimed in both jobs to be what it is.
    const after = recordOf(home.db, first.job.id);
    expect({ ...after, claims: [], madeAt: '' }).toEqual({ ...before, claims: [], madeAt: '' });
    expect(after.claims.slice(0, before.claims.length)).toEqual(before.claims);
    const again = { ...recordOf(home.db, second.job.id), claims: [] };
    expect(comparable(again)).toEqual(comparable({ ...given, claims: [] }));
  });

  it('does not take an entry for the same whose notes would be lost', async () => {
    const home = newHome();
    const given = oneRecord(2);
    const { job } = await bringIn(home, given);
    const { client } = getJobRecord(home.db, job.id);
    home.db.update(clients).set({ notes: 'Other notes.' }).run();
    const again = { ...given, clients: given.clients.map((each) => ({ ...each, notes: 'Pays in cash.' })) };
    const { report } = await bringIn(home, again);
    expect(report.client).toBe('new');
    const kept = home.db.select().from(clients).all();
    expect(kept.find(({ id }) => id === client?.id)?.notes).toBe('Other notes.');
  });

  it('holds the order of the film where another camera clock would turn it round', async () => {
    const home = newHome();
    const given = oneRecord(3);
    const [one] = given.takes;
    if (!one) throw new Error('no take');
    const at = (name: string, id: string) => ({
      ...{ ...one, id, position: null },
      recording: { ...one.recording, name, probe: null },
    });
    const other = bundleRecordSchema.shape.takes.element.parse(at('a.mp4', 'z'.repeat(20)));
    const takes = [{ ...one, ...at('b.mp4', one.id) }, ...given.takes.slice(1), other];
    const film = takes.map(({ id }) => id).reverse();
    const { job } = await bringIn(home, bundleRecordSchema.parse({ ...given, takes, film }));
    const names = new Map(takes.map(({ id, recording }) => [id, recording.name]));
    expect(getJobRecord(home.db, job.id).takes.map(({ name }) => name)).toEqual(
      film.map((id) => names.get(id)),
    );
  });
});

describe('recordings', () => {
  it('come with the bundle, byte for byte, and are known as recordings', async () => {
    const first = newHome();
    const { id, takes } = await filmedJob(first);
    addMarker(first.db, id, {
      kind: 'work',
      title: 'Joint',
      takeId: takes[1]?.id ?? fail(),
      ms: 5,
      public: true,
    });
    const given = recordOf(first.db, id);
    const { zip, tested, read, names } = await bundleOf(first, id, 'all');
    expect(tested).toContain('No errors detected');
    expect(names).toEqual(expect.arrayContaining(['recordings/01 one.mp4', 'recordings/02 two.mp4']));
    expect(read('recordings/02 two.mp4').equals(Buffer.from('two.mp4'.repeat(200_000)))).toBe(true);
    expect(read('README.txt').toString()).toContain('PRIVATE');
    const second = newHome();
    const { job, report } = await bringInZip(second, zip);
    expect(report.recordings.map(({ how }) => how)).toEqual(['brought', 'brought']);
    expect(readFileSync(report.recordings[1]?.path ?? '', 'utf8')).toBe('two.mp4'.repeat(200_000));
    expect(comparable(recordOf(second.db, job.id))).toEqual(comparable(given));
    expect(readdirSync(join(second.home, 'uploads'))).toEqual([]);
  });

  it('are found again by their fingerprint, under another name, and are not copied', async () => {
    const first = newHome();
    const { id } = await filmedJob(first);
    const { zip } = await bundleOf(first, id, 'all');
    const second = newHome();
    const folder = join(second.home, 'other');
    mkdirSync(folder);
    writeFileSync(join(folder, 'renamed.mp4'), 'one.mp4'.repeat(200_000));
    addFolder(second.db, { path: folder, clockOffsetMinutes: 0 });
    const { report } = await bringInZip(second, zip);
    const byName = new Map(report.recordings.map((each) => [each.name, each.how]));
    expect(byName).toEqual(
      new Map([
        ['renamed.mp4', 'found'],
        ['two.mp4', 'brought'],
      ]),
    );
  });

  it('stay missing with all that is known of them, and are there when they are put where it says', async () => {
    const first = newHome();
    const { id } = await filmedJob(first);
    const { zip } = await bundleOf(first, id, 'none');
    const second = newHome();
    const { job, report } = await bringInZip(second, zip);
    expect(report.recordings.map(({ how }) => how)).toEqual(['missing', 'missing']);
    const rows = second.db.select().from(recordings).all();
    expect(rows.map(({ state, sizeBytes }) => [state, sizeBytes])).toEqual([
      ['missing', 1_400_000],
      ['missing', 1_400_000],
    ]);
    const [take] = getJobRecord(second.db, job.id).takes;
    expect(report.said.join(' ')).toContain('received/bundle-of-job-1');
    expect(take?.path).toContain('received/bundle-of-job-1/one.mp4');
  });

  it('that are gone while the bundle is made are told, and the bundle is made', async () => {
    const home = newHome();
    const { id, folder } = await filmedJob(home);
    rmSync(join(folder, 'one.mp4'));
    const { tested, names, read } = await bundleOf(home, id, 'all');
    expect(tested).toContain('No errors detected');
    expect(names.filter((name) => name.startsWith('recordings/'))).toEqual(['recordings/02 two.mp4']);
    expect(read('README.txt').toString()).toContain('Left out: the recording “one.mp4”.');
    const { takes } = bundleRecordSchema.parse(JSON.parse(read('record.json').toString()));
    expect(takes.map(({ recording }) => recording.file)).toEqual([null, 'recordings/02 two.mp4']);
  });
});

describe('names in the bundle', () => {
  it('are safe whatever a title or a file is called, and none comes twice', () => {
    const text = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.string({ unit: 'grapheme' }),
      fc.constantFrom('../x', 'CON', 'a:b', '', '. .', 'a\u202eb', ...awkwardTitles),
    );
    fc.assert(
      fc.property(fc.array(text), (titles) => {
        const nameOf = namer();
        const names = titles.map((title) => `stills/${nameOf(`001 ${title}.jpg`)}`);
        expect(names.map(faultOfName)).toEqual(names.map(() => null));
        expect(new Set(names.map(sameOnDisk)).size).toBe(names.length);
      }),
    );
  });
});

describe('tables', () => {
  const read = (csv: string | Buffer): string[][] => parse(csv, { bom: true, record_delimiter: '\r\n' });

  // Outside check: csv-parse, an independent reader of RFC 4180.
  it('are read back by an independent parser, 500 markers in any script', async () => {
    const home = newHome();
    const { id, takes } = await filmedJob(home);
    const takeId = takes[0]?.id ?? fail();
    const titles = Array.from({ length: 500 }, (_, at) =>
      (awkwardTitles[at % awkwardTitles.length] ?? '').slice(0, 150),
    );
    titles.forEach((title, ms) => {
      addMarker(home.db, id, { kind: 'work', title, takeId, ms, public: true, note: 'two\nlines, "said"' });
    });
    addReading(home.db, id, {
      kind: 'voltage',
      value: '-3.50',
      unit: 'mV',
      subject: '=HYPERLINK("x")',
      takeId,
      ms: 1,
    });
    addWorkItem(home.db, id, {
      what: '+1 string, @home',
      charge: 'agreed',
      priceMinor: 4550,
      currency: 'EUR',
    });
    const bundle = await bundleOf(home, id, 'none');
    const markers = read(bundle.read('tables/markers.csv'));
    const column = (name: string) => markers[0]?.indexOf(name) ?? -1;
    const plain = (text: string) => (/^[=+\-@]/.test(text) ? `'${text}` : text);
    expect(markers.slice(1).map((row) => row[column('title')])).toEqual(titles.map(plain));
    expect(new Set(markers.slice(1).map((row) => row[column('note')]))).toEqual(
      new Set(['two\nlines, "said"']),
    );
    const readings = read(bundle.read('tables/readings.csv'));
    expect(readings[1]).toEqual(expect.arrayContaining(['-3.50', 'mV', '\'=HYPERLINK("x")', '-0.0035']));
    const [, item] = read(bundle.read('tables/work.csv'));
    expect(item?.slice(0, 5)).toEqual(["'+1 string, @home", 'asked', 'agreed', '45.50', 'EUR']);
    expect(bundle.tested).toContain('No errors detected');
  });

  it('hold any text, and none that a spreadsheet takes for a formula', () => {
    const text = fc.oneof(
      fc.string({ unit: 'grapheme' }),
      fc.constantFrom('=1', '+a', '-a', '@a', '\ta', '\ra', '"', ',', '\r\n'),
    );
    fc.assert(
      fc.property(fc.array(fc.tuple(text, fc.integer(), text), { minLength: 1 }), (rows) => {
        const back = read(writeCsv(['a', 'b', 'c'], rows)).slice(1);
        const isNumber = (cell: string) => /^[+-]?\d+(\.\d+)?$/.test(cell);
        const safe = (cell: string) =>
          /^[=+\-@\t\r\n＝＋－＠]/.test(cell) && !isNumber(cell) ? `'${cell}` : cell;
        expect(back).toEqual(rows.map(([a, b, c]) => [safe(a), String(b), safe(c)]));
      }),
    );
  });
});

function fail(): never {
  throw new Error('There is no such take.');
}
