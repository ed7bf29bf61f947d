import { and, eq, sql } from 'drizzle-orm';
import { GoneError } from '@/db/changes';
import type { Database } from '@/db/open';
import {
  claims,
  clients,
  harnesses,
  instruments,
  jobs,
  markers,
  outcomes,
  proposals,
  readings,
  takes,
  traces,
  workItems,
} from '@/db/schema';
import { layOut } from '@/lib/film';
import { onClock, takesOf } from '@/lib/film/store';
import { getJackView, getTraceView } from '@/lib/wiring/store';
import type { JobId } from '@/shared/ids';
import { momentOf } from '@/shared/moments';
import type { Take } from '@/shared/takes';
import type { LooseEndFacts } from './loose-ends';

/** All that a ticket in the rack tells of a job: the rows it is told by, its film, and what loose ends follow from. */
export interface TicketFacts {
  job: typeof jobs.$inferSelect;
  client: typeof clients.$inferSelect | null;
  instrument: typeof instruments.$inferSelect;
  film: Take[];
  markers: (typeof markers.$inferSelect)[];
  facts: LooseEndFacts;
}

/** What loose ends of a job follow from. */
export function factsOf(db: Database, jobId: JobId): LooseEndFacts {
  return ticketFactsOf(db, jobId).facts;
}

export function ticketFactsOf(db: Database, jobId: JobId): TicketFacts {
  const ask = statements(db);
  const row = ask.job.get({ jobId });
  if (!row) throw new GoneError('job');
  const film = takesOf(db, jobId);
  const marked = ask.markers.all({ jobId });
  const facts: LooseEndFacts = {
    ...row,
    claims: ask.claims.all({ instrumentId: row.instrument.id }),
    work: ask.work.all({ jobId }),
    takes: takeFacts(db, jobId, film),
    markers: marked,
    readings: readingFacts(db, jobId),
    traces: traceFacts(db, jobId),
    // Reckoned only where there is a harness to hold readings against.
    jack: ask.harness.get({ jobId }) ? getJackView(db, jobId).judgement : null,
    proposals: openProposals(db, jobId),
  };
  return { ...row, film, markers: marked, facts };
}

function takeFacts(db: Database, jobId: JobId, film: readonly Take[]): LooseEndFacts['takes'] {
  if (film.length === 0) return [];
  const starts = new Map(layOut(film.map(onClock)).takes.map((take) => [take.takeId, take.filmStartMs]));
  const createdAt = new Map(
    statements(db)
      .takes.all({ jobId })
      .map((row) => [row.id, row.createdAt]),
  );
  return film.map(({ id, name }) => ({
    id,
    name,
    filmStartMs: starts.get(id) ?? 0,
    createdAt: createdAt.get(id) ?? 0,
  }));
}

function readingFacts(db: Database, jobId: JobId): LooseEndFacts['readings'] {
  return statements(db)
    .readings.all({ jobId })
    .map(({ id, takeId, ms, details, createdAt }) => ({
      id,
      moment: momentOf({ takeId, ms }),
      atJack: details.jack !== undefined,
      createdAt,
    }));
}

function traceFacts(db: Database, jobId: JobId): LooseEndFacts['traces'] {
  const rows = statements(db).traces.all({ jobId });
  if (rows.length === 0) return [];
  const joined = db.select().from(outcomes).where(eq(outcomes.jobId, jobId)).all();
  const at = new Map(joined.map(({ id, createdAt }) => [id, createdAt]));
  return rows.map(({ id, createdAt }) => {
    const view = getTraceView(db, id);
    return {
      ...view,
      outcomes: view.outcomes.map((outcome) => ({ ...outcome, createdAt: at.get(outcome.id) ?? 0 })),
      createdAt,
    };
  });
}

function openProposals(db: Database, jobId: JobId): LooseEndFacts['proposals'] {
  return statements(db)
    .proposals.all({ jobId })
    .map(({ heard, takeId, startMs }) => ({ type: heard.type, moment: { takeId, ms: startMs } }));
}

/** Asked for thousands of jobs in a row: made ready once for each database. */
const prepared = new WeakMap<Database, ReturnType<typeof prepare>>();

function statements(db: Database): ReturnType<typeof prepare> {
  const known = prepared.get(db) ?? prepare(db);
  prepared.set(db, known);
  return known;
}

function prepare(db: Database) {
  const jobId = sql.placeholder('jobId');
  return {
    job: db
      .select({ job: jobs, client: clients, instrument: instruments })
      .from(jobs)
      .innerJoin(instruments, eq(instruments.id, jobs.instrumentId))
      .leftJoin(clients, eq(clients.id, jobs.clientId))
      .where(eq(jobs.id, jobId))
      .prepare(),
    claims: db
      .select()
      .from(claims)
      .where(eq(claims.instrumentId, sql.placeholder('instrumentId')))
      .prepare(),
    work: db.select().from(workItems).where(eq(workItems.jobId, jobId)).prepare(),
    takes: db
      .select({ id: takes.id, createdAt: takes.createdAt })
      .from(takes)
      .where(eq(takes.jobId, jobId))
      .prepare(),
    markers: db.select().from(markers).where(eq(markers.jobId, jobId)).prepare(),
    readings: db.select().from(readings).where(eq(readings.jobId, jobId)).prepare(),
    traces: db
      .select({ id: traces.id, createdAt: traces.createdAt })
      .from(traces)
      .where(eq(traces.jobId, jobId))
      .prepare(),
    harness: db.select({ id: harnesses.id }).from(harnesses).where(eq(harnesses.jobId, jobId)).prepare(),
    proposals: db
      .select()
      .from(proposals)
      .where(and(eq(proposals.jobId, jobId), eq(proposals.decision, 'open')))
      .prepare(),
  };
}
