import { eq } from 'drizzle-orm';
import { edit, GoneError } from '@/db/changes';
import type { Database } from '@/db/open';
import { harnesses, traces } from '@/db/schema';
import { expandedUncertaintyOf, readingsOf } from '@/lib/readings/store';
import { type ChangeId, type HarnessId, harnessIdSchema, type JobId } from '@/shared/ids';
import type { Harness, HarnessInput, JackReading } from '@/shared/jack';
import type { JackView } from '@/shared/jack-check';
import type { Reading } from '@/shared/readings';
import { arrangementFor, sketchHarness } from './arrangements';
import { expectedAtJack, HarnessProblem, judgeAtJack, prepareHarness } from './jack';
import { jackCautions } from './jack/caveats';
import { keyOf, type Model, modelOf } from './jack/predict';
import { prepareReading } from './jack/readings';
import { knownPickups } from './known-pickups';

/** The check at the jack, thought through with the job's readings now. */
export function getJackView(db: Database, jobId: JobId): JackView {
  const readings = readingsOf(db, jobId);
  const sheets = db.select().from(traces).where(eq(traces.jobId, jobId)).orderBy(traces.createdAt).all();
  const known = knownPickups(sheets, readings);
  const begin = {
    known,
    suggestion: sketchHarness(arrangementFor(known.length), known),
    cautions: [...jackCautions],
  };
  const harness = harnessOf(db, jobId);
  if (!harness) return { ...begin, harness, expected: [], judgement: null, passedOver: [] };
  const { fitting, passedOver } = sortOut(modelOf(harness), readings, expandedUncertaintyOf(db));
  return {
    ...begin,
    harness,
    expected: expectedAtJack(harness),
    judgement: judgeAtJack(harness, newestOfEach(fitting)),
    passedOver,
  };
}

/**
 * Describes the harness of a job, or describes it anew. Readings at the jack stay as they are.
 * @throws HarnessProblem
 */
export function putHarness(
  db: Database,
  jobId: JobId,
  input: HarnessInput,
): { change: ChangeId; view: JackView } {
  const harness = prepareHarness(input);
  const id = rowIdOf(jobId);
  const isNew = harnessOf(db, jobId) === null;
  const { change } = edit(db, jobId, isNew ? 'harness described' : 'harness changed', (e) => {
    if (isNew) e.insert('harnesses', { id, jobId, harness, createdAt: Date.now() });
    else e.update('harnesses', id, { harness });
  });
  return { change, view: getJackView(db, jobId) };
}

/** Takes the description away; the readings stay on the record. */
export function removeHarness(db: Database, jobId: JobId): ChangeId {
  if (harnessOf(db, jobId) === null) throw new GoneError('harness');
  return edit(db, jobId, 'harness deleted', (e) => e.remove('harnesses', rowIdOf(jobId))).change;
}

function harnessOf(db: Database, jobId: JobId): Harness | null {
  return db.select().from(harnesses).where(eq(harnesses.jobId, jobId)).get()?.harness ?? null;
}

function rowIdOf(jobId: JobId): HarnessId {
  return harnessIdSchema.parse(jobId);
}

/** Readings taken before the harness was described anew may name a position that it has no longer. */
function sortOut(
  model: Model,
  readings: readonly Reading[],
  expandedOhms: (reading: Reading) => number | undefined,
): { fitting: JackReading[]; passedOver: JackView['passedOver'] } {
  const fitting: JackReading[] = [];
  const passedOver: JackView['passedOver'] = [];
  for (const reading of readings) {
    const setting = reading.kind === 'resistance' ? reading.details.jack : undefined;
    if (!setting) continue;
    const uncertaintyOhms = expandedOhms(reading);
    const known = uncertaintyOhms === undefined ? {} : { uncertaintyOhms };
    try {
      fitting.push(prepareReading(model, { ...setting, id: reading.id, ohms: reading.baseValue, ...known }));
    } catch (error) {
      if (!(error instanceof HarnessProblem)) throw error;
      passedOver.push({ reading: reading.id, setting, why: error.message });
    }
  }
  return { fitting, passedOver };
}

/** What was mended is read again: the last reading of a setting is the one that counts. */
function newestOfEach(readings: readonly JackReading[]): JackReading[] {
  return [...new Map(readings.map((reading) => [keyOf(reading), reading])).values()];
}
