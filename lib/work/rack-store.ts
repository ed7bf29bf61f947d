import { and, count, eq, inArray, isNull, type SQL, sql } from 'drizzle-orm';
import type { Database } from '@/db/open';
import { jobs, keptTickets, settings } from '@/db/schema';
import { layOut } from '@/lib/film';
import { onClock } from '@/lib/film/store';
import type { JobId } from '@/shared/ids';
import type { RackOfTickets, Ticket } from '@/shared/jobs';
import type { FilmMoment } from '@/shared/moments';
import type { Take } from '@/shared/takes';
import { dayOf } from './days';
import { type TicketFacts, ticketFactsOf } from './facts-store';
import { findableText, wordsOf } from './findable';
import { partsOf } from './item-store';
import { type LooseEndFacts, lastingEnds, promiseEnd } from './loose-ends';
import { asInstrument, asJob } from './row-store';

const stillsOnTicket = 6;
/** Tickets worked out at leisure before other requests get their turn, and for how long. */
const atOnce = 5;
const pauseMs = 20;

/**
 * The rack, in the order of `rackGroups`: what is on the bench, what is due, what is ready, what has gone.
 * @param find words that must all stand on the ticket
 */
export function rackOf(db: Database, { find, limit }: { find: string; limit: number }): RackOfTickets {
  const words = wordsOf(find);
  // What is to be shown has to be kept; to find among all, all have to be.
  keepTickets(db, words.length === 0 ? firstOf(db, limit) : isNull(jobs.deletedAt), -1);
  const wanted = and(isNull(jobs.deletedAt), ...words.map(stands));
  const rows = db
    .select({ ticket: keptTickets.ticket })
    .from(jobs)
    .innerJoin(keptTickets, eq(keptTickets.jobId, jobs.id))
    .where(wanted)
    .orderBy(...rackOrder)
    .limit(limit)
    .all();
  const today = dayOf(Date.now());
  const found = rows.map(({ ticket }) => asOf(today, JSON.parse(ticket)));
  return { jobs: found, total: rows.length < limit ? found.length : countOf(db, wanted) };
}

function firstOf(db: Database, limit: number): SQL {
  const first = db
    .select({ id: jobs.id })
    .from(jobs)
    .where(isNull(jobs.deletedAt))
    .orderBy(...rackOrder)
    .limit(limit);
  return inArray(jobs.id, first);
}

function countOf(db: Database, wanted: SQL | undefined): number {
  const kept = db.select({ rows: count() }).from(jobs).leftJoin(keptTickets, eq(keptTickets.jobId, jobs.id));
  return kept.where(wanted).get()?.rows ?? 0;
}

/**
 * Works out the tickets that are not kept.
 * @param which of the jobs
 * @param most how many at most; -1 for all
 * @returns how many were worked out
 */
function keepTickets(db: Database, which: SQL, most: number): number {
  const missing = db
    .select({ id: jobs.id })
    .from(jobs)
    .leftJoin(keptTickets, eq(keptTickets.jobId, jobs.id))
    .where(and(which, isNull(keptTickets.jobId)))
    .limit(most)
    .all();
  if (missing.length === 0) return 0;
  db.transaction((tx) => {
    for (const { id } of missing) tx.insert(keptTickets).values(keptRow(db, id)).run();
  });
  return missing.length;
}

/**
 * What another build of the program kept is worked out anew, for its rules may have been others.
 * @param build names this one
 */
export function forgetOldTickets(db: Database, build: string): void {
  const keptBy = db.select().from(settings).where(eq(settings.key, 'keptBy')).get();
  if (keptBy?.value === build) return;
  const row = { key: 'keptBy', value: build };
  db.delete(keptTickets).run();
  db.insert(settings).values(row).onConflictDoUpdate({ target: settings.key, set: row }).run();
}

/** Keeps all tickets by and by, so that the first look at a large rack need not wait. */
export function keepTicketsAtLeisure(db: Database): void {
  const go = () => {
    if (db.$client.open && keepTickets(db, isNull(jobs.deletedAt), atOnce) > 0) setTimeout(go, pauseMs);
  };
  setTimeout(go, pauseMs);
}

/** What is kept of a ticket depends on the record alone; what depends on the day comes when it is shown. */
function asOf(today: string, ticket: Ticket): Ticket {
  const promise = promiseEnd(ticket, today);
  return promise ? { ...ticket, looseEnds: [promise, ...ticket.looseEnds] } : ticket;
}

function keptRow(db: Database, id: JobId): typeof keptTickets.$inferInsert {
  const told = ticketFactsOf(db, id);
  const ticket = ticketOf(told);
  const work = [...told.facts.work, ...partsOf(db, id)].map(({ what }) => what);
  return { jobId: id, ticket: JSON.stringify(ticket), findable: findableText(ticket, work) };
}

function ticketOf({ job, client, instrument, film, markers, facts }: TicketFacts): Ticket {
  const { readyLook: _, cameWith: __, ...words } = asJob(job);
  return {
    ...words,
    instrument: asInstrument(instrument),
    client: client && { id: client.id, name: client.name, alias: client.alias },
    takes: film.length,
    filmMs: layOut(film.map(onClock)).durationMs,
    markers: markers.length,
    readings: facts.readings.length,
    stills: stillsAlong(film),
    looseEnds: lastingEnds(facts),
    lastMoment: lastMomentOf(markers, facts.readings),
  };
}

/** The moment of what was noted last. */
function lastMomentOf(
  markers: TicketFacts['markers'],
  readings: LooseEndFacts['readings'],
): FilmMoment | null {
  const noted = [
    ...markers.map(({ takeId, ms, createdAt }) => ({ moment: { takeId, ms }, createdAt })),
    ...readings.flatMap(({ moment, createdAt }) => (moment ? [{ moment, createdAt }] : [])),
  ];
  return (
    noted.reduce<(typeof noted)[number] | null>(
      (last, each) => (last && last.createdAt > each.createdAt ? last : each),
      null,
    )?.moment ?? null
  );
}

/** A few stills spread over the film. */
function stillsAlong(film: readonly Take[]): string[] {
  const all = film.flatMap((take) =>
    take.stills.map((ms) => `/api/takes/${take.id}/still?ms=${ms}&size=strip`),
  );
  const every = Math.max(1, all.length / stillsOnTicket);
  return Array.from(
    { length: Math.min(stillsOnTicket, all.length) },
    (_, index) => all[Math.floor(index * every)] ?? [],
  ).flat();
}

function stands(word: string): SQL {
  return sql`instr(${keptTickets.findable}, ${word}) > 0`;
}

const rank = sql`case ${jobs.state} when 'on the bench' then 0 when 'booked in' then 1 when 'ready' then 2 else 3 end`;
/** On the bench: touched last first. Due: by promised day, those without after them. The rest: touched last first. */
const rackOrder = [
  rank,
  sql`case when ${jobs.state} = 'booked in' then coalesce(${jobs.promisedOn}, '9999') end`,
  sql`case when ${jobs.state} = 'booked in' then ${jobs.receivedOn} end`,
  sql`${jobs.updatedAt} desc`,
  sql`${jobs.number} desc`,
] as const;
