import { copyFileSync, mkdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { and, eq, isNull, notInArray } from 'drizzle-orm';
import { demoJob } from '@/db/demo/demo-job';
import type { DemoMoment, DemoReading, DemoWorkItem } from '@/db/demo/demo-types';
import { type Database, home } from '@/db/open';
import { changes, jobs } from '@/db/schema';
import { addMarker, addTake } from '@/lib/film/store';
import { addFolder, lookAtRecording } from '@/lib/media/store';
import { importToTake } from '@/lib/narration/store';
import { addReading } from '@/lib/readings/store';
import { addOutcome, addTrace } from '@/lib/wiring/store';
import type { JobId, TakeId } from '@/shared/ids';
import type { Job } from '@/shared/jobs';
import type { NewReading } from '@/shared/readings';
import { olderJobIds } from './demo-older-store';
import { addWorkItem } from './item-store';
import { addJob, patchJob } from './job-store';
import { asJob, jobRow } from './row-store';

/**
 * Loads the demonstration job; where it is loaded already, finds it.
 * @param media folder that the demonstration recordings come in
 */
export function loadDemonstration(db: Database, media: string): Job {
  const known = db
    .select()
    .from(jobs)
    .where(and(eq(jobs.demo, true), isNull(jobs.deletedAt), notInArray(jobs.id, olderJobIds(db))))
    .get();
  if (known) return asJob(known);
  const folder = copyRecordings(media);
  addFolder(db, { path: folder, clockOffsetMinutes: 0 });
  const { features, ...instrument } = demoJob.instrument;
  const { phone, ...client } = demoJob.client;
  const { title, receivedOn, promisedOn, cameWith } = demoJob;
  const job = addJob(
    db,
    {
      ...{ title, receivedOn, promisedOn, cameWith },
      instrument: { ...instrument, features: features.join('; ') },
      client: { ...client, reach: phone },
    },
    true,
  );
  const takeIds = new Map(
    demoJob.takes.map((take) => [take.file, fillTake(db, job.id, join(folder, take.file), take)]),
  );
  recordWiring(db, job.id, takeIds);
  for (const item of demoJob.workItems) writeDown(db, job.id, takeIds, item);
  patchJob(db, job.id, { state: 'on the bench' });
  for (const take of demoJob.takes) speak(db, takeIds.get(take.file), join(media, take.narrationFile));
  // The demonstration is there from the start: undo must not take it apart.
  db.delete(changes).where(eq(changes.jobId, job.id)).run();
  return asJob(jobRow(db, job.id));
}

/** Recordings lie in the data folder, as a repairer's own would lie in a folder of theirs. */
function copyRecordings(media: string): string {
  const folder = join(home(), 'demonstration');
  mkdirSync(folder, { recursive: true });
  for (const take of demoJob.takes) copyFileSync(join(media, take.file), join(folder, take.file));
  return folder;
}

function fillTake(
  db: Database,
  jobId: JobId,
  path: string,
  { markers, readings }: (typeof demoJob.takes)[number],
): TakeId {
  const { take } = addTake(db, jobId, path);
  lookAtRecording(db, take.recordingId);
  for (const marker of markers) addMarker(db, jobId, { ...marker, takeId: take.id });
  for (const reading of readings) addReading(db, jobId, newReading(reading, take.id));
  return take.id;
}

/** The spoken lines lie beside the recordings as captions. */
function speak(db: Database, takeId: TakeId | undefined, captions: string): void {
  if (takeId)
    importToTake(db, takeId, { bytes: readFileSync(captions), name: basename(captions), offsetMs: 0 });
}

function writeDown(
  db: Database,
  jobId: JobId,
  takeIds: ReadonlyMap<string, TakeId>,
  { what, origin, outcome, charge, saidAt, endedAt }: DemoWorkItem,
): void {
  const momentOf = (place?: DemoMoment) => {
    const takeId = place && takeIds.get(place.file);
    return takeId ? { takeId, ms: place.ms } : null;
  };
  const price = charge.kind === 'agreed' ? { priceMinor: charge.amountMinor, currency: charge.currency } : {};
  const moments = { begun: momentOf(saidAt), ended: momentOf(endedAt) };
  addWorkItem(db, jobId, { what, origin, outcome, charge: charge.kind, ...price, ...moments });
}

/** The neck pickup's worksheet, and what was joined at the last joint on film. */
function recordWiring(db: Database, jobId: JobId, takeIds: ReadonlyMap<string, TakeId>): void {
  const { subject, conductors, rows, plan, joinedAt } = demoJob.trace;
  const { trace } = addTrace(db, jobId, { subject, conductors, rows, shield: true, frame: true });
  addOutcome(db, trace.worksheet.id, {
    planId: plan,
    takeId: takeIds.get(joinedAt.file) ?? null,
    ms: joinedAt.ms,
  });
}

function newReading(reading: DemoReading, takeId: TakeId): NewReading {
  const { subject, ms, basis } = reading;
  if (reading.kind === 'resistance') {
    const value = reading.open ? { open: true as const } : { value: reading.digits };
    return {
      kind: 'resistance',
      ...value,
      unit: reading.unit,
      subject,
      between: reading.between,
      takeId,
      ms,
      basis,
    };
  }
  const { leads, steel, row, size } = reading;
  return {
    kind: 'polarity-kick',
    subject,
    takeId,
    ms,
    basis,
    details: { leads, steel, row, size, sign: reading.sign === 'positive' ? 1 : -1 },
  };
}
