import { randomUUID } from 'node:crypto';
import { mkdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import type { Readable } from 'node:stream';
import { ZodError } from 'zod';
import { newId } from '@/db/ids';
import type { Database } from '@/db/open';
import { fingerprintOf, lookAtRecording, uploadsFolder } from '@/lib/media/store';
import { proposalKeyOf } from '@/lib/narration/store';
import type { BroughtIn, BundleRecord, BundleReport } from '@/shared/bundle';
import { type JobId, jobIdSchema, type RecordingId, type TakeId } from '@/shared/ids';
import { DomainError } from '@/shared/problem';
import type { HandoverFacts } from '../facts';
import { handoverFactsOf } from '../facts-store';
import { jobsBefore, rememberBundle } from './before-store';
import { readRecord } from './check-record';
import { type Arrival, arrivalsOf, type FingerprintOf } from './find-store';
import { knownEntries } from './known-store';
import { withNewIds } from './new-ids';
import { BundleError } from './problems';
import { moveToReceived, receive } from './receive-store';
import { checkRecordings, type Unpacked, unpackRecordings } from './recordings-out-store';
import { sayReport } from './say-report';
import { openArchive } from './unpack-store';
import { type Settled, writeJob } from './write-store';

/** How recordings are known again and looked at; the engine does both. */
export interface RecordingWays {
  fingerprintOf: FingerprintOf;
  look(db: Database, id: RecordingId): void;
}
const byEngine: RecordingWays = { fingerprintOf, look: lookAtRecording };

/** The bytes of a ZIP as they come. */
export interface SentBundle {
  source: Readable;
  /** How many there should be; null where nobody has said. */
  announcedBytes: number | null;
}

/** What is to be written down, when all of it has been checked. */
interface Checked {
  record: BundleRecord;
  arrivals: ReadonlyMap<TakeId, Arrival>;
  unpacked: Unpacked;
  passedOver: number;
}

/**
 * Brings a bundle in as a new job. Nothing that is there is changed, and on any error nothing of it stays.
 * @param home the data folder
 * @throws BundleError with what is wrong and what to do
 */
export async function bringInBundle(
  db: Database,
  home: string,
  { source, announcedBytes }: SentBundle,
  ways: RecordingWays = byEngine,
): Promise<BroughtIn> {
  const folder = join(uploadsFolder(home), `bundle-${randomUUID()}`);
  mkdirSync(folder, { recursive: true });
  try {
    const zip = join(folder, 'bundle.zip');
    await receive(source, zip, announcedBytes, home);
    const checked = await check(db, home, zip, join(folder, 'recordings'), ways);
    const { facts, report } = writeDown(db, home, checked);
    for (const take of facts.record.takes) if (take.state === 'new') ways.look(db, take.recordingId);
    return { job: facts.record.job, report };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function check(
  db: Database,
  home: string,
  zip: string,
  folder: string,
  { fingerprintOf }: RecordingWays,
): Promise<Checked> {
  const archive = await openArchive(zip);
  try {
    const record = readRecord(await archive.readRecord());
    checkRecordings(record, archive);
    const arrivals = await arrivalsOf(db, record, fingerprintOf);
    const unpacked = await unpackRecordings(record, arrivals, archive, folder, { home, fingerprintOf });
    const read = new Set(['record.json', ...record.takes.map(({ recording }) => recording.file)]);
    return { record, arrivals, unpacked, passedOver: archive.names.filter((name) => !read.has(name)).length };
  } finally {
    archive.close();
  }
}

/** From here on nothing waits: the folder and the rows come to be together, or not at all. */
function writeDown(
  db: Database,
  home: string,
  checked: Checked,
): { facts: HandoverFacts; report: BundleReport } {
  const { record, arrivals, unpacked } = checked;
  const folder = needsFolder(arrivals) ? moveToReceived(home, unpacked.folder, record.job.number) : null;
  try {
    return db.transaction(() => {
      const known = knownEntries(db, record);
      const before = jobsBefore(db, record.job.id);
      const renewed = withNewIds(record, { fresh: () => newId(jobIdSchema), keyOf: proposalKeyOf, known });
      const settled = settle(checked, renewed, folder);
      const jobId = writeJob(db, { record: renewed, settled, folder });
      rememberBundle(db, record.job.id, jobId);
      const facts = thoughtThrough(db, jobId);
      return { facts, report: reportOf(checked, facts, { known, before, settled, folder }) };
    });
  } catch (error) {
    if (folder !== null) rmSync(folder, { recursive: true, force: true });
    throw error;
  }
}

function needsFolder(arrivals: ReadonlyMap<TakeId, Arrival>): boolean {
  return [...arrivals.values()].some(
    (arrival) =>
      arrival.how === 'in the bundle' || (arrival.how === 'missing' && arrival.recordingId === null),
  );
}

/** Where each recording lies now, by the new ids of the takes. */
function settle(
  { record, arrivals, unpacked }: Checked,
  renewed: BundleRecord,
  folder: string | null,
): Map<TakeId, Settled> {
  return new Map(
    renewed.takes.flatMap(({ id }, at): [TakeId, Settled][] => {
      const before = record.takes[at]?.id;
      const arrival = before && arrivals.get(before);
      if (!arrival) return [];
      const name = unpacked.names.get(before) ?? '';
      if (arrival.how === 'missing') return [[id, { ...arrival, name }]];
      if (arrival.how !== 'in the bundle') return [[id, arrival]];
      return [[id, { how: arrival.how, path: join(folder ?? unpacked.folder, name) }]];
    }),
  );
}

/** A record from which nothing can be worked out would be a job that cannot be opened. */
function thoughtThrough(db: Database, jobId: JobId): HandoverFacts {
  try {
    return handoverFactsOf(db, jobId);
  } catch (error) {
    if (error instanceof DomainError) throw broken(error.message);
    if (error instanceof ZodError) throw broken(error.issues[0]?.message ?? '');
    throw error;
  }
}

function broken(why: string): BundleError {
  return new BundleError('record', `The record in the bundle does not hold together: ${why}`);
}

const arrivedAs = {
  known: 'found',
  'lies here': 'found',
  'in the bundle': 'brought',
  missing: 'missing',
} as const;

function reportOf(
  { record, passedOver }: Checked,
  { record: { job, takes } }: HandoverFacts,
  {
    known,
    before,
    settled,
    folder,
  }: {
    known: ReadonlyMap<string, string>;
    before: BundleReport['before'];
    settled: ReadonlyMap<TakeId, Settled>;
    folder: string | null;
  },
): BundleReport {
  const isKnown = (id: string) => (known.has(id) ? 'known' : 'new');
  const facts = {
    numberBefore: record.job.number,
    client: record.job.clientId === null ? ('none' as const) : isKnown(record.job.clientId),
    instrument: isKnown(record.instrument.id),
    recordings: takes.map(({ id, name, path }) => {
      const how = arrivedAs[settled.get(id)?.how ?? 'missing'];
      return { takeId: id, name, how, path: how === 'missing' ? null : path };
    }),
    before,
    passedOver,
  } as const;
  return { ...facts, before, recordings: [...facts.recordings], said: sayReport(facts, job.number, folder) };
}
