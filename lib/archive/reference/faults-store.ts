import { and, desc, eq, inArray, isNotNull, isNull } from 'drizzle-orm';
import type { Database } from '@/db/open';
import { claims, instruments, jobs, markers, parts, workItems } from '@/db/schema';
import type { JobId } from '@/shared/ids';
import type { MarkerKind } from '@/shared/markers';
import type { FaultsAnswer, FaultsQuery } from '@/shared/reference';
import { countedValues } from '../counted';
import { whileUnchanged } from '../ready-store';
import { synonymsOf } from '../synonyms-store';
import { type FaultJob, faultsOf, type Told } from './faults';
import { asReferenceJob, jobColumns } from './jobs-store';

/** In the list of all faults, and of one alone. */
const inList = { moments: 3, cures: 6 };
const alone = { moments: 40, cures: 20 };

/** What was found by instrument type and what was done about it, over all jobs that are not in the bin. */
export function faultsAnswer(db: Database, { instrument, fault, limit }: FaultsQuery): FaultsAnswer {
  const told = faultJobs(db);
  const wanted = instrument === '' ? told : told.filter(({ job }) => job.instrument === instrument);
  const faults = faultsOf(wanted, synonymsOf(db), fault === '' ? inList : alone, fault);
  return {
    instruments: countedValues(told.map(({ job }) => job.instrument)),
    jobs: wanted.length,
    faults: faults.slice(0, limit),
    left: Math.max(0, faults.length - limit),
  };
}

interface Noted {
  found: Told[];
  done: Told[];
  hasResult: boolean;
}

const faultJobs = whileUnchanged((db: Database): FaultJob[] => {
  const rows = db
    .select({ job: jobColumns, type: instruments.type })
    .from(jobs)
    .innerJoin(instruments, eq(instruments.id, jobs.instrumentId))
    .where(isNull(jobs.deletedAt))
    .orderBy(desc(jobs.number))
    .all();
  const noted = new Map<JobId, Noted>(
    rows.map(({ job }) => [job.id, { found: [], done: [], hasResult: false }]),
  );
  noteMarkers(db, noted);
  noteWork(db, noted);
  noteClaims(db, noted);
  return rows.map(({ job, type }) => {
    const { found = [], done = [], hasResult = false } = noted.get(job.id) ?? {};
    // The title last: what stands on the film first.
    const title = { text: job.title, moment: null };
    return { job: asReferenceJob(job, type), found: [...found, title], done, hasResult };
  });
});

const told: readonly MarkerKind[] = ['intake', 'diagnosis', 'work'];

function noteMarkers(db: Database, noted: ReadonlyMap<JobId, Noted>): void {
  const { jobId, kind, title, note, takeId, ms } = markers;
  const rows = db
    .select({ jobId, kind, title, note, takeId, ms })
    .from(markers)
    .where(inArray(kind, [...told]))
    .all();
  for (const row of rows) {
    const job = noted.get(row.jobId);
    const text = row.note ? `${row.title}. ${row.note}` : row.title;
    const moment = { takeId: row.takeId, ms: row.ms };
    (row.kind === 'work' ? job?.done : job?.found)?.push({ text, moment });
  }
  for (const row of db.selectDistinct({ jobId }).from(markers).where(eq(kind, 'result')).all()) {
    const job = noted.get(row.jobId);
    if (job) job.hasResult = true;
  }
}

/** What was found on the way, what was done, what was fitted. What was asked for is a wish; the title tells it too. */
function noteWork(db: Database, noted: ReadonlyMap<JobId, Noted>): void {
  for (const { jobId, what, origin, outcome, begun, ended } of db.select().from(workItems).all()) {
    const job = noted.get(jobId);
    if (origin === 'found') job?.found.push({ text: what, moment: begun });
    if (outcome === 'done') job?.done.push({ text: what, moment: ended });
  }
  const fitted = db.select().from(parts).where(eq(parts.deed, 'fitted')).all();
  for (const { jobId, what, moment } of fitted)
    noted.get(jobId)?.done.push({ text: `${what} fitted`, moment });
}

/** "Cause of the dead pickup: conductor torn off"; claims of year, factory and parts tell of no fault. */
function noteClaims(db: Database, noted: ReadonlyMap<JobId, Noted>): void {
  for (const { jobId, subject, value, moment } of db
    .select()
    .from(claims)
    .where(and(eq(claims.kind, 'other'), isNotNull(claims.jobId)))
    .all()) {
    const text = subject ? `${subject}: ${value}` : value;
    if (jobId) noted.get(jobId)?.found.push({ text, moment });
  }
}
