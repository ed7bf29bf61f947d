import { readdirSync } from 'node:fs';
import { Readable } from 'node:stream';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Database } from '@/db/open';
import { checkArchive } from '@/lib/handover/bundle/archive';
import { bringInBundle } from '@/lib/handover/bundle/bundle-in-store';
import { BundleError } from '@/lib/handover/bundle/problems';
import { fingerprint } from '@/lib/media/engine/fingerprint';
import type { BundleRecord } from '@/shared/bundle';
import { rowsOf } from '../db/fill';
import { openTestDatabase } from '../open-test-database';
import { type RawFile, rawZip } from './bundle-raw-zip';
import { oneRecord } from './bundle-records';

const ways = { fingerprintOf: fingerprint, look: () => {} };
let db: Database;
let home: string;
let close: () => void;
let good: BundleRecord;

beforeAll(() => {
  ({ db, home, close } = openTestDatabase());
  good = oneRecord(42);
});
afterAll(() => close());

const textOf = (value: unknown) => Buffer.from(JSON.stringify(value));
const recordFile = (): RawFile => ({ name: 'record.json', data: textOf(good) });
const beside = (name: string | Buffer, says: RawFile['says'] = {}): Buffer =>
  rawZip([recordFile(), { name, data: Buffer.from('more'), says }]);
const instead = (says: RawFile['says'], data = textOf(good), deflated = false): Buffer =>
  rawZip([{ name: 'record.json', data, deflated, says }]);
const withRecord = (change: (record: BundleRecord) => unknown): Buffer =>
  instead({}, textOf(change(structuredClone(good))));

async function problemOf(zip: Buffer): Promise<BundleError> {
  const before = [readdirSync(home, { recursive: true }).filter(isNoDatabase), rowsOf(db.$client)];
  try {
    await bringInBundle(db, home, { source: Readable.from([zip]), announcedBytes: zip.length }, ways);
  } catch (error) {
    if (!(error instanceof BundleError)) throw error;
    const after = [readdirSync(home, { recursive: true }).filter(isNoDatabase), rowsOf(db.$client)];
    expect(after).toEqual(before);
    expect(error.detail).not.toBe('');
    return error;
  }
  throw new Error('It was brought in.');
}
/** Folders that the program keeps may come to be; the write-ahead log comes and goes. */
const isNoDatabase = (name: unknown) => !/benchtake\.sqlite|^(uploads|received)$/.test(String(name));

const link = 0o120777 * 0x10000;
const zeros = Buffer.alloc(40_000_000);

