import { and, between, gte, inArray, isNull, lte, or, type SQL, sql } from 'drizzle-orm';
import type { Database } from '@/db/open';
import { archiveTakes, jobs } from '@/db/schema';
import type { ClientId } from '@/shared/ids';
import type { ReadingKindId } from '@/shared/readings';
import { jobOfThingSql, passagesOfTake, thingsOfJobNumbers } from './numbers';

/** Numbers from and to, both included. */
export type Range = [number, number];

/** Where in the index is looked. */
export interface Within {
  /** Whether the ranges hold nothing that is not looked in. */
  isExact: boolean;
  /** Numbers of the jobs; null for all. */
  jobs: ReadonlySet<number> | null;
  /** Numbers of their takes; null for all. */
  takes: ReadonlySet<number> | null;
  things: readonly Range[];
  passages: readonly Range[];
}

export const everywhere: Within = {
  isExact: true,
  jobs: null,
  takes: null,
  things: [[0, Number.MAX_SAFE_INTEGER]],
  passages: [[0, Number.MAX_SAFE_INTEGER]],
};
/** With more pieces than this one wide range is asked, and what lies between is passed over. */
const mostRanges = 40;

export interface Span {
  from: string | null;
  to: string | null;
}

/** Readings of a kind, from a value to another in its base unit; null for an open end. */
export interface AskedReading {
  kind: ReadingKindId;
  low: number | null;
  high: number | null;
}

/** What a job has to fit. */
export interface Narrowed {
  /** Of one of each of these lists; an empty one does not count. */
  clients: readonly (readonly ClientId[])[];
  /** Came in or filmed within all of these. */
  spans: readonly Span[];
  /** Holds such a reading. */
  reading: AskedReading | null;
}

/** Jobs that fit all of this. */
export function within(db: Database, { clients, spans, reading }: Narrowed): Within {
  const whose = clients.filter(({ length }) => length > 0);
  if (whose.length === 0 && spans.length === 0 && reading === null) return everywhere;
  const filmed = db.select({ job: archiveTakes.job }).from(archiveTakes);
  const received = sql<string>`coalesce(${jobs.receivedOn}, date(${jobs.createdAt} / 1000, 'unixepoch', 'localtime'))`;
  const rows = db
    .select({ number: jobs.number })
    .from(jobs)
    .where(
      and(
        isNull(jobs.deletedAt),
        reading ? sql`${jobs.number} in (${jobsWithReading(reading)})` : undefined,
        ...whose.map((ids) => inArray(jobs.clientId, [...ids])),
        ...spans.map(({ from, to }) =>
          or(
            between(received, from ?? '', to ?? '9999'),
            inArray(
              jobs.number,
              filmed.where(and(gte(archiveTakes.day, from ?? ''), lte(archiveTakes.day, to ?? '9999'))),
            ),
          ),
        ),
      ),
    )
    .all();
  const numbers = rows.map(({ number }) => number).sort((a, b) => a - b);
  const takes = db
    .select({ id: archiveTakes.id })
    .from(archiveTakes)
    .where(sql`${archiveTakes.job} in (select value from json_each(${JSON.stringify(numbers)}))`)
    .orderBy(archiveTakes.id)
    .all()
    .map(({ id }) => id);
  const [ofJobs, ofTakes] = [runs(numbers), runs(takes)];
  const isExact = Math.max(ofJobs.length, ofTakes.length) <= mostRanges;
  return {
    isExact,
    jobs: new Set(numbers),
    takes: new Set(takes),
    things: isExact ? ranges(ofJobs, thingsOfJobNumbers) : [around(ranges(ofJobs, thingsOfJobNumbers))],
    passages: isExact ? ranges(ofTakes, passagesOfTake) : [around(ranges(ofTakes, passagesOfTake))],
  };
}

function jobsWithReading(reading: AskedReading): SQL {
  return sql`select distinct ${sql.raw(jobOfThingSql('id'))} from archive_things where ${isReading(reading)}`;
}

/** A reading without a value, such as an open line, is none of a range. */
export function isReading({ kind, low, high }: AskedReading): SQL {
  const bounds = [
    sql`reading_kind = ${kind}`,
    ...(low === null ? [] : [sql`base_value >= ${low}`]),
    ...(high === null ? [] : [sql`base_value <= ${high}`]),
  ];
  return sql.join(bounds, sql` and `);
}

/** Neighbours go together. */
function runs(numbers: readonly number[]): Range[] {
  const all: Range[] = [];
  for (const number of numbers) {
    const last = all.at(-1);
    if (last && last[1] === number - 1) last[1] = number;
    else all.push([number, number]);
  }
  return all;
}

function ranges(all: readonly Range[], span: (number: number) => Range): Range[] {
  return all.map(([from, to]) => [span(from)[0], span(to)[1]]);
}

function around(all: readonly Range[]): Range {
  return [all[0]?.[0] ?? 0, all.at(-1)?.[1] ?? 0];
}
