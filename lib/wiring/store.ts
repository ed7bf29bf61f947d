import { desc, eq } from 'drizzle-orm';
import { edit, GoneError } from '@/db/changes';
import { newId } from '@/db/ids';
import type { Database } from '@/db/open';
import { outcomes, traces } from '@/db/schema';
import { momentInJob } from '@/lib/film/store';
import { expandedUncertaintyOf, readingsOf } from '@/lib/readings/store';
import {
  type ChangeId,
  type JobId,
  type OutcomeId,
  outcomeIdSchema,
  type TraceId,
  traceIdSchema,
} from '@/shared/ids';
import { momentOf } from '@/shared/moments';
import { DomainError } from '@/shared/problem';
import type {
  NewOutcome,
  NewTrace,
  OutcomeRecord,
  TracePatch,
  TraceView,
  WorksheetRecord,
} from '@/shared/traces';
import type { TotalReading, TraceInput } from '@/shared/wiring';
import { checkTotal, planWiring, recordOutcome } from './plans';
import { traceOf } from './record/worksheet';
import { analyseTrace, prepareTrace, takeOver } from './trace';

export { getJackView, putHarness, removeHarness } from './jack-store';

/** The worksheets of a job, in the order they were begun. */
export function worksheetsOf(db: Database, jobId: JobId): WorksheetRecord[] {
  return db
    .select()
    .from(traces)
    .where(eq(traces.jobId, jobId))
    .orderBy(traces.createdAt)
    .all()
    .map(asWorksheet);
}

/** A trace with all that follows from the job's readings now. */
export function getTraceView(db: Database, id: TraceId): TraceView {
  const worksheet = asWorksheet(traceRow(db, id));
  const trace = inputOf(db, worksheet);
  const { plans, unavailable } = planWiring(trace);
  const chosen = plans.find((plan) => plan.id === worksheet.planId);
  const total = newestTotal(trace);
  return {
    worksheet,
    analysis: analyseTrace(trace),
    plans,
    unavailable,
    check: chosen && total ? checkTotal(chosen, total, plans) : null,
    outcomes: outcomesOf(db, id),
  };
}

export function addTrace(
  db: Database,
  jobId: JobId,
  { from, ...wanted }: NewTrace,
): { change: ChangeId; trace: TraceView } {
  const bare = { ...wanted, assumed: [], planId: null };
  const prepared = from ? takeOver(bare, inputOf(db, asWorksheet(traceRow(db, from)))) : prepareTrace(bare);
  const row = {
    id: newId(traceIdSchema),
    jobId,
    subject: wanted.subject,
    conductors: prepared.conductors,
    shield: prepared.shield,
    frame: prepared.frame,
    rows: prepared.rows,
    assumed: prepared.assumed,
    planId: null,
    createdAt: Date.now(),
  };
  const { change } = edit(db, jobId, `trace of the ${wanted.subject} begun`, (e) => e.insert('traces', row));
  return { change, trace: getTraceView(db, row.id) };
}

export function patchTrace(
  db: Database,
  id: TraceId,
  patch: TracePatch,
): { change: ChangeId; trace: TraceView } {
  const row = traceRow(db, id);
  const { subject, conductors, shield, frame, rows, assumed } = { ...row, ...patch };
  const prepared = prepareTrace({ subject, conductors, shield, frame, rows, assumed });
  const checked = {
    ...patch,
    ...(patch.conductors ? { conductors: prepared.conductors } : {}),
    ...(patch.rows ? { rows: prepared.rows } : {}),
  };
  const { change } = edit(db, row.jobId, 'trace changed', (e) => e.update('traces', id, checked));
  return { change, trace: getTraceView(db, id) };
}

/** Takes a trace away with its outcomes; the readings stay on the record. */
export function removeTrace(db: Database, id: TraceId): ChangeId {
  const row = traceRow(db, id);
  return edit(db, row.jobId, `trace of the ${row.subject} deleted`, (e) => {
    for (const outcome of outcomesOf(db, id)) e.remove('outcomes', outcome.id);
    e.remove('traces', id);
  }).change;
}

/** Records what was really joined, by a plan of the trace or as it differs from it. */
export function addOutcome(
  db: Database,
  traceId: TraceId,
  wanted: NewOutcome,
): { change: ChangeId; outcome: OutcomeRecord } {
  const { worksheet, plans } = getTraceView(db, traceId);
  const plan = plans.find((candidate) => candidate.id === wanted.planId);
  if (!plan) {
    throw new DomainError(
      'invalid',
      'There is no such plan for this pickup.',
      'Choose one of the plans that the trace offers.',
      { planId: wanted.planId },
    );
  }
  const { takeId, ms } = wanted;
  if (takeId !== null && ms !== null) momentInJob(db, worksheet.jobId, takeId, ms);
  const moment = momentOf(wanted) ?? undefined;
  const outcome = recordOutcome({
    subject: worksheet.subject,
    plan,
    ...(wanted.lines ? { lines: wanted.lines } : {}),
    ...(moment ? { moment } : {}),
  });
  const row = {
    id: newId(outcomeIdSchema),
    jobId: worksheet.jobId,
    traceId,
    takeId,
    ms,
    outcome,
    createdAt: Date.now(),
  };
  const { change } = edit(db, worksheet.jobId, `wiring of the ${worksheet.subject} recorded`, (e) => {
    e.insert('outcomes', row);
    if (worksheet.planId !== plan.id) e.update('traces', traceId, { planId: plan.id });
  });
  return { change, outcome: asOutcome(row) };
}

export function removeOutcome(db: Database, id: OutcomeId): ChangeId {
  const row = db.select().from(outcomes).where(eq(outcomes.id, id)).get();
  if (!row) throw new GoneError('wiring outcome');
  return edit(db, row.jobId, 'wiring outcome deleted', (e) => e.remove('outcomes', id)).change;
}

/** What was joined in a job, newest first. */
export function outcomesOfJob(db: Database, jobId: JobId): OutcomeRecord[] {
  return db
    .select()
    .from(outcomes)
    .where(eq(outcomes.jobId, jobId))
    .orderBy(desc(outcomes.createdAt))
    .all()
    .map(asOutcome);
}

function outcomesOf(db: Database, traceId: TraceId): OutcomeRecord[] {
  return db
    .select()
    .from(outcomes)
    .where(eq(outcomes.traceId, traceId))
    .orderBy(desc(outcomes.createdAt))
    .all()
    .map(asOutcome);
}

function inputOf(db: Database, worksheet: WorksheetRecord): TraceInput {
  return traceOf(worksheet, readingsOf(db, worksheet.jobId), expandedUncertaintyOf(db));
}

/** Readings come in the order they were noted: the last total is the one that counts. */
function newestTotal(trace: TraceInput): TotalReading | null {
  return (
    trace.readings
      ?.flatMap((reading) => (reading.kind === 'total' ? [{ basis: 'measured' as const, ...reading }] : []))
      .at(-1) ?? null
  );
}

function traceRow(db: Database, id: TraceId) {
  const row = db.select().from(traces).where(eq(traces.id, id)).get();
  if (!row) throw new GoneError('trace');
  return row;
}

function asWorksheet({ createdAt: _, ...row }: typeof traces.$inferSelect): WorksheetRecord {
  return row;
}

function asOutcome({ createdAt: _, jobId: __, ...row }: typeof outcomes.$inferSelect): OutcomeRecord {
  return row;
}
