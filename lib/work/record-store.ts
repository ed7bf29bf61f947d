import { eq } from 'drizzle-orm';
import { GoneError, listChanges } from '@/db/changes';
import type { Database } from '@/db/open';
import { clients, instruments } from '@/db/schema';
import { markersOf, takesOf } from '@/lib/film/store';
import { noticeMissingOf } from '@/lib/media/store';
import { narrationStamp } from '@/lib/narration/store';
import { listMeters, readingsOf } from '@/lib/readings/store';
import { activeTasksOf } from '@/lib/tasks/store';
import { outcomesOfJob, worksheetsOf } from '@/lib/wiring/store';
import type { ClientId, InstrumentId, JobId } from '@/shared/ids';
import type { JobRecord } from '@/shared/jobs';
import type { LooseEnd } from '@/shared/loose-ends';
import { dayOf } from './days';
import { factsOf } from './facts-store';
import { claimsOf } from './instrument-store';
import { partsOf, workItemsOf } from './item-store';
import { looseEnds } from './loose-ends';
import { asClient, asInstrument, asJob, jobRow } from './row-store';

/** The whole record of a job. */
export function getJobRecord(db: Database, id: JobId): JobRecord {
  noticeMissingOf(db, id);
  const row = jobRow(db, id);
  const steps = listChanges(db, id);
  return {
    ...ticketWords(db, id),
    takes: takesOf(db, id),
    markers: markersOf(db, id),
    readings: readingsOf(db, id),
    meters: listMeters(db),
    traces: worksheetsOf(db, id),
    outcomes: outcomesOfJob(db, id),
    work: workItemsOf(db, id),
    parts: partsOf(db, id),
    claims: claimsOf(db, row.instrumentId),
    looseEnds: looseEndsOf(db, id),
    narration: narrationStamp(db, id),
    tasks: activeTasksOf(db, id),
    undo: steps.find((step) => !step.undone) ?? null,
    redo: steps.filter((step) => step.undone).at(-1) ?? null,
  };
}

/** What is loose in a job today. */
export function looseEndsOf(db: Database, id: JobId): LooseEnd[] {
  return looseEnds(factsOf(db, id), dayOf(Date.now()));
}

/** Job, instrument and client, as the ticket names them. */
export function ticketWords(db: Database, id: JobId): Pick<JobRecord, 'job' | 'instrument' | 'client'> {
  const row = jobRow(db, id);
  const client = row.clientId && clientOf(db, row.clientId);
  return {
    job: asJob(row),
    instrument: instrumentOf(db, row.instrumentId),
    client: client || null,
  };
}

function instrumentOf(db: Database, id: InstrumentId) {
  const row = db.select().from(instruments).where(eq(instruments.id, id)).get();
  if (!row) throw new GoneError('instrument');
  return asInstrument(row);
}

function clientOf(db: Database, id: ClientId) {
  const row = db.select().from(clients).where(eq(clients.id, id)).get();
  return row && asClient(row);
}
