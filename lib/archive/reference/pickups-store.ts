import { and, asc, desc, eq, inArray, isNull } from 'drizzle-orm';
import type { Database } from '@/db/open';
import { instruments, jobs, outcomes, readings, traces } from '@/db/schema';
import { expandedUncertaintyOf } from '@/lib/readings/store';
import type { JobId, TraceId } from '@/shared/ids';
import type { Reading } from '@/shared/readings';
import type { CableLikeness, PickupsAnswer, PickupsQuery, TracedPickup } from '@/shared/reference';
import type { WiringOutcome } from '@/shared/wiring';
import { countedValues } from '../counted';
import { whileUnchanged } from '../ready-store';
import { firstMomentOf } from '../things';
import { assignmentsOf, usesOf } from './assignments';
import { askedKey, cableKey, likenessOf } from './cables';
import { readColoursAsked } from './colours-asked';
import { asReferenceJob, jobColumns } from './jobs-store';
import { type Said, saidOfPickups } from './said-store';
import { tracedOf } from './traced';

/** The newest cables of the very same colours: what they turned out to be is made of these. */
const mostCompared = 100;

type Row = ReturnType<typeof traceRows>[number];
interface Listed {
  row: Row;
  likeness: CableLikeness | null;
}

/** Every pickup that was traced, or those whose cables are like the one in the hand. */
export function pickupsAnswer(db: Database, query: PickupsQuery): PickupsAnswer {
  const rows = traceRows(db);
  const ofType = rows.filter(({ type }) => query.instrument === '' || type === query.instrument);
  const asked = query.colours === '' ? null : readColoursAsked(query.colours);
  const listed = asked === null ? ofType.map((row) => ({ row, likeness: null })) : likeCables(ofType, asked);
  const pages = Math.max(1, Math.ceil(listed.length / query.limit));
  const page = Math.min(query.page, pages);
  const shown = listed.slice((page - 1) * query.limit, page * query.limit);
  const same = listed.filter(({ likeness }) => likeness === 'same');
  const compared = same.slice(0, mostCompared);
  const pickups = pickupsOf(db, [...new Set([...shown, ...compared])]);
  return {
    asked,
    same: asked && { count: same.length, ...comparison(compared.flatMap(found(pickups)), asked.conductors) },
    pickups: shown.flatMap(found(pickups)),
    count: listed.length,
    ...{ page, pages },
    instruments: countedValues(rows.map(({ type }) => type)),
  };
}

const traceRows = whileUnchanged((db: Database) =>
  db
    .select({ trace: traces, job: jobColumns, type: instruments.type })
    .from(traces)
    .innerJoin(jobs, eq(jobs.id, traces.jobId))
    .innerJoin(instruments, eq(instruments.id, jobs.instrumentId))
    .where(isNull(jobs.deletedAt))
    .orderBy(desc(jobs.number), asc(traces.createdAt), asc(traces.id))
    .all(),
);

const likenessOrder: readonly CableLikeness[] = ['same', 'more', 'fewer'];

/** The very same colours first, then cables with more, then with fewer; of each the nearest, then the newest. */
function likeCables(rows: readonly Row[], asked: NonNullable<PickupsAnswer['asked']>): Listed[] {
  if (asked.conductors.length === 0) return [];
  const wanted = askedKey(asked);
  return rows
    .flatMap((row) => {
      const like = likenessOf({ key: cableKey(row.trace.conductors), shield: row.trace.shield }, wanted);
      return like ? [{ row, ...like }] : [];
    })
    .sort(
      (a, b) => likenessOrder.indexOf(a.likeness) - likenessOrder.indexOf(b.likeness) || a.apart - b.apart,
    );
}

const found =
  (pickups: ReadonlyMap<TraceId, TracedPickup>) =>
  ({ row }: Listed) =>
    pickups.get(row.trace.id) ?? [];

function comparison(
  pickups: readonly TracedPickup[],
  conductors: readonly { name: string; code: string }[],
): Omit<NonNullable<PickupsAnswer['same']>, 'count'> {
  return {
    lookedAt: pickups.length,
    assignments: assignmentsOf(pickups),
    conductors: usesOf(conductors, pickups),
    open: pickups.filter(({ basis }) => basis === null).length,
  };
}

function pickupsOf(db: Database, listed: readonly Listed[]): Map<TraceId, TracedPickup> {
  const jobIds = [...new Set(listed.map(({ row }) => row.job.id))];
  const noted = readingsByJob(db, jobIds);
  const joined = joinedByTrace(db, jobIds);
  const said = saidOfPickups(db, jobIds);
  const expandedOhms = expandedUncertaintyOf(db);
  return new Map(
    listed.map(({ row, likeness }) => {
      const { trace, job } = row;
      const own = noted.get(job.id) ?? [];
      const pickup = {
        ...tracedOf(trace, own, expandedOhms),
        ...pickupFields(row, joined.get(trace.id), said.get(job.id)),
        moment: firstMomentOf(trace.subject, own),
        likeness,
      };
      return [trace.id, pickup];
    }),
  );
}

function pickupFields({ trace, job, type }: Row, outcome: WiringOutcome | undefined, said: Said | undefined) {
  const { subject, shield, frame } = trace;
  return {
    trace: trace.id,
    job: asReferenceJob(job, type),
    ...{ subject, shield, frame },
    joined: outcome ? { title: outcome.title, basis: outcome.basis } : null,
    said: said?.of(subject) ?? [],
  };
}

/** Readings that a trace can be made of, in the order they were noted. */
function readingsByJob(db: Database, jobIds: readonly JobId[]): Map<JobId, Reading[]> {
  const rows = db
    .select()
    .from(readings)
    .where(and(inArray(readings.jobId, [...jobIds]), inArray(readings.kind, ['resistance', 'polarity-kick'])))
    .orderBy(asc(readings.createdAt), asc(readings.id))
    .all();
  const byJob = new Map<JobId, Reading[]>();
  for (const row of rows) {
    const own = byJob.get(row.jobId);
    if (own) own.push(row);
    else byJob.set(row.jobId, [row]);
  }
  return byJob;
}

/** What was joined last. */
function joinedByTrace(db: Database, jobIds: readonly JobId[]): Map<TraceId, WiringOutcome> {
  const rows = db
    .select({ traceId: outcomes.traceId, outcome: outcomes.outcome })
    .from(outcomes)
    .where(inArray(outcomes.jobId, [...jobIds]))
    .orderBy(asc(outcomes.createdAt), asc(outcomes.id))
    .all();
  return new Map(rows.map(({ traceId, outcome }) => [traceId, outcome]));
}