describe('an archive made to do harm', () => {
  const table: [string, () => Buffer, string, RegExp][] = [
    ['a path out of the archive', () => beside('../x.txt'), 'unsafe', /leads out/],
    ['a path out by a detour', () => beside('stills/../../x.txt'), 'unsafe', /leads out/],
    ['a path from the root', () => beside('/etc/cron.d/x'), 'unsafe', /root of the drive/],
    ['a drive', () => beside('C:/x.txt'), 'unsafe', /names a drive/],
    ['a drive without a slash', () => beside('c:x.txt'), 'unsafe', /names a drive/],
    ['backslashes', () => beside('..\\x.txt'), 'unsafe', /backslash/],
    ['a NUL', () => beside('stills/a.jpg\0.txt'), 'unsafe', /control characters/],
    ['a line break', () => beside('stills/a\nb.jpg'), 'unsafe', /control characters/],
    ['a turned name', () => beside('stills/a\u202egpj.exe'), 'unsafe', /cannot be seen/],
    ['a name with a gap of no width', () => beside('stills/a\u200b.jpg'), 'unsafe', /cannot be seen/],
    ['an overlong dot (C0 AE)', () => beside(Buffer.from([0xc0, 0xae, 0x2f, 0x78])), 'unsafe', /UTF-8/],
    ['a device', () => beside('stills/CON'), 'unsafe', /device/],
    ['a device with an ending', () => beside('aux.txt'), 'unsafe', /device/],
    ['a printer', () => beside('documents/lpt1.pdf'), 'unsafe', /device/],
    ['a name that ends with a dot', () => beside('stills/a.'), 'unsafe', /not every disk/],
    ['a stream of a file', () => beside('stills/a:b'), 'unsafe', /not every disk/],
    ['an empty step', () => beside('stills//a.jpg'), 'unsafe', /empty steps/],
    ['a step that stays', () => beside('./a.jpg'), 'unsafe', /empty steps/],
    ['no name', () => beside(''), 'unsafe', /no name/],
    ['a name without end', () => beside(`stills/${'a'.repeat(600)}`), 'unsafe', /too long/],
    ['a symbolic link', () => beside('recordings/a.mp4', { externalAttributes: link }), 'unsafe', /a link/],
    ['a link as the record', () => instead({ externalAttributes: link }), 'unsafe', /a link/],
    [
      'a device node',
      () => beside('a', { externalAttributes: 0o060600 * 0x10000 }),
      'unsafe',
      /no ordinary file/,
    ],
    ['a pipe', () => beside('a', { externalAttributes: 0o010600 * 0x10000 }), 'unsafe', /no ordinary file/],
    [
      'a folder that is a file',
      () => beside('a', { externalAttributes: 0o040700 * 0x10000 }),
      'unsafe',
      /ordinary/,
    ],
    ['a password', () => instead({ flags: 1, packedBytes: textOf(good).length + 12 }), 'unsafe', /password/],
    ['strong encryption', () => instead({ flags: 0x41 }), 'damaged', /list of files/],
    ['another packing', () => instead({ method: 12 }), 'unsafe', /not known here/],
    ['the same name twice', () => beside('record.json'), 'unsafe', /same name/],
    ['the same name in capitals', () => beside('RECORD.JSON'), 'unsafe', /same name/],
    [
      'the same name, composed and not',
      () =>
        rawZip([
          recordFile(),
          ...['stills/\u00e9', 'stills/e\u0301'].map((name) => ({ name, data: zeros.subarray(0, 1) })),
        ]),
      'unsafe',
      /same name/,
    ],
    ['two names for one file', () => instead({ localName: 'recorD.json' }), 'unsafe', /two names/],
    ['another sum', () => instead({ crc: 1 }), 'damaged', /damaged/],
    ['two sizes', () => instead({ sizeBytes: 3 }), 'damaged', /list of files/],
    ['more than it says', () => instead({ sizeBytes: 90 }, textOf(good), true), 'damaged', /damaged/],
    ['less than it says', () => instead({ sizeBytes: 900_000 }, textOf(good), true), 'damaged', /damaged/],
    [
      'a record larger than any job',
      () => instead({ sizeBytes: 3e9, packedBytes: 3e9 }),
      'damaged',
      /ends before/,
    ],
    ['a bomb', () => instead({}, zeros, true), 'unsafe', /out of all measure/],
    ['a bomb that says it is small', () => instead({ sizeBytes: 900 }, zeros, true), 'damaged', /damaged/],
    [
      'a bomb beside it',
      () => rawZip([recordFile(), { name: 'a', data: zeros, deflated: true }]),
      'unsafe',
      /measure/,
    ],
    ['files over each other', () => beside('stills/a.jpg', { position: 0 }), 'unsafe', /over each other/],
    ['a file behind the end', () => beside('stills/a.jpg', { position: 1e9 }), 'damaged', /ends before/],
    ['a million files', () => rawZip([recordFile()], { count: 1_000_000 }), 'unsafe', /1000000 files/],
    ['more files than there are', () => rawZip([recordFile()], { count: 9 }), 'damaged', /list of files/],
    ['half an archive', () => beside('a').subarray(0, 2000), 'no archive', /no whole ZIP/],
    ['no archive', () => Buffer.from('<!doctype html>'), 'no archive', /no whole ZIP/],
    ['nothing', () => Buffer.alloc(0), 'no archive', /no whole ZIP/],
    ['an empty archive', () => rawZip([]), 'no bundle', /no record/],
    [
      'an archive in an archive',
      () => rawZip([{ name: 'bundle.zip', data: beside('a') }]),
      'no bundle',
      /no record/,
    ],
    [
      'a record in a folder',
      () => rawZip([{ name: 'a/record.json', data: textOf(good) }]),
      'no bundle',
      /no record/,
    ],
  ];
  it.each(table)('%s is refused, and nothing stays', async (_, zip, wrong, title) => {
    const problem = await problemOf(zip());
    expect(problem.message).toMatch(title);
    expect(problem.extra.wrong).toBe(wrong);
  });

  it('more than the drive holds is refused before it is sent', async () => {
    const sent = { source: Readable.from([beside('a')]), announcedBytes: 1e16 };
    await expect(bringInBundle(db, home, sent, ways)).rejects.toMatchObject({ kind: 'too-large' });
  });

  it('half of what was announced is refused', async () => {
    const zip = beside('a');
    const sent = { source: Readable.from([zip]), announcedBytes: zip.length * 2 };
    await expect(bringInBundle(db, home, sent, ways)).rejects.toThrow(/Only a part/);
  });

  it('a record that says it is larger than any job is not read', () => {
    const huge = { isEncrypted: false, method: 8, externalAttributes: 0, position: 0 };
    const entry = { ...huge, name: 'record.json', sizeBytes: 300_000_000, packedBytes: 30_000_000 };
    expect(() => checkArchive([entry], 40_000_000)).toThrow(/larger than any job/);
  });

  it('passes over what it does not know, such as an archive in the archive', async () => {
    const zip = beside('inner.zip');
    const sent = { source: Readable.from([zip]), announcedBytes: zip.length };
    expect((await bringInBundle(db, home, sent, ways)).report.passedOver).toBe(1);
  });
});

