import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { newId } from '@/db/ids';
import { closeDatabase, type Database, openDatabase } from '@/db/open';
import {
  clients,
  folders,
  instruments,
  jobs,
  markers,
  readings,
  recordings,
  takes,
  workItems,
} from '@/db/schema';
import { rackOf } from '@/lib/work/store';
import {
  clientIdSchema,
  folderIdSchema,
  instrumentIdSchema,
  jobIdSchema,
  markerIdSchema,
  readingIdSchema,
  recordingIdSchema,
  takeIdSchema,
  workItemIdSchema,
} from '@/shared/ids';
import { jobStates } from '@/shared/jobs';
import { best, type Row, time } from './table';

const many = 5_000;
const types = ['electric guitar', 'bass guitar', 'mandolin', 'valve amplifier'] as const;
const day = (nth: number) =>
  `2026-${String((nth % 12) + 1).padStart(2, '0')}-${String((nth % 28) + 1).padStart(2, '0')}`;

/** The data of the Bench page for 5 000 jobs, in this process, against SQLite and JSON.parse alone. */
export async function rack(): Promise<Row[]> {
  const home = mkdtempSync(join(tmpdir(), 'benchtake-rack-'));
  try {
    const db = openDatabase(home, 'db/migrations');
    db.transaction(() => fill(db));
    const first = await time(() => rackOf(db, { find: '', limit: many }));
    const plain = db.$client.prepare('select ticket from kept_tickets').pluck();
    const parseAll = () => plain.all().map((ticket) => JSON.parse(String(ticket)));
    const whole = await best(20, () => rackOf(db, { find: '', limit: many }), parseAll);
    const page = await best(20, () => rackOf(db, { find: '', limit: 200 }), parseAll);
    const find = await best(20, () => rackOf(db, { find: 'plainly mandolin', limit: 200 }), parseAll);
    const rest = {
      referenceName: 'all of it read by SQLite and JSON.parse alone',
      unit: 'ms',
      target: 'under 50 ms',
    };
    return [
      { name: `the rack, all ${many} jobs`, ...whole, ...rest },
      { name: `the Bench page of ${many} jobs (the first 200)`, ...page, ...rest },
      { name: `finding two words in ${many} jobs`, ...find, ...rest },
      {
        name: `the rack of ${many} jobs after a new version`,
        ours: first,
        reference: null,
        referenceName: '',
        unit: 'ms',
        target: 'done at leisure after the start',
      },
    ];
  } finally {
    closeDatabase();
    rmSync(home, { recursive: true });
  }
}

function fill(db: Database): void {
  const folderId = newId(folderIdSchema);
  db.insert(folders).values({ id: folderId, path: '/invented', createdAt: 0 }).run();
  for (let nth = 0; nth < many; nth++) job(db, nth, folderId);
}

function job(db: Database, nth: number, folderId: typeof folders.$inferInsert.id): void {
  const createdAt = 1_700_000_000_000 + nth * 60_000;
  const id = newId(jobIdSchema);
  const clientId = newId(clientIdSchema);
  const instrumentId = newId(instrumentIdSchema);
  const recordingId = newId(recordingIdSchema);
  const takeId = newId(takeIdSchema);
  db.insert(clients)
    .values({ id: clientId, name: `Client ${nth} Plainly`, alias: 'a client', createdAt })
    .run();
  const type = types[nth % types.length] ?? types[0];
  db.insert(instruments).values({ id: instrumentId, type, clientId, createdAt }).run();
  db.insert(jobs)
    .values({
      ...{ id, number: nth + 1, title: `Crackle on pickup ${nth}`, clientId, instrumentId, createdAt },
      ...{ updatedAt: createdAt, receivedOn: day(nth), promisedOn: nth % 3 ? day(nth + 5) : null },
      state: jobStates[nth % jobStates.length] ?? 'booked in',
    })
    .run();
  db.insert(recordings)
    .values({
      ...{ id: recordingId, folderId, path: `take-${nth}.mp4`, sizeBytes: 1, modifiedAt: createdAt },
      ...{ state: 'ready', createdAt, stills: Array.from({ length: 40 }, (_, still) => still * 5000) },
    })
    .run();
  db.insert(takes).values({ id: takeId, jobId: id, recordingId, createdAt }).run();
  for (let ms = 0; ms < 5; ms++) {
    const place = { jobId: id, takeId, ms: ms * 1000, createdAt };
    db.insert(markers)
      .values({
        id: newId(markerIdSchema),
        ...place,
        kind: 'work',
        title: `Step ${ms} of the work`,
        public: true,
      })
      .run();
    db.insert(readings)
      .values({
        ...{ id: newId(readingIdSchema), ...place, kind: 'resistance', open: false, unit: 'kΩ' },
        ...{ valueText: '7.9', baseValue: 7900, subject: 'neck pickup', basis: 'measured', details: {} },
      })
      .run();
  }
  for (const origin of ['asked', 'offered'] as const) {
    const outcome = nth % 2 ? 'done' : 'open';
    db.insert(workItems)
      .values({ id: newId(workItemIdSchema), jobId: id, what: 'set-up', origin, outcome, createdAt })
      .run();
  }
}
