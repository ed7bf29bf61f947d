import { buffer } from 'node:stream/consumers';
import { parse } from 'csv-parse/sync';
import { fromBufferPromise } from 'yauzl';
import { z } from 'zod';
import { newId } from '@/db/ids';
import type { Database } from '@/db/open';
import { claims, instruments, markers, narrationLines, parts, readings, traces } from '@/db/schema';
import { pagesOf } from '@/lib/archive/store';
import { addReading } from '@/lib/readings/store';
import { addOutcome, addTrace } from '@/lib/wiring/store';
import { addJob, addWorkItem } from '@/lib/work/store';
import { giveOutQuerySchema } from '@/shared/archive-exports';
import {
  claimIdSchema,
  type JobId,
  markerIdSchema,
  narrationLineIdSchema,
  partIdSchema,
  readingIdSchema,
  type TakeId,
} from '@/shared/ids';
import { addFilm } from './index-job';

/** Everything about the client that nobody else may read, and a word that stands in no public text. */
export const secrets = [
  ...['Quillfeather', 'Marla', '07700 900133', '07700900133', 'quill@wren.example'],
  ...['14 Otterbury Lane', 'QF40417283', '£45', 'violinist', 'Hushword', 'benchtake.sqlite', 'case-of-marla'],
];
const client = {
  name: 'Marla Quillfeather',
  alias: 'a violinist',
  reach: '07700 900133\nquill@wren.example\n14 Otterbury Lane',
  notes: 'Hushword',
};
/** A text that tells everything. */
const telling =
  'Marla Quillfeather of 14 Otterbury Lane, 07700 900133, quill@wren.example, serial QF40417283, paid £45 cash';

/** A job whose every field tells everything, but for its title and its public chapters, where that stands in the way. */
export function tellingJob(db: Database, title = 'Rewire the neck pickup'): { jobId: JobId; takeId: TakeId } {
  const { id: jobId } = addJob(db, {
    title,
    instrument: { type: 'electric guitar' },
    client,
    receivedOn: '2026-03-17',
    place: telling.slice(0, 60),
    cameWith: ['case of Marla'],
  });
  db.update(instruments)
    .set({
      maker: 'Made for Quillfeather',
      model: 'Model QF40417283',
      serial: 'QF40417283',
      features: telling,
    })
    .run();
  const takeId = addLongFilm(db, jobId);
  const at = { jobId, takeId, createdAt: 1 };
  const mark = { ...at, endMs: null, kind: 'work' as const };
  db.insert(markers)
    .values([
      {
        ...mark,
        id: newId(markerIdSchema),
        title: 'Opened the cavity',
        note: telling,
        ms: 5000,
        public: true,
      },
      {
        ...mark,
        id: newId(markerIdSchema),
        title: `Hushword ${telling}`,
        note: telling,
        ms: 6000,
        public: false,
      },
    ])
    .run();
  db.insert(readings)
    .values({
      ...{ ...at, id: newId(readingIdSchema), ms: 7000, kind: 'resistance', open: false, valueText: '8.12' },
      ...{ unit: 'kΩ', baseValue: 8120, basis: 'measured', meterId: null, note: telling },
      ...{ subject: `neck of ${telling}`, between: ['Marla Quillfeather', 'QF40417283'] },
      details: { string: 'Marla’s low E' },
    })
    .run();
  tellingTrace(db, jobId, takeId);
  addWorkItem(db, jobId, {
    what: `Rewired for ${telling}`,
    why: telling,
    priceMinor: 4500,
    currency: 'GBP',
    outcome: 'done',
    ended: { takeId, ms: 8000 },
  });
  addWorkItem(db, jobId, { what: 'Hushword', why: telling, outcome: 'declined' });
  db.insert(parts)
    .values({
      ...{ id: newId(partIdSchema), jobId, what: `Hushword ${telling}`, deed: 'fitted', source: 'client' },
      ...{
        fate: 'returned',
        doubt: telling,
        doubtBasis: 'stated',
        evidence: telling,
        moment: null,
        createdAt: 1,
      },
    })
    .run();
  const [instrument] = db.select({ id: instruments.id }).from(instruments).all();
  if (instrument)
    db.insert(claims)
      .values({
        ...{
          id: newId(claimIdSchema),
          instrumentId: instrument.id,
          jobId,
          kind: 'other',
          subject: 'Hushword',
        },
        ...{
          value: telling,
          basis: 'stated',
          evidence: telling,
          moment: null,
          readingId: null,
          sure: 'likely',
        },
        createdAt: 1,
      })
      .run();
  db.insert(narrationLines)
    .values({
      ...{ id: newId(narrationLineIdSchema), jobId, takeId, startMs: 9000, endMs: 9900 },
      ...{ text: `Hushword ${telling}`, voice: 'Marla', heardText: null },
    })
    .run();
  return { jobId, takeId };
}

/** A pickup that is traced and joined; its words tell everything. */
function tellingTrace(db: Database, jobId: JobId, takeId: TakeId): void {
  const { trace } = addTrace(db, jobId, {
    ...{ subject: 'neck pickup', conductors: ['red', 'white', 'green', 'black'], shield: true, frame: false },
    rows: ['slug', 'screw'],
  });
  for (const [between, value] of [
    [['red', 'white'], '4.08'],
    [['green', 'black'], '3.97'],
  ] as const)
    addReading(db, jobId, {
      kind: 'resistance',
      value,
      unit: 'kΩ',
      subject: 'neck pickup',
      between: [...between],
    });
  const lines = [
    { role: 'hot' as const, ends: ['red'], goesTo: `switch lug of ${telling}` },
    { role: 'joined' as const, ends: ['white', 'green'], goesTo: 'each other, in a sleeve' },
    { role: 'ground' as const, ends: ['black', 'shield'], goesTo: 'back of the volume pot' },
  ];
  addOutcome(db, trace.worksheet.id, {
    planId: 'series',
    lines: lines.map((line) => ({ ...line, inside: false, basis: 'measured' as const })),
    takeId,
    ms: 12_000,
  });
  db.update(traces).set({ subject: `neck of Marla Quillfeather` }).run();
}

/** A take of ten minutes, in a file and a folder that tell of the client. */
export function addLongFilm(db: Database, jobId: JobId): TakeId {
  const takeId = addFilm(db, jobId);
  db.$client
    .prepare("update recordings set probe = '{\"durationMs\":600000}', path = path || '-case-of-marla.mp4'")
    .run();
  return takeId;
}

export const all = giveOutQuerySchema.parse({});

/** The files of a set by their names. */
export async function filesOf(
  db: Database,
  home: string,
  query = all,
): Promise<{ zip: Buffer; files: Map<string, string> }> {
  const set = { home, made: '2026-11-25', searchScript: '/* search */' };
  const zip = await buffer(await pagesOf(db, query, set));
  const archive = await fromBufferPromise(zip);
  const files = new Map<string, string>();
  for await (const entry of archive.eachEntry())
    files.set(entry.fileName, (await buffer(await archive.openReadStreamPromise(entry))).toString());
  return { zip, files };
}

/** Outside check: csv-parse, an independent reader of RFC 4180. */
export const readCsv = (table: string) =>
  z
    .array(z.record(z.string(), z.string()))
    .parse(parse(table, { columns: true, bom: true, recordDelimiter: '\r\n' }));