describe('a record made to do harm', () => {
  const outside = (record: BundleRecord) => ({ ...record.markers[0], ms: 900_000, endMs: null });
  const inBundle = (record: BundleRecord, file: string, sizeBytes = 4) => ({
    ...record,
    takes: record.takes.map((take, at) =>
      at === 0 ? { ...take, recording: { ...take.recording, sizeBytes, file } } : take,
    ),
  });
  const table: [string, () => Buffer, string, RegExp][] = [
    ['no JSON', () => instead({}, Buffer.from('{"format":')), 'damaged', /no JSON/],
    ['no UTF-8', () => instead({}, Buffer.from([0x22, 0xff, 0x22])), 'damaged', /UTF-8/],
    [
      'another program’s',
      () => withRecord(() => ({ format: 'other', version: 1 })),
      'no bundle',
      /not that of a job/,
    ],
    ['a newer version', () => withRecord((r) => ({ ...r, version: 2 })), 'version', /newer Benchtake/],
    ['version 0', () => withRecord((r) => ({ ...r, version: 0 })), 'version', /never was/],
    ['a part missing', () => withRecord(({ work: _, ...r }) => r), 'record', /not in order/],
    ['a part too many', () => withRecord((r) => ({ ...r, more: 1 })), 'record', /not in order/],
    [
      'a prototype',
      () => instead({}, Buffer.from(JSON.stringify(good).replace('{', '{"__proto__":{"a":1},'))),
      'record',
      /not in order/,
    ],
    [
      'an id that is a path',
      () => withRecord((r) => ({ ...r, job: { ...r.job, id: '../../x' } })),
      'record',
      /in order/,
    ],
    [
      'a title without end',
      () => withRecord((r) => ({ ...r, job: { ...r.job, title: 'a'.repeat(300) } })),
      'record',
      /in order/,
    ],
    [
      'a text without end',
      () => {
        const long = structuredClone(good);
        const probe = long.takes[0]?.recording.probe;
        if (probe) probe.container = 'a'.repeat(700_000);
        return instead({}, textOf(long));
      },
      'record',
      /longer than any job/,
    ],
    [
      'an id twice',
      () => withRecord((r) => ({ ...r, markers: [...r.markers, r.markers[0]] })),
      'record',
      /same id/,
    ],
    [
      'a take that is not there',
      () => withRecord((r) => ({ ...r, markers: [{ ...r.markers[0], takeId: 'a'.repeat(20) }] })),
      'record',
      /not in the record/,
    ],
    [
      'a moment outside its take',
      () => withRecord((r) => ({ ...r, markers: [outside(r)], proposals: [] })),
      'record',
      /outside its take/,
    ],
    [
      'a time before 0',
      () => withRecord((r) => ({ ...r, markers: [{ ...r.markers[0], ms: -1 }] })),
      'record',
      /in order/,
    ],
    [
      'a span that ends before it begins',
      () => withRecord((r) => ({ ...r, markers: [{ ...r.markers[0], ms: 5000, endMs: 10 }], proposals: [] })),
      'record',
      /ends before it begins/,
    ],
    [
      'a client that is not there',
      () => withRecord((r) => ({ ...r, clients: [] })),
      'record',
      /what is not in it/,
    ],
    ['a film without a take', () => withRecord((r) => ({ ...r, film: [] })), 'record', /every take once/],
    [
      'a pickup that has a conductor twice',
      () =>
        withRecord((r) => ({
          ...r,
          traces: r.traces.map((trace) => ({ ...trace, conductors: ['red', 'red'] })),
        })),
      'record',
      /hold together/,
    ],
    [
      'a recording that is not there',
      () => withRecord((r) => inBundle(r, 'recordings/a.mp4')),
      'record',
      /not in the bundle/,
    ],
    [
      'the record as a recording',
      () => withRecord((r) => inBundle(r, 'record.json')),
      'record',
      /not in the bundle/,
    ],
    [
      'a recording of another size',
      () => rawZip([{ name: 'record.json', data: textOf(inBundle(good, 'recordings/a.mp4', 5)) }, film]),
      'damaged',
      /another size/,
    ],
    [
      'another recording',
      () => rawZip([{ name: 'record.json', data: textOf(inBundle(good, 'recordings/a.mp4')) }, film]),
      'damaged',
      /not the one/,
    ],
    [
      'a recording larger than the disk',
      () =>
        rawZip([
          { name: 'record.json', data: textOf(inBundle(good, 'recordings/a.mp4', 4e9)) },
          { ...film, deflated: true, says: { sizeBytes: 4e9, packedBytes: 4e9 } },
        ]),
      'damaged',
      /ends before/,
    ],
  ];
  const film = { name: 'recordings/a.mp4', data: Buffer.from('film') };
  it.each(table)('%s is refused, and nothing stays', async (_, zip, wrong, title) => {
    const problem = await problemOf(zip());
    expect(problem.message).toMatch(title);
    expect(problem.extra.wrong).toBe(wrong);
  });
});
