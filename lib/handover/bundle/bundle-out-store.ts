import { statSync } from 'node:fs';
import type { Readable } from 'node:stream';
import type { Database } from '@/db/open';
import { getRecording, pathOfRecording, stripStillOf } from '@/lib/media/store';
import type { BundleQuery } from '@/shared/bundle';
import type { JobId, TakeId } from '@/shared/ids';
import { DomainError } from '@/shared/problem';
import type { Take } from '@/shared/takes';
import type { HandoverFacts } from '../facts';
import { handoverFactsOf } from '../facts-store';
import { keptOf } from '../kept-store';
import { recordName } from './archive';
import { documentsOf } from './documents';
import { namer } from './entry-name';
import { readmeOf } from './readme';
import { bundleRecordOf } from './record-store';
import { tablesOf } from './tables';
import { type Packed, zipStream } from './zip-out-store';

/** Documents that are made elsewhere, by file name. A DomainError leaves them out, and the bundle says so. */
export type MoreDocuments = (facts: HandoverFacts) => Promise<ReadonlyMap<string, Buffer>>;

/**
 * A job as one ZIP, written while it is read. Private things are in it: it is for the repairer.
 * What cannot be had (a recording that is not where it was) is left out and told in its README.txt.
 * @param home the data folder
 */
export async function writeBundle(
  db: Database,
  home: string,
  jobId: JobId,
  { recordings }: BundleQuery,
  moreDocuments?: MoreDocuments,
): Promise<{ fileName: string; stream: Readable }> {
  const facts = handoverFactsOf(db, jobId);
  const leftOut: string[] = [];
  const packed =
    recordings === 'all' ? packRecordings(db, facts.record.takes, leftOut) : new Map<TakeId, OnDisk>();
  const record = bundleRecordOf(db, jobId, (id) => packed.get(id)?.name ?? null, new Date());
  const documents = await packDocuments(facts, keptOf(db, jobId).notes, moreDocuments, leftOut);
  const stills = await packStills(db, home, facts.record);
  const tables = [...tablesOf(record)].map(([name, text]) => asText(`tables/${name}`, text));
  const readme = readmeOf({
    record,
    stills: stills.length,
    documents: documents.map(({ name }) => name),
    leftOut,
  });
  const files = [
    asText('README.txt', readme),
    asText(recordName, `${JSON.stringify(record, null, 1)}\n`),
    ...tables,
    ...documents,
    ...stills,
    ...packed.values(),
  ];
  return { fileName: `job-${String(record.job.number).padStart(4, '0')}.zip`, stream: zipStream(files) };
}

type OnDisk = Extract<Packed, { path: string }>;
type InMemory = Extract<Packed, { bytes: Buffer }>;

function packRecordings(db: Database, takes: readonly Take[], leftOut: string[]): Map<TakeId, OnDisk> {
  const nameOf = namer();
  const packed = new Map<TakeId, OnDisk>();
  takes.forEach((take, at) => {
    try {
      const recording = getRecording(db, take.recordingId);
      const path = pathOfRecording(db, recording);
      const sizeBytes = statSync(path).size;
      if (sizeBytes !== recording.sizeBytes) throw new ChangedRecordingError();
      const number = String(at + 1).padStart(2, '0');
      packed.set(take.id, { name: `recordings/${nameOf(`${number} ${take.name}`)}`, path, sizeBytes });
    } catch (error) {
      if (!(error instanceof DomainError)) throw error;
      leftOut.push(`Left out: the recording “${take.name}”. ${error.message}`);
    }
  });
  return packed;
}

class ChangedRecordingError extends DomainError {
  constructor() {
    super(
      'conflict',
      'It has changed since it was looked at.',
      'Look at the take again, then save the bundle once more.',
    );
  }
}

async function packDocuments(
  facts: HandoverFacts,
  notes: Parameters<typeof documentsOf>[1],
  more: MoreDocuments | undefined,
  leftOut: string[],
): Promise<InMemory[]> {
  const texts = [...documentsOf(facts, notes)].map(([name, text]) => asText(`documents/${name}`, text));
  try {
    const made = more ? [...(await more(facts))] : [];
    return [
      ...texts,
      ...made.map(([name, bytes]) => ({ name: `documents/${name}`, bytes, isPackedAlready: false })),
    ];
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    leftOut.push(`Left out: a document. ${error.message}`);
    return texts;
  }
}

/** The picture of the strip nearest to each marker. */
async function packStills(
  db: Database,
  home: string,
  { takes, markers }: HandoverFacts['record'],
): Promise<InMemory[]> {
  const order = new Map(takes.map((take, at) => [take.id, { at, recordingId: take.recordingId }]));
  const placeOf = (id: TakeId) => order.get(id)?.at ?? 0;
  const inFilmOrder = [...markers].sort((a, b) => placeOf(a.takeId) - placeOf(b.takeId) || a.ms - b.ms);
  const nameOf = namer();
  const stills: InMemory[] = [];
  for (const [at, { takeId, ms, title }] of inFilmOrder.entries()) {
    const recordingId = order.get(takeId)?.recordingId;
    const bytes = recordingId && (await stillOrNone(() => stripStillOf(db, home, recordingId, ms)));
    const number = String(at + 1).padStart(3, '0');
    if (bytes)
      stills.push({ name: `stills/${nameOf(`${number} ${title}.jpg`)}`, bytes, isPackedAlready: true });
  }
  return stills;
}

/** None have been taken yet, or they were cleared from the data folder: they can be taken again. */
async function stillOrNone(still: () => Promise<Buffer>): Promise<Buffer | null> {
  try {
    return await still();
  } catch (error) {
    const isGone = error instanceof Error && 'code' in error && error.code === 'ENOENT';
    if (isGone || error instanceof DomainError) return null;
    throw error;
  }
}

function asText(name: string, text: string): InMemory {
  return { name, bytes: Buffer.from(text), isPackedAlready: false };
}
